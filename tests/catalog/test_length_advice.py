"""Lengths as people write them."""

import pytest

from configurator.catalog.length_advice import read_length, units_of

WRITTEN = {
    "22 1/2 in": 571.5,
    "6'8\"": 2032.0,
    "6' 8": 2032.0,
    "571 mm": 571.0,
    "57,1 cm": 571.0,
    "-6 in": -152.4,
}


@pytest.mark.parametrize(("text", "mm"), WRITTEN.items())
def test_a_length_with_its_unit_is_read_in_millimeters(text: str, mm: float) -> None:
    assert read_length(text) == mm


REFUSED = {
    "22": "a length needs its unit: write 22 in or 22 mm",
    "22 1/2": "a length needs its unit: write 22 1/2 in or 22 1/2 mm",
    "-6": "a length needs its unit: write -6 in or -6 mm",
    "22½": "a length needs its unit: write 22 1/2 in or 22 1/2 mm",
    "57,1": "a length needs its unit: write 57.1 in or 57.1 mm",
    "1/0 in": "1/0 is no fraction that a tape shows; a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
    "22 4/4 in": "4/4 is no fraction that a tape shows; a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
    "5'12\"": "inches after feet stay below 12; a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
}
NO_LENGTHS = ["", "in", "wide", "22 yd", "8 in 6 ft", "1e3 mm", "nan mm", "-- 6 in"]


@pytest.mark.parametrize(("text", "advice"), REFUSED.items())
def test_a_slip_is_told_with_what_to_write(text: str, advice: str) -> None:
    with pytest.raises(ValueError, match=r"expected|write") as told:
        read_length(text)
    assert str(told.value) == advice


@pytest.mark.parametrize("text", NO_LENGTHS)
def test_what_is_no_length_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="a length such as 22 1/2 in, 6'8\" or 571 mm is expected"):
        read_length(text)


@pytest.mark.parametrize(
    ("text", "units"), [("22 in", "in"), ("6'8\"", "in"), ("571 mm", "mm"), ("-2 m", "mm"), ("wide", "in")]
)
def test_limits_are_told_in_the_units_of_the_writer(text: str, units: str) -> None:
    assert units_of(text) == units
