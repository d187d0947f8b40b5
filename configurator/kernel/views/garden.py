"""A quiet garden behind the glass, cut to each lite, so that what a covering hides shows."""

import math
from typing import TypedDict

from configurator.kernel.shapes import Mark, Piece
from configurator.kernel.views.marks import make_mark, rectangle
from configurator.kernel.views.parts import front_bounds


class Skyline(TypedDict):
    """A rolling skyline on the paper: its middle height, how far it swells, how long its waves are, its foot."""

    base: float
    swell: float
    stretch: float
    foot: float


# The far edge of the lawn, about where a standing person's eye puts it, mm above the floor.
HORIZON = 1180.0
HILL: Skyline = {"base": -HORIZON - 75, "swell": 34.0, "stretch": 330.0, "foot": -HORIZON + 20}
HEDGE: Skyline = {"base": -HORIZON - 6, "swell": 10.0, "stretch": 61.0, "foot": -HORIZON + 45}
# [offset from the middle in leaf widths, crown center above the floor, crown radius, foot above the floor]
TREES = [
    [0.2, 1555.0, 205.0, 1075.0],
    [-0.24, 1345.0, 88.0, 1150.0],
    [-0.98, 1500.0, 180.0, 1090.0],
    [-1.22, 1345.0, 88.0, 1150.0],
    [0.86, 1345.0, 88.0, 1150.0],
    [1.2, 1500.0, 180.0, 1090.0],
]
# Stepping stones, near to far: how many, the middle of the nearest above the floor and how far the path goes on, mm;
# each looks smaller than the one before, and lies nearer to it.
STONES = 7
PATH = [330.0, 1133.0]
SMALLER = 0.8
NEARER = 0.85


def clip_half(points: list[float], side: int, limit: float) -> list[float]:
    """Return the polygon's part within the edge of a rectangle at ``limit``: its ``side`` of ``[x0, y0, x1, y1]``."""
    axis = side % 2
    keep = 1.0 if side < 2 else -1.0
    result: list[float] = []
    count = len(points)
    if count == 0:
        return result
    last_x = points[count - 2]
    last_y = points[count - 1]
    last_in = keep * (points[count - 2 + axis] - limit)
    for i in range(0, count, 2):
        x = points[i]
        y = points[i + 1]
        inside = keep * (points[i + axis] - limit)
        if (inside < 0 and last_in > 0) or (inside > 0 and last_in < 0):
            share = last_in / (last_in - inside)
            result.append(last_x + (x - last_x) * share)
            result.append(last_y + (y - last_y) * share)
        if inside >= 0:
            result.append(x)
            result.append(y)
        last_x = x
        last_y = y
        last_in = inside
    return result


def oval(x: float, y: float, across: float, up: float, corners: int) -> list[float]:
    """Return the outline of an ellipse, with ``corners`` corners."""
    points: list[float] = []
    for i in range(corners):
        angle = math.pi * 2 * i / corners
        points.append(x + across * math.cos(angle))
        points.append(y + up * math.sin(angle))
    return points


def crown(x: float, y: float, radius: float) -> list[float]:
    """Return the outline of a tree's crown: round, a little lobed."""
    points: list[float] = []
    for i in range(36):
        angle = math.pi * 2 * i / 36
        reach = radius * (0.95 + 0.04 * math.sin(5 * angle + 0.6))
        points.append(x + reach * 0.86 * math.cos(angle))
        points.append(y + reach * math.sin(angle))
    return points


def ridge(x0: float, x1: float, line: Skyline) -> list[float]:
    """Return a skyline from x0 to x1, closed down to its foot."""
    points: list[float] = [x0, line["foot"]]
    for i in range(17):
        x = x0 + (x1 - x0) * i / 16
        points.append(x)
        phase = x / line["stretch"]
        points.append(line["base"] - line["swell"] * (math.sin(phase) + 0.5 * math.sin(phase * 2.3 + 1.0)))
    points.append(x1)
    points.append(line["foot"])
    return points


def garden_shapes(middle: float, pace: float, x0: float, x1: float) -> list[list[Mark]]:
    """Return the garden in layers from far to near; ``middle`` is the middle of the active glass."""
    far = [make_mark("polygon", "hill", ridge(x0, x1, HILL))]
    hedge = [make_mark("polygon", "tree", ridge(x0, x1, HEDGE))]
    lawn = [make_mark("polygon", "lawn", [x0, -HORIZON + 30, x1, -HORIZON + 30, x1, 100.0, x0, 100.0])]
    stones: list[Mark] = []
    for i in range(STONES):
        up = PATH[0] + PATH[1] * (1 - NEARER**i)
        wide = 130 * SMALLER**i
        drift = middle - 70 + 150 * math.sin(up / 330) * (1 - up / 1500)
        stones.append(make_mark("polygon", "path-stone", oval(drift, -up, wide, wide * 0.22, 20)))
    trunks: list[Mark] = []
    crowns: list[Mark] = []
    for tree in TREES:
        x = middle + tree[0] * pace
        half = tree[2] * 0.045
        foot = -tree[3]
        top = -tree[1]
        trunk = [x - half * 1.6, foot, x - half, top, x + half, top, x + half * 1.6, foot]
        trunks.append(make_mark("polygon", "trunk", trunk))
        crowns.append(make_mark("polygon", "tree", crown(x, top, tree[2])))
    return [far, hedge, lawn, stones, trunks, crowns]


def bounds_of(points: list[float]) -> list[float]:
    """Return the box ``[x0, y0, x1, y1]`` that just holds a polygon."""
    across = [points[i] for i in range(0, len(points), 2)]
    down = [points[i] for i in range(1, len(points), 2)]
    return [min(across), min(down), max(across), max(down)]


def lies_past(box: list[float], side: int, limit: float) -> bool:
    """Return whether any of a box lies past a rectangle's edge at ``limit``: its ``side`` of ``[x0, y0, x1, y1]``."""
    return box[side] < limit if side < 2 else box[side] > limit


def through_glass(shape: Mark, lites: list[Piece]) -> list[Mark]:
    """Return what of a polygon is seen through each of the given pieces of glass."""
    marks: list[Mark] = []
    box = bounds_of(shape["points"])
    for lite in lites:
        edges = front_bounds(lite)
        # Told first by what is quick to see: most of the garden lies apart from a lite, or within most of its edges.
        if box[0] <= edges[2] and box[1] <= edges[3] and box[2] >= edges[0] and box[3] >= edges[1]:
            part = shape["points"]
            for side in [0, 2, 1, 3]:
                if lies_past(box, side, edges[side]):
                    part = clip_half(part, side, edges[side])
            if len(part) > 4:
                marks.append(make_mark("polygon", shape["role"], part))
    return marks


def garden_marks(lites: list[Piece], middle: float, pace: float) -> list[Mark]:
    """Return the garden as seen through the given pieces of glass."""
    marks: list[Mark] = []
    if len(lites) == 0:
        return marks
    x0 = lites[0]["x0"]
    x1 = lites[0]["x1"]
    for lite in lites:
        x0 = min(x0, lite["x0"])
        x1 = max(x1, lite["x1"])
        marks.append(rectangle("sky", front_bounds(lite)))
    for layer in garden_shapes(middle, pace, x0, x1):
        for shape in layer:
            marks.extend(through_glass(shape, lites))
    return marks
