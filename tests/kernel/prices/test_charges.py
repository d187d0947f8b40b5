"""What a charge comes to, each example worked by hand."""

from typing import Any

import pytest

from configurator.kernel.message import is_said, plain, say
from configurator.kernel.prices.charges import charge_line, charge_refusal, share_line
from configurator.kernel.prices.money_words import price_rule, price_sum
from configurator.kernel.prices.piece_prices import book_refusal
from configurator.kernel.prices.price_shapes import Charge
from configurator.kernel.tongue import ENGLISH
from tests.kernel.prices.price_samples import DOLLARS, GRID, INCH, area, charge, terms, worked_amount

NAME = plain("Price by size")


def amount(given: Charge, width: float, height: float) -> float:
    """Return what a charge comes to for a size in inches, checked against its own working."""
    line = charge_line(given, "size", NAME, [width * INCH, height * INCH], terms())
    assert abs(worked_amount(line) - int(line["amount"])) * 2 <= 1
    assert line["rounded"] == (worked_amount(line) != line["amount"])
    return line["amount"]


@pytest.mark.parametrize(
    ("width", "height", "cents"),
    [(20, 40, 10000), (24, 48, 10000), (24.125, 48, 12000), (24, 48.125, 13000), (36, 72, 16000), (47.9, 71.9, 20000)],
)
def test_a_grid_takes_the_next_width_and_height_up(width: float, height: float, cents: float) -> None:
    assert amount(GRID, width, height) == cents


def test_a_size_beyond_the_grid_has_no_price_and_says_where_the_book_ends() -> None:
    assert say(charge_refusal(GRID, [48.5 * INCH, 60 * INCH]), ENGLISH, "in") == (
        "The price book ends at 48 in by 72 in, and this is 48 1/2 in by 60 in: its price is asked for."
    )
    assert charge_refusal(GRID, [48 * INCH, 72 * INCH])["text"] == ""


# 30 x 60 in is 12.5 sq ft; 30 x 61 in is 12.7083, up to a tenth 12.8; 18 x 40 in is 5, below the 7 that are charged.
@pytest.mark.parametrize(("width", "height", "cents"), [(30, 60, 48125), (30, 61, 49280), (18, 40, 26950)])
def test_an_area_is_rounded_up_and_at_least_what_is_charged(width: float, height: float, cents: float) -> None:
    assert amount(area(3850.0, "sq ft", 10.0, 700.0), width, height) == cents


def test_an_area_in_square_meters() -> None:
    # 0.762 x 1.524 m is 1.161288 m2, up to a hundredth 1.17; x 410.50 is 480.285, halves up 480.29.
    line = charge_line(area(41050.0, "m2", 1.0, 50.0), "size", NAME, [762.0, 1524.0], terms())
    assert (line["amount"], line["rounded"]) == (48029, True)
    assert say(price_sum(line, DOLLARS), ENGLISH, "mm") == "$410.50 x 1.17 ≈ $480.29"


def test_one_price_for_each_is_rounded_as_the_showroom_says() -> None:
    assert amount(charge("each", 950.0), 30, 60) == 950
    assert charge_line(charge("each", 950.0), "clip", NAME, [700.0, 900.0], terms(100.0))["amount"] == 1000
    assert charge_line(charge("each", 950.0), "clip", NAME, [700.0, 900.0], terms(100.0, "total"))["amount"] == 950


def test_a_share_says_its_working() -> None:
    # 22.5 % of $333.00 is $74.925, halves up $74.93.
    line = share_line(2250.0, "fabric", NAME, 33300.0, 1.0)
    assert line["amount"] == 7493
    assert say(price_rule(line, DOLLARS), ENGLISH, "in") == "A share of the price by size"
    assert say(price_sum(line, DOLLARS), ENGLISH, "in") == "22.5% x $333.00 ≈ $74.93"


def test_a_size_without_a_price_stays_without_one_whatever_the_picks_cost() -> None:
    choice = {"id": "lift", "options": [{"id": "cord"}, {"id": "wand"}]}
    fit: Any = {"family": {"choices": [choice]}, "choices": {"lift": "wand"}}
    large = [100 * INCH, 60 * INCH]
    for additions in ({}, {"lift": {"wand": area(500.0, "sq-ft", 1.0, 0.0)}}):
        book: Any = {"size": GRID, "additions": additions}
        assert book_refusal(book, fit, large) == charge_refusal(GRID, large)
    narrow = {"lift": {"wand": GRID}}
    book = {"size": area(500.0, "sq-ft", 1.0, 0.0), "additions": narrow}
    assert book_refusal(book, fit, large) == charge_refusal(GRID, large)
    assert not is_said(book_refusal({**book, "additions": {"lift": {"cord": GRID}}}, fit, large))
