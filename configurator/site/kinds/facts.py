"""What a family is like that no geometry tells, in words: what its page shows, and where each fact comes from."""

from typing import TypedDict

from configurator.kernel.fact_words import ANIMAL_WORDS, CLEANING_WORDS, PRICE_WORDS
from configurator.kernel.message import message
from configurator.kernel.prices.charges import lowest_amount
from configurator.kernel.prices.money_words import is_in_money, money_term
from configurator.kernel.shapes import Family
from configurator.kernel.tongue import wording
from configurator.site.house import House

FACT_NAMES = {
    "price": wording("Price"),
    "price_level": wording("Price level"),
    "cleaning": wording("Cleaning"),
    "animals": wording("With animals"),
}


class FactLine(TypedDict):
    """A fact's name, what is so, and its source, in words."""

    name: str
    text: str
    source: str


def fact_texts(family: Family) -> dict[str, str]:
    """Return what is so of a family, by the fact's name; nothing of what is not known."""
    texts = {
        "price_level": PRICE_WORDS[int(family["price_level"])],
        "cleaning": CLEANING_WORDS.get(family["cleaning"], ""),
        "animals": ANIMAL_WORDS.get(family["animals"], ""),
    }
    return {name: text for name, text in texts.items() if text}


def price_lines(house: House, family: Family) -> list[FactLine]:
    """Return from which price on a family is had, where the showroom shows that and has a price book for it."""
    prices = house.catalog.prices
    if prices is None or not is_in_money(prices.shown) or family["id"] not in prices.books:
        return []
    lowest = money_term(lowest_amount(prices.books[family["id"]]["size"]), prices.terms["money"])
    return [
        {
            "name": house.named(FACT_NAMES["price"]),
            "text": house.phrase(message("from {amount} for the smallest size", {"amount": lowest})),
            "source": house.source(prices.sources[family["id"]]),
        }
    ]


def fact_lines(house: House, family: Family) -> list[FactLine]:
    """Return the facts that are known of a family."""
    sources = house.catalog.family_notes[family["id"]].fact_sources
    return price_lines(house, family) + [
        {"name": house.named(FACT_NAMES[name]), "text": house.named(text), "source": house.source(sources[name])}
        for name, text in fact_texts(family).items()
    ]
