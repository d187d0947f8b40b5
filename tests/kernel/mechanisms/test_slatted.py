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

NUMBERS = numbers_of("slatted", slat_width=51.0, slat_pitch=44.0, slat_thickness=3.0)


def blind(lower=1.0, tilt=0.0, coarse=False, size=None, numbers=NUMBERS):
    return pieces_of("slatted", numbers, size or size_of(), at(lower, tilt, coarse=coarse))


def slat_total(pieces):
    return sum(piece["count"] for piece in of_kind(pieces, "slat"))


@pytest.mark.parametrize("lower", [0.0, 0.31, 0.8, 1.0])
@pytest.mark.parametrize("tilt", [-70.0, 0.0, 70.0])
def test_boxes_are_in_order_and_bounded_by_the_coarse_ones(lower, tilt):
    assert_sound(blind(lower, tilt))
    assert_bounded(blind(lower, tilt), blind(lower, tilt, coarse=True))


def test_no_slat_is_lost_on_the_way():
    assert len({slat_total(blind(i / 20)) for i in range(21)}) == 1


def test_slats_never_run_into_each_other_when_level():
    for i in range(21):
        pieces = sorted(blind(i / 20), key=lambda piece: piece["y0"])
        for below, above in itertools.pairwise(pieces):
            assert below["y1"] <= above["y0"] + 1e-9


def test_raised_stack_is_rails_and_every_slat_once():
    low, high = bounds(blind(0.0), "y")
    assert high - low == pytest.approx(30 + 15 + 3 * slat_total(blind()))


def test_stack_grows_with_the_drop():
    low = [bounds(blind(0.0, size=size_of(height=height)), "y") for height in (1200, 1700, 2100)]
    heights = [high - bottom for bottom, high in low]
    assert heights == sorted(heights)
    assert heights[0] < heights[2]


@pytest.mark.parametrize("tilt", [75.0, -75.0])
def test_closed_slats_leave_no_gap_between_the_first_and_the_last(tilt):
    slats = of_kind(blind(tilt=tilt), "slat")
    low, high = bounds(slats, "y")
    assert all(covered(slats, low + (high - low) * (i + 0.5) / 400) for i in range(400))


def test_level_slats_show_most_of_the_view():
    slats = of_kind(blind(), "slat")
    assert sum(slat["y1"] - slat["y0"] for slat in slats) / 1700 < 0.08


def test_positive_tilt_lowers_the_room_side_edge():
    slat = of_kind(blind(tilt=45.0), "slat")[10]
    assert max(slat["outline"], key=lambda point: point[0])[1] < (slat["y0"] + slat["y1"]) / 2


def test_lower_edge_falls_evenly_to_the_size():
    edges = [bounds(blind(i / 4), "y")[0] for i in range(5)]
    steps = [high - low for high, low in itertools.pairwise(edges)]
    assert steps == pytest.approx([steps[0]] * 4)
    assert edges[-1] == 250


@pytest.mark.parametrize("tilt", [75.0, 30.0, -75.0])
def test_a_slat_lies_down_as_the_pile_comes_up(tilt):
    turned = bounds(of_kind(blind(1.0, tilt), "slat")[-1:], "y")
    seen = set()
    for i in range(200):
        pieces = blind(i / 200, tilt)
        lying = [piece for piece in of_kind(pieces, "slat") if piece["pitch"] == NUMBERS["slat_thickness"]]
        pile = max([piece["y1"] for piece in [*lying, *of_kind(pieces, "bottom-rail")]])
        for slat in of_kind(pieces, "slat"):
            if slat not in lying:
                # It turns evenly, and so dips a little into what lies already.
                assert slat["y0"] >= pile - NUMBERS["slat_width"] / 10
                seen.add(round(slat["y1"] - slat["y0"], 6))
    # On its way from turned to level it has every height between.
    assert len(seen) > 20
    assert max(seen) == pytest.approx(turned[1] - turned[0])
