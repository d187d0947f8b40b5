"""Runs of equal parts: how many of their lines a drawing can show, and where they fall."""

import math

from configurator.kernel.shapes import Mark, Piece
from configurator.kernel.views.marks import make_mark, rectangle, stroke

# Lines closer than this, in parts of the letter size, would run together into a blot.
LINES_APART = 0.16
# Those on a face stand further apart, so that it keeps its color.
SEEN_APART = 0.32
# Units closer than this, in parts of the letter size, are stacked.
STACKED_BELOW = 0.4
# Parts narrower than this, in parts of the letter size, would fill up with a heavy outline.
HEAVY_FROM = 0.6
# Thinner than this, mm, a part is a sheet that the cut shows as one heavy line.
SHEET = 2.0
# Cloth deeper than this, mm, hangs in gathers.
GATHER_DEPTH = 6.0


def front_bounds(piece: Piece) -> list[float]:
    """Return a piece's face on the paper, ``[x0, y0, x1, y1]``."""
    return [piece["x0"], -piece["y1"], piece["x1"], -piece["y0"]]


def side_bounds(piece: Piece) -> list[float]:
    """Return a piece's outline as seen along the wall."""
    return [piece["z0"], -piece["y1"], piece["z1"], -piece["y0"]]


def top_bounds(piece: Piece) -> list[float]:
    """Return a piece's outline as seen from above."""
    return [piece["x0"], piece["z0"], piece["x1"], piece["z1"]]


def cut_bounds(piece: Piece, axis: str) -> list[float]:
    """Return a piece's box as a section (axis x) or a plan (axis y) shows it."""
    return side_bounds(piece) if axis == "x" else top_bounds(piece)


def is_gathered(piece: Piece) -> bool:
    """Return whether a piece is cloth that hangs in gathers."""
    cloth = piece["kind"] == "fabric" or piece["kind"] == "ruffle"
    return cloth and len(piece["outline"]) == 0 and piece["z1"] - piece["z0"] > GATHER_DEPTH


def cut_weight(across: float, up: float, size: float) -> str:
    """Return the line weight, with a leading space, for a cut part of the given size."""
    thin = min(across, up)
    if thin >= SHEET and thin < size * HEAVY_FROM:
        return " seen"
    return " cut"


def shown_every(piece: Piece, size: float) -> int:
    """Return how many of a run's units one drawn unit stands for, so that lines keep apart."""
    if piece["count"] <= 1 or piece["pitch"] <= 0:
        return 1
    return max(1, math.ceil(size * LINES_APART / piece["pitch"]))


def unit_edges(piece: Piece, size: float) -> list[float]:
    """Return the inner edges of a run's drawn units, as distances from its low or left end."""
    every = shown_every(piece, size)
    edges: list[float] = []
    unit = every
    while unit < piece["count"]:
        edges.append(unit * piece["pitch"])
        unit = unit + every
    return edges


def cut_marks(piece: Piece, axis: str, role: str, size: float) -> list[Mark]:
    """Return a piece as a section (axis x) or a plan (axis y) cuts it: its outline, repeated, or its box."""
    if piece["axis"] != axis or len(piece["outline"]) == 0:
        return [rectangle(role, cut_bounds(piece, axis))]
    if shown_every(piece, size) > 1:
        return blurred_run(piece, axis, role, size)
    if piece["count"] > 1 and piece["pitch"] < size * STACKED_BELOW:
        return stacked_run(piece, axis, role)
    return unit_cuts(piece, axis, role)


def unit_cuts(piece: Piece, axis: str, role: str) -> list[Mark]:
    """Return the outline of every unit of a run on the paper: of a section (z, y), of a plan (x, z)."""
    marks: list[Mark] = []
    for unit in range(piece["count"]):
        along = unit * piece["pitch"]
        points: list[float] = []
        for point in piece["outline"]:
            points.append(point[0] if axis == "x" else point[0] + along)
            points.append(-point[1] - along if axis == "x" else point[1])
        marks.append(make_mark("polygon", role, points))
    return marks


def stacked_run(piece: Piece, axis: str, role: str) -> list[Mark]:
    """Return a run pressed together: one body, its units in fine lines, so that it is neither a comb nor black."""
    marks = [rectangle(role, cut_bounds(piece, axis))]
    marks.extend(unit_cuts(piece, axis, role.replace(" seen", " crease")))
    return marks


def blurred_run(piece: Piece, axis: str, role: str, size: float) -> list[Mark]:
    """Return a run too tight to draw unit by unit as its outer box with lines as close as can be told apart."""
    marks = [rectangle(role, cut_bounds(piece, axis))]
    z0 = piece["z0"]
    z1 = piece["z1"]
    for edge in unit_edges(piece, size):
        if axis == "x":
            y = -piece["y0"] - edge
            marks.append(stroke("crease", z0, y, z1, y))
        else:
            marks.append(stroke("crease", piece["x0"] + edge, z0, piece["x0"] + edge, z1))
    return marks


def front_lines(piece: Piece, size: float) -> list[Mark]:
    """Return the lines that tell a run's units apart in an elevation."""
    marks: list[Mark] = []
    for edge in unit_edges(piece, size * SEEN_APART / LINES_APART):
        if piece["axis"] == "x":
            y = -piece["y0"] - edge
            marks.append(stroke("crease", piece["x0"], y, piece["x1"], y))
        else:
            x = piece["x0"] + edge
            marks.append(stroke("crease", x, -piece["y1"], x, -piece["y0"]))
    return marks
