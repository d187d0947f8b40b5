"""Dimension lines: thin, ended by oblique ticks, with witness lines and the words above the line."""

from typing import TypedDict

from configurator.kernel.shapes import Mark
from configurator.kernel.views.marks import letters, make_mark, stroke, text_width

# All in parts of the letter size.
TICK_REACH = 0.3
WITNESS_GAP = 0.35
LINE_OVERSHOOT = 0.35
LETTERS_LIFT = 0.3
# From one dimension line to the next.
TIER = 1.9


class Notes(TypedDict):
    """The annotation of one view, kept apart by kind so that equal lines can be drawn in one go."""

    size: float
    lines: list[Mark]
    ticks: list[Mark]
    texts: list[Mark]


class Span(TypedDict):
    """Where a dimension's line starts and ends, and where its words stand.

    ``beside`` is 0 where they stand within it, -1 before it, 1 after it.
    """

    start: float
    end: float
    words: float
    beside: int


def blank_notes(size: float) -> Notes:
    """Return an empty annotation with letters of the given size."""
    return {"size": size, "lines": [], "ticks": [], "texts": []}


def noted(notes: Notes) -> list[Mark]:
    """Return the annotation's marks: lines first, words on top."""
    result: list[Mark] = []
    result.extend(notes["lines"])
    result.extend(notes["ticks"])
    result.extend(notes["texts"])
    return result


def role_with(base: str, focus: str) -> str:
    """Return the classes of an annotation mark; ``focus`` names the measured field or is empty."""
    if focus == "":
        return base
    return base + " focus-" + focus


def tick(notes: Notes, x: float, y: float, focus: str) -> None:
    """Add the oblique stroke that ends a dimension."""
    reach = notes["size"] * TICK_REACH
    notes["ticks"].append(stroke(role_with("tick", focus), x - reach, y + reach, x + reach, y - reach))


def witness_start(start: float, end: float, gap: float) -> float:
    """Return where a witness line begins: a little off the thing it witnesses."""
    if end < start:
        return start - gap
    return start + gap


def dim_span(start: float, end: float, width: float, size: float, first: bool) -> Span:
    """Return how a dimension lies along its own axis; words too wide for it go before it if ``first``, else after."""
    over = size * LINE_OVERSHOOT
    if width + size * 0.5 <= end - start:
        return {"start": start - over, "end": end + over, "words": (start + end) / 2, "beside": 0}
    if first:
        words = start - size * 0.6
        return {"start": words - width, "end": end + over, "words": words, "beside": -1}
    words = end + size * 0.6
    return {"start": start - over, "end": words + width, "words": words, "beside": 1}


def dim_across(notes: Notes, x0: float, x1: float, y: float, from_y: float, label: str, side: str, focus: str) -> None:
    """Add a level dimension at ``y`` with witness lines from ``from_y``.

    Words that do not fit between the ticks go ``before`` or ``after`` them.
    """
    size = notes["size"]
    role = role_with("dim", focus)
    if from_y != y:
        over = size * LINE_OVERSHOOT
        beyond = y - over if y < from_y else y + over
        start = witness_start(from_y, y, size * WITNESS_GAP)
        notes["lines"].append(stroke(role, x0, start, x0, beyond))
        notes["lines"].append(stroke(role, x1, start, x1, beyond))
    span = dim_span(x0, x1, text_width(label, size), size, side == "before")
    notes["lines"].append(stroke(role, span["start"], y, span["end"], y))
    tick(notes, x0, y, focus)
    tick(notes, x1, y, focus)
    if label != "":
        words = role_with("dim-text", focus)
        anchor = ["end", "middle", "start"][span["beside"] + 1]
        notes["texts"].append(letters(words, span["words"], y - size * LETTERS_LIFT, size, label, anchor, 0.0))


def dim_upright(notes: Notes, y0: float, y1: float, x: float, from_x: float, label: str, side: str, focus: str) -> None:
    """Add an upright dimension at ``x`` from the upper ``y0`` to the lower ``y1`` on the paper.

    The words read from the right; where they do not fit they go ``above`` or ``below``.
    """
    size = notes["size"]
    role = role_with("dim", focus)
    if from_x != x:
        over = size * LINE_OVERSHOOT
        beyond = x - over if x < from_x else x + over
        start = witness_start(from_x, x, size * WITNESS_GAP)
        notes["lines"].append(stroke(role, start, y0, beyond, y0))
        notes["lines"].append(stroke(role, start, y1, beyond, y1))
    span = dim_span(y0, y1, text_width(label, size), size, side == "above")
    notes["lines"].append(stroke(role, x, span["start"], x, span["end"]))
    tick(notes, x, y0, focus)
    tick(notes, x, y1, focus)
    if label != "":
        words = role_with("dim-text", focus)
        anchor = ["start", "middle", "end"][span["beside"] + 1]
        notes["texts"].append(letters(words, x - size * LETTERS_LIFT, span["words"], size, label, anchor, -90.0))


def leader(notes: Notes, x: float, y: float, to_x: float, to_y: float, label: str, focus: str) -> None:
    """Add a note on a shelf, led to the point (x, y) that it speaks of, which is dotted."""
    size = notes["size"]
    role = role_with("dim", focus)
    width = text_width(label, size)
    end = to_x + width if to_x >= x else to_x - width
    notes["lines"].append(make_mark("polyline", role, [x, y, to_x, to_y, end, to_y]))
    notes["ticks"].append(make_mark("circle", role_with("tick", focus), [x, y, size * 0.09]))
    anchor = "start" if to_x >= x else "end"
    words = role_with("dim-text", focus)
    notes["texts"].append(letters(words, to_x, to_y - size * LETTERS_LIFT, size, label, anchor, 0.0))
