"""The elevation: door and covering as seen from the room."""

from configurator.kernel.shapes import Door, Drawing, Mark, Piece
from configurator.kernel.views.dimensions import EDGE_ROOM, FIRST_TIER, TIER, WORDS_ROOM
from configurator.kernel.views.draft import Draft, blank_drawing
from configurator.kernel.views.elevation_notes import elevation_notes, notes_base
from configurator.kernel.views.garden import garden_marks
from configurator.kernel.views.layout import casing_reach
from configurator.kernel.views.marks import make_mark, rectangle, rounded, stroke, wash
from configurator.kernel.views.parts import front_bounds, front_lines
from configurator.kernel.views.roles import held, hides, material


def front_rect(piece: Piece, role: str) -> Mark:
    """Return a piece's face."""
    return rectangle(role, front_bounds(piece))


def handle_front(door: Door, piece: Piece) -> Mark:
    """Return a part of the handle as seen from the room: knobs and roses round, levers rounded."""
    width = piece["x1"] - piece["x0"]
    height = piece["y1"] - piece["y0"]
    square = abs(width - height) < 0.5
    round_grip = piece["kind"] == "grip" and door["handle"]["kind"] == "knob"
    if round_grip or (square and (piece["kind"] == "plate" or piece["kind"] == "thumb-turn")):
        center_x = (piece["x0"] + piece["x1"]) / 2
        center_y = -(piece["y0"] + piece["y1"]) / 2
        return make_mark("circle", "handle seen", [center_x, center_y, width / 2])
    if piece["kind"] == "grip":
        return make_mark("polygon", "handle seen", rounded(front_bounds(piece)))
    return front_rect(piece, "handle seen")


def by_front(pieces: list[Piece]) -> list[Piece]:
    """Return the pieces from the glass towards the room, as a painter lays them down."""
    return sorted(pieces, key=lambda piece: piece["z1"])


def casing_front(draft: Draft) -> list[Mark]:
    """Return the casing with its mitres, and the opening within it."""
    frame = draft["frame"]
    marks: list[Mark] = []
    casing = casing_reach(draft["door"])
    if casing > 0:
        x0 = frame["x0"] - casing
        x1 = frame["x1"] + casing
        top = -frame["head"] - casing
        marks.append(rectangle("wall seen", [x0, top, x1, 0.0]))
        marks.append(stroke("hair", x0, top, frame["x0"], -frame["head"]))
        marks.append(stroke("hair", x1, top, frame["x1"], -frame["head"]))
    marks.append(rectangle("wall hair", [frame["x0"], -frame["head"], frame["x1"], 0.0]))
    return marks


def door_front(draft: Draft) -> list[Mark]:
    """Return what does not move: casing, leaves, and the garden through the glass."""
    frame = draft["frame"]
    pieces = draft["scene"]["door"]
    marks = casing_front(draft)
    lites: list[Piece] = []
    for piece in pieces:
        if piece["kind"] == "stile" or piece["kind"] == "rail":
            marks.append(front_rect(piece, "leaf seen"))
        if piece["kind"] == "glass":
            lites.append(piece)
    marks.extend(garden_marks(lites, (frame["glass"]["x0"] + frame["glass"]["x1"]) / 2, frame["leaf1"]))
    for lite in lites:
        marks.append(wash("glass hair", front_bounds(lite), 0.0))
    for kind in ["bead", "muntin", "astragal", "hinge"]:
        for piece in pieces:
            # The hinge of a leaf that opens outwards is behind it.
            if piece["kind"] == kind and piece["z1"] > -draft["door"]["leaf_thickness"]:
                marks.append(front_rect(piece, material(piece) + " hair"))
    marks.extend(stop_front(draft))
    size = draft["size"]
    marks.append(stroke("floor cut", frame["out0"] - size, 0.0, frame["out1"] + size, 0.0))
    return marks


def stop_front(draft: Draft) -> list[Mark]:
    """Return the stops that lap the room face of a leaf which opens outwards."""
    lap = draft["door"]["stop_lap"]
    if lap <= 0:
        return []
    frame = draft["frame"]
    gap = draft["door"]["head_gap"]
    x0 = frame["x0"]
    x1 = frame["x1"]
    top = -frame["head"]
    low = -frame["leaf_top"] + lap
    return [
        rectangle("wall hair", [x0, top, x0 + gap + lap, 0.0]),
        rectangle("wall hair", [x1 - gap - lap, top, x1, 0.0]),
        rectangle("wall hair", [x0, top, x1, low]),
    ]


def is_blade(piece: Piece) -> bool:
    """Return whether a piece is one of many narrow ones, which heavier outlines would turn black."""
    return piece["kind"] == "louver" or piece["kind"] == "slat" or piece["kind"] == "vane"


def covering_front(draft: Draft) -> list[Mark]:
    """Return the covering and the handles, those nearer the room in front of the others."""
    pieces: list[Piece] = []
    pieces.extend(draft["scene"]["covering"])
    for piece in draft["scene"]["door"]:
        if piece["part"] == "handle" and piece["kind"] != "neck":
            pieces.append(piece)
    marks: list[Mark] = []
    for piece in by_front(pieces):
        if piece["part"] == "handle":
            marks.append(handle_front(draft["door"], piece))
        else:
            weight = " hair" if is_blade(piece) else " seen"
            role = material(piece) + weight + held(piece, draft["scene"]["legs"])
            marks.append(wash(role, front_bounds(piece), hides(piece)))
            marks.extend(front_lines(piece, draft["size"]))
    return marks


def top_edge(draft: Draft) -> float:
    """Return the upper edge of elevation and section, y up: above casing, covering and their words."""
    size = draft["size"]
    frame = draft["frame"]
    return max(frame["top"] + size * (EDGE_ROOM + TIER) + draft["room"], frame["order"]["y1"] + size * WORDS_ROOM)


def elevation_window(draft: Draft, view: Drawing) -> Drawing:
    """Set the drawing's window: the opening with room for its annotation, the same at every position."""
    size = draft["size"]
    view["x"] = draft["frame"]["out0"] - size * (FIRST_TIER + TIER + 1.0 + EDGE_ROOM)
    view["width"] = draft["frame"]["out1"] + size * (FIRST_TIER + TIER + EDGE_ROOM) - view["x"]
    view["y"] = -top_edge(draft)
    view["height"] = notes_base(draft) + size * (FIRST_TIER + TIER * 2 + EDGE_ROOM) - view["y"]
    return view


def elevation_of(draft: Draft) -> Drawing:
    """Return the elevation."""
    view = elevation_window(draft, blank_drawing("elevation", draft))
    view["marks"].extend(door_front(draft))
    view["marks"].extend(covering_front(draft))
    view["marks"].extend(elevation_notes(draft))
    return view
