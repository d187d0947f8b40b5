"""Enlarged details: depths are too small to read at the scale of a door."""

from configurator.kernel.shapes import Box, Door, Drawing, Mark
from configurator.kernel.tongue import wording
from configurator.kernel.views.dimensions import (
    EDGE_ROOM,
    FIRST_TIER,
    TIER,
    WORDS_ROOM,
    Notes,
    blank_notes,
    dim_across,
    dim_upright,
    named,
    noted,
    said,
    tier,
)
from configurator.kernel.views.draft import (
    Draft,
    blank_drawing,
    covering_box,
    cropped_draft,
    handle_axis_x,
    latch_edge,
    lettered,
)
from configurator.kernel.views.elevation_notes import drop_upright
from configurator.kernel.views.layout import casing_reach, front_most, latch_is_right
from configurator.kernel.views.marks import make_mark, stroke
from configurator.kernel.views.plan import covering_top, is_cut_level, leaf_top
from configurator.kernel.views.second_leaf import broken_wood, is_broken_off, past_latch
from configurator.kernel.views.section import WOOD_SPACING, covering_side, door_side, room_front, side_projection
from configurator.kernel.views.walls import break_line, turned_break, wall_back, wall_break, wall_side, wall_top

# How far a detail of the head reaches down at most, and how much it shows below the glass's edge, mm.
HEAD_MOST = 420.0
HEAD_BELOW = 70.0
# Letters in parts of the detail's greater side.
DETAIL_LETTERS = 0.042
# A wider plan about the handle is lettered no larger than the upright cut beside it, mm.
LETTERED_MOST = 340.0
# The longest words with a name that stand below a short dimension, in letters.
NAMED_ROOM = 10.5
# How much a detail of the handle shows beyond the grip's tip, mm.
TIP_BEYOND = 90.0


def head_low(draft: Draft) -> float:
    """Return how far down the detail of the head reaches: past the glass's edge and a short stack."""
    low = draft["frame"]["glass"]["y1"] - HEAD_BELOW
    covering = covering_box(draft)
    if covering["y1"] > covering["y0"]:
        low = min(low, covering["y0"] - HEAD_BELOW / 2)
    return max(low, draft["frame"]["leaf_top"] - HEAD_MOST)


def lettered_head(draft: Draft, low: float) -> Draft:
    """Return the draft with letters for a detail of the head that reaches down to ``low``."""
    return lettered(draft, (draft["frame"]["top"] - low) * DETAIL_LETTERS, 0.0)


def head_region(draft: Draft, low: float) -> Box:
    """Return the part of the elevation that a detail of the head is cut from."""
    frame = draft["frame"]
    return {"x0": frame["leaf0"], "x1": frame["leaf1"], "y0": low, "y1": frame["top"]}


def projection_level(draft: Draft) -> float:
    """Return the height above which the projection is told: over the wall and the words of the upright dimension."""
    return max(wall_break(draft), draft["frame"]["order"]["y1"] + draft["size"] * WORDS_ROOM)


def head_bottom(draft: Draft, low: float) -> float:
    """Return the lower edge of the head's detail on the paper: below its break and the words under a short stack."""
    size = draft["size"]
    covering = covering_box(draft)
    height = covering["y1"] - covering["y0"]
    if height > 0 and covering["y0"] >= low and height < size * NAMED_ROOM:
        return max(-low + size * FIRST_TIER, size * NAMED_ROOM - covering["y0"])
    return -low + size * FIRST_TIER


def head_notes(draft: Draft, low: float) -> list[Mark]:
    """Return the annotation of the head: projection, stack, and how it sits about the glass's edge."""
    notes = blank_notes(draft["size"], draft["words"], draft["units"])
    side_projection(notes, draft, projection_level(draft))
    covering = covering_box(draft)
    high = covering["y1"]
    edge = draft["frame"]["glass"]["y1"]
    front = room_front(draft)
    if high <= covering["y0"]:
        return noted(notes)
    first = front + notes["size"] * FIRST_TIER
    if high > edge:
        dim_upright(notes, [-high, -edge], tier(first, front), said(notes, high - edge, "above", ""))
    if covering["y0"] < low:
        return noted(notes)
    if covering["y0"] < edge:
        label = said(notes, edge - covering["y0"], "below", "")
        dim_upright(notes, [-edge, -covering["y0"]], tier(first, front), label)
    drop_upright(notes, draft, tier(first + notes["size"] * TIER, front))
    return noted(notes)


def detail_head_of(draft: Draft) -> Drawing:
    """Return the head of the section, enlarged."""
    low = head_low(draft)
    head = lettered_head(draft, low)
    size = head["size"]
    part = cropped_draft(head, head_region(head, low))
    leaf = draft["door"]["leaf_thickness"]
    view = blank_drawing("detail-head", head)
    view["marks"].extend(wall_side(head))
    view["marks"].extend(door_side(part))
    view["marks"].extend(covering_side(part))
    view["marks"].append(make_mark("polyline", "hair", break_line(-leaf, head["frame"]["front"], -low, size)))
    view["marks"].extend(head_notes(head, low))
    view["x"] = wall_back(head["door"]) - size * EDGE_ROOM
    view["width"] = room_front(head) + size * (WORDS_ROOM + TIER) - view["x"]
    view["y"] = -projection_level(head) - size * (TIER + EDGE_ROOM)
    view["height"] = head_bottom(head, low) - view["y"]
    return view


