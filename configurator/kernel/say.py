"""Numbers in words: lengths in inches and fractions or in millimeters, shares, angles, workings.

A length that a tape shows is told exactly as it was given. A value that the written form does not hold
exactly is marked ``≈``: nothing is rounded silently.
"""

from configurator.kernel.numbers import nearest
from configurator.kernel.tongue import Words, in_words, wording

INCH = 25.4
YARD = 36 * INCH
# Parts of an inch: the finest that a tape shows, and those to which a computed length is rounded.
TAPE = 64.0
ROUNDED = 8.0

# Below this the written form and the value are the same length for every purpose.
EXACT = 1e-6


def whole(value: float) -> str:
    """Return a whole number's digits; Python and JavaScript write whole floats differently."""
    return str(int(value))


def decimals(value: float, places: int, words: Words) -> str:
    """Return a number with up to ``places`` decimals, halves rounded away from zero, no trailing zeros."""
    sign = "-" if value < 0 else ""
    scale = 10**places
    units = nearest(abs(value) * scale)
    text = whole(units // scale)
    rest = units % scale
    if rest > 0:
        tail = whole(rest)
        while len(tail) < places:
            tail = "0" + tail
        while tail.endswith("0"):
            tail = tail[: len(tail) - 1]
        text = text + words["decimal"] + tail
    if units == 0:
        sign = ""
    return sign + text


def marked(text: str, value: float, written: float) -> str:
    """Return the text, marked as rounded where it does not hold the value."""
    if abs(value - written) > EXACT:
        return "≈ " + text
    return text


def on_step(value: float, step: float) -> bool:
    """Return whether a value is a whole number of steps."""
    size = abs(value)
    return abs(size - nearest(size / step) * step) <= EXACT


def in_fractions(mm: float, parts: float) -> str:
    """Return a length in inches to the nearest of ``parts`` of an inch, in lowest terms, such as ``22 1/2``."""
    count = nearest(abs(mm) / INCH * parts)
    sign = "-" if mm < 0 and count > 0 else ""
    above = count % parts
    if above == 0:
        return sign + whole(count // parts)
    below = parts
    while above % 2 == 0:
        above = above / 2
        below = below / 2
    before = whole(count // parts) + " " if count > parts else ""
    return sign + before + whole(above) + "/" + whole(below)


def with_unit(number: str, unit: str, words: Words) -> str:
    """Return a number with its unit as a language abbreviates it."""
    return number + " " + in_words(unit, words)


def inches(mm: float, words: Words) -> str:
    """Return a length in inches, such as ``22 15/16 in``: as a tape shows it, or else to the nearest eighth."""
    if on_step(mm, INCH / TAPE):
        return with_unit(in_fractions(mm, TAPE), wording("in"), words)
    return "≈ " + with_unit(in_fractions(mm, ROUNDED), wording("in"), words)


def millimeters(mm: float, words: Words) -> str:
    """Return a length in millimeters with up to three decimals that hold it, or else rounded to one."""
    if on_step(mm, 0.001):
        return decimals(mm, 3, words) + " mm"
    return "≈ " + decimals(mm, 1, words) + " mm"


def say_length(mm: float, words: Words, units: str) -> str:
    """Return a length for readers of ``units``: ``in`` or ``mm``."""
    if units == "in":
        return inches(mm, words)
    return millimeters(mm, words)


def say_both(mm: float, words: Words) -> str:
    """Return a length in both systems, such as ``22 1/2 in (571.5 mm)``, for running text."""
    return inches(mm, words) + " (" + millimeters(mm, words) + ")"


def say_area(mm2: float, words: Words, units: str) -> str:
    """Return an area in square feet or square meters with two decimals."""
    if units == "in":
        return "≈ " + with_unit(decimals(mm2 / (INCH * INCH * 144), 2, words), wording("sq ft"), words)
    return "≈ " + decimals(mm2 / 1000000, 3, words) + " m²"


def in_percent(share: float, places: int, words: Words) -> str:
    """Return a share in per cent with up to ``places`` decimals, its sign where a language has it."""
    return words["percent"].replace("{share}", decimals(share * 100, places, words))


def say_share(share: float, words: Words) -> str:
    """Return a share in per cent with one decimal."""
    return marked(in_percent(share, 1, words), share * 100, nearest(share * 1000) / 10)


def say_run(mm: float, words: Words, units: str) -> str:
    """Return a length of cloth in yards or meters with two decimals."""
    size = YARD if units == "in" else 1000.0
    name = wording("yd") if units == "in" else "m"
    return marked(with_unit(decimals(mm / size, 2, words), name, words), mm / size, nearest(mm / size * 100) / 100)


def say_rate(value: float, unit: str, words: Words, units: str) -> str:
    """Return a mass by area (``kg/mm2``) or by length (``kg/mm``) for readers of ``units``, with three decimals."""
    foot = 12 * INCH if units == "in" else 1000.0
    name = wording("kg/ft") if units == "in" else "kg/m"
    if unit == "kg/mm2":
        foot = foot * foot
        name = wording("kg/sq ft") if units == "in" else "kg/m²"
    said = with_unit(decimals(value * foot, 3, words), name, words)
    return marked(said, value * foot, nearest(value * foot * 1000) / 1000)


def say_value(value: float, unit: str, words: Words, units: str) -> str:
    """Return a value with its unit: see :class:`configurator.kernel.shapes.Quantity`."""
    if unit == "mm":
        return say_length(value, words, units)
    if unit == "mm2":
        return say_area(value, words, units)
    if unit == "run":
        return say_run(value, words, units)
    if unit == "kg/mm2" or unit == "kg/mm":
        return say_rate(value, unit, words, units)
    if unit == "share":
        return say_share(value, words)
    if unit == "deg":
        return marked(decimals(value, 1, words) + "°", abs(value), nearest(abs(value) * 10) / 10)
    if unit == "kg":
        return marked(decimals(value, 1, words) + " kg", abs(value), nearest(abs(value) * 10) / 10)
    return marked(decimals(value, 2, words), abs(value), nearest(abs(value) * 100) / 100)
