import itertools

import pytest

from tests.kernel.mechanisms.mechanism_samples import (
    assert_bounded,
    assert_sound,
    at,
    bounds,
    covered,
    numbers_of,
    of_kind,
    pieces_of,
    size_of,
)

NUMBERS = numbers_of(
    "banded-roll",
    tube=38.0,
    cloth_thickness=0.9,
    band_clear=50.0,
    band_solid=75.0,
    cloth_view=0.7,
    cloth_light=0.8,
    layer_gap=8.0,
)
PITCH = 125.0


def banded(lower=1.0, tilt=90.0, coarse=False, size=None):
    return pieces_of("banded-roll", NUMBERS, size or size_of(), at(lower, tilt, coarse=coarse))


def view_at(pieces, y):
    view = 1.0
    for piece in covered(pieces, y):
        view *= piece["optics"]["view"]
    return view


def heights(pieces):
    low, high = bounds(of_kind(pieces, "band") + of_kind(pieces, "sheer"), "y")
    return [low + (high - low) * (i + 0.5) / 500 for i in range(500)]


@pytest.mark.parametrize("lower", [0.0, 0.3, 0.77, 1.0])
@pytest.mark.parametrize("tilt", [0.0, 40.0, 90.0])
def test_boxes_are_in_order_and_bounded_by_the_coarse_ones(lower, tilt):
    assert_sound(banded(lower, tilt))
    assert_bounded(banded(lower, tilt), banded(lower, tilt, coarse=True))


@pytest.mark.parametrize("height", [900.0, 1655.0, 1700.0, 2101.0])
def test_overlapped_bands_close_the_view_whatever_the_height(height):
    pieces = banded(size=size_of(height=height))
    assert all(view_at(pieces, y) == 0 for y in heights(pieces))


@pytest.mark.parametrize("height", [900.0, 1655.0, 1700.0, 2101.0])
def test_lined_up_bands_leave_the_clear_share_through_two_sheers(height):
    pieces = banded(tilt=0.0, size=size_of(height=height))
    low = heights(pieces)[0]
    seen = [view_at(pieces, low + 5 * PITCH * (i + 0.5) / 500) for i in range(500)]
    assert {round(view, 9) for view in seen} == {0.0, 0.49}
    assert sum(view > 0 for view in seen) / len(seen) == pytest.approx(50 / 125, abs=0.005)


def test_lining_up_lifts_the_bar_by_a_quarter_of_the_pitch():
    closed = of_kind(banded(), "bottom-rail")[0]
    clear = of_kind(banded(tilt=0.0), "bottom-rail")[0]
    assert closed["y0"] == 250
    assert clear["y0"] - closed["y0"] == pytest.approx(PITCH / 4)


def test_front_bands_stay_while_back_bands_rise_twice_as_far_as_the_bar():
    def tops(lower, layer):
        pieces = banded(lower)
        layers = sorted({piece["z0"] for piece in of_kind(pieces, "band")})
        return sorted(piece["y1"] for piece in of_kind(pieces, "band") if piece["z0"] == layers[layer])

    rise = of_kind(banded(0.98), "bottom-rail")[0]["y0"] - 250
    assert tops(0.98, 1)[-4:] == pytest.approx(tops(1.0, 1)[-4:])
    assert (tops(0.98, 0)[3] - tops(1.0, 0)[3] - 2 * rise) % PITCH == pytest.approx(0, abs=1e-6)


def test_each_layer_is_whole_from_the_bar_to_the_roll():
    for lower in (0.1, 0.5, 1.0):
        pieces = banded(lower)
        hanging = of_kind(pieces, "band") + of_kind(pieces, "sheer")
        for back in {piece["z0"] for piece in hanging}:
            layer = sorted((piece for piece in hanging if piece["z0"] == back), key=lambda piece: piece["y0"])
            assert layer[0]["y0"] == of_kind(pieces, "bottom-rail")[0]["y1"]
            for below, above in itertools.pairwise(layer):
                assert below["y1"] == pytest.approx(above["y0"])
                assert below["kind"] != above["kind"]


def test_bar_falls_evenly_and_rests_at_the_size():
    bars = [of_kind(banded(i / 4), "bottom-rail")[0]["y0"] for i in range(5)]
    steps = [high - low for high, low in itertools.pairwise(bars)]
    assert steps == pytest.approx([steps[0]] * 4)
    assert bars[-1] == 250
