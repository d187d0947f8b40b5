"""The elevation of the door alone with every width and height that a site visit takes, each marked with its field."""

from configurator.kernel.door.leaf import lites_across, lites_up
from configurator.kernel.message import message, say_phrase
from configurator.kernel.say import say_length
from configurator.kernel.shapes import Door, Drawing
from configurator.kernel.tongue import Words, wording
from configurator.kernel.views.bare import bare_draft, measured_drawing
from configurator.kernel.views.covering_front import covering_front
from configurator.kernel.views.dimensions import (
    EDGE_ROOM,
    FIRST_TIER,
    LETTERS_LIFT,
    TIER,
    WORDS_ROOM,
    Notes,
    Tier,
    blank_notes,
    dim_across,
    dim_upright,
    noted,
    role_with,
    said,
    tick,
    tier,
)
from configurator.kernel.views.draft import Draft, handle_axis_x, hinge_edge, latch_edge
from configurator.kernel.views.elevation import door_front
from configurator.kernel.views.elevation_notes import handle_cross
from configurator.kernel.views.layout import latch_is_right
from configurator.kernel.views.marks import letters, stroke, upright_letters


def measured_widths(notes: Notes, draft: Draft) -> None:
    """Add the widths below the floor: stiles, beads, glass and, below them, backset, casing and sidelights."""
    door = draft["door"]
    size = notes["size"]
    first = tier(size * FIRST_TIER, 0.0)
    second = tier(first["at"] + size * TIER, first["at"])
    glass = draft["frame"]["glass"]
    right = latch_is_right(door)
    near = glass["x0"] if right else glass["x1"]
    far = glass["x1"] if right else glass["x0"]
    bead = door["bead_width"] if right else -door["bead_width"]
    at_hinge = "before" if right else "after"
    at_latch = "after" if right else "before"
    dim_across(notes, [near, far], first, said(notes, door["glass_width"], "after", "glass_width"))
    label = said(notes, door["stile_hinge"], at_hinge, "stile_hinge")
    dim_across(notes, [hinge_edge(draft), near - bead], first, label)
    label = said(notes, door["stile_latch"], at_latch, "stile_latch")
    dim_across(notes, [latch_edge(draft), far + bead], first, label)
    dim_across(notes, [near, near - bead], second, said(notes, door["bead_width"], at_hinge, "bead_width"))
    label = said(notes, door["backset"], at_latch, "backset")
    dim_across(notes, [latch_edge(draft), handle_axis_x(draft)], second, label)


def measured_surround(notes: Notes, draft: Draft) -> None:
    """Add the casing's width above the head and, where there are sidelights, those of the left one and its glass."""
    door = draft["door"]
    frame = draft["frame"]
    size = notes["size"]
    top = -frame["top"]
    first = top - size * 1.2
    if door["casing_width"] > 0:
        label = said(notes, door["casing_width"], "before", "casing_width")
        dim_across(notes, [frame["out1"] - door["casing_width"], frame["out1"]], tier(first, top), label)
    if door["layout"] != "sidelights":
        return
    x = frame["x0"] + door["head_gap"]
    wide = door["sidelight_width"]
    glass = door["sidelight_glass_width"]
    start = x + (wide - glass) / 2
    dim_across(notes, [x, x + wide], tier(first, top), said(notes, wide, "after", "sidelight_width"))
    second = tier(first - size * TIER, first - size * 1.2)
    dim_across(notes, [start, start + glass], second, said(notes, glass, "after", "sidelight_glass_width"))


def measured_left(notes: Notes, draft: Draft) -> None:
    """Add the heights of glass and rails on the left, and the ceiling's beside them."""
    door = draft["door"]
    glass = draft["frame"]["glass"]
    size = notes["size"]
    start = draft["frame"]["out0"]
    first = tier(start - size * FIRST_TIER, start)
    second = tier(first["at"] - size * TIER, start)
    third = tier(second["at"] - size * TIER, second["at"] - size * 1.2)
    low = glass["y0"] - door["bead_width"]
    high = glass["y1"] + door["bead_width"]
    label = said(notes, door["glass_height"], "below", "glass_height")
    dim_upright(notes, [-glass["y1"], -glass["y0"]], first, label)
    label = said(notes, door["rail_bottom"], "above", "rail_bottom")
    dim_upright(notes, [-low, -door["floor_gap"]], second, label)
    label = said(notes, door["rail_top"], "above", "rail_top")
    dim_upright(notes, [-draft["frame"]["leaf_top"], -high], second, label)
    label = said(notes, door["ceiling_height"], "below", "ceiling_height")
    dim_upright(notes, [-door["ceiling_height"], 0.0], third, label)


