"""The door alone with every measure that a site visit takes, each marked with the field it belongs to."""

from configurator.kernel.door.leaf import lites_across, lites_up
from configurator.kernel.message import silence
from configurator.kernel.mount.blank import blank_size
from configurator.kernel.position import position
from configurator.kernel.say import say_length, say_value
from configurator.kernel.scene import door_scene, leaf_spans
from configurator.kernel.shapes import Answer, Box, Door, Drawing, Mark, Scene
from configurator.kernel.views.crop import cropped_scene
from configurator.kernel.views.detail import DETAIL_LETTERS, handle_edge, handle_window, meets_wall
from configurator.kernel.views.dimensions import (
    LETTERS_LIFT,
    TIER,
    Notes,
    blank_notes,
    dim_across,
    dim_upright,
    leader,
    noted,
    role_with,
    tick,
)
from configurator.kernel.views.elevation import (
    EDGE_ROOM,
    FIRST_TIER,
    WORDS_ROOM,
    covering_front,
    door_front,
    handle_cross,
)
from configurator.kernel.views.layout import WALL_DEPTH, Layout, latch_is_right, layout
from configurator.kernel.views.marks import letters, make_mark, shifted, stroke, text_width
from configurator.kernel.views.plan import covering_top, leaf_swings, leaf_top, side_wall_shows, turned_break, wall_top
from configurator.kernel.views.section import (
    STOP_DEPTH,
    WALL_ABOVE,
    break_line,
    covering_side,
    door_side,
    wall_side,
)

# How much of the glass a measured section shows below its upper edge, mm.
GLASS_BELOW = 60.0
# How much of the leaf a measured plan shows beyond the hinge stile, mm.
GLASS_BESIDE = 60.0


def bare_answer() -> Answer:
    """Return an answer with nothing in it, for a door without a covering."""
    return {
        "door": "",
        "family": "",
        "choices": {},
        "refusal": silence(),
        "size": blank_size("on-leaf"),
        "figures": {},
        "verdicts": {},
        "cautions": [],
        "legs": [],
        "open": position(0.0, 0.0, 0.0),
        "closed": position(0.0, 0.0, 0.0),
    }


def bare_scene(door: Door) -> Scene:
    """Return the opening without a covering."""
    return {"door": door_scene(door), "covering": [], "leaf_x": leaf_spans(door), "legs": []}


def measured_drawing(name: str, door: Door, words: str) -> Drawing:
    """Return a drawing of measures with its words and nothing on it."""
    return {
        "id": name,
        "title": "What to measure on " + door["name"] + ": " + words,
        "desc": "The door without a covering, with a dimension for each measure to take.",
        "x": 0.0,
        "y": 0.0,
        "width": 0.0,
        "height": 0.0,
        "marks": [],
    }


def span_dim(notes: Notes, a: float, b: float, y: float, from_y: float, words: str, side: str, focus: str) -> None:
    """Add a level dimension between two x in either order."""
    dim_across(notes, min(a, b), max(a, b), y, from_y, words, side, focus)


def measured_widths(notes: Notes, door: Door, frame: Layout, units: str) -> None:
    """Add the widths below the floor: stiles, beads, glass and, below them, backset, casing and sidelights."""
    size = notes["size"]
    first = size * FIRST_TIER
    second = first + size * TIER
    glass = frame["glass"]
    right = latch_is_right(door)
    hinge = frame["leaf0"] if right else frame["leaf1"]
    latch = frame["leaf1"] if right else frame["leaf0"]
    near = glass["x0"] if right else glass["x1"]
    far = glass["x1"] if right else glass["x0"]
    step = 1.0 if right else -1.0
    bead = door["bead_width"]
    span_dim(notes, near, far, first, 0.0, say_length(door["glass_width"], units), "after", "glass_width")
    words = say_length(door["stile_hinge"], units)
    span_dim(notes, hinge, near - step * bead, first, 0.0, words, "before" if right else "after", "stile_hinge")
    words = say_length(door["stile_latch"], units)
    span_dim(notes, latch, far + step * bead, first, 0.0, words, "after" if right else "before", "stile_latch")
    words = say_length(door["bead_width"], units)
    span_dim(notes, near, near - step * bead, second, first, words, "before" if right else "after", "bead_width")
    axis = latch - step * door["backset"]
    words = say_length(door["backset"], units)
    span_dim(notes, latch, axis, second, first, words, "after" if right else "before", "backset")
    if door["casing_width"] > 0:
        words = say_length(door["casing_width"], units)
        top = -frame["top"]
        dim_across(notes, frame["x1"], frame["out1"], top - size * 1.2, top, words, "before", "casing_width")
    if door["layout"] == "sidelights":
        measured_sidelight(notes, door, frame, units)


