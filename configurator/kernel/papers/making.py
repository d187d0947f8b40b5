"""What is ordered, and the pieces that the workroom makes for it: one a leaf, or one over a whole opening."""

from collections.abc import Callable
from typing import TypedDict

from configurator.kernel.door.opening import has_passive
from configurator.kernel.fit import over_opening
from configurator.kernel.message import is_said, message, plain
from configurator.kernel.mount.hung import dressed_leaves
from configurator.kernel.questions.bars import bars_question
from configurator.kernel.questions.care import care_question
from configurator.kernel.questions.cloth import cloth_question
from configurator.kernel.questions.cutout import cutout_question
from configurator.kernel.questions.fixing import fixing_question
from configurator.kernel.questions.order import order_question
from configurator.kernel.questions.own import own_question
from configurator.kernel.shapes import Figure, Fit, Household, Message, Reply, Travel
from configurator.kernel.tongue import Words, wording
from configurator.kernel.travel import leaf_cuts, travelled
from configurator.kernel.visit.hung_leaves import alone
from configurator.kernel.visit.leaf_answers import out_of_the_way
from configurator.kernel.visit.visit_fields import LEAF_NAMES, is_sidelight
from configurator.kernel.visit.visit_shapes import HungLeaf

# What workroom and installer ask of a piece.
MADE_QUESTIONS: list[Callable[[Travel, Household], Reply]] = [
    order_question,
    cloth_question,
    bars_question,
    own_question,
    cutout_question,
    fixing_question,
    care_question,
]


class Commission(TypedDict):
    """A covering that is ordered for an opening, hung on each of its leaves or once over it.

    ``opening`` is its id in a visit, or nothing. ``room``, ``note`` and ``socket`` (where there is one for a charger)
    are as the one who orders writes them, ``count`` how many openings alike, ``household`` who lives behind it.
    ``controls`` are the sides on which it is worked where they are said or agreed (``left`` or ``right``), ``links``
    the links, without the ``#``, that open just what hangs there, both by leaf.
    """

    opening: str
    room: str
    socket: str
    controls: dict[str, str]
    links: dict[str, str]
    count: float
    leaves: list[HungLeaf]
    note: str
    household: Household


class Desk(TypedDict):
    """Where a paper is written: its language and units, for whom (or nothing), by which showroom, on which day.

    ``link`` is the address from which it was made, or nothing; ``home`` that of the site in public, with a closing
    slash, or nothing.
    """

    words: Words
    units: str
    client: str
    showroom: str
    day: str
    link: str
    home: str


class Making(TypedDict):
    """One piece to make: its position on the order, and all that is told of it for its own leaf alone.

    ``order`` counts the commissions from 0; ``leaf`` is the leaf's id, that of the active one over a whole opening.
    ``figures`` are those of the questions that a workroom and an installer ask, by their ids.
    """

    position: int
    order: int
    leaf: str
    commission: Commission
    fit: Fit
    travel: Travel
    figures: dict[str, Figure]


def hung_both(fit: Fit) -> list[HungLeaf]:
    """Return a covering on the leaves that it dresses: on the other leaf of a pair as on a door of its own hand."""
    leaves: list[HungLeaf] = [{"leaf": "active", "fit": fit}]
    dressed = dressed_leaves(fit)
    if len(dressed) > 1:
        second = alone(dressed)
        hand = "left" if fit["door"]["hinge_side"] == "right" else "right"
        leaves.append({"leaf": "other", "fit": {**second, "door": {**second["door"], "hinge_side": hand}}})
    return leaves


def leaf_travel(fit: Fit) -> Travel:
    """Return the travel of the covering on one leaf, told as if no other were dressed."""
    held = fit if len(fit["handle"]) > 0 else {**fit, "handle": [out_of_the_way()]}
    return {**travelled(held), "fit": fit, "leaves": [fit], "cuts": leaf_cuts([fit])}


def made_figures(travel: Travel, household: Household) -> dict[str, Figure]:
    """Return the figures of size, cloth, bars, its own kind, cut-out, fixing and mass, by their ids."""
    found: dict[str, Figure] = {}
    for question in MADE_QUESTIONS:
        for told in question(travel, household)["figures"]:
            found[told["id"]] = told
    return found


def made_piece(commission: Commission, order: int, position: int, one: HungLeaf) -> Making:
    """Return a piece that can be made, at its position on the order."""
    travel = leaf_travel(one["fit"])
    return {
        "position": position,
        "order": order,
        "leaf": one["leaf"],
        "commission": commission,
        "fit": one["fit"],
        "travel": travel,
        "figures": made_figures(travel, commission["household"]),
    }


def makings(commissions: list[Commission]) -> list[Making]:
    """Return the pieces to make, numbered from 1; none for a leaf on which the covering cannot go."""
    found: list[Making] = []
    for order in range(len(commissions)):
        commission = commissions[order]
        for one in commission["leaves"]:
            if not is_said(one["fit"]["size"]["refusal"]):
                found.append(made_piece(commission, order, len(found) + 1, one))
    return found


def is_of_pair(making: Making) -> bool:
    """Return whether a piece's leaf meets another one."""
    return making["leaf"] == "other" or has_passive(making["fit"]["door"])


def leaf_words(making: Making) -> str:
    """Return in words where a piece goes: on which leaf, seen from the room, or over the opening."""
    right = making["fit"]["door"]["hinge_side"] == "right"
    if over_opening(making["fit"]):
        return wording("over the opening")
    if is_sidelight(making["leaf"]):
        return LEAF_NAMES[making["leaf"]]
    if is_of_pair(making):
        return wording("right leaf, hinges on its right") if right else wording("left leaf, hinges on its left")
    return wording("leaf with hinges on the right") if right else wording("leaf with hinges on the left")


def which_leaf(making: Making) -> Message:
    """Return the same as a message."""
    return plain(leaf_words(making))


def piece_title(making: Making) -> Message:
    """Return a piece's position with what it is and where it goes."""
    commission = making["commission"]
    terms: dict[str, list[float | str]] = {
        "position": [str(making["position"]), "name"],
        "covering": [making["fit"]["family"]["name"], "name"],
        "room": [commission["room"], "name"],
        "leaf": [leaf_words(making), "text"],
    }
    if commission["room"] == "":
        return message("{position} · {covering}, {leaf}", terms)
    return message("{position} · {covering}, {room}, {leaf}", terms)
