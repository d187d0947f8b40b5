"""A lever as it turns, against rectangles that shapely turns."""

import math

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from shapely import affinity, box

from configurator.kernel.door.grips import (
    FULL_TURN,
    Grip,
    free_turn,
    hides_grip,
    lever_grip,
    thumb_turn_grip,
    worked_grips,
)
from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.pieces import mirrored, solid
from configurator.kernel.shapes import Piece
from tests.kernel.questions.question_samples import DOOR, LEVER, door_with

AXIS = leaf_width(DOOR) - DOOR["backset"]
HEIGHT = DOOR["handle_height"]
LENGTH, HALF = 115.0, 10.0
DEEP = [30.0, 60.0]


def lever() -> Grip:
    """Return the lever of the tests' door: 115 mm long and 20 mm high."""
    return next(grip for grip in worked_grips(DOOR, handle_pieces(DOOR)) if grip["piece"]["kind"] == "grip")


def block(along: list[float], up: list[float], deep: list[float] = DEEP) -> Piece:
    """Return a piece by its spans from the lever's axis: towards its tip, and up."""
    return solid("frame", [AXIS - along[1], AXIS - along[0]], [HEIGHT + up[0], HEIGHT + up[1]], deep)


def test_a_bar_50_mm_over_the_lever_stops_it_where_its_tips_corner_strikes() -> None:
    """The upper corner is hypot(115, 10) from the axis: it stands 60 mm up when asin(60 / 115.43) is turned past."""
    corner = math.hypot(LENGTH, HALF)
    told = math.degrees(math.asin(60.0 / corner) - math.asin(HALF / corner))
    assert free_turn(lever(), block([-50.0, 200.0], [60.0, 90.0])) == pytest.approx(told)
    assert free_turn(lever(), block([-50.0, 200.0], [-90.0, -60.0])) == pytest.approx(told)


def test_what_stands_beyond_its_reach_or_at_another_depth_leaves_it_free() -> None:
    assert free_turn(lever(), block([0.0, 200.0], [100.0, 200.0])) == FULL_TURN
    assert free_turn(lever(), block([120.0, 200.0], [-300.0, 300.0])) == FULL_TURN
    assert free_turn(lever(), block([0.0, 200.0], [20.0, 40.0], [0.0, 30.0])) == FULL_TURN
    assert free_turn(lever(), block([0.0, 200.0], [-5.0, 5.0])) == 0.0


def test_the_other_leafs_lever_points_the_other_way() -> None:
    width = leaf_width(DOOR)
    own = lever()["piece"]
    far = lever_grip(DOOR, mirrored(own, width * 2))
    assert (lever()["toward"], far["toward"]) == (-1.0, 1.0)
    assert far["axis"] == pytest.approx(width * 2 - AXIS)
    over = block([-50.0, 200.0], [60.0, 90.0])
    assert free_turn(far, mirrored(over, width * 2)) == pytest.approx(free_turn(lever(), over))


def test_a_thumb_turn_is_as_wide_as_high_once_turned() -> None:
    turned = thumb_turn_grip(solid("thumb-turn", [0.0, 10.0], [0.0, 40.0], [0.0, 30.0]))["piece"]
    assert (turned["x0"], turned["x1"], turned["y0"], turned["y1"]) == (-15.0, 25.0, 0.0, 40.0)


def test_what_hangs_in_front_hides_and_what_hangs_behind_does_not() -> None:
    assert hides_grip(lever(), block([50.0, 200.0], [-100.0, 100.0], [60.0, 70.0]))
    assert not hides_grip(lever(), block([50.0, 200.0], [-100.0, 100.0], [0.0, 20.0]))
    assert not hides_grip(lever(), block([120.0, 200.0], [-100.0, 100.0], [60.0, 70.0]))


def test_a_knob_turns_in_its_place() -> None:
    knob = door_with(handle=LEVER | {"kind": "knob", "grip_length": 28.0, "grip_height": 56.0})
    grip = next(one for one in worked_grips(knob, handle_pieces(knob)) if one["piece"]["kind"] == "grip")
    assert free_turn(grip, block([-50.0, 200.0], [40.0, 90.0])) == FULL_TURN


@settings(max_examples=300)
@given(st.floats(1.0, 130.0), st.floats(1.0, 120.0), st.floats(-130.0, 130.0), st.floats(1.0, 120.0))
def test_it_turns_just_so_far_that_it_touches(along: float, wide: float, low: float, high: float) -> None:
    # The lever's own neck and rose keep everything off the short end behind its axis.
    assume(along > HALF * 2 or low > HALF * 2 or low + high < -HALF * 2)
    piece = block([along, along + wide], [low, low + high])
    shape = box(along, low, along + wide, low + high)
    bar = box(0.0, -HALF, LENGTH, HALF)
    turn = free_turn(lever(), piece)

    def meets(angle: float, least: float = 1e-6) -> bool:
        both = [affinity.rotate(bar, side * angle, origin=(0.0, 0.0)) for side in (1.0, -1.0)]
        return any(one.intersection(shape).area > least for one in both)

    for step in range(20):
        assert not meets((turn - 0.01) * step / 20) or turn < 1e-9
    if turn < FULL_TURN - 0.5:
        # The tip may but graze a corner and be past it before half a degree is turned.
        assert any(meets(turn + step / 100, 0.0) for step in range(1, 51))
