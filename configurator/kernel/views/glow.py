"""Daylight that shines through cloth where glass is behind it."""

from configurator.kernel.shapes import Mark, Piece, Scene
from configurator.kernel.views.marks import wash
from configurator.kernel.views.parts import front_bounds
from configurator.kernel.views.tones import GLOW

# How bright cloth stands that lets all light through, and below which share of it nothing shows.
GLOW_MOST = 0.8
GLOW_LEAST = 0.015
# Two lites no further apart than this, mm, belong to one leaf.
FIELD_GAP = 60.0


def glass_areas(door: list[Piece], whole: bool) -> list[list[float]]:
    """Return the lites of each leaf on the paper, or of each leaf the ``whole`` field that they make up."""
    areas: list[list[float]] = []
    for piece in door:
        if piece["kind"] == "glass":
            edges = front_bounds(piece)
            last = areas[len(areas) - 1] if len(areas) > 0 else edges
            # The lites of a leaf follow each other, no further apart than a muntin.
            if not whole or len(areas) == 0 or abs(last[0] - edges[0]) >= last[2] - last[0] + FIELD_GAP:
                areas.append(edges)
                last = edges
            for at in range(2):
                last[at] = min(last[at], edges[at])
                last[at + 2] = max(last[at + 2], edges[at + 2])
    return areas


def light_behind(piece: Piece, covering: list[Piece]) -> float:
    """Return how much light reaches the back of a piece through what hangs behind it, each for its share."""
    light = 1.0
    face = front_bounds(piece)
    for other in covering:
        over = front_bounds(other)
        wide = min(face[2], over[2]) - max(face[0], over[0])
        high = min(face[3], over[3]) - max(face[1], over[1])
        if wide > 0 and high > 0 and other["z1"] <= piece["z0"] + 1e-6:
            share = wide * high / ((face[2] - face[0]) * (face[3] - face[1]))
            light = light * (1 - share * (1 - other["optics"]["light"]))
    return light


def glow_marks(row: list[Piece], scene: Scene) -> list[Mark]:
    """Return what shines through pieces of one row: each of their faces where it stands before glass."""
    marks: list[Mark] = []
    areas = glass_areas(scene["door"], len(row) > 1)
    behind = light_behind(row[0], scene["covering"]) if len(row) == 1 else 1.0
    for piece in row:
        light = piece["optics"]["light"] * behind
        if light < GLOW_LEAST:
            continue
        face = front_bounds(piece)
        for area in areas:
            part = [max(face[0], area[0]), max(face[1], area[1]), min(face[2], area[2]), min(face[3], area[3])]
            if part[2] > part[0] and part[3] > part[1]:
                marks.append(wash(GLOW, part, GLOW_MOST * light))
    return marks
