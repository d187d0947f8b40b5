import itertools

import pytest

from tests.kernel.mechanisms.mechanism_samples import (
    assert_bounded,
    assert_sound,
    at,
    bounds,
    numbers_of,
    of_kind,
    pieces_of,
    size_of,
)
from tests.kernel.questions.question_samples import DOOR

PLEATS = numbers_of("draw", headrail_depth=120.0, unit_pitch=100.0, unit_stacked=16.0, returns=1.0)
VANES = numbers_of("draw", unit_pitch=76.0, unit_stacked=11.0, vane_width=89.0)
PANELS = numbers_of("draw", headrail_depth=70.0, panel_count=4.0, unit_stacked=10.0)
KINDS = {"pleat": PLEATS, "vane": VANES, "fabric": PANELS}
WIDE = size_of(1900.0, 2150.0, 80.0) | {"spacer": 80.0}


def drawn(kind, lower=1.0, tilt=0.0, coarse=False, split=0.0):
    return pieces_of("draw", KINDS[kind] | {"split": split}, WIDE, at(lower, tilt, coarse=coarse))


def cloth(kind, *place, **named):
    return of_kind(drawn(kind, *place, **named), kind)


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("split", [0.0, 1.0])
@pytest.mark.parametrize(("lower", "tilt"), [(0.0, 0.0), (0.4, 0.0), (1.0, 0.0), (1.0, 80.0)])
def test_boxes_are_in_order_and_bounded_by_the_coarse_ones(kind, split, lower, tilt):
    assert_sound(drawn(kind, lower, tilt, split=split))
    assert_bounded(drawn(kind, lower, tilt, split=split), drawn(kind, lower, tilt, True, split))


@pytest.mark.parametrize("kind", ["pleat", "fabric"])
@pytest.mark.parametrize("split", [0.0, 1.0])
def test_drawn_across_it_covers_the_whole_width(kind, split):
    spans = sorted((piece["x0"], piece["x1"]) for piece in cloth(kind, split=split))
    reach = spans[0][0]
    assert reach == pytest.approx(100)
    for start, end in spans:
        assert start <= reach + 1e-9
        reach = max(reach, end)
    assert reach == pytest.approx(2000)


def test_closed_vanes_cover_the_whole_width():
    spans = sorted((piece["x0"], piece["x1"]) for piece in cloth("vane", tilt=80.0))
    reach = spans[0][0]
    assert reach <= 100
    for start, end in spans:
        assert start <= reach + 1e-9
        reach = end
    assert reach >= 2000


def test_edge_on_vanes_show_what_is_between_them():
    assert sum(vane["x1"] - vane["x0"] for vane in cloth("vane")) / 1900 < 0.02


@pytest.mark.parametrize("kind", KINDS)
def test_one_way_stacks_at_the_hinge_side_and_a_split_at_both(kind):
    single = bounds(cloth(kind, 0.0), "x")
    assert single[1] < 100 + 1900 * 0.35
    halves = cloth(kind, 0.0, split=1.0)
    assert any(piece["x1"] < 700 for piece in halves)
    assert any(piece["x0"] > 1400 for piece in halves)
    assert not any(piece["x0"] < 1050 < piece["x1"] for piece in halves)


@pytest.mark.parametrize("kind", KINDS)
def test_leading_edge_moves_evenly(kind):
    edges = [bounds(cloth(kind, i / 4), "x")[1] for i in range(5)]
    steps = [far - near for near, far in itertools.pairwise(edges)]
    assert steps == pytest.approx([steps[0]] * 4)
    assert steps[0] > 0


def test_pleats_grow_deeper_as_they_stack():
    depths = [bounds(cloth("pleat", lower), "z") for lower in (1.0, 0.5, 0.0)]
    spans = [high - low for low, high in depths]
    assert spans == pytest.approx([50, 85, 120])


def test_return_reaches_back_to_the_casing_behind_it():
    edge = of_kind(drawn("pleat"), "return")
    assert len(edge) == 1
    assert (edge[0]["z0"], edge[0]["z1"]) == (DOOR["casing_projection"], 80)
    assert len(of_kind(drawn("pleat", split=1.0), "return")) == 2


def test_flat_panels_run_on_tracks_of_their_own():
    panels = cloth("fabric")
    assert len(panels) == 4
    for one, other in itertools.pairwise(panels):
        assert other["z0"] > one["z1"]
        assert one["x1"] - other["x0"] == pytest.approx(50)
