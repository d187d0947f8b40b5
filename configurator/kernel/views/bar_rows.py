"""Equal rectangles in a row as one mark, which is small to send and quick to draw."""

from configurator.kernel.shapes import Mark
from configurator.kernel.views.marks import bars
from configurator.kernel.views.tones import GLOW

# Rectangles from so many on are drawn as one row; how far, mm, one may stand off its place in it.
BARS_FROM = 3
BAR_SLACK = 0.01


def is_next(first: list[float], other: list[float], step: list[float]) -> bool:
    """Return whether a rectangle is another one moved by a step."""
    for i in [0, 1, 4, 5]:
        if abs(other[i] - first[i] - step[i % 2]) >= BAR_SLACK:
            return False
    return True


def barred(marks: list[Mark]) -> list[Mark]:
    """Return light and shade with rectangles that are alike and evenly spaced along one axis as rows of bars."""
    result: list[Mark] = []
    at = 0
    while at < len(marks):
        one = marks[at]
        last = one
        count = 1
        step = [0.0, 0.0]
        while at + count < len(marks) and marks[at + count]["fade"] == one["fade"]:
            other = marks[at + count]
            if count == 1:
                step = [other["points"][0] - one["points"][0], other["points"][1] - one["points"][1]]
            if (step[0] != 0 and step[1] != 0) or not is_next(last["points"], other["points"], step):
                break
            last = other
            count += 1
        if count < BARS_FROM:
            result.append(one)
            at += 1
        else:
            result.append(bar_row(one, last, count))
            at += count
    return result


def bar_row(one: Mark, last: Mark, count: int) -> Mark:
    """Return so many rectangles, of which the two are the outermost, as one row of bars.

    Where parts lap, hardly any light comes through both: they shine where each has its face to itself.
    """
    first = one["points"]
    other = last["points"]
    at = 1 if other[1] != first[1] else 0
    start = min(first[at], other[at])
    end = max(first[at + 4], other[at + 4])
    across = first[5 - at] - first[1 - at]
    thick = first[at + 4] - first[at]
    step = (end - start - thick) / (count - 1)
    lap = max(0.0, thick - step) if one["role"] == GLOW else 0.0
    middle = first[1 - at] + across / 2
    axis = [middle, start + lap, middle, end - lap] if at == 1 else [start + lap, middle, end - lap, middle]
    return bars(one["role"], axis, [across, thick - lap * 2, step], one["fade"])
