"""The plan: cut at the height of the handle, the room at the bottom."""

import math

from configurator.kernel.door.leaf import KNUCKLE, leaf_width
from configurator.kernel.say import say_length
from configurator.kernel.shapes import Answer, Door, Drawing, Family, Household, Mark, Piece, Position, Scene
from configurator.kernel.views.dimensions import Notes, blank_notes, leader, noted
from configurator.kernel.views.elevation import EDGE_ROOM, blank_drawing, elevation_window
from configurator.kernel.views.layout import JAMB, WALL_DEPTH, Layout, is_over_opening, layout
from configurator.kernel.views.marks import hatching, letters, make_mark, rectangle
from configurator.kernel.views.parts import cut_marks, cut_weight, is_gathered
from configurator.kernel.views.roles import material
from configurator.kernel.views.section import STOP_DEPTH, WOOD_SPACING, break_line, cut_door_role, cut_role
from configurator.kernel.views.subject import subject

ARC_STEPS = 24
# How far inside the neck the free gap is pointed at, mm.
GAP_INSET = 8.0
# A leaf that opens less than this, degrees, stands among the words in front of it.
STOPPED_EARLY = 55.0
# A side wall shows when it stands within the room for the elevation's dimensions, in letters.
SIDE_ROOM = 3.4


def top_rect(piece: Piece, role: str) -> Mark:
    """Return a piece's outline as seen from above."""
    return rectangle(role, piece["x0"], piece["z0"], piece["x1"], piece["z1"], 1.0)


def is_cut_level(piece: Piece, y: float) -> bool:
    """Return whether the plan cuts a piece."""
    return piece["y0"] < y and piece["y1"] > y


def top_weight(piece: Piece, size: float) -> str:
    """Return the line weight of a part that the plan cuts."""
    return cut_weight(piece["x1"] - piece["x0"], piece["z1"] - piece["z0"], size)


def wood_top(piece: Piece, size: float) -> list[Mark]:
    """Return a cut piece of a leaf, hatched as wood."""
    marks = [top_rect(piece, "leaf" + top_weight(piece, size))]
    marks.extend(hatching("hair", piece["x0"], piece["z0"], piece["x1"], piece["z1"], size * WOOD_SPACING))
    return marks


def wall_end(door: Door, frame: Layout, left: bool) -> float:
    """Return the x where the wall beside the opening meets a side wall, or else is broken off."""
    side = -1.0 if left else 1.0
    edge = frame["x0"] if left else frame["x1"]
    if side_wall_shows(door, frame, left):
        return edge + side * door["wall_gap"]
    return edge + side * (door["casing_width"] + frame["size"] * 0.9)


def side_wall_shows(door: Door, frame: Layout, left: bool) -> bool:
    """Return whether a wall stands beside the hinges so near that it may stop the leaf, within the drawing."""
    has_hinges = door["layout"] == "pair" or left == (door["hinge_side"] == "left")
    room = frame["size"] * SIDE_ROOM + door["casing_width"]
    return door["swing"] == "in" and has_hinges and door["layout"] != "sidelights" and door["wall_gap"] < room


