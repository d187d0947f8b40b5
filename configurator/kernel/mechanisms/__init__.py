"""The mechanisms: how each kind of covering behaves.

Each is one file with one function ``(numbers, size, position) -> pieces``, worked out for a
leaf hung on the left, and one ``TAKES`` table. A new one is named here and nowhere else.
"""

from collections.abc import Callable
from typing import TypedDict

from configurator.kernel.mechanisms.accordion import ACCORDION_TAKES, accordion
from configurator.kernel.mechanisms.banded_roll import BANDED_ROLL_TAKES, banded_roll
from configurator.kernel.mechanisms.draw import DRAW_TAKES, draw
from configurator.kernel.mechanisms.louver_panel import LOUVER_PANEL_TAKES, louver_panel
from configurator.kernel.mechanisms.nested_fold import NESTED_FOLD_TAKES, nested_fold
from configurator.kernel.mechanisms.rolled import ROLLED_TAKES, rolled
from configurator.kernel.mechanisms.slatted import SLATTED_TAKES, slatted
from configurator.kernel.mechanisms.soft_fold import SOFT_FOLD_TAKES, soft_fold
from configurator.kernel.mechanisms.stretched import STRETCHED_TAKES, stretched
from configurator.kernel.mechanisms.vane_roll import VANE_ROLL_TAKES, vane_roll
from configurator.kernel.shapes import Piece, Position, Size


class Mechanism(TypedDict):
    """The function that gives the pieces, and the numbers it reads beside the common ones."""

    pieces: Callable[[dict[str, float], Size, Position], list[Piece]]
    takes: dict[str, list[str | float | None]]


MECHANISMS: dict[str, Mechanism] = {
    "stretched": {"pieces": stretched, "takes": STRETCHED_TAKES},
    "nested-fold": {"pieces": nested_fold, "takes": NESTED_FOLD_TAKES},
    "soft-fold": {"pieces": soft_fold, "takes": SOFT_FOLD_TAKES},
    "rolled": {"pieces": rolled, "takes": ROLLED_TAKES},
    "accordion": {"pieces": accordion, "takes": ACCORDION_TAKES},
    "banded-roll": {"pieces": banded_roll, "takes": BANDED_ROLL_TAKES},
    "draw": {"pieces": draw, "takes": DRAW_TAKES},
    "louver-panel": {"pieces": louver_panel, "takes": LOUVER_PANEL_TAKES},
    "slatted": {"pieces": slatted, "takes": SLATTED_TAKES},
    "vane-roll": {"pieces": vane_roll, "takes": VANE_ROLL_TAKES},
}
