"""Numbers as text that gives the very same number again, in Python and in a browser.

Decimals are a whole number divided by a power of ten, which both sides round alike. Inches
are sixty-fourths. A number that neither holds is spelled as a whole number and how often to
halve it: exact, if less readable.
"""

import math
from typing import TypedDict

from configurator.kernel.numbers import nearest

# An inch in tenths of a millimeter: a tape's fraction times this is exact, and so is rounded once, as the reader does.
TENTHS_IN_INCH = 254
SIXTY_FOURTHS = 64
# One sixty-fourth in millionths.
MILLIONTHS = 15625
PLACES_MOST = 6
# What sums of lengths may be off by, mm.
NOISE = 1e-6
# Above this, whole numbers have gaps.
WHOLE_MOST = 9007199254740992.0
HALVINGS_MOST = 1100


class NumberRead(TypedDict):
    """A number read from text; ``good`` is false where the text is no number."""

    good: bool
    value: float


def spell_number(value: float, units: str) -> str:
    """Return a number's text; a length in inches (``22.625in``) where ``units`` is ``in`` and that is exact."""
    if value < 0:
        return "-" + spell_number(-value, units)
    if value == 0:
        return "0"
    first = spell_inches(value) if units == "in" else ""
    if first != "":
        return first
    for places in range(PLACES_MOST + 1):
        scale = 10.0**places
        count = nearest(value * scale)
        if count < WHOLE_MOST and count / scale == value:
            return pointed(count, places)
    second = spell_inches(value)
    if second != "":
        return second
    return spell_halved(value)


def spell_inches(value: float) -> str:
    """Return a length in inches, or nothing where it is no whole number of sixty-fourths."""
    count = nearest(value / TENTHS_IN_INCH * 10 * SIXTY_FOURTHS)
    if inches_mm(count / SIXTY_FOURTHS) != value or count * MILLIONTHS > WHOLE_MOST:
        return ""
    return pointed(count * MILLIONTHS, PLACES_MOST) + "in"


def spell_sixty_fourths(value: float) -> str:
    """Return a worked-out length in inches, or nothing where it is 0 or no whole number of sixty-fourths.

    Noise is left out of account.
    """
    count = nearest(value / TENTHS_IN_INCH * 10 * SIXTY_FOURTHS)
    if abs(inches_mm(count / SIXTY_FOURTHS) - value) > NOISE or count == 0 or count * MILLIONTHS > WHOLE_MOST:
        return ""
    return pointed(count * MILLIONTHS, PLACES_MOST) + "in"


def inches_mm(inches: float) -> float:
    """Return inches in millimeters."""
    return inches * TENTHS_IN_INCH / 10


def spell_halved(value: float) -> str:
    """Return any positive number as ``<whole number>b<halvings>``."""
    halvings = 0
    while value != math.floor(value):
        value = value * 2
        halvings += 1
    return digits_of(value) + "b" + str(halvings)


def digits_of(count: float) -> str:
    """Return a whole number's digits."""
    return str(int(count))


def pointed(count: float, places: int) -> str:
    """Return ``count`` divided by ten to the ``places`` as a decimal, without trailing zeros."""
    text = digits_of(count)
    while len(text) <= places:
        text = "0" + text
    cut = len(text) - places
    tail = text[cut:]
    while tail.endswith("0"):
        tail = tail[: len(tail) - 1]
    if tail == "":
        return text[:cut]
    return text[:cut] + "." + tail


def no_reading() -> NumberRead:
    """Return that a text is no number."""
    return {"good": False, "value": 0.0}


def read_whole(text: str) -> NumberRead:
    """Return a whole number of at most sixteen digits."""
    if text == "" or len(text) > 16:
        return no_reading()
    value = 0.0
    for letter in text:
        digit = "0123456789".find(letter)
        if digit < 0:
            return no_reading()
        value = value * 10 + digit
    return {"good": value <= WHOLE_MOST, "value": value}


def read_decimal(text: str) -> NumberRead:
    """Return a whole number or a decimal."""
    parts = text.split(".")
    if len(parts) == 1:
        return read_whole(text)
    count = read_whole(parts[0] + parts[1])
    if len(parts) > 2 or parts[0] == "" or parts[1] == "" or not count["good"]:
        return no_reading()
    return {"good": True, "value": count["value"] / 10.0 ** len(parts[1])}


def read_halved(text: str) -> NumberRead:
    """Return a number spelled as a whole number and its halvings."""
    parts = text.split("b")
    count = read_whole(parts[0])
    halvings = read_whole(parts[1])
    if len(parts) > 2 or not count["good"] or not halvings["good"] or halvings["value"] > HALVINGS_MOST:
        return no_reading()
    value = count["value"]
    for _step in range(int(halvings["value"])):
        value = value / 2
    return {"good": True, "value": value}


def read_number(text: str) -> NumberRead:
    """Return the number that :func:`spell_number` spelled."""
    if text.startswith("-"):
        reading = read_unsigned(text[1:])
        return {"good": reading["good"], "value": -reading["value"]}
    return read_unsigned(text)


def read_unsigned(text: str) -> NumberRead:
    """Return a number without a sign."""
    if "b" in text:
        return read_halved(text)
    if text.endswith("in"):
        inches = read_decimal(text[: len(text) - 2])
        return {"good": inches["good"], "value": inches_mm(inches["value"])}
    return read_decimal(text)
