"""The outline about narrow parts that close up, so that they read as one face: bands, slats, vanes and louvers."""

from configurator.kernel.shapes import Mark, Piece
from configurator.kernel.views.blade_form import edge_high, edge_low
from configurator.kernel.views.marks import make_mark

# Parts no further apart than this, mm, close up.
CLOSED_UP = 1.0
# In order of their heights, parts of the two leaves of a pair follow one another by turns.
LEAVES = 2


def goes_on(face: Piece, piece: Piece) -> bool:
    """Return whether a part meets a face and reaches as far across."""
    if edge_low(piece) - edge_high(face) >= CLOSED_UP or piece["axis"] != face["axis"]:
        return False
    if piece["axis"] == "x":
        return abs(piece["x0"] - face["x0"]) < CLOSED_UP and abs(piece["x1"] - face["x1"]) < CLOSED_UP
    return abs(piece["y0"] - face["y0"]) < CLOSED_UP and abs(piece["y1"] - face["y1"]) < CLOSED_UP


def face_for(piece: Piece, faces: list[Piece]) -> int:
    """Return which of the last faces a part meets; -1 for none."""
    for at in range(max(0, len(faces) - LEAVES), len(faces)):
        if goes_on(faces[at], piece):
            return at
    return -1


def closed_faces(pieces: list[Piece]) -> list[Piece]:
    """Return the faces that parts make up where they close up, with how many they are; one alone makes none."""
    faces: list[Piece] = []
    for piece in sorted(pieces, key=edge_low):
        at = face_for(piece, faces)
        if at < 0:
            faces.append(piece)
            continue
        face = faces[at]
        faces[at] = {
            **face,
            "x1": max(face["x1"], piece["x1"]),
            "y1": max(face["y1"], piece["y1"]),
            "count": face["count"] + piece["count"],
        }
    return [face for face in faces if face["count"] > 1]


def row_outlines(pieces: list[Piece]) -> list[Mark]:
    """Return the outlines of the faces that parts make up."""
    marks: list[Mark] = []
    for face in closed_faces(pieces):
        x0 = face["x0"]
        x1 = face["x1"]
        y0 = -face["y1"]
        y1 = -face["y0"]
        marks.append(make_mark("polyline", "main", [x0, y0, x1, y0, x1, y1, x0, y1, x0, y0]))
    return marks