def measured_sidelight(notes: Notes, door: Door, frame: Layout, units: str) -> None:
    """Add the left sidelight's width and that of its glass, above the head."""
    x = frame["x0"]
    wide = door["sidelight_width"]
    glass = door["sidelight_glass_width"]
    frame_width = (wide - glass) / 2
    top = -frame["top"]
    size = notes["size"]
    first = top - size * 1.2
    dim_across(notes, x, x + wide, first, top, say_length(wide, units), "after", "sidelight_width")
    second = first - size * TIER
    start = first - size * 1.2
    words = say_length(glass, units)
    dim_across(notes, x + frame_width, x + frame_width + glass, second, start, words, "after", "sidelight_glass_width")


def measured_heights(notes: Notes, door: Door, frame: Layout, units: str) -> None:
    """Add the heights: glass and rails on the left with the ceiling beside them, handle and hinges on the right."""
    size = notes["size"]
    glass = frame["glass"]
    start = frame["out0"]
    first = start - size * FIRST_TIER
    bead = door["bead_width"]
    low = glass["y0"] - bead
    high = glass["y1"] + bead
    words = say_length(door["glass_height"], units)
    dim_upright(notes, -glass["y1"], -glass["y0"], first, start, words, "below", "glass_height")
    words = say_length(door["rail_bottom"], units)
    second = first - size * TIER
    dim_upright(notes, -low, -door["floor_gap"], second, start, words, "above", "rail_bottom")
    words = say_length(door["rail_top"], units)
    dim_upright(notes, -frame["leaf_top"], -high, second, start, words, "above", "rail_top")
    words = say_length(door["ceiling_height"], units)
    third = second - size * TIER
    dim_upright(notes, -door["ceiling_height"], 0.0, third, second - size * 1.2, words, "below", "ceiling_height")
    right = frame["out1"]
    handle = right + size * FIRST_TIER
    words = say_length(door["handle_height"], units)
    dim_upright(notes, -door["handle_height"], 0.0, handle, right, words, "below", "handle_height")
    hinges_running(notes, door, handle + size * TIER, handle, units)
    words = say_length(door["floor_gap"], units)
    dim_upright(notes, -door["floor_gap"], 0.0, handle + size * TIER * 2, right, words, "above", "floor_gap")


def hinges_running(notes: Notes, door: Door, x: float, from_x: float, units: str) -> None:
    """Add the hinges' middles as a running dimension up from the floor."""
    size = notes["size"]
    role = role_with("dim", "hinge_heights")
    top = 0.0
    for height in door["hinge_heights"]:
        top = max(top, height)
        notes["lines"].append(stroke(role, from_x + size * 0.35, -height, x + size * 0.35, -height))
        tick(notes, x, -height, "hinge_heights")
        words = say_length(height, units)
        at = x - size * LETTERS_LIFT
        text_role = role_with("dim-text", "hinge_heights")
        notes["texts"].append(letters(text_role, at, -height - size * 0.5, size, words, "start", -90.0))
    notes["lines"].append(stroke(role, x, 0.0, x, -top - size * 0.35))
    tick(notes, x, 0.0, "hinge_heights")


def measured_muntins(notes: Notes, door: Door, frame: Layout, units: str) -> None:
    """Add the count of lites above the casing, and a muntin's width within the glass."""
    size = notes["size"]
    y = size * (FIRST_TIER + TIER * 2)
    middle = (frame["glass"]["x0"] + frame["glass"]["x1"]) / 2
    across = say_value(float(door["muntin_columns"]), "count", units) + " across"
    up = say_value(float(door["muntin_rows"]), "count", units) + " up"
    role = role_with("dim-text", "muntin_columns")
    notes["texts"].append(letters(role, middle - size * 0.3, y, size, "lites: " + across + ",", "end", 0.0))
    role = role_with("dim-text", "muntin_rows")
    notes["texts"].append(letters(role, middle + size * 0.3, y, size, up, "start", 0.0))
    words = say_length(door["muntin_width"], units)
    columns = lites_across(door)
    rows = lites_up(door)
    if len(columns) > 1:
        x0 = columns[0][1]
        side = "after"
        if not latch_is_right(door):
            side = "before"
            x0 = frame["leaf1"] - columns[0][1] - door["muntin_width"]
        first = size * FIRST_TIER
        dim_across(notes, x0, x0 + door["muntin_width"], first + size * TIER, first, words, side, "muntin_width")
    elif len(rows) > 1:
        first = frame["out0"] - size * FIRST_TIER
        dim_upright(notes, -rows[1][0], -rows[0][1], first - size * TIER, first, words, "above", "muntin_width")


