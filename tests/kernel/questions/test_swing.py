import math

import pytest

from configurator.kernel.pieces import solid
from configurator.kernel.questions.reply import Reply
from configurator.kernel.questions.swing import swing_answers
from configurator.kernel.say import say_both
from tests.kernel.questions.question_samples import (
    INCH,
    assert_workings,
    door_with,
    figure_of,
    shade_samples,
    size_with,
    value_of,
    verdict_of,
)

FAR_WALL = 5000.0


def test_without_a_side_wall_the_leaf_opens_all_the_way() -> None:
    size = size_with()
    found = swing_answers(door_with(wall_gap=FAR_WALL), size, shade_samples(size))
    assert value_of(found, "swing_bare") == 180
    assert value_of(found, "swing_covered") == 180
    assert verdict_of(found, "swing")["state"] == "clears"
    assert_workings(found)


def test_a_shallow_covering_lets_the_handle_touch_first() -> None:
    size = size_with()
    found = swing_answers(door_with(), size, shade_samples(size, depth=20.0))
    assert value_of(found, "swing_covered") == value_of(found, "swing_bare")
    assert verdict_of(found, "swing")["state"] == "clears"
    assert "the handle" in verdict_of(found, "swing")["why"]
    assert "the handle" in figure_of(found, "swing_covered")["working"]["rule"]


def test_a_deep_headrail_stops_the_leaf_before_the_handle_does() -> None:
    size = size_with()
    found = swing_answers(door_with(wall_gap=60.0), size, shade_samples(size, depth=90.0))
    assert value_of(found, "swing_covered") < value_of(found, "swing_bare")
    assert "the headrail" in verdict_of(found, "swing")["why"]


def test_a_wall_close_by_makes_the_covering_guided_by_hand_and_closer_still_blocked() -> None:
    size = size_with()
    near = swing_answers(door_with(wall_gap=40.0), size, shade_samples(size, depth=120.0))
    assert 45 < value_of(near, "swing_covered") < 90
    assert verdict_of(near, "swing")["state"] == "guide by hand"
    deep = swing_answers(door_with(wall_gap=40.0), size, shade_samples(size, depth=500.0))
    assert value_of(deep, "swing_covered") < 45
    assert verdict_of(deep, "swing")["state"] == "blocked"
    assert verdict_of(deep, "swing")["fixes"] != []


def test_a_leaf_held_short_of_a_right_angle_leaves_less_width() -> None:
    size = size_with()
    door = door_with(wall_gap=40.0)
    found = swing_answers(door, size, shade_samples(size, depth=120.0))
    turn = math.radians(value_of(found, "swing_covered"))
    width = 36 * INCH
    # Stop 1/2 in; the leaf's other face stands its thickness and the pin's distance away from the pin.
    left = width - 12.7 - width * math.cos(turn) - (44.45 + 8) * math.sin(turn)
    assert value_of(found, "clear_width_covered") == pytest.approx(left)
    assert value_of(found, "clear_width_covered") < value_of(found, "clear_width_bare")


def test_in_swing_the_covering_takes_no_width_at_a_right_angle() -> None:
    size = size_with()
    found = swing_answers(door_with(wall_gap=FAR_WALL), size, shade_samples(size))
    expected = 36 * INCH - 12.7 - 44.45 - 8
    assert value_of(found, "clear_width_bare") == pytest.approx(expected)
    assert value_of(found, "clear_width_covered") == pytest.approx(expected)


def test_out_swing_the_covering_comes_off_the_clear_width() -> None:
    size = size_with()
    found = swing_answers(door_with(swing="out", stop_lap=14.0), size, shade_samples(size, depth=63.0))
    bare = 36 * INCH - 14.0 - 44.45 - 8
    assert value_of(found, "clear_width_bare") == pytest.approx(bare)
    assert value_of(found, "clear_width_covered") == pytest.approx(bare - 63.0)
    assert {figure["id"] for figure in found["figures"]} == {"clear_width_bare", "clear_width_covered"}
    assert verdict_of(found, "swing")["state"] == "clears"
    assert_workings(found)


def test_out_swing_a_deep_covering_near_the_latch_strikes_the_stop() -> None:
    size = size_with(x1=880.0)
    found = swing_answers(door_with(swing="out", stop_lap=14.0), size, shade_samples(size, depth=200.0))
    assert verdict_of(found, "swing")["state"] == "blocked"
    assert "stop" in verdict_of(found, "swing")["why"]


