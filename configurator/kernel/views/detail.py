"""Enlarged details: depths are too small to read at the scale of a door."""

from configurator.kernel.say import say_length
from configurator.kernel.shapes import Answer, Box, Door, Drawing, Mark, Scene
from configurator.kernel.views.crop import cropped_scene
from configurator.kernel.views.dimensions import TIER, Notes, blank_notes, dim_across, dim_upright, noted
from configurator.kernel.views.elevation import EDGE_ROOM, FIRST_TIER, WORDS_ROOM, blank_drawing, drop_words
from configurator.kernel.views.layout import (
    WALL_DEPTH,
    Layout,
    active_covering,
    extent,
    front_most,
    latch_is_right,
    layout,
)
from configurator.kernel.views.marks import make_mark
from configurator.kernel.views.plan import covering_top, leaf_top, turned_break, wall_top
from configurator.kernel.views.section import (
    STOP_DEPTH,
    break_line,
    covering_side,
    door_side,
    side_projection,
    wall_break,
    wall_side,
)

# How far a detail of the head reaches down at most, and how much it shows below the glass's edge, mm.
HEAD_MOST = 420.0
HEAD_BELOW = 70.0
# Letters in parts of the detail's greater side.
DETAIL_LETTERS = 0.042
# The longest words with a name that stand below a short dimension, in letters.
NAMED_ROOM = 10.5
# How much a detail of the handle shows beyond the grip's tip and beyond the leaf's edge, mm.
TIP_BEYOND = 130.0
EDGE_BEYOND = 45.0


def head_low(scene: Scene, answer: Answer, frame: Layout) -> float:
    """Return how far down the detail of the head reaches: past the glass's edge and a short stack."""
    low = frame["glass"]["y1"] - HEAD_BELOW
    covering = extent(active_covering(scene, answer))
    if covering["y1"] > covering["y0"]:
        low = min(low, covering["y0"] - HEAD_BELOW / 2)
    return max(low, frame["leaf_top"] - HEAD_MOST)


def head_frame(frame: Layout, low: float) -> Layout:
    """Set the layout's letters for a detail of the head."""
    frame["size"] = (frame["top"] - low) * DETAIL_LETTERS
    return frame


def projection_level(frame: Layout) -> float:
    """Return the height above which the projection is told: over the wall and the words of the upright dimension."""
    return max(wall_break(frame), frame["order"]["y1"] + frame["size"] * WORDS_ROOM)


def head_front(door: Door, frame: Layout) -> float:
    """Return how far covering and casing reach into the room."""
    return max(frame["front"], door["reveal"] + door["casing_projection"])


def head_bottom(scene: Scene, answer: Answer, frame: Layout, low: float) -> float:
    """Return the lower edge of the head's detail on the paper: below its break and the words under a short stack."""
    size = frame["size"]
    covering = extent(active_covering(scene, answer))
    height = covering["y1"] - covering["y0"]
    if height > 0 and covering["y0"] >= low and height < size * NAMED_ROOM:
        return max(-low + size * FIRST_TIER, size * NAMED_ROOM - covering["y0"])
    return -low + size * FIRST_TIER


def head_notes(scene: Scene, door: Door, answer: Answer, frame: Layout, units: str, low: float) -> list[Mark]:
    """Return the annotation of the head: projection, stack, and how it sits about the glass's edge."""
    notes = blank_notes(frame["size"])
    side_projection(notes, scene, answer, units, projection_level(frame))
    covering = extent(active_covering(scene, answer))
    edge = frame["glass"]["y1"]
    front = head_front(door, frame)
    if covering["y1"] <= covering["y0"]:
        return noted(notes)
    first = front + notes["size"] * FIRST_TIER
    if covering["y1"] > edge:
        words = say_length(covering["y1"] - edge, units)
        dim_upright(notes, -covering["y1"], -edge, first, front, words, "above", "")
    if covering["y0"] < low:
        return noted(notes)
    if covering["y0"] < edge:
        words = say_length(edge - covering["y0"], units)
        dim_upright(notes, -edge, -covering["y0"], first, front, words, "below", "")
    words = drop_words(answer, covering["y1"] - covering["y0"], units)
    second = first + notes["size"] * TIER
    dim_upright(notes, -covering["y1"], -covering["y0"], second, front, words, "below", "")
    return noted(notes)


def detail_head_of(scene: Scene, door: Door, answer: Answer, units: str, names: dict[str, str]) -> Drawing:
    """Return the head of the section, enlarged; ``names`` as for the other views."""
    frame = layout(scene, door, answer)
    low = head_low(scene, answer, frame)
    head_frame(frame, low)
    size = frame["size"]
    region: Box = {"x0": frame["leaf0"], "x1": frame["leaf1"], "y0": low, "y1": frame["top"]}
    part = cropped_scene(scene, region)
    view = blank_drawing("detail-head", names, answer, units)
    view["marks"].extend(wall_side(door, frame))
    view["marks"].extend(door_side(part, frame))
    view["marks"].extend(covering_side(part, door, answer, frame))
    view["marks"].append(make_mark("polyline", "hair", break_line(-door["leaf_thickness"], frame["front"], -low, size)))
    view["marks"].extend(head_notes(scene, door, answer, frame, units, low))
    view["x"] = -max(door["leaf_thickness"] + STOP_DEPTH, WALL_DEPTH - door["reveal"]) - size * EDGE_ROOM
    view["width"] = head_front(door, frame) + size * (WORDS_ROOM + TIER) - view["x"]
    view["y"] = -projection_level(frame) - size * (TIER + EDGE_ROOM)
    view["height"] = head_bottom(scene, answer, frame, low) - view["y"]
    return view