def measure_elevation(door: Door, units: str) -> Drawing:
    """Return the elevation of the door with every width and height to measure."""
    scene = bare_scene(door)
    frame = layout(scene, door, bare_answer())
    size = frame["size"]
    notes = blank_notes(size)
    measured_widths(notes, door, frame, units)
    measured_heights(notes, door, frame, units)
    measured_muntins(notes, door, frame, units)
    handle_cross(notes, frame, door)
    view = measured_drawing("measure-elevation", door, "widths and heights")
    view["marks"].extend(door_front(scene, door, frame))
    view["marks"].extend(covering_front(scene, door, frame))
    ceiling = -door["ceiling_height"]
    line = role_with("wall cut", "ceiling_height")
    view["marks"].append(stroke(line, frame["out0"] - size, ceiling, frame["out1"] + size, ceiling))
    view["marks"].extend(noted(notes))
    view["x"] = frame["out0"] - size * (FIRST_TIER + TIER * 2 + 1.0 + EDGE_ROOM)
    view["width"] = frame["out1"] + size * (FIRST_TIER + TIER * 2 + EDGE_ROOM) - view["x"]
    view["y"] = min(ceiling, -frame["leaf_top"] - size * WORDS_ROOM) - size * EDGE_ROOM
    view["height"] = size * (FIRST_TIER + TIER * 2 + EDGE_ROOM) - view["y"]
    return view


def measured_depths(notes: Notes, door: Door, frame: Layout, low: float, units: str) -> None:
    """Add the depths of bead, muntin, glass and leaf below, and those of wall and casing above."""
    size = notes["size"]
    y = -low + size * FIRST_TIER
    words = "bead out " + say_length(door["bead_projection"], units)
    dim_across(notes, 0.0, door["bead_projection"], y, -low, words, "after", "bead_projection")
    if door["muntin_columns"] > 1 or door["muntin_rows"] > 1:
        y = y + size * TIER
        words = "muntin out " + say_length(door["muntin_projection"], units)
        span_dim(notes, 0.0, door["muntin_projection"], y, -low, words, "after", "muntin_projection")
    y = y + size * TIER
    words = "glass back " + say_length(door["glass_recess"], units)
    dim_across(notes, -door["glass_recess"], 0.0, y, -low, words, "after", "glass_recess")
    y = y + size * TIER
    words = "leaf " + say_length(door["leaf_thickness"], units)
    dim_across(notes, -door["leaf_thickness"], 0.0, y, -low, words, "after", "leaf_thickness")
    top = -frame["top"] - size * WALL_ABOVE
    y = top - size * 0.9
    face = door["reveal"]
    words = "casing out " + say_length(door["casing_projection"], units)
    dim_across(notes, face, face + door["casing_projection"], y, top, words, "after", "casing_projection")
    words = "leaf behind the wall " + say_length(face, units)
    dim_across(notes, 0.0, face, y - size * TIER, top, words, "after", "reveal")


def measured_gaps(notes: Notes, door: Door, frame: Layout, front: float, units: str) -> None:
    """Add the gap at the head and, where the leaf opens outwards, how far the stop laps it."""
    size = notes["size"]
    x = front + size * FIRST_TIER
    words = "gap " + say_length(door["head_gap"], units)
    dim_upright(notes, -frame["head"], -frame["leaf_top"], x, front, words, "below", "head_gap")
    if door["stop_lap"] > 0:
        words = "lap " + say_length(door["stop_lap"], units)
        low = door["stop_lap"] - frame["leaf_top"]
        dim_upright(notes, -frame["leaf_top"], low, x + size * TIER, x, words, "below", "stop_lap")


