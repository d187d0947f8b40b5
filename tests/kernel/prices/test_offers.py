"""What is offered: the sum of its pieces, or the price that was named for it."""

import pytest

from configurator.kernel.message import plain
from configurator.kernel.prices.offers import minor_of, named_offer
from tests.kernel.prices.price_samples import DOLLARS, offered, priced_piece


@pytest.mark.parametrize(
    ("written", "minor"),
    [
        *[("1240.00", 124000), ("290", 29000), ("0.5", 50)],
        *[(wrong, -1) for wrong in ("1240.005", "", "-3", "1,240", ".5", "3.", "12345678", "1.2.3", "<b>")],
    ],
)
def test_a_named_price_is_digits_with_a_point(written: str, minor: float) -> None:
    assert minor_of(written, DOLLARS) == minor


def test_a_named_price_goes_before_the_books() -> None:
    offer = {**offered([priced_piece(19300.0, {})]), "refusal": plain("No price.")}
    assert named_offer(offer, "", DOLLARS) == offer
    named = named_offer(offer, "180", DOLLARS)
    assert (named["amount"], named["named"], named["refusal"]["text"]) == (18000, 18000, "")
