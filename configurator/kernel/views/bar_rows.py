"""Equal rectangles in a row as one mark, which is small to send and quick to draw."""

from configurator.kernel.shapes import Mark
from configurator.kernel.views.marks import bars

# Rectangles from so many on are drawn as one row; how far, mm, one may stand off its place in it.
BARS_FROM = 3
BAR_SLACK = 0.01


def is_next(first: list[float], other: list[float], step: list[float]) -> bool:
    """Return whether a rectangle is another one moved by a step."""
    for i in [0, 1, 4, 5]:
        if abs(other[i] - first[i] - step[i % 2]) >= BAR_SLACK:
            return False
    return True


def row_length(marks: list[Mark], start: int) -> int:
    """Return how many rectangles from ``start`` on are alike and evenly spaced along one axis."""
    if start + 1 >= len(marks):
        return 1
    first = marks[start]["points"]
    step = [marks[start + 1]["points"][0] - first[0], marks[start + 1]["points"][1] - first[1]]
    if step[0] != 0 and step[1] != 0:
        return 1
    at = start
    while at + 1 < len(marks) and marks[at + 1]["fade"] == marks[start]["fade"]:
        if not is_next(marks[at]["points"], marks[at + 1]["points"], step):
            break
        at += 1
    return at - start + 1


def barred(marks: list[Mark]) -> list[Mark]:
    """Return light and shade with rectangles that are alike and evenly spaced as rows of bars."""
    result: list[Mark] = []
    at = 0
    while at < len(marks):
        count = row_length(marks, at)
        if count < BARS_FROM:
            result.append(marks[at])
            at += 1
            continue
        result.append(bar_row(marks[at], marks[at + count - 1], count))
        at += count
    return result


def bar_row(one: Mark, last: Mark, count: int) -> Mark:
    """Return so many rectangles, of which the two are the outermost, as one row of bars."""
    first = one["points"]
    other = last["points"]
    wide = first[4] - first[0]
    high = first[5] - first[1]
    upright = other[1] != first[1]
    middle = first[0] + wide / 2 if upright else first[1] + high / 2
    at = 1 if upright else 0
    start = min(first[at], other[at])
    end = max(first[at + 4], other[at + 4])
    thick = high if upright else wide
    axis = [middle, start, middle, end] if upright else [start, middle, end, middle]
    sizes = [wide if upright else high, thick, (end - start - thick) / (count - 1)]
    return bars(one["role"], axis, sizes, one["fade"])