def measured_right(notes: Notes, draft: Draft) -> None:
    """Add the heights of handle and hinges on the right, and the gap at the floor."""
    door = draft["door"]
    size = notes["size"]
    right = draft["frame"]["out1"]
    handle = right + size * FIRST_TIER
    label = said(notes, door["handle_height"], "below", "handle_height")
    dim_upright(notes, [-door["handle_height"], 0.0], tier(handle, right), label)
    hinges_running(notes, door, tier(handle + size * TIER, handle))
    label = said(notes, door["floor_gap"], "above", "floor_gap")
    dim_upright(notes, [-door["floor_gap"], 0.0], tier(handle + size * TIER * 2, right), label)


def hinges_running(notes: Notes, door: Door, on: Tier) -> None:
    """Add the hinges' middles as a running dimension up from the floor."""
    size = notes["size"]
    role = role_with("dim", "hinge_heights")
    x = on["at"]
    top = 0.0
    for height in door["hinge_heights"]:
        top = max(top, height)
        notes["lines"].append(stroke(role, on["origin"] + size * 0.35, -height, x + size * 0.35, -height))
        tick(notes, x, -height, "hinge_heights")
        words = say_length(height, notes["words"], notes["units"])
        at = [x - size * LETTERS_LIFT, -height - size * 0.5]
        notes["texts"].append(upright_letters(role_with("dim-text", "hinge_heights"), at, size, words, "start"))
    notes["lines"].append(stroke(role, x, 0.0, x, -top - size * 0.35))
    tick(notes, x, 0.0, "hinge_heights")


def lite_counts(notes: Notes, draft: Draft) -> None:
    """Add how many lites there are across and up."""
    door = draft["door"]
    glass = draft["frame"]["glass"]
    size = notes["size"]
    y = size * (FIRST_TIER + TIER * 2)
    middle = (glass["x0"] + glass["x1"]) / 2
    columns = message("lites: {count} across,", {"count": [door["muntin_columns"], "count"]})
    across = say_phrase(columns, notes["words"], notes["units"])
    rows = message("{count} up", {"count": [door["muntin_rows"], "count"]})
    up = say_phrase(rows, notes["words"], notes["units"])
    role = role_with("dim-text", "muntin_columns")
    notes["texts"].append(letters(role, [middle - size * 0.3, y], size, across, "end"))
    role = role_with("dim-text", "muntin_rows")
    notes["texts"].append(letters(role, [middle + size * 0.3, y], size, up, "start"))


def measured_muntin(notes: Notes, draft: Draft) -> None:
    """Add a muntin's width within the glass: that of an upright one, or else of a level one."""
    door = draft["door"]
    frame = draft["frame"]
    size = notes["size"]
    width = door["muntin_width"]
    columns = lites_across(door)
    rows = lites_up(door)
    if len(columns) > 1:
        right = latch_is_right(door)
        x0 = columns[0][1] if right else frame["leaf1"] - columns[0][1] - width
        first = size * FIRST_TIER
        label = said(notes, width, "after" if right else "before", "muntin_width")
        dim_across(notes, [x0, x0 + width], tier(first + size * TIER, first), label)
    elif len(rows) > 1:
        first = frame["out0"] - size * FIRST_TIER
        label = said(notes, width, "above", "muntin_width")
        dim_upright(notes, [-rows[1][0], -rows[0][1]], tier(first - size * TIER, first), label)


def measure_elevation(door: Door, words: Words, units: str) -> Drawing:
    """Return the elevation of the door with every width and height to measure."""
    draft = bare_draft(door, words, units)
    frame = draft["frame"]
    size = draft["size"]
    notes = blank_notes(size, words, units)
    measured_widths(notes, draft)
    measured_surround(notes, draft)
    measured_left(notes, draft)
    measured_right(notes, draft)
    lite_counts(notes, draft)
    measured_muntin(notes, draft)
    handle_cross(notes, draft)
    view = measured_drawing("measure-elevation", draft, wording("widths and heights"))
    view["marks"].extend(door_front(draft))
    view["marks"].extend(covering_front(draft))
    ceiling = -door["ceiling_height"]
    line = role_with("wall cut", "ceiling_height")
    view["marks"].append(stroke(line, frame["out0"] - size, ceiling, frame["out1"] + size, ceiling))
    view["marks"].extend(noted(notes))
    view["x"] = frame["out0"] - size * (FIRST_TIER + TIER * 2 + 1.0 + EDGE_ROOM)
    view["width"] = frame["out1"] + size * (FIRST_TIER + TIER * 2 + EDGE_ROOM) - view["x"]
    view["y"] = min(ceiling, -frame["leaf_top"] - size * WORDS_ROOM) - size * EDGE_ROOM
    view["height"] = size * (FIRST_TIER + TIER * 2 + EDGE_ROOM) - view["y"]
    return view
