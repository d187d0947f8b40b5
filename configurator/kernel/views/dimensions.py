"""Dimension lines: thin, ended by oblique ticks, with witness lines and the words above the line."""

from typing import TypedDict

from configurator.kernel.message import message, say_phrase
from configurator.kernel.say import say_length
from configurator.kernel.shapes import Mark
from configurator.kernel.tongue import Words
from configurator.kernel.views.marks import letters, make_mark, stroke, text_width, upright_letters

# All in parts of the letter size.
TICK_REACH = 0.3
WITNESS_GAP = 0.35
LINE_OVERSHOOT = 0.35
LETTERS_LIFT = 0.3
# The first dimension line's distance, from one line to the next, and room beyond the last.
FIRST_TIER = 1.7
TIER = 1.9
EDGE_ROOM = 0.8
# The longest words that may stand above or below a short dimension.
WORDS_ROOM = 6.2


class Notes(TypedDict):
    """The annotation of one view, kept apart by kind so that equal lines can be drawn in one go.

    ``size`` is that of its letters, mm in the model; lengths are told in ``words`` and ``units``.
    """

    size: float
    words: Words
    units: str
    lines: list[Mark]
    ticks: list[Mark]
    texts: list[Mark]


class Tier(TypedDict):
    """Where dimension lines stand, and from where their witness lines come; no witnesses where both are the same."""

    at: float
    origin: float


class Label(TypedDict):
    """What a dimension says, where the words go, and the measured field that it belongs to, or nothing.

    Words that do not fit between the ticks stand ``before`` or ``after`` those of a level
    dimension, ``above`` or ``below`` those of an upright one.
    """

    text: str
    side: str
    focus: str


class Span(TypedDict):
    """Where a dimension's line starts and ends, and where its words stand.

    ``beside`` is 0 where they stand within it, -1 before it, 1 after it.
    """

    start: float
    end: float
    words: float
    beside: int


def blank_notes(size: float, words: Words, units: str) -> Notes:
    """Return an empty annotation with letters of the given size and lengths in ``units``."""
    return {"size": size, "words": words, "units": units, "lines": [], "ticks": [], "texts": []}


def tier(at: float, origin: float) -> Tier:
    """Return a tier of dimension lines at ``at``, with witness lines from ``origin``."""
    return {"at": at, "origin": origin}


def said(notes: Notes, length: float, side: str, focus: str) -> Label:
    """Return the label that tells a length alone."""
    return {"text": say_length(length, notes["words"], notes["units"]), "side": side, "focus": focus}


def told_length(notes: Notes, text: str, length: float) -> str:
    """Return a sentence that tells a ``{length}``, in the annotation's language and units."""
    return say_phrase(message(text, {"length": [length, "mm"]}), notes["words"], notes["units"])


def named(notes: Notes, name: str, length: float, side: str, focus: str) -> Label:
    """Return the label that tells a length with its name: a sentence such as ``gap {length}``."""
    return {"text": told_length(notes, name, length), "side": side, "focus": focus}


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


def witness_ends(notes: Notes, on: Tier) -> list[float]:
    """Return where a tier's witness lines begin and end; nothing where it needs none."""
    if on["origin"] == on["at"]:
        return []
    over = notes["size"] * LINE_OVERSHOOT
    beyond = on["at"] - over if on["at"] < on["origin"] else on["at"] + over
    return [witness_start(on["origin"], on["at"], notes["size"] * WITNESS_GAP), beyond]


def dim_across(notes: Notes, ends: list[float], on: Tier, label: Label) -> None:
    """Add a level dimension between two x in either order; the tier tells y on the paper."""
    size = notes["size"]
    role = role_with("dim", label["focus"])
    x0 = min(ends[0], ends[1])
    x1 = max(ends[0], ends[1])
    y = on["at"]
    witness = witness_ends(notes, on)
    if len(witness) > 0:
        notes["lines"].append(stroke(role, x0, witness[0], x0, witness[1]))
        notes["lines"].append(stroke(role, x1, witness[0], x1, witness[1]))
    span = dim_span(x0, x1, text_width(label["text"], size), size, label["side"] == "before")
    notes["lines"].append(stroke(role, span["start"], y, span["end"], y))
    tick(notes, x0, y, label["focus"])
    tick(notes, x1, y, label["focus"])
    anchor = ["end", "middle", "start"][span["beside"] + 1]
    at = [span["words"], y - size * LETTERS_LIFT]
    notes["texts"].append(letters(role_with("dim-text", label["focus"]), at, size, label["text"], anchor))


def dim_upright(notes: Notes, ends: list[float], on: Tier, label: Label) -> None:
    """Add an upright dimension between two y on the paper in either order; the tier tells x.

    The words read from the right.
    """
    size = notes["size"]
    role = role_with("dim", label["focus"])
    y0 = min(ends[0], ends[1])
    y1 = max(ends[0], ends[1])
    x = on["at"]
    witness = witness_ends(notes, on)
    if len(witness) > 0:
        notes["lines"].append(stroke(role, witness[0], y0, witness[1], y0))
        notes["lines"].append(stroke(role, witness[0], y1, witness[1], y1))
    span = dim_span(y0, y1, text_width(label["text"], size), size, label["side"] == "above")
    notes["lines"].append(stroke(role, x, span["start"], x, span["end"]))
    tick(notes, x, y0, label["focus"])
    tick(notes, x, y1, label["focus"])
    anchor = ["start", "middle", "end"][span["beside"] + 1]
    at = [x - size * LETTERS_LIFT, span["words"]]
    notes["texts"].append(upright_letters(role_with("dim-text", label["focus"]), at, size, label["text"], anchor))


def leader(notes: Notes, point: list[float], shelf: list[float], text: str, focus: str) -> None:
    """Add a note on a shelf, led to the point that it speaks of, which is dotted."""
    size = notes["size"]
    role = role_with("dim", focus)
    width = text_width(text, size)
    onward = shelf[0] >= point[0]
    end = shelf[0] + width if onward else shelf[0] - width
    notes["lines"].append(make_mark("polyline", role, [point[0], point[1], shelf[0], shelf[1], end, shelf[1]]))
    notes["ticks"].append(make_mark("circle", role_with("tick", focus), [point[0], point[1], size * 0.09]))
    at = [shelf[0], shelf[1] - size * LETTERS_LIFT]
    notes["texts"].append(letters(role_with("dim-text", focus), at, size, text, "start" if onward else "end"))
