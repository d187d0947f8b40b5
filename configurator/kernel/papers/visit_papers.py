"""What the papers of a visit are about: what of it is made, and the doors of it that are measured."""

from typing import TypedDict

from configurator.kernel.message import message
from configurator.kernel.papers.decided import decided, ordered_stock
from configurator.kernel.papers.making import Commission
from configurator.kernel.papers.measuring_paper import Sheet
from configurator.kernel.shapes import Message
from configurator.kernel.visit.hung_leaves import hung_leaves, is_offered
from configurator.kernel.visit.leaf_doors import leaf_door, opening_household
from configurator.kernel.visit.visit_shapes import HungLeaf, Opening, Proposal, Visit, VisitStock


class Ordered(TypedDict):
    """What is decided in a visit as something to be made, and ``notes`` on what is left out or not agreed yet."""

    commissions: list[Commission]
    notes: list[Message]


def said_sides(opening: Opening, hung: list[HungLeaf]) -> dict[str, str]:
    """Return the sides on which coverings are worked, by leaf: as agreed last, else as said for the opening."""
    sides: dict[str, str] = {}
    for one in hung:
        sides[one["leaf"]] = opening.get("control", "")
    if len(opening["agreed"]) > 0:
        for part in opening["agreed"][len(opening["agreed"]) - 1]["parts"]:
            sides[part["leaf"]] = part.get("control", opening.get("control", ""))
    return sides


def as_commission(visit: Visit, opening: Opening, wanted: Proposal, stock: VisitStock) -> Commission:
    """Return a proposal for an opening, hung on its leaves as they are measured, as something to be made."""
    hung = hung_leaves(opening, wanted, stock)
    return {
        "opening": opening["id"],
        "room": opening["room"],
        "socket": opening["socket"],
        "controls": said_sides(opening, hung),
        "links": {},
        "count": 1.0,
        "leaves": hung,
        "note": wanted["note"],
        "household": opening_household(opening, visit["household"]),
    }


def ordered_of(visit: Visit, stock: VisitStock) -> Ordered:
    """Return what is decided in a visit, opening by opening."""
    commissions: list[Commission] = []
    notes: list[Message] = []
    for opening in visit["openings"]:
        wanted = decided(opening)
        here = ordered_stock(opening, stock)
        named: dict[str, list[float | str]] = {"room": [opening["room"], "name"]}
        if len(wanted) == 0:
            notes.append(message("{room}: nothing is decided, so it is left out.", named))
        elif not is_offered(wanted[0], here):
            notes.append(message("{room}: its covering is no longer known, so it is left out.", named))
        else:
            if len(opening["agreed"]) == 0:
                notes.append(message("{room}: nothing is agreed; what is liked is taken.", named))
            commissions.append(as_commission(visit, opening, wanted[0], here))
    return {"commissions": commissions, "notes": notes}


def visit_sheets(visit: Visit, stock: VisitStock) -> list[Sheet]:
    """Return the doors of a visit to be measured."""
    sheets: list[Sheet] = []
    for opening in visit["openings"]:
        sheets.append(
            {
                "room": opening["room"],
                "door": leaf_door(opening, "active", stock),
                "blank": False,
                "household": opening_household(opening, visit["household"]),
            }
        )
    return sheets


def blank_sheets(stock: VisitStock) -> list[Sheet]:
    """Return a sheet for any door, drawn as the one with which a page begins."""
    door = stock["doors"][stock["opening"][0]]
    return [{"room": "", "door": door, "blank": True, "household": stock["household"]}]
