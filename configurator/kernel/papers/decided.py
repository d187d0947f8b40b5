"""What of a visit is ordered: what was agreed, or else what the client likes, or the only thing that was proposed."""

from configurator.kernel.visit.agreed_today import as_proposal, hanging_stocks
from configurator.kernel.visit.visit_shapes import Opening, Proposal, VisitStock


def decided(opening: Opening) -> list[Proposal]:
    """Return the proposal that is ordered for an opening, or none while nothing is decided.

    What was agreed last counts, with the picks of that day and the note of its proposal.
    """
    proposals = opening["proposals"]
    if len(opening["agreed"]) > 0:
        last = as_proposal(opening["agreed"][len(opening["agreed"]) - 1])
        notes = [one["note"] for one in proposals if one["id"] == last["id"]]
        return [{**last, "note": notes[0] if len(notes) > 0 else ""}]
    liked = [one for one in proposals if one["liked"]]
    if len(liked) == 1:
        return liked
    return proposals if len(proposals) == 1 else []


def ordered_stock(opening: Opening, stock: VisitStock) -> VisitStock:
    """Return the catalog that an order is made from: with the covering as agreed where it is no longer offered."""
    if len(opening["agreed"]) == 0:
        return stock
    stocks = hanging_stocks(opening["agreed"][len(opening["agreed"]) - 1], stock)
    return stocks[0] if len(stocks) > 0 else stock
