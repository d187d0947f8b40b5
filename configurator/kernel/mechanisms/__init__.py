"""The mechanisms: how each kind of covering behaves.

Each is one file with one function ``(fit, position) -> pieces``, worked out for a leaf hung on the left, one
``TAKES`` table, and a function that states its legs. A new one is named here and nowhere else.
"""

from collections.abc import Callable
from typing import TypedDict

from configurator.kernel.mechanisms.accordion import ACCORDION_TAKES, accordion, accordion_cuts
from configurator.kernel.mechanisms.banded_roll import BANDED_ROLL_TAKES, banded_legs, banded_roll, banded_roll_cuts
from configurator.kernel.mechanisms.common import headrail_height
from configurator.kernel.mechanisms.cuts import no_cuts, rail_cuts
from configurator.kernel.mechanisms.draw import DRAW_TAKES, draw, draw_legs
from configurator.kernel.mechanisms.draw_cuts import draw_cuts, draw_figures
from configurator.kernel.mechanisms.frame_holds import frame_holds
from configurator.kernel.mechanisms.holds import headrail_holds
from configurator.kernel.mechanisms.legs import no_legs, raised_legs
from configurator.kernel.mechanisms.louver_figures import louver_figures
from configurator.kernel.mechanisms.louver_panel import LOUVER_PANEL_TAKES, framed_panel, louver_legs, louver_panel
from configurator.kernel.mechanisms.nested_fold import NESTED_FOLD_TAKES, nested_cuts, nested_fold
from configurator.kernel.mechanisms.roll import roll_holds, set_roll_head
from configurator.kernel.mechanisms.rolled import ROLLED_TAKES, rolled, rolled_cuts
from configurator.kernel.mechanisms.slatted import SLATTED_TAKES, slatted, slatted_legs
from configurator.kernel.mechanisms.soft_fold import SOFT_FOLD_TAKES, soft_fold
from configurator.kernel.mechanisms.soft_fold_cuts import soft_fold_cuts, soft_fold_figures
from configurator.kernel.mechanisms.stretched import STRETCHED_TAKES, rod_holds, stretched
from configurator.kernel.mechanisms.stretched_cuts import stretched_cuts, stretched_figures
from configurator.kernel.mechanisms.vane_roll import VANE_ROLL_TAKES, vane_roll, vane_roll_cuts, vane_roll_legs
from configurator.kernel.shapes import Cuts, Family, Figure, Fit, Foothold, Leg, Piece, Position


class Mechanism(TypedDict):
    """What a kind of covering does.

    ``pieces`` gives them at a position, and ``still`` those before them that are the same at every one; ``takes``
    names the numbers it reads beside the common ones; ``legs`` states what moves. ``head`` sets what its head needs
    (such as a cassette) and returns how far it reaches down from the top; ``holds`` states where it is fixed;
    ``tells`` gives the figures that only this kind has; ``cuts`` states what the workroom cuts.
    """

    pieces: Callable[[Fit, Position], list[Piece]]
    still: Callable[[Fit], list[Piece]]
    takes: dict[str, list[str | float | None]]
    legs: Callable[[dict[str, float]], list[Leg]]
    head: Callable[[Fit], float]
    holds: Callable[[Fit], list[Foothold]]
    tells: Callable[[Fit], list[Figure]]
    cuts: Callable[[Fit], Cuts]


def nothing_still(fit: Fit) -> list[Piece]:
    """Return the still pieces of a kind that gives all of its pieces at each position."""
    return []


def nothing_told(fit: Fit) -> list[Figure]:
    """Return the figures of a kind that has none of its own."""
    return []


def mechanism(
    pieces: Callable[[Fit, Position], list[Piece]],
    takes: dict[str, list[str | float | None]],
    legs: Callable[[dict[str, float]], list[Leg]],
) -> Mechanism:
    """Return a mechanism under a plain headrail, without figures of its own, that comes made up."""
    return {
        "pieces": pieces,
        "still": nothing_still,
        "takes": takes,
        "legs": legs,
        "head": headrail_height,
        "holds": headrail_holds,
        "tells": nothing_told,
        "cuts": no_cuts,
    }


def under_roll(
    pieces: Callable[[Fit, Position], list[Piece]],
    takes: dict[str, list[str | float | None]],
    legs: Callable[[dict[str, float]], list[Leg]],
) -> Mechanism:
    """Return a mechanism that hangs from a roll, open or in a cassette."""
    return {**mechanism(pieces, takes, legs), "head": set_roll_head, "holds": roll_holds}


MECHANISMS: dict[str, Mechanism] = {
    "stretched": {
        **mechanism(stretched, STRETCHED_TAKES, no_legs),
        "holds": rod_holds,
        "tells": stretched_figures,
        "cuts": stretched_cuts,
    },
    "nested-fold": {**mechanism(nested_fold, NESTED_FOLD_TAKES, raised_legs), "cuts": nested_cuts},
    "soft-fold": {
        **mechanism(soft_fold, SOFT_FOLD_TAKES, raised_legs),
        "tells": soft_fold_figures,
        "cuts": soft_fold_cuts,
    },
    "rolled": {**under_roll(rolled, ROLLED_TAKES, raised_legs), "cuts": rolled_cuts},
    "accordion": {**mechanism(accordion, ACCORDION_TAKES, raised_legs), "cuts": accordion_cuts},
    "banded-roll": {**under_roll(banded_roll, BANDED_ROLL_TAKES, banded_legs), "cuts": banded_roll_cuts},
    "draw": {**mechanism(draw, DRAW_TAKES, draw_legs), "tells": draw_figures, "cuts": draw_cuts},
    "louver-panel": {
        **mechanism(louver_panel, LOUVER_PANEL_TAKES, louver_legs),
        "still": framed_panel,
        "holds": frame_holds,
        "tells": louver_figures,
    },
    "slatted": {**mechanism(slatted, SLATTED_TAKES, slatted_legs), "cuts": rail_cuts},
    "vane-roll": {**under_roll(vane_roll, VANE_ROLL_TAKES, vane_roll_legs), "cuts": vane_roll_cuts},
}


def family_legs(family: Family, numbers: dict[str, float]) -> list[Leg]:
    """Return the legs of a family's travel with its numbers, in the order in which a hand makes them."""
    return MECHANISMS[family["mechanism"]]["legs"](numbers)
