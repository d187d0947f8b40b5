"""How marks are made. Paper runs x to the right and y down, in true millimeters."""

import math

from configurator.kernel.shapes import Mark

# Widths of letters in parts of their size, a little wide: no font is at hand here.
LETTER_WIDTH = 0.57
NARROW_WIDTH = 0.29
NARROW_LETTERS = " .,:;/ijltfI'()"


def make_mark(shape: str, role: str, points: list[float]) -> Mark:
    """Return a mark without words that hides what lies under its fill."""
    return {"shape": shape, "role": role, "points": points, "fade": 1.0, "text": "", "anchor": "start", "turn": 0.0}


def faded(shape: str, role: str, points: list[float], fade: float) -> Mark:
    """Return a mark whose fill hides only the given share of what lies under it."""
    return {"shape": shape, "role": role, "points": points, "fade": fade, "text": "", "anchor": "start", "turn": 0.0}


def stroke(role: str, x0: float, y0: float, x1: float, y1: float) -> Mark:
    """Return a straight line."""
    return make_mark("line", role, [x0, y0, x1, y1])


def rectangle(role: str, edges: list[float]) -> Mark:
    """Return a filled rectangle that hides what lies under it; ``edges`` are ``[x0, y0, x1, y1]``."""
    return wash(role, edges, 1.0)


def wash(role: str, edges: list[float], fade: float) -> Mark:
    """Return a filled rectangle that hides only the given share of what lies under it."""
    x0 = edges[0]
    y0 = edges[1]
    x1 = edges[2]
    y1 = edges[3]
    return faded("polygon", role, [x0, y0, x1, y0, x1, y1, x0, y1], fade)


def letters(role: str, at: list[float], size: float, text: str, anchor: str) -> Mark:
    """Return level words standing on the base line at the point ``at``, which ``anchor`` says how they meet."""
    return {
        "shape": "text",
        "role": role,
        "points": [at[0], at[1], size],
        "fade": 1.0,
        "text": text,
        "anchor": anchor,
        "turn": 0.0,
    }


def upright_letters(role: str, at: list[float], size: float, text: str, anchor: str) -> Mark:
    """Return words that read from the right, running up the paper from the point ``at``."""
    words = letters(role, at, size, text, anchor)
    words["turn"] = -90.0
    return words


def text_width(text: str, size: float) -> float:
    """Return about how wide the words run."""
    width = 0.0
    for letter in text:
        width += NARROW_WIDTH if letter in NARROW_LETTERS else LETTER_WIDTH
    return width * size


def placed_numbers(item: Mark) -> int:
    """Return how many of a mark's numbers are places on the paper; what follows are sizes."""
    if item["shape"] == "text" or item["shape"] == "circle":
        return 2
    return 4 if item["shape"] == "bars" else len(item["points"])


def shifted(marks: list[Mark], dx: float, dy: float) -> list[Mark]:
    """Return the marks moved over the paper."""
    result: list[Mark] = []
    for item in marks:
        points = item["points"].copy()
        for i in range(0, placed_numbers(item), 2):
            points[i] += dx
            points[i + 1] += dy
        result.append({**item, "points": points})
    return result


def rounded(edges: list[float]) -> list[float]:
    """Return the outline of a bar with half-round ends along its longer side."""
    x0 = edges[0]
    y0 = edges[1]
    x1 = edges[2]
    y1 = edges[3]
    radius = min(x1 - x0, y1 - y0) / 2
    points: list[float] = []
    for corner in range(4):
        x = x1 - radius if corner % 3 == 0 else x0 + radius
        y = y1 - radius if corner < 2 else y0 + radius
        for step in range(4):
            angle = (corner + step / 3) * math.pi / 2
            points.append(x + radius * math.cos(angle))
            points.append(y + radius * math.sin(angle))
    return points


def bars(role: str, axis: list[float], sizes: list[float], fade: float) -> Mark:
    """Return a row of equal bars without outlines, the first from the start of its axis ``[x0, y0, x1, y1]``.

    ``sizes`` are how far a bar reaches across the axis, how thick it is along it, and how far one is from the next.
    """
    return faded("bars", role, [axis[0], axis[1], axis[2], axis[3], sizes[0], sizes[1], sizes[2]], fade)


def hatching(role: str, edges: list[float], spacing: float) -> list[Mark]:
    """Return 45 degree lines that fill a rectangle, ended at its edges."""
    result: list[Mark] = []
    x0 = edges[0]
    y0 = edges[1]
    width = edges[2] - x0
    height = edges[3] - y0
    offset = spacing / 2
    while offset < width + height:
        start = max(0.0, offset - height)
        end = min(width, offset)
        result.append(stroke(role, x0 + start, y0 + offset - start, x0 + end, y0 + offset - end))
        offset = offset + spacing
    return result
