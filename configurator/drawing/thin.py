"""Outlines with no more corners than show."""

import math


def thinned(points: list[float], slack: float) -> list[float]:
    """Return an outline (flat, mm) without corners that lie no more than ``slack`` off it.

    It is halved at its far corner, and each half as Ramer (1972) has it: the corner farthest off the straight way from
    end to end stays, and so on to either side of it.
    """
    corners = list(zip(points[::2], points[1::2], strict=True))
    if len(corners) <= 3:
        return points
    far = max(range(len(corners)), key=lambda at: math.dist(corners[0], corners[at]))
    kept = (
        {0, far} | kept_between(corners, 0, far, slack) | kept_between([*corners, corners[0]], far, len(corners), slack)
    )
    return [value for at in sorted(kept) if at < len(corners) for value in corners[at]]


def kept_between(corners: list[tuple[float, float]], start: int, end: int, slack: float) -> set[int]:
    """Return which corners stay between two that do."""
    if end - start < 2:
        return set()
    (x0, y0), (x1, y1) = corners[start], corners[end]
    length = math.dist(corners[start], corners[end]) or 1.0

    def off(at: int) -> float:
        return abs((x1 - x0) * (corners[at][1] - y0) - (y1 - y0) * (corners[at][0] - x0)) / length

    widest = max(range(start + 1, end), key=off)
    if off(widest) <= slack:
        return set()
    return {widest} | kept_between(corners, start, widest, slack) | kept_between(corners, widest, end, slack)
