"""Lengths in content: the kernel's reader, with advice for whoever writes YAML."""

from functools import cache

from configurator.catalog.clauses import Slip
from configurator.kernel.lengths import plain_length, written_length
from configurator.kernel.message import is_said, message, plain
from configurator.kernel.tongue import wording

EXPECTED = wording("a length such as 22 1/2 in, 6'8\" or 571 mm is expected")


@cache
def read_length(text: str) -> float:
    """Return a written length in millimeters, as :func:`configurator.kernel.lengths.written_length` reads it.

    :raises Slip: with what to write instead, for a bare number too: content names its units
    """
    length = written_length(text, "in")
    if not length["sound"]:
        fault = [length["fault"]] if is_said(length["fault"]) else []
        raise Slip(*fault, plain(EXPECTED))
    if length["unit"] == "":
        number = plain_length(text)
        raise Slip(message("a length needs its unit: write {number} in or {number} mm", {"number": [number, "name"]}))
    return length["mm"]


def units_of(text: str) -> str:
    """Return in which units (``in`` or ``mm``) the writer of a text thinks; ``in`` where it is no length."""
    return "mm" if written_length(text, "in")["unit"] in ("mm", "cm", "m") else "in"
