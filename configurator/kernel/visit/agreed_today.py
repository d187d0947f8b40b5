"""What was agreed as it would hang today, on today's leaves, and the answers to that."""

from typing import TypedDict

from configurator.kernel.resolve import find_option
from configurator.kernel.shapes import Answer, Family
from configurator.kernel.visit.control_side import control_side
from configurator.kernel.visit.hung_leaves import family_today, hung_leaves, picks_today
from configurator.kernel.visit.leaf_answers import hung_answers
from configurator.kernel.visit.leaf_doors import opening_household
from configurator.kernel.visit.visit_shapes import Agreed, HungLeaf, Opening, Proposal, Visit, VisitStock


class AgreedToday(TypedDict):
    """Whether the catalog has all of it still; the leaves on which it hangs, none where it can be hung no longer; and
    for each of these the answer and the side on which it is worked."""

    known: bool
    hung: list[HungLeaf]
    answers: list[Answer]
    sides: list[str]


def agreed_today(visit: Visit, opening: Opening, agreed: Agreed, stock: VisitStock) -> AgreedToday:
    """Return what was agreed as it hangs today: as the catalog has it, or else the covering as it was frozen."""
    known = is_known_still(agreed, stock)
    stocks = hanging_stocks(agreed, stock)
    if len(stocks) == 0:
        return {"known": known, "hung": [], "answers": [], "sides": []}
    hung = hung_leaves(opening, as_proposal(agreed), stocks[0])
    answers = hung_answers(hung, opening_household(opening, visit["household"]))
    sides = [control_side(one, opening.get("control", "")) for one in hung]
    return {"known": known, "hung": hung, "answers": answers, "sides": sides}


def hanging_stocks(agreed: Agreed, stock: VisitStock) -> list[VisitStock]:
    """Return the catalog in which what was agreed can be hung: today's, or one with the covering as frozen; or none."""
    if is_known_still(agreed, stock):
        return [stock]
    return [with_frozen(agreed, stock)] if can_hang_frozen(agreed["covering"], stock) else []


def as_proposal(agreed: Agreed) -> Proposal:
    """Return what was agreed as a proposal, to be hung today."""
    return {
        "id": agreed["proposal"],
        "family": agreed["covering"]["id"],
        "choices": agreed["choices"],
        "wishes": agreed["wishes"],
        "leaves": [part["leaf"] for part in agreed["parts"]],
        "place": agreed["place"],
        "note": "",
        "price": agreed["price"],
        "liked": True,
        "remarks": "",
    }


def is_known_still(agreed: Agreed, stock: VisitStock) -> bool:
    """Return whether the catalog has the covering that was agreed with every pick of it."""
    ident = family_today(agreed["covering"]["id"], stock)
    if ident not in stock["families"]:
        return False
    family = stock["families"][ident]
    picks = picks_today(family, agreed["choices"], stock)
    for choice in family["choices"]:
        if choice["id"] in picks and find_option(choice, picks[choice["id"]])["id"] != picks[choice["id"]]:
            return False
    return True


def can_hang_frozen(covering: Family, stock: VisitStock) -> bool:
    """Return whether a covering that was frozen has all that one of its kind takes today."""
    for choice in covering["choices"]:
        if len(choice["options"]) == 0:
            return False
    for family in stock["families"].values():
        if family["mechanism"] == covering["mechanism"]:
            return len([name for name in family["numbers"] if name not in covering["numbers"]]) == 0
    return False


def with_frozen(agreed: Agreed, stock: VisitStock) -> VisitStock:
    """Return the catalog with the covering that was agreed in place of today's."""
    families = stock["families"].copy()
    families[agreed["covering"]["id"]] = agreed["covering"]
    return {**stock, "families": families}
