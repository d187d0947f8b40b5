"""The outline about narrow parts that close up, so that they read as one face: bands, slats and vanes."""

from configurator.kernel.shapes import Mark, Piece
from configurator.kernel.views.marks import rectangle
from configurator.kernel.views.parts import front_bounds

# Parts no further apart than this, mm, close up; those of the other leaf of a pair begin elsewhere.
CLOSED_UP = 1.0


def row_outlines(pieces: list[Piece]) -> list[Mark]:
    """Return the outlines of the faces that parts make up; a part alone makes none."""
    at = 1 if pieces[0]["axis"] == "x" else 0
    faces: list[list[float]] = []
    for piece in sorted(pieces, key=lambda one: front_bounds(one)[at]):
        edges = front_bounds(piece)
        edges.append(piece["count"])
        met = [face for face in faces if max(edges[at] - face[at + 2], abs(edges[1 - at] - face[1 - at])) < CLOSED_UP]
        for face in met:
            face[at + 2] = max(face[at + 2], edges[at + 2])
            face[4] += edges[4]
        if len(met) == 0:
            faces.append(edges)
    return [rectangle("main", face) for face in faces if face[4] > 1]
