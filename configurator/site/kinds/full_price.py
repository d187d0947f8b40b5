"""What a covering costs on a door with its first picks, in full and with its working, where the showroom shows that."""

from typing import TypedDict

from configurator.kernel.message import is_said, message, plain, several, silence
from configurator.kernel.papers.quote_paper import lead_words, piece_words
from configurator.kernel.prices.bills import bill_of
from configurator.kernel.prices.money_words import money_term, price_rule, price_sum, say_money
from configurator.kernel.prices.offers import offer_of
from configurator.kernel.prices.piece_prices import hung_pieces
from configurator.kernel.prices.price_shapes import Bill, Money, Offer, PriceLine, PriceTerms
from configurator.kernel.shapes import Door, Family, Message
from configurator.site.house import House


class PriceRow(TypedDict):
    """A line of a price in words: its name, its rule, the numbers put in, what it comes to."""

    name: str
    rule: str
    sum: str
    amount: str


class PriceTable(TypedDict):
    """The lines of a piece or of the whole under their caption, and what they come to."""

    caption: str
    rows: list[PriceRow]
    total: str


class FullPrice(TypedDict):
    """The price in one sentence, or why there is none; its tables, and on which terms it is told."""

    says: str
    tables: list[PriceTable]
    terms: list[str]


def full_price(house: House, door: Door, family: Family) -> FullPrice | None:
    """Return the price on a door that the covering fits; nothing where none is shown or no book has the family."""
    prices = house.catalog.prices
    if prices is None or prices.shown != "full" or family["id"] not in prices.books:
        return None
    offer = offer_of(hung_pieces(house.hung(door, family)), prices.books, prices.terms)
    if is_said(offer["refusal"]):
        return {"says": house.say(offer["refusal"]), "tables": [], "terms": []}
    bill = bill_of([offer], prices.terms)
    tables = [*piece_tables(house, offer, prices.terms["money"]), bill_lines(house, bill, prices.terms["money"])]
    told = house.say(in_short(offer, bill, prices.terms["money"]))
    return {"says": told, "tables": tables, "terms": [house.say(term) for term in shown_terms(prices.terms)]}


def in_short(offer: Offer, bill: Bill, money: Money) -> Message:
    """Return what the covering costs, and what it comes to with all that a quote adds."""
    terms = {"amount": money_term(offer["amount"], money), "total": money_term(bill["total"], money)}
    if offer["amount"] == bill["total"]:
        return message("{amount} with the choices drawn here.", terms)
    return message("{amount} with the choices drawn here, and {total} with all that a quote adds to it.", terms)


def piece_tables(house: House, offer: Offer, money: Money) -> list[PriceTable]:
    """Return a table for each piece that hangs, under the size in which it is ordered."""
    return [price_table(house, piece_words(price), price["lines"], price["amount"], money) for price in offer["prices"]]


def bill_lines(house: House, bill: Bill, money: Money) -> PriceTable:
    """Return what a quote for this alone would come to: the covering, extras, fitting, travel and tax as they apply."""
    return price_table(house, plain("What it comes to"), bill["lines"], bill["total"], money)


def price_table(house: House, caption: Message, lines: list[PriceLine], total: float, money: Money) -> PriceTable:
    """Return lines with their workings, and what they come to."""
    rows: list[PriceRow] = [
        {
            "name": house.say(line["name"]),
            "rule": house.say(price_rule(line, money)),
            "sum": house.phrase(price_sum(line, money)),
            "amount": say_money(line["amount"], money),
        }
        for line in lines
    ]
    return {"caption": house.say(caption), "rows": rows, "total": say_money(total, money)}


def shown_terms(terms: PriceTerms) -> list[Message]:
    """Return what the price leaves open: what binds, how long, when it hangs."""
    days: dict[str, list[float | str]] = {"count": [terms["valid_days"], "count"]}
    binding = several(
        "What binds is a written quote, which holds for {count} day; other sizes and choices cost otherwise.",
        "What binds is a written quote, which holds for {count} days; other sizes and choices cost otherwise.",
        days,
    )
    untaxed = plain("No tax is in it.") if terms["tax"] == 0 else silence()
    return [term for term in (binding, lead_words(terms["lead_weeks"]), untaxed) if is_said(term)]