def wall_top(door: Door, frame: Layout, left: bool) -> list[Mark]:
    """Return the cut wall on one side of the opening, with its frame, stop, casing and a near side wall."""
    side = -1.0 if left else 1.0
    edge = frame["x0"] if left else frame["x1"]
    face = door["reveal"]
    back = min(face - WALL_DEPTH, -door["leaf_thickness"] - STOP_DEPTH)
    end = wall_end(door, frame, left)
    jamb = edge + side * JAMB
    marks = [span_rect("wall", jamb, end, back, face)]
    if side_wall_shows(door, frame, left):
        away = end + side * frame["size"] * 0.6
        low = face + leaf_width(door) * 0.35
        marks.append(span_rect("wall", end, away, back, low))
        marks.append(make_mark("polyline", "cut", [away, back, jamb, back, jamb, face, end, face, end, low]))
        marks.append(make_mark("polyline", "hair", break_line(min(end, away), max(end, away), low, frame["size"])))
    else:
        marks.append(make_mark("polyline", "cut", [end, back, jamb, back, jamb, face, end, face]))
        marks.append(make_mark("polyline", "hair", turned_break(back, face, end, frame["size"])))
    marks.append(span_rect("leaf seen", edge, jamb, back, face))
    if door["swing"] == "out":
        marks.append(span_rect("leaf seen", edge, edge - side * door["stop_lap"], 0.0, STOP_DEPTH))
    else:
        rear = -door["leaf_thickness"]
        marks.append(span_rect("leaf seen", edge, edge - side * STOP_DEPTH, rear - STOP_DEPTH, rear))
    if door["casing_width"] > 0:
        casing = edge + side * door["casing_width"]
        marks.append(span_rect("leaf seen", edge, casing, face, face + door["casing_projection"]))
    return marks


def turned_break(z0: float, z1: float, x: float, size: float) -> list[float]:
    """Return a break line that stands upright at ``x``."""
    level = break_line(z0, z1, x, size)
    points: list[float] = []
    for i in range(0, len(level), 2):
        points.append(level[i + 1])
        points.append(level[i])
    return points


def span_rect(role: str, x0: float, x1: float, z0: float, z1: float) -> Mark:
    """Return a rectangle between two x in either order."""
    return rectangle(role, min(x0, x1), z0, max(x0, x1), z1, 1.0)


def turned_about(x: float, z: float, pin_x: float, pin_z: float, angle: float) -> list[float]:
    """Return a point turned about a pin, x towards z."""
    dx = x - pin_x
    dz = z - pin_z
    return [pin_x + dx * math.cos(angle) - dz * math.sin(angle), pin_z + dx * math.sin(angle) + dz * math.cos(angle)]


def swing_marks(door: Door, hinge: float, latch: float, frame: Layout) -> list[Mark]:
    """Return the arc of a leaf's latch edge as far as it opens, the leaf standing open, and the hinge pin.

    The leaf is shown at a right angle at most, where its clear width is measured; the arc ends with the drawing.
    """
    inward = door["swing"] == "in"
    back = -door["leaf_thickness"]
    pin = door["hinge_pin_out"] if inward else back - door["hinge_pin_out"]
    near = 0.0 if inward else back
    sense = 1.0 if (latch > hinge) == inward else -1.0
    turn = sense * frame["turn"] * math.pi / 180
    stand = sense * min(frame["turn"], 90.0) * math.pi / 180
    arc: list[float] = []
    for i in range(ARC_STEPS + 1):
        point = turned_about(latch, near, hinge, pin, turn * i / ARC_STEPS)
        if point[0] < frame["out0"] - frame["size"] or point[0] > frame["out1"] + frame["size"]:
            break
        arc.extend(point)
    stood: list[float] = []
    for corner in [[hinge, 0.0], [latch, 0.0], [latch, back], [hinge, back]]:
        stood.extend(turned_about(corner[0], corner[1], hinge, pin, stand))
    return [
        make_mark("polyline", "swing", arc),
        make_mark("polygon", "swing", stood),
        make_mark("circle", "hinge seen", [hinge, pin, KNUCKLE]),
    ]


def leaf_swings(scene: Scene, door: Door, frame: Layout) -> list[Mark]:
    """Return the swing of each leaf that opens; the second leaf of a pair hangs on its far side."""
    marks: list[Mark] = []
    spans = scene["leaf_x"]
    for i in range(len(spans)):
        if i > 0 and door["layout"] == "fixed-pair":
            continue
        hung_left = (door["hinge_side"] == "left") == (i == 0)
        hinge = spans[i][0] if hung_left else spans[i][1]
        latch = spans[i][1] if hung_left else spans[i][0]
        marks.extend(swing_marks(door, hinge, latch, frame))
    return marks