def measure_section(door: Door, units: str) -> Drawing:
    """Return the head of the door's section, enlarged, with every depth to measure."""
    scene = bare_scene(door)
    frame = layout(scene, door, bare_answer())
    low = frame["glass"]["y1"] - GLASS_BELOW
    frame["size"] = (frame["top"] - low) * DETAIL_LETTERS
    frame["front"] = max(door["bead_projection"], door["reveal"] + door["casing_projection"])
    size = frame["size"]
    region: Box = {"x0": frame["leaf0"], "x1": frame["leaf1"], "y0": low, "y1": frame["top"]}
    part = cropped_scene(scene, region)
    notes = blank_notes(size)
    measured_depths(notes, door, frame, low, units)
    measured_gaps(notes, door, frame, frame["front"], units)
    view = measured_drawing("measure-section", door, "depths at the head, in section")
    view["marks"].extend(wall_side(door, frame))
    view["marks"].extend(door_side(part, frame))
    view["marks"].extend(covering_side(part, door, bare_answer(), frame))
    view["marks"].append(make_mark("polyline", "hair", break_line(-door["leaf_thickness"], 0.0, -low, size)))
    view["marks"].extend(noted(notes))
    view["x"] = -max(door["leaf_thickness"] + STOP_DEPTH, WALL_DEPTH - door["reveal"]) - size * EDGE_ROOM
    view["width"] = frame["front"] + size * 15.0 - view["x"]
    view["y"] = -frame["top"] - size * (WALL_ABOVE + TIER * 2 + EDGE_ROOM)
    view["height"] = -low + size * (FIRST_TIER + TIER * 3 + EDGE_ROOM) - view["y"]
    return view


def hinge_window(door: Door, frame: Layout) -> Box:
    """Return the part of the elevation about the hinge stile."""
    reach = door["stile_hinge"] + door["bead_width"] + GLASS_BESIDE
    if latch_is_right(door):
        return {"x0": frame["leaf0"] - 20.0, "x1": frame["leaf0"] + reach, "y0": 0.0, "y1": frame["top"]}
    return {"x0": frame["leaf1"] - reach, "x1": frame["leaf1"] + 20.0, "y0": 0.0, "y1": frame["top"]}


def side_wall_note(notes: Notes, door: Door, hinge: float, step: float, z: float, units: str) -> None:
    """Add the side wall's distance from the hinge edge: the wall itself is beyond the drawing."""
    size = notes["size"]
    role = role_with("dim", "wall_gap")
    words = "side wall at " + say_length(door["wall_gap"], units)
    front = door["reveal"] + door["casing_projection"] + size * 0.4
    away = hinge - step * min(door["casing_width"] + size, door["wall_gap"])
    notes["lines"].append(stroke(role, hinge, front, hinge, z + size * 0.4))
    notes["lines"].append(stroke(role, away, z, hinge + step * (text_width(words, size) + size * 0.6), z))
    tick(notes, hinge, z, "wall_gap")
    anchor = "start" if step > 0 else "end"
    at = hinge + step * size * 0.6
    notes["texts"].append(
        letters(role_with("dim-text", "wall_gap"), at, z - size * LETTERS_LIFT, size, words, anchor, 0.0)
    )


def hinge_part(scene: Scene, door: Door, frame: Layout, units: str) -> list[Mark]:
    """Return the plan about the hinges with the pin's and the side wall's distance."""
    region = hinge_window(door, frame)
    part = cropped_scene(scene, region)
    size = frame["size"]
    right = latch_is_right(door)
    hinge = frame["leaf0"] if right else frame["leaf1"]
    step = 1.0 if right else -1.0
    marks = leaf_top(part, door, frame)
    if door["layout"] != "sidelights":
        marks.extend(wall_top(door, frame, right))
    for mark in leaf_swings(scene, door, frame):
        if mark["shape"] == "circle" and mark["points"][0] == hinge:
            marks.append(mark)
    cut = region["x1"] if right else region["x0"]
    marks.append(make_mark("polyline", "hair", turned_break(-door["leaf_thickness"], 0.0, cut, size)))
    notes = blank_notes(size)
    inward = door["swing"] == "in"
    pin = door["hinge_pin_out"] if inward else -door["leaf_thickness"] - door["hinge_pin_out"]
    z = door["handle"]["projection"] + size * 2.0
    words = "pin out " + say_length(door["hinge_pin_out"], units)
    leader(notes, hinge, pin, hinge + step * size * 1.6, z, words, "hinge_pin_out")
    side_wall_note(notes, door, hinge, step, z + size * TIER, units)
    marks.extend(noted(notes))
    return marks


