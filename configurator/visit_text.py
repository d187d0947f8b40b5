"""A visit as the text of its file, as a browser's ``JSON.stringify(visit, null, 2)`` writes it, byte for byte."""

import json
import re
from collections.abc import Iterable
from decimal import Decimal

from configurator.kernel.visit.visit_shapes import Visit

# Between these a browser writes a number without an exponent: ECMA-262, Number::toString.
LEAST_PLAIN = 1e-6
MOST_PLAIN = 1e21
HALF_LETTER = re.compile("[\ud800-\udfff]")
STEP = "  "


def visit_text(visit: Visit) -> str:
    """Return the text of a visit's file."""
    return value_text(visit, "\n") + "\n"


def value_text(value: object, line: str) -> str:
    """Return a value's text; ``line`` begins a new line at its depth."""
    if isinstance(value, dict):
        return grouped(
            (f"{string_text(name)}: {value_text(part, line + STEP)}" for name, part in value.items()), "{}", line
        )
    if isinstance(value, list):
        return grouped((value_text(part, line + STEP) for part in value), "[]", line)
    if isinstance(value, str):
        return string_text(value)
    return number_text(value) if isinstance(value, float) else json.dumps(value)


def grouped(parts: Iterable[str], braces: str, line: str) -> str:
    """Return parts within their braces, each on a line of its own."""
    inner = f",{line}{STEP}".join(parts)
    return f"{braces[0]}{line}{STEP}{inner}{line}{braces[1]}" if inner else braces


def string_text(text: str) -> str:
    """Return a text in quotes; what is only half a letter is escaped, as no file can hold it."""
    return HALF_LETTER.sub(lambda half: f"\\u{ord(half[0]):04x}", json.dumps(text, ensure_ascii=False))


def number_text(value: float) -> str:
    """Return a number as ECMAScript writes it: the shortest digits that give it again."""
    if value == 0:
        return "0"
    if LEAST_PLAIN <= abs(value) < MOST_PLAIN:
        plain = f"{Decimal(repr(value)):f}"
        return plain.rstrip("0").rstrip(".") if "." in plain else plain
    digits, _, power = repr(value).partition("e")
    return f"{digits.removesuffix('.0')}e{int(power):+d}"