def door_top(scene: Scene, door: Door, frame: Layout) -> list[Mark]:
    """Return what does not move: the walls, the leaves and their swing."""
    marks = wall_top(door, frame, True)
    marks.extend(wall_top(door, frame, False))
    marks.extend(leaf_top(scene, door, frame))
    marks.extend(leaf_swings(scene, door, frame))
    return marks


def leaf_top(scene: Scene, door: Door, frame: Layout) -> list[Mark]:
    """Return the leaves, cut and seen below the cut."""
    height = door["handle_height"]
    marks: list[Mark] = []
    for piece in scene["door"]:
        if piece["part"] == "door" and piece["kind"] == "rail" and piece["y1"] <= height:
            marks.append(top_rect(piece, "leaf hair"))
    for piece in scene["door"]:
        if piece["part"] == "door" and piece["kind"] != "hinge" and is_cut_level(piece, height):
            if material(piece) == "leaf":
                marks.extend(wood_top(piece, frame["size"]))
            else:
                marks.append(top_rect(piece, cut_door_role(piece, top_weight(piece, frame["size"]))))
    return marks


def wave_marks(piece: Piece, size: float) -> list[Mark]:
    """Return gathered cloth as a plan cuts it: a wave between its back and its front."""
    wave = max(size * 0.5, piece["z1"] - piece["z0"])
    count = max(2, math.ceil((piece["x1"] - piece["x0"]) / wave)) * 4
    middle = (piece["z0"] + piece["z1"]) / 2
    reach = (piece["z1"] - piece["z0"]) / 2
    points: list[float] = []
    for i in range(count + 1):
        points.append(piece["x0"] + (piece["x1"] - piece["x0"]) * i / count)
        points.append(middle + reach * math.sin(i * math.pi / 2))
    return [make_mark("polyline", "seen", points)]


def from_below(pieces: list[Piece]) -> list[Piece]:
    """Return the pieces from the lowest to the highest."""
    return sorted(pieces, key=lambda piece: piece["y1"])


def covering_top(scene: Scene, door: Door, frame: Layout) -> list[Mark]:
    """Return the covering and the handles: seen below the cut, cut, and what hangs above it dashed."""
    height = door["handle_height"]
    size = frame["size"]
    marks: list[Mark] = []
    above: list[Mark] = []
    for piece in from_below(scene["covering"]):
        if is_cut_level(piece, height):
            if is_gathered(piece):
                marks.extend(wave_marks(piece, size))
            else:
                marks.extend(cut_marks(piece, "y", cut_role(piece, top_weight(piece, size), scene["legs"]), size))
        elif piece["y1"] <= height:
            marks.append(top_rect(piece, material(piece) + " hair"))
        elif piece["kind"] == "headrail" or piece["kind"] == "rod" or piece["kind"] == "frame":
            above.append(top_rect(piece, "hidden"))
    for piece in scene["door"]:
        if piece["part"] == "handle" and piece["y1"] <= height:
            marks.append(top_rect(piece, "handle hair"))
    for piece in scene["door"]:
        if piece["part"] == "handle" and is_cut_level(piece, height):
            marks.append(top_rect(piece, "handle" + top_weight(piece, size)))
    marks.extend(above)
    return marks


def arc_inset(door: Door, z: float) -> float:
    """Return how far the arc of a leaf that swings in has left the latch edge's line at a depth."""
    width = leaf_width(door)
    if door["swing"] == "out":
        return 0.0
    if z >= width:
        return width
    return width - math.sqrt(width * width - z * z)


def past_leaf(door: Door, frame: Layout) -> float:
    """Return how deep a note of the handle must lie to clear a leaf that is stopped early."""
    if frame["turn"] > STOPPED_EARLY:
        return 0.0
    turn = frame["turn"] * math.pi / 180
    width = leaf_width(door)
    start = width - door["backset"] - door["handle"]["neck"] / 2 - GAP_INSET
    return min(start, width * math.cos(turn)) * math.tan(turn) + frame["size"] * 1.4


