"""Contrast of colors (published: WCAG 2.2, 1.4.3) and the nearest color that passes."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.catalog.contrast import TEXT_RATIO, contrast, nearest_on, nearest_passing, read_color, say_color

colors = st.tuples(st.integers(0, 255), st.integers(0, 255), st.integers(0, 255))


def test_black_on_white_is_21_to_1() -> None:
    assert contrast((0, 0, 0), (255, 255, 255)) == pytest.approx(21)


def test_the_lightest_gray_that_passes_on_white_and_the_next_that_fails() -> None:
    assert contrast(read_color("#767676"), (255, 255, 255)) >= 4.5
    assert contrast(read_color("#777777"), (255, 255, 255)) < 4.5
    assert nearest_passing(read_color("#777777"), [(255, 255, 255)], TEXT_RATIO) == read_color("#767676")


@given(colors, colors)
def test_the_nearest_passing_color_passes_and_a_passing_one_stays(
    color: tuple[int, int, int], ground: tuple[int, int, int]
) -> None:
    found = nearest_passing(color, [ground], TEXT_RATIO)
    assert contrast(found, ground) >= TEXT_RATIO
    assert (found == color) == (contrast(color, ground) >= TEXT_RATIO)


@given(colors)
def test_a_color_said_is_read_back(color: tuple[int, int, int]) -> None:
    assert read_color(say_color(color)) == color


@pytest.mark.parametrize("text", ["red", "#fff", "1f2a33", "#1f2a3g", "#1f2a33 "])
def test_what_is_no_color_is_refused(text: str) -> None:
    with pytest.raises(ValueError, match="a color such as '#1f2a33'"):
        read_color(text)


@given(colors)
def test_the_nearest_color_on_a_ground_is_the_nearest_that_passes_there(ground: tuple[int, int, int]) -> None:
    assert nearest_on(ground, 3.0) == nearest_passing(ground, [ground], 3.0)
