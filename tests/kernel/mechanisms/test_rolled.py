import math

import pytest

from tests.kernel.mechanisms.mechanism_samples import (
    assert_bounded,
    assert_sound,
    at,
    numbers_of,
    of_kind,
    pieces_of,
    size_of,
)

ROLL = {"tube": 32.0, "cloth_thickness": 0.5, "wraps_spare": 200.0, "roll_clear": 4.0, "bracket_gap": 15.0}
CASSETTE = {"name": "small", "roll": 60.0, "height": 76.0, "depth": 80.0}


def shade(lower=1.0, coarse=False, cassette=None, **given):
    size = size_of() | ({"cassette": cassette} if cassette else {})
    return pieces_of("rolled", numbers_of("rolled", **(ROLL | given)), size, at(lower, coarse=coarse))


@pytest.mark.parametrize("lower", [0.0, 0.3, 1.0])
@pytest.mark.parametrize("cassette", [None, CASSETTE])
def test_boxes_are_in_order_and_bounded_by_the_coarse_ones(lower, cassette):
    assert_sound(shade(lower, cassette=cassette))
    assert_bounded(shade(lower, cassette=cassette), shade(lower, coarse=True, cassette=cassette))


def test_the_roll_thins_as_the_cloth_comes_down():
    def diameter(lower):
        roll = of_kind(shade(lower), "roll")[0]
        return roll["y1"] - roll["y0"]

    assert diameter(0.0) > diameter(0.5) > diameter(1.0)
    # Down, only the spare wraps are left on the tube.
    assert diameter(1.0) == pytest.approx(math.sqrt(32**2 + 4 * 0.5 * 200 / math.pi))


def test_the_cloth_leaves_the_roll_at_its_back_and_moves_off_the_glass_as_it_unrolls():
    for lower in (0.0, 0.5, 1.0):
        pieces = shade(lower)
        assert of_kind(pieces, "fabric")[0]["z0"] == pytest.approx(of_kind(pieces, "roll")[0]["z0"])
    assert of_kind(shade(1.0), "fabric")[0]["z0"] > of_kind(shade(0.0), "fabric")[0]["z0"]


def test_the_full_open_roll_keeps_its_air_to_what_is_behind():
    assert of_kind(shade(0.0), "roll")[0]["z0"] >= size_of()["z0"] + 4.0


def test_a_cassette_takes_the_place_of_the_brackets_and_hides_the_roll():
    boxed = shade(cassette=CASSETTE)
    head = of_kind(boxed, "headrail")[0]
    roll = of_kind(shade(0.0, cassette=CASSETTE), "roll")[0]
    assert (head["y1"] - head["y0"], head["z1"] - head["z0"]) == (76.0, 80.0)
    assert of_kind(boxed, "bracket") == []
    assert head["y0"] <= roll["y0"]
    assert roll["y1"] <= head["y1"]


def test_cloth_is_narrower_than_its_brackets():
    cloth = of_kind(shade(), "fabric")[0]
    assert cloth["x0"] - size_of()["x0"] == size_of()["x1"] - cloth["x1"] == 15.0


def test_down_it_reaches_the_bottom_of_its_size():
    assert min(piece["y0"] for piece in shade(1.0)) == size_of()["y0"]
