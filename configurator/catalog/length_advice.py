"""Lengths in content: the kernel's reader, with advice for whoever writes YAML."""

from configurator.kernel.lengths import plain_length, written_length
from configurator.kernel.message import say_phrase
from configurator.kernel.tongue import ENGLISH

EXPECTED = "a length such as 22 1/2 in, 6'8\" or 571 mm is expected"


def read_length(text: str) -> float:
    """Return a written length in millimeters, as :func:`configurator.kernel.lengths.written_length` reads it.

    Raises ValueError with what to write instead, for a bare number too: content names its units.
    """
    length = written_length(text, "in")
    if not length["sound"]:
        fault = say_phrase(length["fault"], ENGLISH, "in")
        raise ValueError(f"{fault}; {EXPECTED}" if fault else EXPECTED)
    if length["unit"] == "":
        plain = plain_length(text)
        raise ValueError(f"a length needs its unit: write {plain} in or {plain} mm")
    return length["mm"]


def units_of(text: str) -> str:
    """Return in which units (``in`` or ``mm``) the writer of a text thinks; ``in`` where it is no length."""
    return "mm" if written_length(text, "in")["unit"] in ("mm", "cm", "m") else "in"
