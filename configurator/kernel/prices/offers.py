"""A covering as it is offered: its pieces priced by the showroom's books, or for the price that was named."""

from configurator.kernel.message import is_said, silence
from configurator.kernel.prices.money_words import say_money
from configurator.kernel.prices.piece_prices import pick_names, piece_price
from configurator.kernel.prices.price_shapes import Money, Offer, PriceBook, PriceTerms
from configurator.kernel.shapes import Message
from configurator.kernel.visit.visit_shapes import HungLeaf

# No price that a person writes has more digits before its point.
LONGEST = 7


def offer_of(hung: list[HungLeaf], books: dict[str, PriceBook], terms: PriceTerms) -> Offer:
    """Return what is offered with a covering's pieces, one at least: their sum, or why there is none."""
    family = hung[0]["fit"]["family"]
    offer = no_offer(family["name"], silence())
    offer["picks"] = [pick_names(family, choice, option) for choice, option in hung[0]["fit"]["choices"].items()]
    for piece in hung:
        price = piece_price(piece, books, terms)
        offer["prices"].append(price)
        offer["amount"] = offer["amount"] + price["amount"]
        if is_said(price["refusal"]) and not is_said(offer["refusal"]):
            offer["refusal"] = price["refusal"]
    return offer


def no_offer(name: str, refusal: Message) -> Offer:
    """Return an offer of nothing yet, or of what cannot be had."""
    return {"name": name, "note": "", "picks": [], "prices": [], "named": -1.0, "amount": 0.0, "refusal": refusal}


def named_offer(offer: Offer, written: str, money: Money) -> Offer:
    """Return an offer for the price that was named for it, as digits with a point; as it is where none was."""
    amount = minor_of(written, money)
    if amount < 0:
        return offer
    return {**offer, "named": amount, "amount": amount, "refusal": silence()}


def say_named(written: str, money: Money) -> str:
    """Return a price that was named as digits with a point, as it is written in a currency; other words as they are."""
    amount = minor_of(written, money)
    return written if amount < 0 else say_money(amount, money)


def minor_of(written: str, money: Money) -> float:
    """Return an amount in minor units, or -1 where the text is no amount that the currency has."""
    parts = written.split(".")
    tail = parts[1] if len(parts) > 1 else ""
    if len(parts) > 2 or len(tail) > money["digits"] or len(parts[0]) > LONGEST:
        return -1.0
    if not is_digits(parts[0]) or (len(parts) > 1 and not is_digits(tail)):
        return -1.0
    while len(tail) < money["digits"]:
        tail = tail + "0"
    return float(parts[0] + tail)


def is_digits(text: str) -> bool:
    """Return whether a text is one digit or more and nothing else."""
    for sign in text:
        if sign not in "0123456789":
            return False
    return text != ""
