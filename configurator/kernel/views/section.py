"""The vertical section: cut through the middle of the active leaf's glass, the room on the right."""

from configurator.kernel.say import say_length
from configurator.kernel.shapes import Answer, Door, Drawing, Family, Household, Leg, Mark, Piece, Position, Scene
from configurator.kernel.views.dimensions import TIER, Notes, blank_notes, dim_across, dim_upright, noted
from configurator.kernel.views.elevation import (
    EDGE_ROOM,
    FIRST_TIER,
    WORDS_ROOM,
    blank_drawing,
    drop_words,
    is_on_the_way,
    top_edge,
)
from configurator.kernel.views.layout import JAMB, WALL_DEPTH, Layout, active_covering, extent, layout
from configurator.kernel.views.marks import hatching, letters, make_mark, rectangle, stroke
from configurator.kernel.views.parts import cut_marks, cut_weight
from configurator.kernel.views.roles import held, material
from configurator.kernel.views.subject import subject

# Hatching of cut wood, in parts of the letter size.
WOOD_SPACING = 0.34
STOP_DEPTH = 12.0
# How much of the wall shows above the casing, and how far above it the projection stands, in letters.
WALL_ABOVE = 0.5
PROJECTION_ABOVE = 0.9


def side_rect(piece: Piece, role: str) -> Mark:
    """Return a piece's outline as seen along the wall."""
    return rectangle(role, piece["z0"], -piece["y1"], piece["z1"], -piece["y0"], 1.0)


def is_cut_at(piece: Piece, x: float) -> bool:
    """Return whether the vertical section passes through a piece."""
    return piece["x0"] < x and piece["x1"] > x


def from_afar(pieces: list[Piece]) -> list[Piece]:
    """Return the pieces from the farthest to the nearest, looking along x."""
    return sorted(pieces, key=lambda piece: -piece["x0"])


def wood_side(piece: Piece, size: float) -> list[Mark]:
    """Return a cut piece of the leaf, hatched as wood."""
    marks = [side_rect(piece, "leaf" + side_weight(piece, size))]
    spacing = size * WOOD_SPACING
    marks.extend(hatching("hair", piece["z0"], -piece["y1"], piece["z1"], -piece["y0"], spacing))
    return marks


def side_weight(piece: Piece, size: float) -> str:
    """Return the line weight of a part that the section cuts."""
    return cut_weight(piece["z1"] - piece["z0"], piece["y1"] - piece["y0"], size)


def wall_side(door: Door, frame: Layout) -> list[Mark]:
    """Return the cut wall over the head with its frame, stop and casing."""
    face = door["reveal"]
    back = min(face - WALL_DEPTH, -door["leaf_thickness"] - STOP_DEPTH)
    head = -frame["head"]
    break_off = -frame["top"] - frame["size"] * WALL_ABOVE
    casing = head - door["casing_width"]
    soffit = head - JAMB
    marks = [rectangle("wall", back, break_off, face, soffit, 1.0)]
    marks.append(make_mark("polyline", "cut", [back, break_off, back, soffit, face, soffit, face, break_off]))
    marks.append(make_mark("polyline", "hair", break_line(back, face, break_off, frame["size"])))
    marks.append(rectangle("leaf seen", back, soffit, face, head, 1.0))
    if door["swing"] == "out":
        marks.append(rectangle("leaf seen", 0.0, head, STOP_DEPTH, -frame["leaf_top"] + door["stop_lap"], 1.0))
    else:
        rear = -door["leaf_thickness"]
        marks.append(rectangle("leaf seen", rear - STOP_DEPTH, head, rear, -frame["leaf_top"] + STOP_DEPTH, 1.0))
    if door["casing_width"] > 0:
        marks.append(rectangle("leaf seen", face, casing, face + door["casing_projection"], head, 1.0))
    return marks


def wall_break(frame: Layout) -> float:
    """Return the height at which the wall over the head is broken off."""
    return frame["top"] + frame["size"] * WALL_ABOVE


def floor_side(door: Door, frame: Layout) -> list[Mark]:
    """Return the cut floor."""
    back = min(door["reveal"] - WALL_DEPTH, -door["leaf_thickness"] - STOP_DEPTH)
    front = max(door["reveal"] + door["casing_projection"], frame["front"])
    reach = frame["size"] * 0.6
    marks: list[Mark] = []
    marks.append(rectangle("floor", back - reach, 0.0, front + reach, reach * 0.8, 1.0))
    marks.append(stroke("floor cut", back - reach, 0.0, front + reach, 0.0))
    return marks


def break_line(x0: float, x1: float, y: float, size: float) -> list[float]:
    """Return the line that tells that something goes on: straight with a zigzag in the middle."""
    over = size * 0.35
    middle = (x0 + x1) / 2
    kink = size * 0.3
    return [
        x0 - over,
        y,
        middle - kink / 2,
        y,
        middle - kink / 4,
        y - kink,
        middle + kink / 4,
        y + kink,
        middle + kink / 2,
        y,
        x1 + over,
        y,
    ]


def door_side(scene: Scene, frame: Layout) -> list[Mark]:
    """Return the leaf, seen beyond the cut and cut."""
    marks: list[Mark] = []
    beyond: list[Piece] = []
    cut: list[Piece] = []
    for piece in scene["door"]:
        if piece["part"] == "door" and piece["x0"] < frame["leaf1"] and piece["x1"] > frame["leaf0"]:
            if is_cut_at(piece, frame["cut"]):
                cut.append(piece)
            elif piece["x0"] >= frame["cut"]:
                beyond.append(piece)
    for piece in from_afar(beyond):
        if piece["kind"] != "glass" and piece["kind"] != "rail":
            marks.append(side_rect(piece, material(piece) + " hair"))
    for piece in cut:
        if piece["kind"] == "rail":
            marks.extend(wood_side(piece, frame["size"]))
        else:
            marks.append(side_rect(piece, cut_door_role(piece, side_weight(piece, frame["size"]))))
    return marks


