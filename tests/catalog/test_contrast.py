"""Contrast of colours (published: WCAG 2.2, 1.4.3) and the nearest colour that passes."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.catalog.contrast import TEXT_RATIO, contrast, nearest_passing, read_colour, say_colour

colours = st.tuples(st.integers(0, 255), st.integers(0, 255), st.integers(0, 255))


def test_black_on_white_is_21_to_1() -> None:
    assert contrast((0, 0, 0), (255, 255, 255)) == pytest.approx(21)


def test_the_lightest_grey_that_passes_on_white_and_the_next_that_fails() -> None:
    assert contrast(read_colour("#767676"), (255, 255, 255)) >= 4.5
    assert contrast(read_colour("#777777"), (255, 255, 255)) < 4.5
    assert nearest_passing(read_colour("#777777"), [(255, 255, 255)], TEXT_RATIO) == read_colour("#767676")


@given(colours, colours)
def test_the_nearest_passing_colour_passes_and_a_passing_one_stays(
    colour: tuple[int, int, int], ground: tuple[int, int, int]
) -> None:
    found = nearest_passing(colour, [ground], TEXT_RATIO)
    assert contrast(found, ground) >= TEXT_RATIO
    assert (found == colour) == (contrast(colour, ground) >= TEXT_RATIO)


@given(colours)
def test_a_colour_said_is_read_back(colour: tuple[int, int, int]) -> None:
    assert read_colour(say_colour(colour)) == colour


@pytest.mark.parametrize("text", ["red", "#fff", "1f2a33", "#1f2a3g", "#1f2a33 "])
def test_what_is_no_colour_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="a colour such as '#1f2a33'"):
        read_colour(text)
