"""The covering as seen from the street at night, the room behind it lit.

Of what hangs before the lit room its view comes through as it is; what it lets through of the light beyond that, it
scatters and so glows with it, as bright as its share of the room's light; the rest is dark. The three shares make up
the whole, so that what hides more of the person also shows less of it here: the rule is the project's own, no source.
"""

import math

from configurator.kernel.glass_shares import shares_within
from configurator.kernel.piece_kinds import is_cloth
from configurator.kernel.shapes import Mark, Piece
from configurator.kernel.views.bar_rows import barred
from configurator.kernel.views.covering_front import as_one_layer, front_rows, is_blade
from configurator.kernel.views.marks import wash
from configurator.kernel.views.parts import front_bounds

DARK = "night-cloth"
LIT = "lamplight"
# Below this share nothing shows.
LEAST = 0.004
# The strip of light that leaks past an edge is no wider than this, mm.
LEAK_MOST = 25.0


def light_reaching(row: list[Piece], nearer: list[Piece]) -> float:
    """Return how much of the room's light reaches the room side of a row through what hangs nearer the room."""
    if len(nearer) == 0:
        return 1.0
    x0 = row[0]["x0"]
    x1 = row[0]["x1"]
    y0 = row[0]["y0"]
    y1 = row[0]["y1"]
    for piece in row:
        x0 = min(x0, piece["x0"])
        x1 = max(x1, piece["x1"])
        y0 = min(y0, piece["y0"])
        y1 = max(y1, piece["y1"])
    return shares_within([[x0, x1]], [[y0, y1]], nearer)["light"]


def on_lites(faces: list[list[float]], lites: list[Piece]) -> list[list[float]]:
    """Return what of faces stands behind each piece of glass."""
    parts: list[list[float]] = []
    for lite in lites:
        area = front_bounds(lite)
        for face in faces:
            part = [max(face[0], area[0]), max(face[1], area[1]), min(face[2], area[2]), min(face[3], area[3])]
            if part[2] > part[0] and part[3] > part[1]:
                parts.append(part)
    return parts


def washes(role: str, parts: list[list[float]], fade: float) -> list[Mark]:
    """Return areas of one strength; nothing where it would not show."""
    if fade < LEAST:
        return []
    return barred([wash(role, part, fade) for part in parts])


def night_row(row: list[Piece], nearer: list[Piece], lites: list[Piece]) -> list[Mark]:
    """Return a row of pieces: its dark, and over it the light that it scatters."""
    view = row[0]["optics"]["view"]
    scattered = max(0.0, row[0]["optics"]["light"] - view)
    glow = scattered * light_reaching(row, nearer) if scattered >= LEAST else 0.0
    # Laid under the glow, so much dark leaves the view its own share of the whole.
    dark = 1 - view / (1 - glow) if glow < 1 else 0.0
    parts = on_lites([front_bounds(piece) for piece in row], lites)
    marks = washes(DARK, parts, dark)
    marks.extend(washes(LIT, parts, glow))
    return marks


def leaks(piece: Piece, glass: list[float]) -> list[list[float]]:
    """Return ``[x0, y0, x1, y1, strength]`` of the light past the edges of cloth that laps the field of a leaf's glass.

    It is as wide as the cloth stands off the leaf, and weaker the further the cloth laps the wood.
    """
    face = front_bounds(piece)
    gap = min(max(0.0, piece["z0"]), LEAK_MOST)
    y0 = max(face[1], glass[1])
    y1 = min(face[3], glass[3])
    x0 = max(face[0], glass[0])
    x1 = min(face[2], glass[2])
    strips: list[list[float]] = []
    if gap <= 0 or x1 <= x0 or y1 <= y0:
        return strips
    if face[0] <= glass[0]:
        strips.append([glass[0], y0, glass[0] + gap, y1, gap / (gap + glass[0] - face[0])])
    if face[2] >= glass[2]:
        strips.append([glass[2] - gap, y0, glass[2], y1, gap / (gap + face[2] - glass[2])])
    if face[3] >= glass[3]:
        strips.append([x0, glass[3] - gap, x1, glass[3], gap / (gap + face[3] - glass[3])])
    return strips


def hindmost(covering: list[Piece]) -> list[Piece]:
    """Return the cloth that hangs nearest the glass."""
    cloth = [piece for piece in covering if is_cloth(piece["kind"]) and piece["kind"] != "roll" and not is_blade(piece)]
    nearest = math.inf
    for piece in cloth:
        nearest = min(nearest, piece["z0"])
    return [piece for piece in cloth if piece["z0"] < nearest + 1e-6]


def leak_marks(covering: list[Piece], fields: list[list[float]], lites: list[Piece]) -> list[Mark]:
    """Return the rim of light about cloth, which even blind cloth has where it stands off the leaf."""
    marks: list[Mark] = []
    for piece in hindmost(covering):
        for glass in fields:
            for strip in leaks(piece, glass):
                marks.extend(washes(LIT, on_lites([strip[:4]], lites), strip[4] * (1 - piece["optics"]["light"])))
    return marks


def night_covering(covering: list[Piece], lites: list[Piece]) -> list[Mark]:
    """Return the covering from the room towards the glass, as far as it is seen through that."""
    rows = as_one_layer(front_rows(covering))
    marks: list[Mark] = []
    nearer: list[Piece] = []
    for i in range(len(rows)):
        row = rows[len(rows) - 1 - i]
        marks.extend(night_row(row, nearer, lites))
        nearer.extend(row)
    return marks
