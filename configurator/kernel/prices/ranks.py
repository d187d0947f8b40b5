"""Good, better, best: the offers for each opening in the order of their prices, and what each way comes to."""

from configurator.kernel.message import is_said
from configurator.kernel.numbers import nearest
from configurator.kernel.prices.bills import bill_of
from configurator.kernel.prices.price_shapes import Offer, PriceTerms, Quote, Quoted, Rank
from configurator.kernel.tongue import wording

# By how many ways there are, from the lowest price up.
RANKS: list[list[str]] = [[], ["only"], ["good", "better"], ["good", "better", "best"]]
RANK_WORDS: dict[str, str] = {
    "only": wording("as offered"),
    "good": wording("good"),
    "better": wording("better"),
    "best": wording("best"),
}


def with_price(offers: list[Offer]) -> list[int]:
    """Return the places of those offers that have a price, the lowest first; equal ones as they stand."""
    places = [place for place in range(len(offers)) if not is_said(offers[place]["refusal"])]
    return sorted(places, key=lambda place: offers[place]["amount"])


def ranked(openings: list[list[Offer]], terms: PriceTerms) -> list[Rank]:
    """Return up to three ways to take a quote, as many as the opening with most offers has; none without a price.

    Of an opening with fewer offers a way takes the nearest; an opening without a priced offer is in no bill.
    """
    places = [with_price(offers) for offers in openings]
    most = 0
    for one in places:
        most = max(most, min(3, len(one)))
    ways: list[Rank] = []
    for key in RANKS[most]:
        picks = [taken(one, len(ways), most) for one in places]
        ways.append({"id": key, "picks": picks, "bill": bill_of(picked_offers(openings, picks), terms)})
    return ways


def taken(places: list[int], way: int, ways: int) -> int:
    """Return the place of the offer that one of the ways takes for an opening; -1 where none has a price."""
    if len(places) == 0:
        return -1
    if ways == 1:
        return places[0]
    return places[int(nearest(way * (len(places) - 1) / (ways - 1)))]


def picked_offers(openings: list[list[Offer]], picks: list[int]) -> list[Offer]:
    """Return the offers that are picked, -1 for none, opening by opening."""
    offers: list[Offer] = []
    for opening in range(len(openings)):
        if picks[opening] >= 0:
            offers.append(openings[opening][picks[opening]])
    return offers


def quote_ways(quote: Quote) -> list[Rank]:
    """Return the ways to take a quote: of each opening's offers the one that is taken, where one is."""
    return ranked([open_offers(opening) for opening in quote["openings"]], quote["terms"])


def open_offers(opening: Quoted) -> list[Offer]:
    """Return the offers between which is still to be chosen."""
    if opening["taken"] < 0:
        return opening["offers"]
    return [opening["offers"][opening["taken"]]]
