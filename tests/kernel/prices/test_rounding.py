"""Whole numbers of minor units: halves up, exact as far as a browser counts."""

from fractions import Fraction
from math import floor

import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.kernel.prices.price_shapes import MOST_MONEY, WHOLE_RATE
from configurator.kernel.prices.rounding import half_up, rounded_to


@pytest.mark.parametrize(
    ("above", "below", "rounded"),
    [(5, 2, 3), (3, 2, 2), (1, 3, 0), (2, 3, 1), (0, 7, 0), (24125, 10, 2413), (24124, 10, 2412)],
)
def test_halves_go_up(above: float, below: float, rounded: float) -> None:
    assert half_up(above, below) == rounded


@pytest.mark.parametrize(("to", "rounded"), [(1, 1237), (5, 1235), (10, 1240), (100, 1200)])
def test_to_a_step_of_minor_units(to: float, rounded: float) -> None:
    assert rounded_to(12365, 10, to) == rounded


@given(st.integers(0, int(MOST_MONEY)), st.integers(0, int(WHOLE_RATE)))
def test_any_share_of_any_amount_is_exact(amount: int, rate: int) -> None:
    assert 2 * amount * rate < 2**53
    assert half_up(float(amount * rate), WHOLE_RATE) == floor(Fraction(amount * rate, 10000) + Fraction(1, 2))
