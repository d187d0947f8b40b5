"""The plan of the door alone at hinges and latch, enlarged, with every measure to take there, marked with its field."""

from configurator.kernel.door.opening import has_passive
from configurator.kernel.shapes import Box, Door, Drawing, Mark
from configurator.kernel.tongue import Words, wording
from configurator.kernel.views.bare import bare_draft, measured_drawing
from configurator.kernel.views.detail import (
    backset_across,
    handle_depths,
    handle_edge,
    handle_region,
    lettered_handle,
    meets_wall,
)
from configurator.kernel.views.dimensions import (
    EDGE_ROOM,
    FIRST_TIER,
    LETTERS_LIFT,
    TIER,
    Notes,
    blank_notes,
    dim_across,
    dim_upright,
    leader,
    named,
    noted,
    role_with,
    said,
    tick,
    tier,
    told_length,
)
from configurator.kernel.views.draft import Draft, cropped_draft, handle_axis_x, hinge_edge, latch_edge
from configurator.kernel.views.layout import casing_reach, latch_is_right
from configurator.kernel.views.leaf_swing import leaf_swings
from configurator.kernel.views.marks import letters, make_mark, shifted, stroke, text_width
from configurator.kernel.views.plan import covering_top, leaf_top
from configurator.kernel.views.walls import side_wall_shows, turned_break, wall_back, wall_top

# How much of the leaf a measured plan shows beyond the hinge stile and beyond the hinge edge, mm.
GLASS_BESIDE = 60.0
HINGE_BEYOND = 20.0


def step_inward(door: Door) -> float:
    """Return 1 where the leaf runs to the right from its hinges, else -1."""
    return 1.0 if latch_is_right(door) else -1.0


def hinge_region(draft: Draft) -> Box:
    """Return the part of the elevation about the hinge stile."""
    door = draft["door"]
    frame = draft["frame"]
    reach = door["stile_hinge"] + door["bead_width"] + GLASS_BESIDE
    if latch_is_right(door):
        return {"x0": frame["leaf0"] - HINGE_BEYOND, "x1": frame["leaf0"] + reach, "y0": 0.0, "y1": frame["top"]}
    return {"x0": frame["leaf1"] - reach, "x1": frame["leaf1"] + HINGE_BEYOND, "y0": 0.0, "y1": frame["top"]}


def side_wall_note(notes: Notes, draft: Draft, z: float) -> None:
    """Add the side wall's distance from the hinge edge: the wall itself is beyond the drawing."""
    door = draft["door"]
    size = notes["size"]
    hinge = hinge_edge(draft)
    step = step_inward(door)
    role = role_with("dim", "wall_gap")
    words = told_length(notes, wording("side wall at {length}"), door["wall_gap"])
    front = door["reveal"] + door["casing_projection"] + size * 0.4
    away = hinge - step * min(door["casing_width"] + size, door["wall_gap"])
    notes["lines"].append(stroke(role, hinge, front, hinge, z + size * 0.4))
    notes["lines"].append(stroke(role, away, z, hinge + step * (text_width(words, size) + size * 0.6), z))
    tick(notes, hinge, z, "wall_gap")
    at = [hinge + step * size * 0.6, z - size * LETTERS_LIFT]
    anchor = "start" if step > 0 else "end"
    notes["texts"].append(letters(role_with("dim-text", "wall_gap"), at, size, words, anchor))


def hinge_notes(draft: Draft) -> list[Mark]:
    """Return the distances of pin and side wall."""
    door = draft["door"]
    hinge = hinge_edge(draft)
    size = draft["size"]
    notes = blank_notes(size, draft["words"], draft["units"])
    out = door["hinge_pin_out"]
    pin = [hinge, out if door["swing"] == "in" else -door["leaf_thickness"] - out]
    z = door["handle"]["projection"] + size * 2.0
    shelf = [hinge + step_inward(door) * size * 1.6, z]
    leader(notes, pin, shelf, told_length(notes, wording("pin out {length}"), out), "hinge_pin_out")
    side_wall_note(notes, draft, z + size * TIER)
    return noted(notes)


def hinge_part(draft: Draft) -> list[Mark]:
    """Return the plan about the hinges with the pin's and the side wall's distance."""
    door = draft["door"]
    region = hinge_region(draft)
    right = latch_is_right(door)
    marks = leaf_top(cropped_draft(draft, region))
    if door["layout"] != "sidelights":
        marks.extend(wall_top(draft, right))
    for mark in leaf_swings(draft):
        if mark["shape"] == "circle" and mark["points"][0] == hinge_edge(draft):
            marks.append(mark)
    cut = region["x1"] if right else region["x0"]
    marks.append(make_mark("polyline", "hair", turned_break(-door["leaf_thickness"], 0.0, cut, draft["size"])))
    marks.extend(hinge_notes(draft))
    return marks


