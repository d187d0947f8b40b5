"""The dimensions of a drawing as a reader takes them: each label with the two ticks that it stands by."""

import re
from typing import NamedTuple

from configurator.kernel.shapes import Drawing, Mark
from configurator.kernel.views.dimensions import LETTERS_LIFT

CLOSE = 1e-6
# How far beyond the end of its line a label may start, in letters: the uppermost of a running dimension does.
OVERHANG = 0.2
INCH = 25.4
# Half of the smallest step that a rounded label can tell, mm.
HALF_STEP = {"in": INCH / 16, "mm": 0.05}
LENGTH = re.compile(r"(≈ )?-?(?:(\d+(?:\.\d+)?)(?: |$))?(?:(\d+)/(\d+) )?(in|mm)$")


class Reading(NamedTuple):
    """A label, the length that it tells and how far that may be off, and what the paper shows between its ticks."""

    text: str
    told: float
    slack: float
    drawn: float
    ticks: tuple[float, ...]


class Row(NamedTuple):
    """A label and the positions, along its dimension line, of its own point and of the ticks on that line."""

    label: Mark
    at: float
    ticks: list[float]


def told(text: str) -> tuple[float, float]:
    """Return the length at a label's end, and how far a rounded one may be off."""
    found = LENGTH.search(text)
    assert found, f"{text!r} tells no length"
    rounded, number, upper, lower, unit = found.groups()
    length = float(number or 0) + (int(upper) / int(lower) if upper else 0.0)
    return length * (INCH if unit == "in" else 1.0), HALF_STEP[unit] if rounded else 0.0


def has_role(mark: Mark, role: str) -> bool:
    return role in mark["role"].split()


def is_under(line: Mark, label: Mark, axis: int) -> bool:
    """Return whether a dimension line runs along ``axis`` under a label."""
    points, size = line["points"], label["points"][2]
    across = label["points"][1 - axis] + size * LETTERS_LIFT
    ends = sorted((points[axis], points[axis + 2]))
    level = abs(points[1 - axis] - across) < CLOSE and abs(points[3 - axis] - across) < CLOSE
    return level and ends[0] - size * OVERHANG <= label["points"][axis] <= ends[1] + size * OVERHANG


def rows(drawing: Drawing) -> list[Row]:
    """Return every label that stands on a dimension line."""
    lines = [mark for mark in drawing["marks"] if mark["shape"] == "line" and has_role(mark, "dim")]
    centers = [
        ((mark["points"][0] + mark["points"][2]) / 2, (mark["points"][1] + mark["points"][3]) / 2)
        for mark in drawing["marks"]
        if mark["shape"] == "line" and has_role(mark, "tick")
    ]
    found: list[Row] = []
    for label in (mark for mark in drawing["marks"] if has_role(mark, "dim-text")):
        axis = 1 if label["turn"] else 0
        if any(is_under(line, label, axis) for line in lines):
            across = label["points"][1 - axis] + label["points"][2] * LETTERS_LIFT
            ticks = sorted(center[axis] for center in centers if abs(center[1 - axis] - across) < CLOSE)
            found.append(Row(label, label["points"][axis], ticks))
    return found


def is_running(row: Row) -> bool:
    """Return whether a label is one of a running dimension, all measured from one datum."""
    return has_role(row.label, "focus-hinge_heights")


def pair(row: Row) -> tuple[float, float]:
    """Return the ticks that a label speaks of: those on both its sides, or the nearest two on the side it looks to."""
    low = [tick for tick in row.ticks if tick < row.at]
    high = [tick for tick in row.ticks if tick >= row.at]
    if is_running(row):
        return high[0], high[-1]
    if row.label["anchor"] == "middle":
        return low[-1], high[0]
    # Level words that end at their point stand before the ticks; upright ones, which run up the paper, after them.
    is_before = (row.label["anchor"] == "end") != bool(row.label["turn"])
    near = high if is_before else low[::-1]
    if told(row.label["text"])[0] == 0:
        return near[0], near[1]
    return near[0], next(tick for tick in near if abs(tick - near[0]) > CLOSE)


def readings(found: list[Row]) -> list[Reading]:
    """Return every dimension whose two ends are on the drawing; that of the side wall runs off the paper."""
    result: list[Reading] = []
    for row in found:
        if not has_role(row.label, "focus-wall_gap"):
            ends = pair(row)
            result.append(Reading(row.label["text"], *told(row.label["text"]), abs(ends[1] - ends[0]), ends))
    return result


def untrue(read: list[Reading]) -> list[str]:
    """Return every dimension whose label tells another length than lies between its ticks, in words."""
    return [f"{one.text!r} on {one.drawn} mm" for one in read if abs(one.drawn - one.told) > one.slack + CLOSE]


def unread(drawing: Drawing, found: list[Row], read: list[Reading]) -> int:
    """Return how many ticks no label speaks of, but for the one where the side wall's distance starts."""
    spoken = sum(len(one.ticks) for one in read)
    running = max(0, sum(is_running(row) for row in found) - 1)
    drawn = sum(
        mark["shape"] == "line" and has_role(mark, "tick") and not has_role(mark, "focus-wall_gap")
        for mark in drawing["marks"]
    )
    # The marks of a running dimension share their datum.
    return drawn - (spoken - running)


def read_back(drawing: Drawing) -> list[Reading]:
    """Return every dimension of a drawing.

    :raises AssertionError: where one tells another length than lies between its ticks, or a tick has none
    """
    found = rows(drawing)
    read = readings(found)
    assert untrue(read) == []
    assert unread(drawing, found, read) == 0
    return read
