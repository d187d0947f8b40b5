import itertools
import math

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

HOLE = {"x0": 560.0, "x1": 700.0, "y0": 880.0, "y1": 1040.0}


def numbers(width=63.5, **given):
    preset = {"louver_width": width, "louver_pitch": width * 0.87, "louver_thickness": 11.0}
    preset |= {"panel_depth": 28.0, "panel_stile": 50.0, "frame_width": 20.0, "notch_frame": 15.0}
    preset |= {"headrail_height": 90.0, "rail_height": 100.0}
    return numbers_of("louver-panel", **(preset | given))


def shutter(tilt=0.0, coarse=False, hole=None, size=None, given=None):
    outline = size or size_of()
    if hole:
        outline = outline | {"cutout": hole}
    return pieces_of("louver-panel", given or numbers(), outline, at(1.0, tilt, coarse=coarse))


@pytest.mark.parametrize("tilt", [-80.0, -30.0, 0.0, 30.0, 80.0])
@pytest.mark.parametrize("hole", [None, HOLE])
@pytest.mark.parametrize("divider", [0.0, 80.0])
def test_boxes_are_in_order_and_bounded_by_the_coarse_ones(tilt, hole, divider):
    given = numbers(divider_height=divider)
    assert_sound(shutter(tilt, hole=hole, given=given))
    assert_bounded(shutter(tilt, hole=hole, given=given), shutter(tilt, True, hole, given=given))


def test_louvers_sweep_past_the_panel_on_both_sides_alike():
    louvers = of_kind(shutter(), "louver")
    stile = of_kind(shutter(), "panel-stile")[0]
    low, high = bounds(louvers, "z")
    assert stile["z0"] - low == pytest.approx((63.5 - 28) / 2)
    assert high - stile["z1"] == pytest.approx((63.5 - 28) / 2)


@pytest.mark.parametrize("tilt", [0.0, 20.0, 55.0, 80.0])
def test_louver_box_is_that_of_its_own_turned_cut(tilt):
    louver = of_kind(shutter(tilt), "louver")[4]
    turn = math.radians(tilt)
    # A lens: 63.5 x 11 mm, pointed at its edges, four fifths as thick at six tenths of its half width.
    lens = [(31.75, 0.0), (0.6 * 31.75, 0.8 * 5.5), (0.0, 5.5), (-0.6 * 31.75, 0.8 * 5.5), (-31.75, 0.0)]
    corners = [(u * math.cos(turn) + v * math.sin(turn), u * math.sin(turn) + v * math.cos(turn)) for u, v in lens]
    assert louver["z1"] - louver["z0"] == pytest.approx(2 * max(z for z, _ in corners))
    assert louver["y1"] - louver["y0"] == pytest.approx(2 * max(y for _, y in corners))


@pytest.mark.parametrize("height", [700.0, 1333.0, 1700.0, 2200.0])
def test_louvers_are_spread_evenly_and_turn_clear_of_the_rails(height):
    size = size_of(height=height)
    lowest, highest = size["y0"] + 120, size["y1"] - 110
    for tilt in (0.0, 45.0, 80.0, 90.0):
        louvers = of_kind(shutter(tilt, size=size), "louver")
        assert louvers[0]["y0"] >= lowest - 1e-9
        assert louvers[-1]["y1"] <= highest + 1e-9
    centers = [(louver["y0"] + louver["y1"]) / 2 for louver in louvers]
    gaps = [high - low for low, high in itertools.pairwise(centers)]
    assert gaps == pytest.approx([gaps[0]] * len(gaps))
    assert gaps[0] <= 63.5 * 0.87 + 1e-9


def test_closed_louvers_leave_no_gap():
    louvers = of_kind(shutter(80.0), "louver")
    low, high = bounds(louvers, "y")
    assert all(covered(louvers, low + (high - low) * (i + 0.5) / 400) for i in range(400))
    assert low - 370 < 2
    assert 1840 - high < 2


def test_smaller_louvers_need_less_depth():
    depths = [bounds(shutter(given=numbers(width)), "z") for width in (31.75, 63.5, 88.9)]
    assert [high - low for low, high in depths] == sorted(high - low for low, high in depths)


def test_nothing_stands_in_the_cut_out_at_any_tilt():
    for tilt in range(-80, 81, 20):
        for piece in shutter(tilt, hole=HOLE):
            across = min(piece["x1"], HOLE["x1"]) - max(piece["x0"], HOLE["x0"])
            up = min(piece["y1"], HOLE["y1"]) - max(piece["y0"], HOLE["y0"])
            assert across <= 0 or up <= 0, piece


def test_cut_out_shortens_only_the_louvers_beside_it_and_frames_it():
    plain = of_kind(shutter(), "louver")
    cut = of_kind(shutter(hole=HOLE), "louver")
    assert len(plain) == len(cut)
    short = [louver for louver in cut if louver["x1"] < plain[0]["x1"]]
    assert 0 < len(short) < len(cut) / 3
    assert all(louver["x1"] == pytest.approx(HOLE["x0"] - 15) for louver in short)
    assert len(of_kind(shutter(hole=HOLE), "frame")) > len(of_kind(shutter(), "frame"))


def test_louvers_turn_clear_of_the_frame_round_the_cut_out():
    for tilt in (0.0, 45.0, 80.0, 90.0):
        pieces = shutter(tilt, hole=HOLE)
        for bar in of_kind(pieces, "frame"):
            for louver in of_kind(pieces, "louver"):
                across = min(bar["x1"], louver["x1"]) - max(bar["x0"], louver["x0"])
                up = min(bar["y1"], louver["y1"]) - max(bar["y0"], louver["y0"])
                assert across <= 1e-9 or up <= 1e-9


def test_divider_parts_the_louvers_in_the_middle():
    given = numbers(divider_height=80.0)
    rails = of_kind(shutter(given=given), "panel-rail")
    assert len(rails) == 3
    assert not covered(of_kind(shutter(80.0, given=given), "louver"), (370 + 1840) / 2)


def test_frame_is_built_out_from_the_leaf():
    size = size_of(z0=38.0) | {"spacer": 38.0}
    assert bounds(of_kind(shutter(size=size), "frame"), "z") == (0, 38 + 28)
