"""Written lengths against pint, for thousands of random tapes.

published: the inch is 25.4 mm exactly (NIST SP 811, Appendix B).
"""

from fractions import Fraction

import pint
import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.catalog.length_advice import read_length
from configurator.kernel.say import say_length
from configurator.kernel.tongue import ENGLISH

UNITS = pint.UnitRegistry(non_int_type=Fraction)

UNIT_NAMES = st.sampled_from(["mm", "cm", "m", "in", "ft"])
wholes = st.integers(0, 9999)
parts = st.sampled_from([2, 3, 4, 8, 16, 32, 64]).flatmap(
    lambda below: st.tuples(st.integers(1, below - 1), st.just(below))
)


def in_mm(value: Fraction, unit: str) -> float:
    """Return what pint makes of it."""
    return float(UNITS.Quantity(value, unit).to("mm").magnitude)


def test_the_inch_is_exact() -> None:
    assert read_length("1 in") == 25.4


@given(wholes, parts, st.sampled_from([" in", '"', " inches", "″"]))
def test_inches_and_fractions(whole: int, part: tuple[int, int], unit: str) -> None:
    above, below = part
    assert read_length(f"{whole} {above}/{below}{unit}") == in_mm(whole + Fraction(above, below), "inch")


@given(st.integers(0, 99), st.integers(0, 11), parts)
def test_feet_and_inches(feet: int, inches: int, part: tuple[int, int]) -> None:
    above, below = part
    written = f"{feet}'{inches} {above}/{below}\""
    assert read_length(written) == in_mm(feet * 12 + inches + Fraction(above, below), "inch")


@given(wholes, parts, UNIT_NAMES)
def test_fractions_in_every_unit(whole: int, part: tuple[int, int], unit: str) -> None:
    above, below = part
    assert read_length(f"-{whole} {above}/{below} {unit}") == -in_mm(whole + Fraction(above, below), unit)


@given(st.decimals(0, 9999, places=3), UNIT_NAMES)
def test_decimals_in_every_unit(number: object, unit: str) -> None:
    assert read_length(f"{number} {unit}") == pytest.approx(in_mm(Fraction(str(number)), unit), rel=1e-15)


@given(st.integers(-8000, 8000))
def test_sixty_fourths_said_in_words_are_read_back_the_same(count: int) -> None:
    mm = in_mm(Fraction(count, 64), "inch")
    assert read_length(say_length(mm, ENGLISH, "in")) == mm
