"""Drawings of which only some dimensions are shown, on paper no larger than what is left needs."""

from configurator.kernel.shapes import Drawing, Mark
from configurator.kernel.views.marks import placed_numbers, text_width

# Of the letters: the room round what is drawn, and how far letters go below their base line.
ROOM = 0.8
BELOW = 0.25
BEFORE = {"start": 0.0, "middle": 0.5, "end": 1.0}

Bounds = tuple[float, float, float, float]


def words_bounds(mark: Mark) -> Bounds:
    """Return where words stand that read from the left, or upwards where they are turned."""
    x, y, size = mark["points"]
    width = text_width(mark["text"], size)
    start = width * BEFORE[mark["anchor"]]
    if mark["turn"]:
        return (x - size, y + start - width, x + size * BELOW, y + start)
    return (x - start, y - size, x - start + width, y + size * BELOW)


def bounds(mark: Mark) -> Bounds:
    """Return the least and the greatest x and y of a mark, as x0, y0, x1, y1."""
    points = mark["points"]
    if mark["shape"] == "text":
        return words_bounds(mark)
    if mark["shape"] == "circle":
        x, y, radius = points
        return (x - radius, y - radius, x + radius, y + radius)
    places = points[: placed_numbers(mark)]
    across, down = places[0::2], places[1::2]
    return (min(across), min(down), max(across), max(down))


def trimmed(drawing: Drawing) -> Drawing:
    """Return a drawing with its window close round its marks."""
    every = [bounds(mark) for mark in drawing["marks"]]
    room = ROOM * max((mark["points"][2] for mark in drawing["marks"] if mark["shape"] == "text"), default=0.0)
    left, top = (min(box[at] for box in every) - room for at in (0, 1))
    right, foot = (max(box[at] for box in every) + room for at in (2, 3))
    return {**drawing, "x": left, "y": top, "width": right - left, "height": foot - top}
