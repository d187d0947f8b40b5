"""A showroom's example visits as scripts, as short as may be: a browser fetches one when it is opened."""

import json

from configurator.browser.link.packed_text import PACKED_DIGITS, PACKED_SIGN
from configurator.kernel.visit.visit_shapes import Visit

BASE = len(PACKED_DIGITS)
# What comes again is told in four letters.
SHORTEST = 5
# How far back and how much at a time.
FARTHEST = BASE * BASE - 1
LONGEST = BASE - 1


def example_js(visit: Visit) -> str:
    """Return the script of an example, which sets ``Astragal.example``."""
    return f"Astragal.example='{packed_text(plain_json(visit))}';\n"


def plain_json(visit: Visit) -> str:
    """Return a visit as JSON without the signs that a script or the packing has its own use for."""
    text = json.dumps(visit, separators=(",", ":"))
    # Within JSON these two stand in texts alone.
    return text.replace("'", "\\u0027").replace(PACKED_SIGN, "\\u007e")


def packed_text(text: str) -> str:
    """Return a text of ASCII with what comes again told by where it stood before."""
    packed: list[str] = []
    known: dict[str, list[int]] = {}
    at = 0
    while at < len(text):
        back, long = longest(text, at, known)
        packed.append(told(back, long) if long else escaped(text[at]))
        for place in range(at, at + max(long, 1)):
            known.setdefault(text[place : place + SHORTEST], []).append(place)
        at += max(long, 1)
    return "".join(packed)


def longest(text: str, at: int, known: dict[str, list[int]]) -> tuple[int, int]:
    """Return how far back the most of what begins at a place stood already, and how much; two zeros for none."""
    best = (0, 0)
    for place in reversed(known.get(text[at : at + SHORTEST], [])):
        if at - place > FARTHEST:
            break
        most = min(LONGEST, at - place, len(text) - at)
        long = next((n for n in range(SHORTEST, most) if text[place + n] != text[at + n]), most)
        if long > best[1] and long >= SHORTEST:
            best = (at - place, long)
    return best


def told(back: int, long: int) -> str:
    """Return what stands for letters that were there already."""
    return PACKED_SIGN + PACKED_DIGITS[back // BASE] + PACKED_DIGITS[back % BASE] + PACKED_DIGITS[long]


def escaped(letter: str) -> str:
    """Return a letter as it stands between single quotation marks."""
    return "\\\\" if letter == "\\" else letter
