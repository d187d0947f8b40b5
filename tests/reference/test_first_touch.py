"""The first touch of one box with another, against shapely: anywhere, and where a corner only just meets a face."""

import math
from typing import Any

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import Point, affinity, box

from configurator.kernel.pieces import solid
from configurator.kernel.questions.around import piece_obstacle
from configurator.kernel.questions.touch import first_touch
from tests.reference.turned_shapes import GRID, TOLERANCE, farthest, turned_until


@settings(max_examples=300)
@given(
    st.tuples(st.floats(20.0, 500.0), st.floats(30.0, 500.0), st.floats(-60.0, 60.0), st.floats(5.0, 120.0)),
    st.tuples(st.floats(-900.0, 800.0), st.floats(10.0, 500.0), st.floats(-300.0, 800.0), st.floats(10.0, 500.0)),
)
def test_any_box_against_any_other_that_stands_in_its_way(
    turns: tuple[float, float, float, float], stands: tuple[float, float, float, float]
) -> None:
    (x0, z0), (x1, z1) = (turns[0], turns[2]), (turns[0] + turns[1], turns[2] + turns[3])
    (a0, b0), (a1, b1) = (stands[0], stands[2]), (stands[0] + stands[1], stands[2] + stands[3])
    shape, other = box(x0, z0, x1, z1), box(a0, b0, a1, b1)
    assume(shape.distance(other) > 0.5)
    expected = turned_until(shape, (0.0, 0.0), other)
    outer: Any = {"kind": "covering", "x0": x0, "x1": x1, "y0": 0.0, "y1": 100.0, "z0": z0, "z1": z1}
    met = piece_obstacle(solid("wall", [a0, a1], [0.0, 100.0], [b0, b1]), 0.0)
    found = first_touch([outer], [met], 180.0)["angle"]
    # What is only grazed by a corner the steps of the turn pass over.
    grazed = abs(farthest(shape, 0.0) - other.distance(Point(0.0, 0.0))) < 2.0 or other.distance(Point(0.0, 0.0)) < 1.0
    assume(not (abs(found - expected) > TOLERANCE and grazed))
    assert found == pytest.approx(expected, abs=TOLERANCE)


@settings(max_examples=250)
@given(
    st.tuples(st.floats(20.0, 500.0), st.floats(30.0, 500.0), st.floats(-200.0, 60.0), st.floats(5.0, 250.0)),
    st.tuples(st.integers(0, 3), st.floats(2.0, 178.0), st.floats(-15.0, 15.0), st.floats(-15.0, 15.0)),
    st.tuples(st.sampled_from([-1, 1]), st.floats(10.0, 300.0), st.sampled_from([-1, 1]), st.floats(10.0, 300.0)),
)
def test_a_box_whose_corner_just_comes_upon_another_s_or_passes_it(
    turns: tuple[float, float, float, float],
    passes: tuple[int, float, float, float],
    stands: tuple[int, float, int, float],
) -> None:
    (x0, z0), (x1, z1) = (turns[0], turns[2]), (turns[0] + turns[1], turns[2] + turns[3])
    shape = box(x0, z0, x1, z1)
    corner, turn, beside, before = passes
    x, z = affinity.rotate(shape, turn, origin=(0.0, 0.0)).exterior.coords[corner]
    across = sorted([x + beside, x + beside + stands[0] * stands[1]])
    ahead = sorted([z + before, z + before + stands[2] * stands[3]])
    other = box(across[0], ahead[0], across[1], ahead[1])
    assume(shape.distance(other) > 0.5)
    outer: Any = {"kind": "covering", "x0": x0, "x1": x1, "y0": 0.0, "y1": 100.0, "z0": z0, "z1": z1}
    met = piece_obstacle(solid("wall", across, [0.0, 100.0], ahead), 0.0)
    found = first_touch([outer], [met], 180.0)["angle"]
    for angle in [*range(1, math.ceil(found)), found - TOLERANCE]:
        assert affinity.rotate(shape, angle, origin=(0.0, 0.0)).intersection(other).area < GRID, angle
    if found < 180.0:
        assert affinity.rotate(shape, found, origin=(0.0, 0.0)).distance(other) < GRID


def test_what_ends_at_the_very_pin_is_met_at_a_right_angle() -> None:
    outer: Any = {"kind": "covering", "x0": 100.0, "x1": 500.0, "y0": 0.0, "y1": 100.0, "z0": -40.0, "z1": 0.0}
    wall = piece_obstacle(solid("wall", [-300.0, 0.0], [0.0, 100.0], [0.0, 300.0]), 0.0)
    assert first_touch([outer], [wall], 180.0)["angle"] == pytest.approx(90.0)