def test_a_pair_is_measured_at_its_active_leaf_alone() -> None:
    size = size_with()
    pair = door_with(layout="pair", swing="out", stop_lap=14.0, astragal_width=45.0, meeting_gap=3.0)
    found = swing_answers(pair, size, shade_samples(size))
    assert value_of(found, "clear_width_bare") == pytest.approx(36 * INCH - 21.0 - 44.45 - 8)


def test_in_swing_a_lowered_covering_over_the_opening_keeps_the_leaf_shut() -> None:
    size = size_with("over-opening", x0=-100.0, x1=1015.0, y0=12.0, y1=2250.0, z0=80.0)
    found = swing_answers(door_with(wall_gap=FAR_WALL), size, shade_samples(size))
    leaf_top = 12 + 80 * INCH
    assert value_of(found, "raised_over_leaf") == pytest.approx(2250.0 - 140.0 - leaf_top)
    assert verdict_of(found, "swing")["state"] == "clears"
    shut = verdict_of(found, "opens_covered")
    assert (shut["state"], shut["end"]) == ("blocked", 1.0)
    assert "open the covering first" in shut["why"]
    assert 0 <= shut["start"] < 0.1
    assert_workings(found)


def test_in_swing_a_stack_that_hangs_too_low_blocks_the_leaf_even_when_open() -> None:
    size = size_with("over-opening", x0=-100.0, x1=1015.0, y0=12.0, y1=2100.0, z0=80.0)
    found = swing_answers(door_with(wall_gap=FAR_WALL), size, shade_samples(size))
    assert value_of(found, "raised_over_leaf") == 0
    assert verdict_of(found, "swing")["state"] == "blocked"
    assert verdict_of(found, "opens_covered")["start"] == 0
    assert "first" not in verdict_of(found, "opens_covered")["why"]
    # The stack is 140 mm high; 10 mm of air keep it off the leaf that opens under it.
    assert value_of(found, "head_needed") == pytest.approx(150.0)
    assert say_both(12 + 80 * INCH + 150.0 - 2100.0) in verdict_of(found, "swing")["fixes"][0]


def test_in_swing_a_stack_before_the_leaf_says_how_much_further_to_the_side_it_must_stand() -> None:
    size = size_with("over-opening", x0=-100.0, x1=1015.0, y0=12.0, y1=2250.0, z0=80.0)

    def stacked(aside: float) -> Reply:
        stack = [solid("fabric", -100.0 - aside, 150.0 - aside, 12.0, 2100.0, 80.0, 180.0)]
        return swing_answers(door_with(wall_gap=FAR_WALL), size, [{"leg": 0, "at": 0.0, "pieces": stack}])

    assert "150 mm" in verdict_of(stacked(0.0), "swing")["fixes"][0]
    assert verdict_of(stacked(0.0), "swing")["state"] != "clears"
    assert verdict_of(stacked(150.0), "swing")["state"] == "clears"


def test_out_swing_the_leaf_opens_away_from_a_covering_over_the_opening() -> None:
    size = size_with("over-opening", x0=-100.0, x1=1015.0, y0=12.0, y1=2250.0, z0=80.0)
    found = swing_answers(door_with(swing="out", stop_lap=14.0), size, shade_samples(size))
    assert verdict_of(found, "swing")["state"] == "clears"
    assert verdict_of(found, "opens_covered")["state"] == "clears"
    assert value_of(found, "clear_width_covered") == pytest.approx(value_of(found, "clear_width_bare"))


def test_out_swing_a_side_stack_in_the_doorway_takes_width() -> None:
    size = size_with("over-opening", x0=-100.0, x1=1015.0, y0=12.0, y1=2150.0, z0=80.0)
    stack = [solid("fabric", -100.0, 150.0, 12.0, 2100.0, 80.0, 180.0)]
    found = swing_answers(door_with(swing="out", stop_lap=14.0), size, [{"leg": 0, "at": 0.0, "pieces": stack}])
    assert value_of(found, "clear_width_covered") == pytest.approx(36 * INCH - 14.0 - 150.0)


def test_in_swing_a_side_stack_beside_the_opening_costs_nothing_before_a_right_angle() -> None:
    size = size_with("over-opening", x0=-300.0, x1=1015.0, y0=12.0, y1=2150.0, z0=80.0)
    stack = [solid("fabric", -300.0, -20.0, 12.0, 2100.0, 80.0, 180.0)]
    found = swing_answers(door_with(wall_gap=FAR_WALL), size, [{"leg": 0, "at": 0.0, "pieces": stack}])
    assert 90 < value_of(found, "swing_covered") < 180
    assert verdict_of(found, "swing")["state"] == "clears"