def handle_window(door: Door, frame: Layout) -> Box:
    """Return the part of the elevation round the handle: from beyond the grip's tip to beyond the latch edge."""
    reach = door["backset"] + door["handle"]["grip_length"] + TIP_BEYOND
    if latch_is_right(door):
        x0 = max(frame["leaf0"], frame["leaf1"] - reach)
        return {"x0": x0, "x1": frame["leaf1"] + EDGE_BEYOND, "y0": 0.0, "y1": frame["top"]}
    x1 = min(frame["leaf1"], frame["leaf0"] + reach)
    return {"x0": frame["leaf0"] - EDGE_BEYOND, "x1": x1, "y0": 0.0, "y1": frame["top"]}


def meets_wall(door: Door) -> bool:
    """Return whether the latch edge shuts against the frame instead of another leaf."""
    return door["layout"] == "single"


def handle_edge(door: Door, frame: Layout) -> float:
    """Return the x at which a detail of the handle ends beyond the latch edge."""
    beyond = door["casing_width"] + frame["size"] if meets_wall(door) else EDGE_BEYOND
    return frame["leaf1"] + beyond if latch_is_right(door) else frame["leaf0"] - beyond


def depth_tiers(notes: Notes, door: Door, scene: Scene, frame: Layout, region: Box, units: str) -> None:
    """Add the depths at the handle: behind its grip, to its front, and the covering's."""
    handle = door["handle"]
    size = notes["size"]
    right = latch_is_right(door)
    side = 1.0 if right else -1.0
    edge = handle_edge(door, frame)
    x = edge + side * size * FIRST_TIER
    dim_upright(notes, 0.0, handle["gap"], x, edge, "gap " + say_length(handle["gap"], units), "above", "handle_gap")
    x = x + side * size * TIER
    depth = "handle " + say_length(handle["projection"], units)
    dim_upright(notes, 0.0, handle["projection"], x, edge, depth, "below", "handle_projection")
    level: list[float] = [0.0]
    for piece in scene["covering"]:
        if piece["y0"] < door["handle_height"] and piece["y1"] > door["handle_height"]:
            level.append(piece["z1"])
    front = max(level)
    if front > 0:
        edge = region["x0"] if right else region["x1"]
        x = edge - side * size * FIRST_TIER
        dim_upright(notes, 0.0, front, x, edge, "covering " + say_length(front, units), "below", "")


def handle_notes(scene: Scene, door: Door, frame: Layout, region: Box, units: str, back: float) -> list[Mark]:
    """Return the annotation of the handle's detail; ``back`` is the rear of what is drawn."""
    notes = blank_notes(frame["size"])
    depth_tiers(notes, door, scene, frame, region, units)
    y = back - notes["size"] * FIRST_TIER
    edge = frame["leaf1"] if latch_is_right(door) else frame["leaf0"]
    axis = edge - door["backset"] if latch_is_right(door) else edge + door["backset"]
    words = say_length(door["backset"], units)
    dim_across(notes, min(axis, edge), max(axis, edge), y, back, words, "before", "backset")
    notes["lines"].append(
        make_mark("line", "axis-line", [axis, back, axis, door["handle"]["projection"] + notes["size"] * 0.6])
    )
    return noted(notes)


def detail_handle_of(scene: Scene, door: Door, answer: Answer, units: str, names: dict[str, str]) -> Drawing:
    """Return the plan about the handle, enlarged; ``names`` as for the other views."""
    frame = layout(scene, door, answer)
    region = handle_window(door, frame)
    frame["size"] = (region["x1"] - region["x0"]) * DETAIL_LETTERS
    size = frame["size"]
    part = cropped_scene(scene, region)
    far = region["x0"] if latch_is_right(door) else region["x1"]
    edge = handle_edge(door, frame)
    view = blank_drawing("detail-handle", names, answer, units)
    if meets_wall(door):
        view["marks"].extend(wall_top(door, frame, not latch_is_right(door)))
    view["marks"].extend(leaf_top(part, door, frame))
    view["marks"].extend(covering_top(part, door, frame))
    front = max(front_most(part["door"]), frame["front"])
    back = max(door["leaf_thickness"] + STOP_DEPTH, WALL_DEPTH - door["reveal"])
    view["marks"].append(make_mark("polyline", "hair", turned_break(-door["leaf_thickness"], front, far, size)))
    view["marks"].extend(handle_notes(part, door, frame, region, units, -back))
    room = size * (TIER + FIRST_TIER + EDGE_ROOM + 1.0)
    view["x"] = min(far, edge) - room
    view["width"] = max(far, edge) + room - view["x"]
    view["y"] = -back - size * (FIRST_TIER + TIER)
    view["height"] = front + size * NAMED_ROOM - view["y"]
    return view
