"""Where words and lines fall on a drawing, as a reader's eye would judge it."""

from itertools import combinations, pairwise
from typing import NamedTuple

from PIL import ImageFont

from configurator.kernel.shapes import Drawing, Mark
from configurator.kernel.views.tones import is_tone

# Letters measured at this size; how much of their height and width must stay free of everything else.
MEASURED = 100
KEPT = 0.06


class Patch(NamedTuple):
    """A rectangle on the paper."""

    x0: float
    y0: float
    x1: float
    y1: float


class Segment(NamedTuple):
    """A straight piece of a line on the paper."""

    x0: float
    y0: float
    x1: float
    y1: float


def patch(mark: Mark) -> Patch:
    """Return the rectangle that a text's letters fill, a little less than its font says."""
    x, y, size = mark["points"]
    left, upper, right, lower = ImageFont.load_default(MEASURED).getbbox(mark["text"], anchor="ls")
    width = (right - left) * size / MEASURED
    start = {"start": 0.0, "middle": -width / 2, "end": -width}[mark["anchor"]]
    inset = size * KEPT
    low, high = lower * size / MEASURED - inset, upper * size / MEASURED + inset
    if mark["turn"] == 0:
        return Patch(x + start + inset, y + high, x + start + width - inset, y + low)
    return Patch(x + high, y - start - width + inset, x + low, y - start - inset)


def segments(mark: Mark) -> list[Segment]:
    """Return the straight pieces of a shape that is drawn with a line."""
    if mark["shape"] in ("text", "circle", "bars") or is_tone(mark["role"]):
        return []
    flat = mark["points"]
    points = [(flat[i], flat[i + 1]) for i in range(0, len(flat), 2)]
    if mark["shape"] == "polygon":
        points.append(points[0])
    return [Segment(*start, *end) for start, end in pairwise(points)]


def meets(area: Patch, line: Segment) -> bool:
    """Return whether a line runs through a rectangle (Liang and Barsky's clipping)."""
    enter, leave = 0.0, 1.0
    dx, dy = line.x1 - line.x0, line.y1 - line.y0
    for step, room in (
        (-dx, line.x0 - area.x0),
        (dx, area.x1 - line.x0),
        (-dy, line.y0 - area.y0),
        (dy, area.y1 - line.y0),
    ):
        if step == 0:
            if room < 0:
                return False
        elif step < 0:
            enter = max(enter, room / step)
        else:
            leave = min(leave, room / step)
    return enter < leave


def overlap(one: Patch, other: Patch) -> bool:
    """Return whether two rectangles share any of the paper."""
    return one.x0 < other.x1 and other.x0 < one.x1 and one.y0 < other.y1 and other.y0 < one.y1


def texts(drawing: Drawing) -> list[Mark]:
    """Return the drawing's words."""
    return [mark for mark in drawing["marks"] if mark["shape"] == "text"]


def clashes(drawing: Drawing) -> list[str]:
    """Return every text that meets another text or a line, in words."""
    areas = [(mark["text"], patch(mark)) for mark in texts(drawing)]
    lines = [(mark["role"], line) for mark in drawing["marks"] for line in segments(mark)]
    found = [f"{a!r} on {b!r}" for (a, one), (b, other) in combinations(areas, 2) if overlap(one, other)]
    for words, area in areas:
        found += [f"{words!r} on a line of {role}" for role, line in lines if meets(area, line)]
    return found


def outside(drawing: Drawing) -> list[str]:
    """Return every mark that the drawing's window cuts off, in words."""
    window = Patch(drawing["x"], drawing["y"], drawing["x"] + drawing["width"], drawing["y"] + drawing["height"])
    found: list[str] = []
    for mark in drawing["marks"]:
        if mark["shape"] == "text":
            areas = [patch(mark)]
        else:
            areas = [Patch(min(s.x0, s.x1), min(s.y0, s.y1), max(s.x0, s.x1), max(s.y0, s.y1)) for s in segments(mark)]
        for area in areas:
            if area.x0 < window.x0 or area.y0 < window.y0 or area.x1 > window.x1 or area.y1 > window.y1:
                found.append(f"{mark['role']} {mark['text']!r} at {area}")
                break
    return found
