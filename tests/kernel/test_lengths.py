"""One reader and one writer of lengths: what a tape shows is read and written exactly."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.kernel.lengths import say_span, write_length, written_length
from configurator.kernel.message import is_said, say_phrase
from configurator.kernel.tongue import ENGLISH
from tests.tapes import REFUSED, WRITTEN

UNITS = st.sampled_from(["in", "mm"])


@pytest.mark.parametrize(("written", "mm"), WRITTEN.items())
def test_a_written_length_is_read(written: tuple[str, str], mm: float) -> None:
    found = written_length(*written)
    assert (found["sound"], found["mm"], is_said(found["fault"])) == (True, mm, False)


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize(("text", "fault"), REFUSED.items())
def test_what_is_no_length_is_refused(text: str, fault: str, units: str) -> None:
    found = written_length(text, units)
    assert (found["sound"], say_phrase(found["fault"], ENGLISH, units)) == (False, fault)


@pytest.mark.parametrize(
    ("text", "unit", "step"),
    [
        ("22 1/2 in", "in", 12.7),
        ("22 1/64", "", 0.396875),
        ("6'8 3/16\"", "in", 1.5875),
        ("22.05 in", "in", 0.254),
        ("571 mm", "mm", 1.0),
        ("571.50 mm", "mm", 0.01),
        ("57.1 cm", "cm", 1.0),
        ("2.1 m", "m", 100.0),
    ],
)
def test_a_length_knows_its_unit_and_how_finely_it_was_written(text: str, unit: str, step: float) -> None:
    found = written_length(text, "in")
    assert found["unit"] == unit
    assert found["step"] == pytest.approx(step, rel=1e-12)


@pytest.mark.parametrize("units", ["in", "mm"])
def test_every_sixty_fourth_is_read_back_from_a_field_as_it_was(units: str) -> None:
    for count in range(-2000, 8000):
        mm = float(Fraction(count, 64) * Fraction(254, 10))
        assert abs(written_length(write_length(mm, ENGLISH, units), units)["mm"] - mm) <= 1e-6


@pytest.mark.parametrize("units", ["in", "mm"])
def test_every_tenth_of_a_millimetre_is_read_back_from_a_field_as_it_was(units: str) -> None:
    for tenths in range(-5000, 31000):
        assert abs(written_length(write_length(tenths / 10, ENGLISH, units), units)["mm"] - tenths / 10) <= 1e-6


@given(st.floats(-20000, 20000), UNITS)
def test_a_field_never_moves_what_it_shows(mm: float, units: str) -> None:
    assert abs(written_length(write_length(mm, ENGLISH, units), units)["mm"] - mm) <= 1e-6


@pytest.mark.parametrize(
    ("mm", "units", "text"),
    [
        (571.5, "in", "22 1/2"),
        (506.4125, "in", "19 15/16"),
        (559.196875, "in", "22 1/64"),
        (-12.7, "in", "-1/2"),
        (0.0, "in", "0"),
        (535.178, "in", "21.07"),
        (820.0, "in", "820 mm"),
        (544.55, "in", "544.55 mm"),
        (25.4 / 3, "in", "0.33333333"),
        (571.5, "mm", "571.5"),
        (3.175, "mm", "3.175"),
        (535.178, "mm", "535.178"),
        (-300.0, "mm", "-300"),
    ],
)
def test_a_field_shows_a_length_as_it_was_given(mm: float, units: str, text: str) -> None:
    assert write_length(mm, ENGLISH, units) == text


def test_limits_told_in_inches_lie_within_those_in_millimeters() -> None:
    assert say_span(100, 1500, ENGLISH, "mm") == "between 100 mm and 1500 mm"
    assert say_span(100, 1500, ENGLISH, "in") == "between 4 in and 59 in"
    assert say_span(-3000, 1000, ENGLISH, "in") == "between -118 in and 39 1/4 in"