def handle_region(draft: Draft) -> Box:
    """Return the part of the elevation round the handle: from beyond the grip's tip to beyond the latch edge."""
    door = draft["door"]
    frame = draft["frame"]
    reach = door["backset"] + door["handle"]["grip_length"] + TIP_BEYOND
    beyond = past_latch(draft)
    if latch_is_right(door):
        x0 = max(frame["leaf0"], frame["leaf1"] - reach)
        return {"x0": x0, "x1": frame["leaf1"] + beyond, "y0": 0.0, "y1": frame["top"]}
    x1 = min(frame["leaf1"], frame["leaf0"] + reach)
    return {"x0": frame["leaf0"] - beyond, "x1": x1, "y0": 0.0, "y1": frame["top"]}


def lettered_handle(draft: Draft, region: Box) -> Draft:
    """Return the draft with letters for a detail of the handle."""
    return lettered(draft, min(region["x1"] - region["x0"], LETTERED_MOST) * DETAIL_LETTERS, 0.0)


def meets_wall(door: Door) -> bool:
    """Return whether the latch edge shuts against the frame instead of another leaf."""
    return door["layout"] == "single"


def handle_edge(draft: Draft) -> float:
    """Return the x at which a detail of the handle ends beyond the latch edge."""
    door = draft["door"]
    beyond = door["head_gap"] + casing_reach(door) + draft["size"] if meets_wall(door) else past_latch(draft)
    return latch_edge(draft) + beyond if latch_is_right(door) else latch_edge(draft) - beyond


def handle_depths(notes: Notes, draft: Draft, told: str) -> None:
    """Add the depths behind the handle's grip and to its front, in a sentence that tells its ``{length}``."""
    handle = draft["door"]["handle"]
    size = notes["size"]
    side = 1.0 if latch_is_right(draft["door"]) else -1.0
    edge = handle_edge(draft)
    x = edge + side * size * FIRST_TIER
    label = named(notes, "gap {length}", handle["gap"], "above", "handle_gap")
    dim_upright(notes, [0.0, handle["gap"]], tier(x, edge), label)
    x = x + side * size * TIER
    label = named(notes, told, handle["projection"], "below", "handle_projection")
    dim_upright(notes, [0.0, handle["projection"]], tier(x, edge), label)


def covering_depth(notes: Notes, draft: Draft, region: Box) -> None:
    """Add how far the covering reaches into the room at the handle's height, if it is there."""
    height = draft["door"]["handle_height"]
    front = front_most([piece for piece in draft["scene"]["covering"] if is_cut_level(piece, height)])
    if front <= 0:
        return
    right = latch_is_right(draft["door"])
    edge = region["x0"] if right else region["x1"]
    reach = notes["size"] * FIRST_TIER
    x = edge - reach if right else edge + reach
    dim_upright(notes, [0.0, front], tier(x, edge), named(notes, "covering {length}", front, "below", ""))


def backset_across(notes: Notes, draft: Draft, back: float) -> None:
    """Add the backset behind ``back``, the rear of what is drawn."""
    door = draft["door"]
    edge = latch_edge(draft)
    axis = handle_axis_x(draft)
    on = tier(back - notes["size"] * FIRST_TIER, back)
    dim_across(notes, [axis, edge], on, said(notes, door["backset"], "before", "backset"))


def handle_notes(draft: Draft, region: Box, back: float) -> list[Mark]:
    """Return the annotation of the handle's detail; ``back`` is the rear of what is drawn."""
    notes = blank_notes(draft["size"], draft["words"], draft["units"])
    handle_depths(notes, draft, wording("handle {length}"))
    covering_depth(notes, draft, region)
    backset_across(notes, draft, back)
    axis = handle_axis_x(draft)
    front = draft["door"]["handle"]["projection"] + notes["size"] * 0.6
    notes["lines"].append(stroke("axis-line", axis, back, axis, front))
    return noted(notes)


def leaves_about(part: Draft, edge: float) -> list[Mark]:
    """Return the leaves in plan; a second one goes on beyond the detail's edge."""
    pieces = part["scene"]["door"]
    whole = [piece for piece in pieces if not is_broken_off(piece, edge)]
    marks = leaf_top({**part, "scene": {**part["scene"], "door": whole}})
    for piece in pieces:
        if is_broken_off(piece, edge):
            marks.extend(broken_wood(piece, edge, part["size"] * WOOD_SPACING))
    return marks


def detail_handle_of(draft: Draft) -> Drawing:
    """Return the plan about the handle, enlarged."""
    return handle_detail(lettered_handle(draft, handle_region(draft)))


def handle_detail(about: Draft) -> Drawing:
    """Return the plan about the handle, in the draft's own letters."""
    region = handle_region(about)
    door = about["door"]
    size = about["size"]
    right = latch_is_right(door)
    part = cropped_draft(about, region)
    far = region["x0"] if right else region["x1"]
    edge = handle_edge(about)
    front = max(front_most(part["scene"]["door"]), about["frame"]["front"])
    back = wall_back(door)
    view = blank_drawing("detail-handle", about)
    ends = [far] if meets_wall(door) else [far, edge]
    if meets_wall(door):
        view["marks"].extend(wall_top(about, not right))
    view["marks"].extend(leaves_about(part, edge))
    view["marks"].extend(covering_top(part))
    for end in ends:
        view["marks"].append(make_mark("polyline", "hair", turned_break(-door["leaf_thickness"], front, end, size)))
    view["marks"].extend(handle_notes(part, region, back))
    room = size * (TIER + FIRST_TIER + EDGE_ROOM + 1.0)
    view["x"] = min(far, edge) - room
    view["width"] = max(far, edge) + room - view["x"]
    view["y"] = back - size * (FIRST_TIER + TIER)
    view["height"] = front + size * NAMED_ROOM - view["y"]
    return view
