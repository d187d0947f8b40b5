"""The plan: cut at the height of the handle, the room at the bottom."""

import math
from typing import TypedDict

from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.shapes import Drawing, Mark, Piece
from configurator.kernel.tongue import wording
from configurator.kernel.views.dimensions import EDGE_ROOM, Notes, blank_notes, leader, noted, told_length
from configurator.kernel.views.draft import Draft, blank_drawing, latch_edge
from configurator.kernel.views.elevation import elevation_window
from configurator.kernel.views.layout import WALL_DEPTH, is_over_opening
from configurator.kernel.views.leaf_swing import arc_inset, leaf_swings
from configurator.kernel.views.marks import hatching, letters, make_mark, rectangle
from configurator.kernel.views.parts import cut_marks, cut_weight, is_gathered, top_bounds
from configurator.kernel.views.roles import material
from configurator.kernel.views.section import WOOD_SPACING, cut_door_role, cut_role
from configurator.kernel.views.walls import wall_top

# Points to a pleat, so that it is seen to curve.
PLEAT_STEPS = 8
# How far inside the neck the free gap is pointed at, mm.
GAP_INSET = 8.0
# A leaf that opens less than this, degrees, stands among the words in front of it.
STOPPED_EARLY = 55.0


class HandleNote(TypedDict):
    """A note at the handle: its words, their field or nothing, how many rows follow on, and two depths in mm.

    The words stand at the depth ``z`` and are led to the handle at the depth ``lift``.
    """

    text: str
    focus: str
    rows: int
    z: float
    lift: float


def top_rect(piece: Piece, role: str) -> Mark:
    """Return a piece's outline as seen from above."""
    return rectangle(role, top_bounds(piece))


def is_cut_level(piece: Piece, y: float) -> bool:
    """Return whether the plan cuts a piece."""
    return piece["y0"] < y and piece["y1"] > y


def top_weight(piece: Piece, size: float) -> str:
    """Return the line weight of a part that the plan cuts."""
    return cut_weight(piece["x1"] - piece["x0"], piece["z1"] - piece["z0"], size)


def wood_top(piece: Piece, size: float) -> list[Mark]:
    """Return a cut piece of a leaf, hatched as wood."""
    marks = [top_rect(piece, "leaf" + top_weight(piece, size))]
    marks.extend(hatching("hair", top_bounds(piece), size * WOOD_SPACING))
    return marks


def door_top(draft: Draft) -> list[Mark]:
    """Return what does not move: the walls, the leaves and their swing."""
    marks = shut_top(draft)
    marks.extend(leaf_swings(draft))
    return marks


def shut_top(draft: Draft) -> list[Mark]:
    """Return the walls and the leaves, without their swing."""
    marks = wall_top(draft, True)
    marks.extend(wall_top(draft, False))
    marks.extend(leaf_top(draft))
    return marks


def leaf_top(draft: Draft) -> list[Mark]:
    """Return the leaves, cut and seen below the cut."""
    height = draft["door"]["handle_height"]
    size = draft["size"]
    pieces = [piece for piece in draft["scene"]["door"] if piece["part"] == "door"]
    marks: list[Mark] = []
    for piece in pieces:
        if piece["kind"] == "rail" and piece["y1"] <= height:
            marks.append(top_rect(piece, "leaf hair"))
    for piece in pieces:
        if piece["kind"] != "hinge" and is_cut_level(piece, height):
            if material(piece) == "leaf":
                marks.extend(wood_top(piece, size))
            else:
                marks.append(top_rect(piece, cut_door_role(piece, top_weight(piece, size))))
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


def pleat_marks(piece: Piece) -> list[Mark]:
    """Return pleated cloth as a plan cuts it: it swings to the room and back once a pleat."""
    points: list[float] = []
    middle = (piece["z0"] + piece["z1"]) / 2
    reach = (piece["z1"] - piece["z0"]) / 2
    count = piece["count"] * PLEAT_STEPS
    for i in range(count + 1):
        points.append(piece["x0"] + (piece["x1"] - piece["x0"]) * i / count)
        points.append(middle - reach * math.cos(i * 2 * math.pi / PLEAT_STEPS))
    return [make_mark("polyline", "seen", points)]


def from_below(pieces: list[Piece]) -> list[Piece]:
    """Return the pieces from the lowest to the highest."""
    return sorted(pieces, key=lambda piece: piece["y1"])


def covering_top(draft: Draft) -> list[Mark]:
    """Return the covering and the handles: seen below the cut, cut, and what hangs above it dashed."""
    height = draft["door"]["handle_height"]
    size = draft["size"]
    marks: list[Mark] = []
    above: list[Mark] = []
    for piece in from_below(draft["scene"]["covering"]):
        if is_cut_level(piece, height):
            if piece["kind"] == "pleat":
                marks.extend(pleat_marks(piece))
            elif is_gathered(piece):
                marks.extend(wave_marks(piece, size))
            else:
                role = cut_role(piece, top_weight(piece, size), draft["scene"]["legs"])
                marks.extend(cut_marks(piece, "y", role, size))
        elif piece["y1"] <= height:
            marks.append(top_rect(piece, material(piece) + " hair"))
        elif piece["kind"] == "headrail" or piece["kind"] == "rod" or piece["kind"] == "frame":
            above.append(top_rect(piece, "hidden"))
    marks.extend(handle_top(draft))
    marks.extend(above)
    return marks


