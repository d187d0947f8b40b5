"""Good, better, best: which offers each way takes."""

from configurator.kernel.message import plain, silence
from configurator.kernel.prices.price_shapes import Offer
from configurator.kernel.prices.ranks import ranked
from tests.kernel.prices.price_samples import offered, priced_piece, terms


def offer(name: str, cents: float) -> Offer:
    """Return an offer of one piece; without a price where it costs nothing."""
    refusal = silence() if cents else plain("No price.")
    return {**offered([priced_piece(cents, {})]), "name": name, "refusal": refusal}


STUDY = [offer("soft", 40000.0), offer("roller", 12000.0), offer("cells", 19300.0), offer("odd", 0.0)]
HALL = [offer("panel", 9000.0)]


def test_three_ways_from_the_lowest_price_to_the_highest() -> None:
    ways = ranked([STUDY, HALL], terms())
    assert [way["id"] for way in ways] == ["good", "better", "best"]
    assert [way["picks"] for way in ways] == [[1, 0], [2, 0], [0, 0]]
    assert [way["bill"]["total"] for way in ways] == [21000, 28300, 49000]


def test_two_offers_are_two_ways_and_one_is_as_offered() -> None:
    assert [way["id"] for way in ranked([STUDY[:2], HALL], terms())] == ["good", "better"]
    assert [way["id"] for way in ranked([HALL], terms())] == ["only"]


def test_an_opening_without_a_price_is_in_no_bill() -> None:
    ways = ranked([STUDY[3:], HALL], terms())
    assert [(way["picks"], way["bill"]["total"]) for way in ways] == [([-1, 0], 9000)]
    assert ranked([STUDY[3:]], terms()) == []