def handle_note(
    notes: Notes, door: Door, frame: Layout, z: float, rows: int, lift: float, words: str, focus: str
) -> float:
    """Add a note of ``rows`` at depth ``z``, clear of the leaf's arc, and return where it starts.

    It is led to the handle at the depth ``lift``.
    """
    left = door["hinge_side"] == "left"
    inward = -1.0 if left else 1.0
    latch = frame["leaf1"] if left else frame["leaf0"]
    size = notes["size"]
    x = latch + inward * (door["backset"] + door["handle"]["neck"] / 2 + GAP_INSET)
    start = max(abs(x - latch) + size * 0.5, arc_inset(door, z + size * (rows - 1) * 1.2) + size * 0.3)
    shelf = latch + inward * start
    leader(notes, x, lift, shelf, z, words, focus)
    return shelf


def handle_gap_note(notes: Notes, door: Door, frame: Layout, answer: Answer, units: str) -> None:
    """Add the gap behind the handle and what stays free of it, or of the air in front where the covering is there."""
    handle = door["handle"]
    size = notes["size"]
    front = max(handle["projection"], frame["front"])
    free = "handle_gap" in answer["figures"]
    words = "free " + say_length(answer["figures"]["handle_gap"]["value"], units) if free else ""
    if free and is_over_opening(answer):
        handle_note(
            notes, door, frame, max(front + size * 1.4, past_leaf(door, frame)), 1, handle["projection"], words, ""
        )
        return
    z = max(front + size * 2.2, past_leaf(door, frame))
    gap = "gap " + say_length(handle["gap"], units)
    shelf = handle_note(notes, door, frame, z, 2, handle["gap"] / 2, gap, "handle_gap")
    if free:
        anchor = "end" if door["hinge_side"] == "left" else "start"
        notes["texts"].append(letters("dim-text", shelf, z + size * 1.05, size, words, anchor, 0.0))


def plan_notes(door: Door, answer: Answer, frame: Layout, units: str) -> list[Mark]:
    """Return the plan's annotation."""
    notes = blank_notes(frame["size"])
    handle_gap_note(notes, door, frame, answer, units)
    return noted(notes)


def plan_window(door: Door, frame: Layout, view: Drawing) -> Drawing:
    """Set the plan's window; its widths are those of the elevation."""
    size = frame["size"]
    elevation_window(frame, view)
    swing = leaf_width(door) + door["hinge_pin_out"] * 2
    above = max(WALL_DEPTH - door["reveal"], door["leaf_thickness"])
    below = max(door["handle"]["projection"], frame["front"]) + size * 3.6
    if door["swing"] == "in":
        below = max(below, swing)
    else:
        above = max(above, swing + door["leaf_thickness"])
    view["y"] = -above - size * EDGE_ROOM
    view["height"] = below + size * EDGE_ROOM - view["y"]
    return view


def plan_of(scene: Scene, door: Door, answer: Answer, units: str, names: dict[str, str]) -> Drawing:
    """Return the plan; ``names`` gives the words for ``family``, ``door`` and ``place``."""
    frame = layout(scene, door, answer)
    view = plan_window(door, frame, blank_drawing("plan", names, answer, units))
    view["marks"].extend(door_top(scene, door, frame))
    view["marks"].extend(covering_top(scene, door, frame))
    view["marks"].extend(plan_notes(door, answer, frame, units))
    return view


def plan(
    door: Door, family: Family, choices: dict[str, str], place: Position, household: Household, units: str
) -> Drawing:
    """Return the plan of a family with its choices on a door at a position."""
    given = subject(door, family, choices, place, household)
    return plan_of(given["scene"], door, given["answer"], units, given["names"])