def handle_top(draft: Draft) -> list[Mark]:
    """Return the handles: seen below the cut, and cut."""
    height = draft["door"]["handle_height"]
    pieces = [piece for piece in draft["scene"]["door"] if piece["part"] == "handle"]
    marks: list[Mark] = []
    for piece in pieces:
        if piece["y1"] <= height:
            marks.append(top_rect(piece, "handle hair"))
    for piece in pieces:
        if is_cut_level(piece, height):
            marks.append(top_rect(piece, "handle" + top_weight(piece, draft["size"])))
    return marks


def past_leaf(draft: Draft) -> float:
    """Return how deep a note of the handle must lie to clear a leaf that is stopped early."""
    door = draft["door"]
    if draft["frame"]["turn"] > STOPPED_EARLY:
        return 0.0
    turn = draft["frame"]["turn"] * math.pi / 180
    width = leaf_width(door)
    start = width - door["backset"] - door["handle"]["neck"] / 2 - GAP_INSET
    return min(start, width * math.cos(turn)) * math.tan(turn) + draft["size"] * 1.4


def handle_note(notes: Notes, draft: Draft, note: HandleNote) -> float:
    """Add a note at the handle, clear of the leaf's arc, and return the x where its words start."""
    door = draft["door"]
    left = door["hinge_side"] == "left"
    inward = -1.0 if left else 1.0
    latch = latch_edge(draft)
    size = notes["size"]
    x = latch + inward * (door["backset"] + door["handle"]["neck"] / 2 + GAP_INSET)
    inset = arc_inset(door, note["z"] + size * (note["rows"] - 1) * 1.2)
    shelf = latch + inward * max(abs(x - latch) + size * 0.2, inset + size * 0.3)
    leader(notes, [x, note["lift"]], [shelf, note["z"]], note["text"], note["focus"])
    return shelf


def handle_gap_note(notes: Notes, draft: Draft) -> None:
    """Add the gap behind the handle and what stays free of it, or of the air in front where the covering is there."""
    handle = draft["door"]["handle"]
    figures = draft["answer"]["figures"]
    size = notes["size"]
    front = max(handle["projection"], draft["frame"]["front"])
    free = ""
    if "handle_gap" in figures:
        free = told_length(notes, wording("free {length}"), figures["handle_gap"]["value"])
    if free != "" and is_over_opening(draft["answer"]):
        z = max(front + size * 1.4, past_leaf(draft))
        handle_note(notes, draft, {"text": free, "focus": "", "rows": 1, "z": z, "lift": handle["projection"]})
        return
    z = max(front + size * 2.2, past_leaf(draft))
    gap = told_length(notes, wording("gap {length}"), handle["gap"])
    behind: HandleNote = {"text": gap, "focus": "handle_gap", "rows": 2, "z": z, "lift": handle["gap"] / 2}
    shelf = handle_note(notes, draft, behind)
    if free != "":
        anchor = "end" if draft["door"]["hinge_side"] == "left" else "start"
        notes["texts"].append(letters("dim-text", [shelf, z + size * 1.05], size, free, anchor))


def plan_notes(draft: Draft) -> list[Mark]:
    """Return the plan's annotation."""
    notes = blank_notes(draft["size"], draft["words"], draft["units"])
    handle_gap_note(notes, draft)
    return noted(notes)


def shut_window(draft: Draft, view: Drawing) -> Drawing:
    """Set the window of a plan without the leaves' swing; its widths are those of the elevation."""
    size = draft["size"]
    door = draft["door"]
    elevation_window(draft, view)
    above = max(WALL_DEPTH - door["reveal"], door["leaf_thickness"])
    below = max(door["handle"]["projection"], draft["frame"]["front"]) + size * 3.6
    view["y"] = -above - size * EDGE_ROOM
    view["height"] = below + size * EDGE_ROOM - view["y"]
    return view


def plan_window(draft: Draft, view: Drawing) -> Drawing:
    """Set the plan's window; its widths are those of the elevation."""
    size = draft["size"]
    door = draft["door"]
    shut_window(draft, view)
    swing = leaf_width(door) + door["hinge_pin_out"] * 2
    above = -view["y"] - size * EDGE_ROOM
    below = view["y"] + view["height"] - size * EDGE_ROOM
    if door["swing"] == "in":
        below = max(below, swing)
    else:
        above = max(above, swing + door["leaf_thickness"])
    view["y"] = -above - size * EDGE_ROOM
    view["height"] = below + size * EDGE_ROOM - view["y"]
    return view


def plan_of(draft: Draft) -> Drawing:
    """Return the plan."""
    view = plan_window(draft, blank_drawing("plan", draft))
    view["marks"].extend(door_top(draft))
    view["marks"].extend(covering_top(draft))
    view["marks"].extend(plan_notes(draft))
    return view