def cut_door_role(piece: Piece, weight: str) -> str:
    """Return the classes of a cut part of the door: glass is thin, its two lines must not run together."""
    return "glass hair" if piece["kind"] == "glass" else material(piece) + weight


def handle_side(scene: Scene, frame: Layout, role: str) -> list[Mark]:
    """Return the active leaf's handle as seen along the wall."""
    marks: list[Mark] = []
    for piece in scene["door"]:
        if piece["part"] == "handle" and piece["x0"] < frame["leaf1"] and piece["x1"] > frame["leaf0"]:
            marks.append(side_rect(piece, role))
    return marks


def handle_is_beyond(door: Door) -> bool:
    """Return whether the handle lies on the side of the cut that the section looks at."""
    return door["hinge_side"] == "left"


def cut_role(piece: Piece, weight: str, legs: list[Leg]) -> str:
    """Return the classes of a covering's cut part: runs of cloth in a finer line than the rest."""
    fine = piece["count"] > 1 or piece["kind"] == "vane" or piece["kind"] == "sheer"
    return material(piece) + (" seen" if fine else weight) + held(piece, legs)


def covering_side(scene: Scene, door: Door, answer: Answer, frame: Layout) -> list[Mark]:
    """Return the covering cut and seen beyond the cut, and the handle."""
    size = frame["size"]
    marks: list[Mark] = []
    beyond: list[Piece] = []
    cut: list[Piece] = []
    for piece in active_covering(scene, answer):
        if is_cut_at(piece, frame["cut"]):
            cut.append(piece)
        elif piece["x0"] >= frame["cut"]:
            beyond.append(piece)
    for piece in from_afar(beyond):
        marks.append(side_rect(piece, material(piece) + " hair"))
    if handle_is_beyond(door):
        marks.extend(handle_side(scene, frame, "handle seen"))
    for piece in cut:
        marks.extend(cut_marks(piece, "x", cut_role(piece, side_weight(piece, size), scene["legs"]), size))
    if not handle_is_beyond(door):
        marks.extend(handle_side(scene, frame, "handle hidden"))
    return marks


def side_projection(notes: Notes, scene: Scene, answer: Answer, units: str, level: float) -> None:
    """Add how far the covering stands off the leaf's face, at its greatest here, above the height ``level``."""
    front = 0.0
    for piece in active_covering(scene, answer):
        front = max(front, piece["z1"])
    if front <= 0:
        return
    top = -level
    y = top - notes["size"] * PROJECTION_ABOVE
    dim_across(notes, 0.0, front, y, top, say_length(front, units), "after", "")


def section_notes(scene: Scene, door: Door, answer: Answer, frame: Layout, units: str, alone: bool) -> list[Mark]:
    """Return the section's annotation; heights are left to the elevation unless it stands ``alone``."""
    notes = blank_notes(frame["size"])
    size = notes["size"]
    side_projection(notes, scene, answer, units, wall_break(frame))
    covering = extent(active_covering(scene, answer))
    drop = covering["y1"] - covering["y0"]
    front = max(frame["front"], door["reveal"] + door["casing_projection"])
    x = front + size * TIER
    if alone and is_on_the_way(answer, frame, drop):
        words = drop_words(answer, drop, units)
        dim_upright(notes, -covering["y1"], -covering["y0"], x, front, words, "below", "")
    y = size * FIRST_TIER
    notes["texts"].append(letters("label", -door["leaf_thickness"], y, size, "outside", "end", 0.0))
    notes["texts"].append(letters("label", size * 0.4, y, size, "room", "start", 0.0))
    return noted(notes)


def section_window(door: Door, frame: Layout, view: Drawing) -> Drawing:
    """Set the section's window; its heights are those of the elevation."""
    size = frame["size"]
    left = min(door["reveal"] - WALL_DEPTH, -door["leaf_thickness"] - size * 3.6)
    view["x"] = left - size * EDGE_ROOM
    view["width"] = max(frame["front"], door["reveal"] + door["casing_projection"]) + size * WORDS_ROOM - view["x"]
    view["y"] = -top_edge(frame)
    view["height"] = size * (FIRST_TIER + EDGE_ROOM) - view["y"]
    return view


def section_still(scene: Scene, door: Door, frame: Layout) -> list[Mark]:
    """Return what does not move: wall, floor and leaf."""
    marks = wall_side(door, frame)
    marks.extend(floor_side(door, frame))
    marks.extend(door_side(scene, frame))
    return marks


def section_of(scene: Scene, door: Door, answer: Answer, units: str, names: dict[str, str]) -> Drawing:
    """Return the vertical section; ``names`` gives the words for ``family``, ``door`` and ``place``."""
    frame = layout(scene, door, answer)
    view = section_window(door, frame, blank_drawing("section", names, answer, units))
    view["marks"].extend(section_still(scene, door, frame))
    view["marks"].extend(covering_side(scene, door, answer, frame))
    view["marks"].extend(section_notes(scene, door, answer, frame, units, True))
    return view


def section(
    door: Door, family: Family, choices: dict[str, str], place: Position, household: Household, units: str
) -> Drawing:
    """Return the vertical section of a family with its choices on a door at a position."""
    given = subject(door, family, choices, place, household)
    return section_of(given["scene"], door, given["answer"], units, given["names"])