def latch_part(draft: Draft, region: Box) -> list[Mark]:
    """Return the plan about the latch edge with the measures of handle and backset."""
    door = draft["door"]
    right = latch_is_right(door)
    marks: list[Mark] = []
    if meets_wall(door):
        marks.extend(wall_top(draft, not right))
    part = cropped_draft(draft, region)
    marks.extend(leaf_top(part))
    marks.extend(covering_top(part))
    cut = region["x0"] if right else region["x1"]
    marks.append(make_mark("polyline", "hair", turned_break(-door["leaf_thickness"], 0.0, cut, draft["size"])))
    marks.extend(latch_notes(draft))
    return marks


def latch_notes(draft: Draft) -> list[Mark]:
    """Return the handle's depths and lengths, the backset and, on a pair, the meeting of the leaves."""
    door = draft["door"]
    notes = blank_notes(draft["size"], draft["words"], draft["units"])
    backset_across(notes, draft, wall_back(door))
    handle_depths(notes, draft, wording("front {length}"))
    grip = door["handle"]["grip_length"]
    front = door["handle"]["projection"]
    axis = handle_axis_x(draft)
    on = tier(front + notes["size"] * FIRST_TIER, front)
    label = said(notes, grip, side_of_tip(door), "handle_grip_length")
    dim_across(notes, [axis, axis - step_inward(door) * grip], on, label)
    if has_passive(door):
        meeting_notes(notes, draft)
    return noted(notes)


def side_of_tip(door: Door) -> str:
    """Return on which side of a dimension its words go towards the hinges."""
    return "before" if latch_is_right(door) else "after"


def meeting_notes(notes: Notes, draft: Draft) -> None:
    """Add the gap between the leaves, the astragal's width in front and its depth beside those of the handle."""
    door = draft["door"]
    reach = notes["size"] * (FIRST_TIER + TIER)
    side = side_of_tip(door)
    edge = latch_edge(draft)
    gap = step_inward(door) * door["meeting_gap"]
    back = wall_back(door)
    label = named(notes, "between the leaves {length}", door["meeting_gap"], side, "meeting_gap")
    dim_across(notes, [edge, edge + gap], tier(back - reach, back), label)
    if door["astragal_width"] > 0:
        middle = edge + gap / 2
        half = door["astragal_width"] / 2
        on = tier(door["handle"]["projection"] + reach, door["astragal_projection"])
        label = named(notes, "astragal {length}", door["astragal_width"], side, "astragal_width")
        dim_across(notes, [middle - half, middle + half], on, label)
        label = named(notes, "astragal out {length}", door["astragal_projection"], "above", "astragal_projection")
        end = handle_edge(draft)
        x = end + step_inward(door) * notes["size"] * depth_tiers(door)
        dim_upright(notes, [0.0, door["astragal_projection"]], tier(x, end), label)


def depth_tiers(door: Door) -> float:
    """Return how far beside the leaf its outermost depth is told, in sizes of letters."""
    return FIRST_TIER + TIER * (2.0 if has_passive(door) and door["astragal_width"] > 0 else 1.0)


def wall_reach(draft: Draft) -> float:
    """Return how far the wall beside the hinges is drawn, with a margin."""
    door = draft["door"]
    if side_wall_shows(draft, latch_is_right(door)):
        return door["wall_gap"] + draft["size"] * (EDGE_ROOM + 0.6)
    return door["head_gap"] + casing_reach(door) + draft["size"] * (EDGE_ROOM + 1.0)


def plan_depth(draft: Draft) -> float:
    """Return how far into the room a measured plan reaches."""
    door = draft["door"]
    below = door["handle"]["projection"] + draft["size"] * 10.5
    if side_wall_shows(draft, latch_is_right(door)):
        return max(below, door["reveal"] + draft["frame"]["leaf1"] * 0.35 + draft["size"])
    return below


def measure_plan(door: Door, words: Words, units: str) -> Drawing:
    """Return the plan at the hinges and at the latch, enlarged, with every measure to take there."""
    bare = bare_draft(door, words, units)
    region = handle_region(bare)
    draft = lettered_handle(bare, region)
    size = draft["size"]
    right = latch_is_right(door)
    hinges = hinge_region(draft)
    gap = size * 2.0
    dx = region["x0"] - gap - hinges["x1"] if right else region["x1"] + gap - hinges["x0"]
    view = measured_drawing("measure-plan", draft, wording("hinges, latch edge and handle, in plan"))
    view["marks"].extend(latch_part(draft, region))
    view["marks"].extend(shifted(hinge_part(draft), dx, 0.0))
    wall = wall_reach(draft)
    near = hinges["x0"] + dx - wall if right else hinges["x1"] + dx + wall
    far = handle_edge(draft) + step_inward(door) * size * (depth_tiers(door) + EDGE_ROOM + 1.0)
    view["x"] = min(near, far)
    view["width"] = max(near, far) - view["x"]
    view["y"] = wall_back(door) - size * (FIRST_TIER + TIER * 2 + EDGE_ROOM + 1.0)
    view["height"] = plan_depth(draft) - view["y"]
    return view
