"""Lengths as people write them."""

import pytest

from configurator.catalog.lengths import is_imperial, read_length, say_inches, say_length, say_span

WRITTEN = {
    "22 1/2 in": 571.5,
    "22-1/2 in": 571.5,
    '22.5"': 571.5,
    '22 1/2"': 571.5,
    "22½ in": 571.5,
    "22 ½″": 571.5,
    "½ inch": 12.7,
    "3/8 in": 9.525,
    ".5 in": 12.7,
    "80 inches": 2032.0,
    "6'8\"": 2032.0,
    "6' 8\"": 2032.0,
    "6'-8\"": 2032.0,
    "6′8″": 2032.0,
    "6’8”": 2032.0,
    "6'": 1828.8,
    "6 ft": 1828.8,
    "6 feet 8 inches": 2032.0,
    "6 ft 8 1/2 in": 2044.7,
    "6'8½\"": 2044.7,
    "8 FT": 2438.4,
    "571 mm": 571.0,
    "571mm": 571.0,
    "571.5 mm": 571.5,
    "57.1 cm": 571.0,
    "2.1 m": 2100.0,
    "571\u00a0mm": 571.0,
    "-6 in": -152.4,
    "−6 in": -152.4,
    "0 mm": 0.0,
}


@pytest.mark.parametrize(("text", "mm"), WRITTEN.items())
def test_a_written_length_is_read_in_millimetres(text: str, mm: float) -> None:
    assert read_length(text) == mm


REFUSED = {
    "22": "a length needs its unit: write 22 in or 22 mm",
    "22 1/2": "a length needs its unit: write 22 1/2 in or 22 1/2 mm",
    "-6": "a length needs its unit: write -6 in or -6 mm",
    "57,1 cm": "a decimal point is expected: write 57.1 cm",
    "1/0 in": "1/0 is no fraction that a tape shows; a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
    "22 4/4 in": "4/4 is no fraction that a tape shows; a length such as 22 1/2 in, 6'8\" or 571 mm is expected",
    "5'12\"": "inches after feet stay below 12; a length such as 6'8\" is expected",
}
NO_LENGTHS = [
    "",
    "in",
    "mm",
    "wide",
    "22 yd",
    "22 in in",
    "8 in 6 ft",
    "6'8",
    "1e3 mm",
    "inf mm",
    "nan mm",
    "-- 6 in",
]


@pytest.mark.parametrize(("text", "advice"), REFUSED.items())
def test_a_slip_is_told_with_what_to_write(text: str, advice: str) -> None:
    with pytest.raises(ValueError, match=r"expected|write") as told:
        read_length(text)
    assert str(told.value) == advice


@pytest.mark.parametrize("text", NO_LENGTHS)
def test_what_is_no_length_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="a length such as 22 1/2 in, 6'8\" or 571 mm is expected"):
        read_length(text)


def test_lengths_are_said_in_the_writers_units() -> None:
    assert say_length(571.5, imperial=is_imperial("22 in")) == "22 1/2 in"
    assert say_length(571.5, imperial=is_imperial("571 mm")) == "571.5 mm"
    assert is_imperial("6'8\"")
    assert not is_imperial("-2 m")


@pytest.mark.parametrize(
    ("mm", "words"), [(0, "0 in"), (12.7, "1/2 in"), (25.4, "1 in"), (-152.4, "-6 in"), (2030.4, "79 15/16 in")]
)
def test_inches_are_said_to_the_sixteenth(mm: float, words: str) -> None:
    assert say_inches(mm) == words


def test_limits_said_in_inches_lie_within_those_in_millimetres() -> None:
    assert say_span(100, 1500, imperial=False) == "between 100 mm and 1500 mm"
    assert say_span(100, 1500, imperial=True) == "between 4 in and 59 in"
    assert read_length("4 in") >= 100
    assert read_length("59 in") <= 1500
