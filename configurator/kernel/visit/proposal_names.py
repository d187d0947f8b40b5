"""What the proposals for an opening are called: where there are several, each has a letter, in every place the same."""

from configurator.kernel.message import message
from configurator.kernel.shapes import Message
from configurator.kernel.visit.hung_leaves import family_today, is_offered
from configurator.kernel.visit.visit_shapes import Opening, VisitStock

OFFER_LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def offer_letter(place: int, count: int) -> str:
    """Return the letter of what is offered at a place, from 0, among so many; a single one has none."""
    return OFFER_LETTERS[place % len(OFFER_LETTERS)] if count > 1 else ""


def offer_name(name: str, letter: str) -> Message:
    """Return a name with its letter before it, where it has one."""
    if letter == "":
        return message("{name}", {"name": [name, "name"]})
    return message("{letter}: {name}", {"letter": [letter, "name"], "name": [name, "name"]})


def told_apart(names: list[str]) -> list[Message]:
    """Return names in their order, each with its letter where there are several."""
    told: list[Message] = []
    for i in range(len(names)):
        told.append(offer_name(names[i], offer_letter(i, len(names))))
    return told


def proposal_names(opening: Opening, stock: VisitStock) -> dict[str, Message]:
    """Return what an opening's proposals are called, by their ids; what nobody offers goes by its family's id.

    Their letters are those that a client sees, who is not shown what is no longer offered.
    """
    called: dict[str, Message] = {}
    for proposal in opening["proposals"]:
        called[proposal["id"]] = offer_name(proposal["family"], "")
    offered = [proposal for proposal in opening["proposals"] if is_offered(proposal, stock)]
    names = told_apart([stock["families"][family_today(one["family"], stock)]["name"] for one in offered])
    for i in range(len(offered)):
        called[offered[i]["id"]] = names[i]
    return called
