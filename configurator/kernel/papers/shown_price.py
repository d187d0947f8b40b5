"""What a visitor is shown of a price on a door, as the showroom says: its start, or all of it with its working."""

from typing import TypedDict

from configurator.kernel.message import is_said, message, plain, several, silence
from configurator.kernel.papers.quote_paper import lead_words, piece_words
from configurator.kernel.prices.bills import bill_of
from configurator.kernel.prices.money_words import is_in_money, money_term, say_start
from configurator.kernel.prices.offers import offer_of
from configurator.kernel.prices.price_shapes import Bill, Money, Offer, PriceLine, PriceStock, PriceTerms
from configurator.kernel.shapes import Message
from configurator.kernel.visit.visit_shapes import HungLeaf


class PricePart(TypedDict):
    """The lines of a piece or of the whole under their caption, and what they come to, in minor units."""

    caption: Message
    lines: list[PriceLine]
    amount: float


class ShownPrice(TypedDict):
    """The price in one sentence, or why there is none; silent where nothing is shown. Its ``parts`` with every working,
    and ``terms``, which say what binds."""

    says: Message
    parts: list[PricePart]
    terms: list[Message]


def shown_price(pieces: list[HungLeaf], stock: PriceStock) -> ShownPrice:
    """Return what is shown of the price of a covering's pieces, one at least; nothing of a family without a book."""
    shown: ShownPrice = {"says": silence(), "parts": [], "terms": []}
    if not is_in_money(stock["shown"]) or pieces[0]["fit"]["family"]["id"] not in stock["books"]:
        return shown
    terms = stock["terms"]
    offer = offer_of(pieces, stock["books"], terms)
    if is_said(offer["refusal"]):
        shown["says"] = offer["refusal"]
    elif stock["shown"] == "from":
        shown["says"] = from_words(offer, terms["money"])
    else:
        bill = bill_of([offer], terms)
        shown["says"] = full_words(offer, bill, terms["money"])
        shown["parts"] = price_parts(offer, bill)
        shown["terms"] = shown_terms(terms)
    return shown


def start_words(pieces: list[HungLeaf], stock: PriceStock) -> Message:
    """Return in few words from which price on a covering's pieces are had; silent where that is not shown or known."""
    if not is_in_money(stock["shown"]):
        return silence()
    offer = offer_of(pieces, stock["books"], stock["terms"])
    if is_said(offer["refusal"]):
        return silence()
    return message("from {amount}", {"amount": [say_start(offer["amount"], stock["terms"]["money"]), "name"]})


def from_words(offer: Offer, money: Money) -> Message:
    """Return from which price on the covering is had as it is drawn."""
    terms: dict[str, list[float | str]] = {"amount": [say_start(offer["amount"], money), "name"]}
    return message("From {amount} with the choices drawn here. What binds is a written quote.", terms)


def full_words(offer: Offer, bill: Bill, money: Money) -> Message:
    """Return what the covering costs, and what it comes to with all that a quote adds."""
    terms = {"amount": money_term(offer["amount"], money), "total": money_term(bill["total"], money)}
    if offer["amount"] == bill["total"]:
        return message("{amount} with the choices drawn here.", terms)
    return message("{amount} with the choices drawn here, and {total} with all that a quote adds to it.", terms)


def price_parts(offer: Offer, bill: Bill) -> list[PricePart]:
    """Return each piece that hangs, under the size in which it is ordered, and what a quote for this alone would come
    to: the covering, extras, fitting, travel and tax as they apply."""
    parts: list[PricePart] = []
    for price in offer["prices"]:
        parts.append({"caption": piece_words(price), "lines": price["lines"], "amount": price["amount"]})
    parts.append({"caption": plain("What it comes to"), "lines": bill["lines"], "amount": bill["total"]})
    return parts


def shown_terms(terms: PriceTerms) -> list[Message]:
    """Return what the price leaves open: what binds, how long, when it hangs."""
    days: dict[str, list[float | str]] = {"count": [terms["valid_days"], "count"]}
    binding = several(
        "What binds is a written quote, which holds for {count} day; other sizes and choices cost otherwise.",
        "What binds is a written quote, which holds for {count} days; other sizes and choices cost otherwise.",
        days,
    )
    told = [binding, lead_words(terms["lead_weeks"])]
    if terms["tax"] == 0:
        told.append(plain("No tax is in it."))
    return told
