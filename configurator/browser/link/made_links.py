"""Links that open just what of a visit is made, for its papers; none where a link would open something else.

``link_of`` is :func:`configurator.browser.link.visit_link.opening_link`; a page has it in another script than papers.
"""

from collections.abc import Callable

from configurator.browser.link.decode import read_link
from configurator.browser.link.encode import fit_of
from configurator.browser.link.shapes import Stock
from configurator.kernel.numbers import SAME_ON_TAPE
from configurator.kernel.papers.decided import decided
from configurator.kernel.papers.making import Commission, hung_both
from configurator.kernel.papers.visit_papers import Ordered, ordered_of
from configurator.kernel.shapes import Fit
from configurator.kernel.tape.table import DOOR_LIMITS, DOOR_WORDS, HANDLE_LIMITS
from configurator.kernel.visit.hung_leaves import is_offered
from configurator.kernel.visit.visit_shapes import Opening, Proposal, Visit

LinkOf = Callable[[Visit, Opening, list[Proposal], Stock], str]

# A family's numbers are no link's, and the same or not.
SAME_NUMBER = 0.000001


def is_alike(one: dict[str, float], other: dict[str, float], names: list[str], most: float) -> bool:
    """Return whether what two shapes have under some names differs by no more than ``most``."""
    return len([name for name in names if abs(one[name] - other[name]) > most]) == 0


def is_same_covering(one: Fit, other: Fit) -> bool:
    """Return whether two coverings have the same picks and the same numbers, of their family, by hand and in size."""
    others_picked = other["choices"]
    picked = [name for name, option in one["choices"].items() if others_picked.get(name, "") != option]
    names = list(one["numbers"])
    sizes: dict[str, float] = one["size"]  # type: ignore[assignment]
    others: dict[str, float] = other["size"]  # type: ignore[assignment]
    known = len([name for name in names if name not in other["numbers"]]) == 0
    return (
        known
        and len(picked) == 0
        and one["family"]["id"] == other["family"]["id"]
        and is_alike(one["numbers"], other["numbers"], names, SAME_NUMBER)
        and is_alike(sizes, others, ["x0", "x1", "y0", "y1", "z0"], SAME_ON_TAPE)
    )


def is_same_door(one: Fit, other: Fit) -> bool:
    """Return whether two coverings hang on the same leaf: by its words, its numbers and its handle's."""
    words: dict[str, str] = one["door"]  # type: ignore[assignment]
    told: dict[str, str] = other["door"]  # type: ignore[assignment]
    if len([name for name in DOOR_WORDS if words[name] != told[name]]) > 0:
        return False
    numbers: dict[str, float] = one["door"]  # type: ignore[assignment]
    others: dict[str, float] = other["door"]  # type: ignore[assignment]
    held: dict[str, float] = one["door"]["handle"]  # type: ignore[assignment]
    holds: dict[str, float] = other["door"]["handle"]  # type: ignore[assignment]
    return (
        len(one["handle"]) == len(other["handle"])
        and is_alike(numbers, others, list(DOOR_LIMITS), SAME_ON_TAPE)
        and (len(one["handle"]) == 0 or is_alike(held, holds, list(HANDLE_LIMITS), SAME_ON_TAPE))
    )


def made_links(visit: Visit, opening: Opening, commission: Commission, stock: Stock, link_of: LinkOf) -> dict[str, str]:
    """Return the link to what is made for an opening, without the ``#``, by each leaf for which it opens just that."""
    found: dict[str, str] = {}
    wanted = decided(opening)
    if len(wanted) == 0 or not is_offered(wanted[0], stock):
        return found
    link = link_of(visit, opening, wanted, stock)
    opened = read_link(link, stock)
    if len(opened["problems"]) > 0:
        return found
    shown = hung_both(fit_of(opened["state"]["configurations"][0], stock))
    for made in commission["leaves"]:
        for one in shown:
            same = one["leaf"] == made["leaf"] and is_same_covering(made["fit"], one["fit"])
            if same and is_same_door(made["fit"], one["fit"]):
                found[made["leaf"]] = link
    return found


def linked_order(visit: Visit, stock: Stock, link_of: LinkOf) -> Ordered:
    """Return what is decided in a visit, each piece with its link."""
    ordered = ordered_of(visit, stock)
    commissions: list[Commission] = []
    for commission in ordered["commissions"]:
        for opening in visit["openings"]:
            if opening["id"] == commission["opening"]:
                commissions.append({**commission, "links": made_links(visit, opening, commission, stock, link_of)})
    return {"commissions": commissions, "notes": ordered["notes"]}
