"""The quote for a visit: what is proposed for each opening, or what was agreed or is liked alone."""

from configurator.kernel.message import plain
from configurator.kernel.papers.decided import decided, ordered_stock
from configurator.kernel.prices.offers import named_offer, no_offer, offer_of
from configurator.kernel.prices.price_shapes import Offer, PriceStock, Quote, Quoted
from configurator.kernel.visit.hung_leaves import hung_leaves, is_offered
from configurator.kernel.visit.visit_shapes import Opening, Proposal, Visit, VisitStock


def visit_quote(visit: Visit, stock: VisitStock, prices: PriceStock, showroom: str, on: str) -> Quote:
    """Return the quote that a ``showroom`` makes for a visit on a day, which is told as it stands."""
    openings: list[Quoted] = []
    for opening in visit["openings"]:
        quoted = quoted_opening(opening, stock, prices)
        if len(quoted["offers"]) > 0:
            openings.append(quoted)
    return {
        "showroom": showroom,
        "client": visit["client"],
        "link": "",
        "on": on,
        "openings": openings,
        "terms": prices["terms"],
    }


def quoted_opening(opening: Opening, stock: VisitStock, prices: PriceStock) -> Quoted:
    """Return what is decided for an opening, with the covering as it was agreed, or else all that is proposed."""
    settled = decided(opening)
    held = ordered_stock(opening, stock)
    wanted = settled if len(settled) > 0 else opening["proposals"]
    offers = [proposed_offer(opening, one, held, prices) for one in wanted]
    return {"name": opening["room"], "offers": offers, "taken": 0 if len(settled) > 0 else -1}


def proposed_offer(opening: Opening, proposal: Proposal, stock: VisitStock, prices: PriceStock) -> Offer:
    """Return a proposal as an offer: for the price that was named for it, or by the books."""
    offer = no_offer(proposal["family"], plain("This covering is no longer offered."))
    if is_offered(proposal, stock):
        offer = offer_of(hung_leaves(opening, proposal, stock), prices["books"], prices["terms"])
    return named_offer({**offer, "note": proposal["note"]}, proposal["price"], prices["terms"]["money"])
