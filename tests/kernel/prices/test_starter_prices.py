"""The starter's price books: no covering is cheaper when larger, and every line of a piece evaluates."""

import random

import pytest

from configurator.catalog import Catalog
from configurator.catalog.pricing import Pricing
from configurator.kernel.message import is_said, say
from configurator.kernel.mount.hung import hung
from configurator.kernel.prices.piece_prices import hung_pieces, piece_price
from configurator.kernel.prices.price_shapes import Price
from configurator.kernel.shapes import Fit
from tests.kernel.prices.price_samples import cost, worked_amount


@pytest.fixture(scope="module")
def prices(catalog: Catalog) -> Pricing:
    """The starter's prices."""
    assert catalog.prices is not None
    return catalog.prices


def piece_prices(fit: Fit, prices: Pricing) -> list[Price]:
    """Return the price of every piece that hangs of a fit."""
    return [piece_price(piece, prices.books, prices.terms) for piece in hung_pieces(fit)]


def random_picks(rng: random.Random, catalog: Catalog, family: str) -> dict[str, str]:
    """Return any picks of a family."""
    choices = catalog.families[family]["choices"]
    return {choice["id"]: rng.choice(choice["options"])["id"] for choice in choices}


def test_a_larger_covering_is_never_cheaper(catalog: Catalog, prices: Pricing) -> None:
    rng = random.Random(7)
    door = catalog.doors["garden-door"]
    for family, book in prices.books.items():
        fit = hung(door, catalog.families[family], random_picks(rng, catalog, family))
        for _ in range(60):
            size = [rng.uniform(200, 2000), rng.uniform(500, 2800)]
            larger = [size[0] + rng.uniform(0, 120), size[1] + rng.uniform(0, 120)]
            costs = [cost(book, fit, one, prices.terms) for one in (size, larger)]
            assert costs[1] is None or (costs[0] is not None and costs[0] <= costs[1]), (family, size, larger)


def test_every_piece_is_the_sum_of_lines_that_evaluate(catalog: Catalog, prices: Pricing) -> None:
    rng = random.Random(8)
    told = 0
    for family in prices.books:
        for door in rng.sample(list(catalog.doors.values()), 4):
            fit = hung(door, catalog.families[family], random_picks(rng, catalog, family))
            for price in piece_prices(fit, prices):
                assert price["amount"] == sum(line["amount"] for line in price["lines"])
                assert is_said(price["refusal"]) == (price["lines"] == [])
                for line in price["lines"]:
                    told += 1
                    assert abs(worked_amount(line) - int(line["amount"])) * 2 <= 1
    assert told > 40


def test_both_leaves_of_a_pair_are_priced(catalog: Catalog, prices: Pricing) -> None:
    pair = hung(catalog.doors["garden-pair"], catalog.families["cellular-shade"], {})
    assert [price["leaf"] for price in piece_prices(pair, prices)] == ["active", "other"]
    single = hung(catalog.doors["garden-door"], catalog.families["cellular-shade"], {})
    assert [price["leaf"] for price in piece_prices(single, prices)] == ["active"]


def test_a_family_without_a_book_says_so(catalog: Catalog, prices: Pricing) -> None:
    fit = hung(catalog.doors["garden-door"], catalog.families["metal-blind"], {})
    (price,) = piece_prices(fit, prices)
    assert say(price["refusal"], catalog.words, "in") == (
        "The showroom's price books have no price for it: it is asked for."
    )
    assert price["lines"] == []
