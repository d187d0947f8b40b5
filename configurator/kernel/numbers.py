"""Small arithmetic that Python and JavaScript must do alike."""

import math

# Slack for steps: 3 x 3.175 must count as three whole steps on both sides.
STEP_SLACK = 1e-9
# Lengths that differ by less are the same on any tape, mm.
SAME_ON_TAPE = 0.06


def clamp(value: float, low: float, high: float) -> float:
    """Return ``value``, held between ``low`` and ``high``."""
    return max(low, min(high, value))


def step_down(value: float, step: float) -> float:
    """Return the largest whole number of ``step`` that is not more than ``value``."""
    return math.floor(value / step + STEP_SLACK) * step


def step_up(value: float, step: float) -> float:
    """Return the smallest whole number of ``step`` that is not less than ``value``."""
    return math.ceil(value / step - STEP_SLACK) * step


def nearest(value: float) -> float:
    """Return the nearest whole number, halves upwards."""
    return math.floor(value + 0.5 + STEP_SLACK)


def overlap(a0: float, a1: float, b0: float, b1: float) -> float:
    """Return the length that two spans share; 0 where they do not meet."""
    # Written out rather than with min and max: this runs for every piece against every part of a door.
    low = a0 if a0 > b0 else b0
    high = a1 if a1 < b1 else b1
    return high - low if high > low else 0.0


def blend(start: float, end: float, share: float) -> float:
    """Return the number a ``share`` of the way from ``start`` to ``end``."""
    return start + (end - start) * share


def about(middle: float, size: float) -> list[float]:
    """Return the span ``[low, high]`` of a size about its middle."""
    return [middle - size / 2, middle + size / 2]


def distinct_between(edges: list[float], start: float, end: float) -> list[float]:
    """Return the distinct numbers between ``start`` and ``end`` in order, both ends included."""
    within = [edge for edge in edges if edge > start and edge < end]
    distinct = [start]
    last = start
    for edge in sorted(within):
        if edge > last:
            distinct.append(edge)
            last = edge
    distinct.append(end)
    return distinct
