"""What a covering costs on a door with its first picks, in words, where the showroom shows that."""

from typing import TypedDict

from configurator.kernel.message import is_said
from configurator.kernel.papers.shown_price import PricePart, ShownPrice, shown_price, start_words
from configurator.kernel.prices.money_words import price_rule, price_sum, say_money
from configurator.kernel.prices.piece_prices import hung_pieces
from configurator.kernel.prices.price_shapes import Money
from configurator.kernel.shapes import Door, Family
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
    """Return the price on a door that it fits; nothing where it is not shown in full or no book has the family."""
    prices = house.catalog.prices
    if prices is None or prices.shown != "full":
        return None
    shown = shown_price(hung_pieces(house.hung(door, family)), prices.stock())
    return price_told(house, shown, prices.terms["money"]) if is_said(shown["says"]) else None


def price_start(house: House, door: Door, family: Family) -> str:
    """Return in few words from which price on a family is had on a door; nothing where that is not shown or known."""
    prices = house.catalog.prices
    return house.phrase(start_words(hung_pieces(house.hung(door, family)), prices.stock())) if prices else ""


def price_told(house: House, shown: ShownPrice, money: Money) -> FullPrice:
    """Return a price in words."""
    return {
        "says": house.say(shown["says"]),
        "tables": [price_table(house, part, money) for part in shown["parts"]],
        "terms": [house.say(term) for term in shown["terms"]],
    }


def price_table(house: House, part: PricePart, money: Money) -> PriceTable:
    """Return lines with their workings, and what they come to."""
    rows: list[PriceRow] = [
        {
            "name": house.say(line["name"]),
            "rule": house.say(price_rule(line, money)),
            "sum": house.phrase(price_sum(line, money)),
            "amount": say_money(line["amount"], money),
        }
        for line in part["lines"]
    ]
    return {"caption": house.say(part["caption"]), "rows": rows, "total": say_money(part["amount"], money)}