def latch_notes(notes: Notes, door: Door, frame: Layout, back: float, units: str) -> None:
    """Add the handle's depths and lengths, the backset and, on a pair, the meeting of the leaves."""
    size = notes["size"]
    handle = door["handle"]
    right = latch_is_right(door)
    side = 1.0 if right else -1.0
    edge = frame["leaf1"] if right else frame["leaf0"]
    axis = edge - side * door["backset"]
    y = back - size * FIRST_TIER
    span_dim(notes, axis, edge, y, back, say_length(door["backset"], units), "before", "backset")
    x = handle_edge(door, frame) + side * size * FIRST_TIER
    start = handle_edge(door, frame)
    dim_upright(notes, 0.0, handle["gap"], x, start, "gap " + say_length(handle["gap"], units), "above", "handle_gap")
    x = x + side * size * TIER
    words = "front " + say_length(handle["projection"], units)
    dim_upright(notes, 0.0, handle["projection"], x, start, words, "below", "handle_projection")
    front = handle["projection"]
    y = front + size * FIRST_TIER
    tip = axis - side * handle["grip_length"]
    words = say_length(handle["grip_length"], units)
    span_dim(notes, axis, tip, y, front, words, "before" if right else "after", "handle_grip_length")
    if not meets_wall(door) and door["layout"] != "sidelights":
        y = back - size * (FIRST_TIER + TIER)
        gap = edge + side * door["meeting_gap"]
        words = "between the leaves " + say_length(door["meeting_gap"], units)
        span_dim(notes, edge, gap, y, back, words, "before" if right else "after", "meeting_gap")
        if door["astragal_width"] > 0:
            middle = edge + side * door["meeting_gap"] / 2
            half = door["astragal_width"] / 2
            words = "astragal " + say_length(door["astragal_width"], units)
            y = front + size * (FIRST_TIER + TIER)
            inward = "before" if right else "after"
            start = door["astragal_projection"]
            dim_across(notes, middle - half, middle + half, y, start, words, inward, "astragal_width")


def wall_reach(door: Door, frame: Layout) -> float:
    """Return how far the wall beside the hinges is drawn, with a margin."""
    size = frame["size"]
    if side_wall_shows(door, frame, latch_is_right(door)):
        return door["wall_gap"] + size * (EDGE_ROOM + 0.6)
    return door["casing_width"] + size * (EDGE_ROOM + 1.0)


def measure_plan(door: Door, units: str) -> Drawing:
    """Return the plan at the hinges and at the latch, enlarged, with every measure to take there."""
    scene = bare_scene(door)
    frame = layout(scene, door, bare_answer())
    region = handle_window(door, frame)
    frame["size"] = (region["x1"] - region["x0"]) * DETAIL_LETTERS
    size = frame["size"]
    right = latch_is_right(door)
    back = -max(door["leaf_thickness"] + STOP_DEPTH, WALL_DEPTH - door["reveal"])
    view = measured_drawing("measure-plan", door, "hinges, latch edge and handle, in plan")
    marks = view["marks"]
    if meets_wall(door):
        marks.extend(wall_top(door, frame, not right))
    part = cropped_scene(scene, region)
    marks.extend(leaf_top(part, door, frame))
    marks.extend(covering_top(part, door, frame))
    cut = region["x0"] if right else region["x1"]
    marks.append(make_mark("polyline", "hair", turned_break(-door["leaf_thickness"], 0.0, cut, size)))
    notes = blank_notes(size)
    latch_notes(notes, door, frame, back, units)
    marks.extend(noted(notes))
    hinges = hinge_window(door, frame)
    gap = size * 2.0
    dx = region["x0"] - gap - hinges["x1"] if right else region["x1"] + gap - hinges["x0"]
    marks.extend(shifted(hinge_part(scene, door, frame, units), dx, 0.0))
    wall = wall_reach(door, frame)
    near = hinges["x0"] + dx - wall if right else hinges["x1"] + dx + wall
    far = handle_edge(door, frame) + (1.0 if right else -1.0) * size * (FIRST_TIER + TIER + EDGE_ROOM + 1.0)
    view["x"] = min(near, far)
    view["width"] = max(near, far) - view["x"]
    view["y"] = back - size * (FIRST_TIER + TIER * 2 + EDGE_ROOM + 1.0)
    below = door["handle"]["projection"] + size * 10.5
    if side_wall_shows(door, frame, right):
        below = max(below, door["reveal"] + frame["leaf1"] * 0.35 + size)
    view["height"] = below - view["y"]
    return view
