"""A proposal hung on the leaves of its opening: the fits of which everything else is asked."""

from configurator.kernel.door.opening import has_passive
from configurator.kernel.fit import over_opening
from configurator.kernel.mount.blank import blank_fit
from configurator.kernel.mount.hung import dressed_leaves, hang, hung_with
from configurator.kernel.mount.wishes import wished
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Answer, Door, Family, Fit
from configurator.kernel.visit.leaf_answers import hung_answers
from configurator.kernel.visit.leaf_doors import known_now, leaf_door, opening_household
from configurator.kernel.visit.visit_fields import is_sidelight, leaves_of
from configurator.kernel.visit.visit_shapes import HungLeaf, Opening, Proposal, Visit, VisitStock


def family_today(ident: str, stock: VisitStock) -> str:
    """Return the id that a proposal's family has today; one that nobody offers stays as it is."""
    return ident if ident in stock["families"] else known_now("family", ident, stock)


def is_offered(proposal: Proposal, stock: VisitStock) -> bool:
    """Return whether the catalog knows a proposal's family, so that it can be hung."""
    return family_today(proposal["family"], stock) in stock["families"]


def picks_today(family: Family, choices: dict[str, str], stock: VisitStock) -> dict[str, str]:
    """Return picks by the ids that choices and options have today."""
    picks: dict[str, str] = {}
    for name, option in choices.items():
        choice = stock["formerly"].get("choice/" + family["id"] + "/" + name, name)
        picks[choice] = stock["formerly"].get("option/" + family["id"] + "/" + choice + "/" + option, option)
    return picks


def alone(dressed: list[Fit]) -> Fit:
    """Return the second leaf's covering on that leaf alone, so that nothing counts it twice."""
    second = dressed[len(dressed) - 1]
    return {**second, "door": {**second["door"], "layout": "single"}}


def hung_on(door: Door, leaf: str, proposal: Proposal, stock: VisitStock) -> Fit:
    """Return a proposal hung on one leaf: with its handle, or on one that has none."""
    family = stock["families"][family_today(proposal["family"], stock)]
    choices = picks_today(family, proposal["choices"], stock)
    if is_sidelight(leaf):
        return hang(wished(blank_fit(door, family, choices, []), proposal["wishes"]))
    fit = hung_with(door, family, choices, proposal["wishes"])
    return alone(dressed_leaves(fit)) if leaf == "other" else fit


def chosen_leaves(active: Door, proposal: Proposal) -> list[str]:
    """Return the leaves that a proposal dresses on an opening: those that were chosen, or else all that open."""
    there = leaves_of(active["layout"])
    leaves = [leaf for leaf in proposal["leaves"] if leaf in there]
    if len(leaves) > 0:
        return leaves
    return ["active", "other"] if has_passive(active) else ["active"]


def leaves_to_choose(opening: Opening, proposal: Proposal, stock: VisitStock) -> list[str]:
    """Return the leaves among which it is chosen where a proposal goes: none where there is no choice."""
    there = leaves_of(leaf_door(opening, "active", stock)["layout"])
    if len(there) < 2 or not is_offered(proposal, stock):
        return []
    family = stock["families"][family_today(proposal["family"], stock)]
    numbers = resolve(family, picks_today(family, proposal["choices"], stock))
    return [] if numbers.get("over_opening", 0) > 0 else there


def leaves_chosen(opening: Opening, proposal: Proposal, stock: VisitStock) -> list[str]:
    """Return the leaves on which a proposal goes, as far as that is chosen leaf by leaf."""
    return chosen_leaves(leaf_door(opening, "active", stock), proposal)


def hung_leaves(opening: Opening, proposal: Proposal, stock: VisitStock) -> list[HungLeaf]:
    """Return a proposal on each leaf that it dresses; what goes over the opening hangs once. It must be offered."""
    active = leaf_door(opening, "active", stock)
    first = hung_on(active, "active", proposal, stock)
    hung: list[HungLeaf] = []
    for leaf in ["active"] if over_opening(first) else chosen_leaves(active, proposal):
        fit = first if leaf == "active" else hung_on(leaf_door(opening, leaf, stock), leaf, proposal, stock)
        hung.append({"leaf": leaf, "fit": fit})
    return hung


def proposal_answers(visit: Visit, opening: Opening, proposal: Proposal, stock: VisitStock) -> list[Answer]:
    """Return the answer for each leaf that a proposal dresses, in the order of :func:`hung_leaves`."""
    household = opening_household(opening, visit["household"])
    return hung_answers(hung_leaves(opening, proposal, stock), household)
