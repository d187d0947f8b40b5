"""Lengths as people write them, to millimetres and back to words.

The inch is 25.4 mm exactly (NIST SP 811, Appendix B). Fractions are kept exact until the end.
"""

import re
import unicodedata
from fractions import Fraction

MM = {"mm": Fraction(1), "cm": Fraction(10), "m": Fraction(1000), "in": Fraction(254, 10), "ft": Fraction(3048, 10)}

EXPECTED = "a length such as 22 1/2 in, 6'8\" or 571 mm is expected"

NUMBER = r"\d{1,6}[ -]+\d{1,4}/\d{1,4}|\d{1,4}/\d{1,4}|\d{0,6}\.\d{1,9}|\d{1,6}\.?"
INCH = r"(?:inches|inch|in\.?|\")"
FOOT = r"(?:feet|foot|ft\.?|')"
FEET_AND_INCHES = re.compile(rf"(?:({NUMBER}) ?{FOOT}(?:[ -]*(?=[\d.])|$))?(?:({NUMBER}) ?{INCH})?")
METRIC = re.compile(rf"({NUMBER}) ?(mm|cm|m)")
BARE = re.compile(rf"({NUMBER})")
COMMA = re.compile(r"\d+,\d+ ?\D*")

LOOKALIKES = str.maketrans(
    {"″": '"', "”": '"', "“": '"', "′": "'", "’": "'", "‘": "'", "⁄": "/", "−": "-", "\u00a0": " ", "\u202f": " "}
)


def plain(text: str) -> str:
    """Return the text in lower case, with typographic fractions, primes and spaces made plain."""
    spelled = ""
    for sign in text:
        split = unicodedata.decomposition(sign)
        if split.startswith("<fraction>"):
            spelled += " " + "".join(chr(int(code, 16)) for code in split.split()[1:])
        else:
            spelled += sign
    return re.sub(r"\s+", " ", spelled.translate(LOOKALIKES)).strip().lower()


def read_number(text: str) -> Fraction:
    """Return ``22``, ``22.5``, ``1/2``, ``22 1/2`` or ``22-1/2`` as an exact fraction.

    Raises ValueError for a fraction over nothing, or for one of 1 or more behind a whole number.
    """
    if "/" not in text:
        return Fraction(text.rstrip("."))
    *whole, part = re.split(r"[ -]+", text)
    above, below = part.split("/")
    if int(below) == 0 or (whole and int(above) >= int(below)):
        raise ValueError(f"{part} is no fraction that a tape shows; {EXPECTED}")
    return (Fraction(whole[0]) if whole else Fraction(0)) + Fraction(int(above), int(below))


def imperial_mm(feet: str | None, inches: str | None) -> Fraction:
    """Return feet and inches in millimetres; either may be absent."""
    rest = read_number(inches) if inches else Fraction(0)
    if feet and rest >= 12:
        raise ValueError("inches after feet stay below 12; a length such as 6'8\" is expected")
    return (read_number(feet) if feet else Fraction(0)) * MM["ft"] + rest * MM["in"]


def magnitude(text: str) -> Fraction:
    """Return the millimetres of a plain length without its sign."""
    metric = METRIC.fullmatch(text)
    if metric:
        return read_number(metric[1]) * MM[metric[2]]
    imperial = FEET_AND_INCHES.fullmatch(text)
    if imperial and (imperial[1] or imperial[2]):
        return imperial_mm(imperial[1], imperial[2])
    if COMMA.fullmatch(text):
        raise ValueError(f"a decimal point is expected: write {text.replace(',', '.')}")
    raise ValueError(EXPECTED)


def read_length(text: str) -> float:
    """Return a written length in millimetres.

    Takes inches (``22 1/2 in``, ``22.5"``), feet and inches (``6'8"``, ``6 ft 8 1/2 in``) and
    metric (``571 mm``, ``57.1 cm``, ``2.1 m``), with a leading minus where one is wanted.
    Raises ValueError with what to write instead.
    """
    spelled = plain(text)
    if BARE.fullmatch(spelled.lstrip("- ")):
        raise ValueError(f"a length needs its unit: write {spelled} in or {spelled} mm")
    if spelled.startswith("-"):
        return -float(magnitude(spelled[1:].lstrip()))
    return float(magnitude(spelled))


def is_imperial(text: str) -> bool:
    """Return whether a length is written in feet or inches."""
    return METRIC.fullmatch(plain(text).lstrip("- ")) is None


def say_inches(mm: float) -> str:
    """Return millimetres as inches to the nearest sixteenth: ``22 1/2 in``."""
    sixteenths = round(abs(mm) / 25.4 * 16)
    whole, rest = divmod(sixteenths, 16)
    words = f"{whole}" if whole or not rest else ""
    if rest:
        words = f"{words} {Fraction(rest, 16)}".strip()
    return f"{'-' if mm < 0 and sixteenths else ''}{words} in"


def say_mm(mm: float) -> str:
    """Return millimetres to the nearest hundredth, without idle zeros: ``571.5 mm``."""
    return f"{round(mm, 2):.10g} mm"


def say_length(mm: float, imperial: bool) -> str:
    """Return a length in the units in which its writer thinks."""
    return say_inches(mm) if imperial else say_mm(mm)


def say_span(low: float, high: float, imperial: bool) -> str:
    """Return ``between 100 mm and 1500 mm``; in inches the limits are drawn in to whole eighths."""
    if not imperial:
        return f"between {say_mm(low)} and {say_mm(high)}"
    eighth = 25.4 / 8
    inner_low = -(-low // eighth) * eighth
    inner_high = high // eighth * eighth
    return f"between {say_inches(inner_low)} and {say_inches(inner_high)}"
