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
    "vane-roll",
    tube=38.0,
    cloth_thickness=1.1,
    vane_width=51.0,
    vane_pitch=44.0,
    sheer_view=0.6,
    sheer_light=0.7,
    rail_depth=25.0,
)


def vaned(lower=1.0, tilt=0.0, coarse=False, size=None):
    return pieces_of("vane-roll", NUMBERS, size or size_of(), at(lower, tilt, coarse=coarse))


@pytest.mark.parametrize(("lower", "tilt"), [(0.0, 90.0), (0.4, 90.0), (1.0, 90.0), (1.0, 45.0), (1.0, 0.0)])
def test_boxes_are_in_order_and_bounded_by_the_coarse_ones(lower, tilt):
    assert_sound(vaned(lower, tilt))
    assert_bounded(vaned(lower, tilt), vaned(lower, tilt, coarse=True))


def test_level_vanes_span_from_sheer_to_sheer():
    back, front = of_kind(vaned(), "sheer")
    vanes = of_kind(vaned(), "vane")
    assert front["z0"] - back["z1"] == pytest.approx(51)
    for vane in vanes:
        assert (vane["z0"], vane["z1"]) == pytest.approx((back["z1"], front["z0"]))
        assert vane["y1"] - vane["y0"] <= 1 + 1e-9


def test_sheers_close_up_as_the_vanes_close():
    gaps = []
    for tilt in (0, 30, 60, 90):
        back, front = of_kind(vaned(tilt=tilt), "sheer")
        gaps.append(front["z0"] - back["z1"])
    assert gaps == sorted(gaps, reverse=True)
    assert gaps[-1] == pytest.approx(1)


@pytest.mark.parametrize("lower", [0.2, 0.9, 1.0])
def test_closed_vanes_leave_no_gap(lower):
    pieces = vaned(lower, 90.0)
    low, high = bounds(of_kind(pieces, "sheer"), "y")
    vanes = of_kind(pieces, "vane")
    assert all(covered(vanes, low + (high - low) * (i + 0.5) / 400) for i in range(400))


def test_vanes_travel_with_the_rail():
    def above_rail(lower):
        pieces = vaned(lower, 90.0)
        rail = of_kind(pieces, "bottom-rail")[0]
        return [vane["y0"] - rail["y1"] for vane in of_kind(pieces, "vane")]

    up = above_rail(0.5)
    assert up == pytest.approx(above_rail(1.0)[: len(up)])


def test_room_side_edge_hangs_down_when_half_closed():
    vane = of_kind(vaned(tilt=45.0), "vane")[3]
    back = max(vane["outline"], key=lambda point: -point[0])
    front = max(vane["outline"], key=lambda point: point[0])
    assert front[1] < back[1]


def test_rolled_up_it_is_no_more_than_head_and_rail():
    low, high = bounds(vaned(0.0, 90.0), "y")
    down = bounds(vaned(1.0, 90.0), "y")
    assert (low, high) > (down[0], 0)
    assert high - low < 110
    assert down[0] == 250


@pytest.mark.parametrize("tilt", [0.0, 45.0, 90.0])
def test_bottom_rail_reaches_from_sheer_to_sheer(tilt):
    pieces = vaned(tilt=tilt)
    rail = of_kind(pieces, "bottom-rail")[0]
    low, high = bounds(of_kind(pieces, "sheer"), "z")
    assert rail["z0"] <= low + 1e-9
    assert rail["z1"] >= high - 1e-9
