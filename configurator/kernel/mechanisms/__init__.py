"""The mechanisms: how each kind of covering behaves.

Each is one file with one function ``(numbers, size, position) -> pieces``, worked out for a
leaf hung on the left, and one ``TAKES`` table. A new one is named here and nowhere else.
"""

from collections.abc import Callable
from typing import TypedDict

from configurator.kernel.mechanisms.accordion import ACCORDION_TAKES, accordion
from configurator.kernel.shapes import Piece, Position, Size


class Mechanism(TypedDict):
    """The function that gives the pieces, and the numbers it reads beside the common ones."""

    pieces: Callable[[dict[str, float], Size, Position], list[Piece]]
    takes: dict[str, list[str | float | None]]


MECHANISMS: dict[str, Mechanism] = {
    "accordion": {"pieces": accordion, "takes": ACCORDION_TAKES},
}
