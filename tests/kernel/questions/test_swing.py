import math
import re
from typing import Any

import pytest

from configurator.kernel.pieces import solid
from configurator.kernel.questions.swing import swing_question
from configurator.kernel.shapes import Door, Figure, Piece, Reply, Size, Travel
from tests.kernel.mechanisms.mechanism_samples import numbers_of
from tests.kernel.questions.question_samples import (
    DOOR,
    HOUSEHOLD,
    INCH,
    assert_workings,
    door_with,
    figure_of,
    fit_with,
    said,
    shade_travel,
    size_with,
    travel_of,
    value_of,
    verdict_of,
)

FAR_WALL = 5000.0


def swing(travel: Travel) -> Reply:
    return swing_question(travel, HOUSEHOLD)


def over(**changes: Any) -> Size:
    """Return a size over the opening, hung high enough for the leaf to pass under, or with some of it changed."""
    return size_with("over-opening", **({"x0": -100.0, "x1": 1015.0, "y0": 12.0, "y1": 2250.0, "z0": 80.0} | changes))


def stacked(pieces: list[Piece], size: Size, door: Door = DOOR) -> Reply:
    """Answer for pieces that stay where they are over the opening."""
    return swing(travel_of(fit_with(door, size), [{"leg": 0, "at": 0.0, "pieces": pieces}]))


def why(found: Reply, key: str = "swing") -> str:
    return said(verdict_of(found, key)["why"])


def stops(figure: Figure) -> tuple[str, str]:
    """Return the kinds of what turns and of what it meets."""
    terms = figure["working"]["terms"]
    return str(terms["piece"][0]), str(terms["obstacle"][0])


def worked_out(figure: Figure) -> float:
    """Return what a working comes to when its terms are put in, angles in degrees."""
    text = figure["working"]["template"].replace(" x ", " * ")
    for name, term in figure["working"]["terms"].items():
        text = text.replace("{" + name + "}", f"({term[0]!r})")
    assert re.fullmatch(r"[\d\s().,*/+\-einfacosqrtmax]*", text), text
    known = {
        "acos": lambda share: math.degrees(math.acos(share)),
        "asin": lambda share: math.degrees(math.asin(share)),
        "cos": lambda turn: math.cos(math.radians(turn)),
        "sin": lambda turn: math.sin(math.radians(turn)),
        "sqrt": math.sqrt,
        "max": max,
    }
    return float(eval(text, {"__builtins__": {}}, known))


def assert_worked_out(found: Reply) -> None:
    """Check that every working of a reply comes to its figure."""
    assert_workings(found)
    for figure in found["figures"]:
        assert worked_out(figure) == pytest.approx(figure["value"], abs=1e-6), figure["id"]


def test_nothing_around_the_leaf_lets_it_lie_back_against_its_wall() -> None:
    # Pin, covering and handle leave room enough between the leaf and its own wall.
    flat = door_with(wall_gap=FAR_WALL, hinge_pin_out=60.0)
    found = swing(shade_travel(flat, depth=20.0))
    assert value_of(found, "swing_bare") == 180
    assert value_of(found, "swing_covered") == 180
    assert why(found) == "The covering takes nothing from the leaf's turn."
    assert_worked_out(found)


def test_far_from_a_side_wall_the_handle_meets_the_wall_in_which_the_door_stands() -> None:
    found = swing(shade_travel(door_with(wall_gap=FAR_WALL, casing_width=0.0), depth=20.0))
    assert 170 < value_of(found, "swing_bare") < 180
    assert stops(figure_of(found, "swing_bare")) == ("grip", "own-wall")
    assert verdict_of(found, "swing")["state"] == "clears"
    assert_worked_out(found)


def test_a_casing_thicker_than_twice_the_pin_s_distance_stops_the_leaf_itself() -> None:
    found = swing(shade_travel(door_with(wall_gap=FAR_WALL, casing_projection=25.0), depth=20.0))
    assert stops(figure_of(found, "swing_bare")) == ("leaf", "casing")
    assert 90 < value_of(found, "swing_bare") < 175
    assert "as at the head" in figure_of(found, "swing_bare")["working"]["rule"]
    assert_worked_out(found)


def test_a_deep_covering_meets_its_own_wall_past_a_right_angle() -> None:
    found = swing(shade_travel(door_with(wall_gap=4000.0), depth=90.0))
    assert 120 < value_of(found, "swing_covered") < value_of(found, "swing_bare")
    assert why(found) == (
        "The leaf opens to a right angle and past it, until the headrail meets the wall beside the door."
    )
    assert_worked_out(found)


def test_in_a_deep_reveal_the_covering_meets_the_reveal_before_a_right_angle() -> None:
    found = swing(shade_travel(door_with(reveal=200.0, wall_gap=4000.0), depth=75.0))
    # The headrail's corner stands 150 mm along the leaf and 67 mm out from the pin, the reveal 3 mm beside it.
    reach = math.hypot(150.0, 67.0)
    expected = math.degrees(math.acos(-3.0 / reach) - math.asin(67.0 / reach))
    assert value_of(found, "swing_covered") == pytest.approx(expected)
    assert 60 < expected < 70
    assert verdict_of(found, "swing")["state"] == "guide by hand"
    assert why(found) == "Before the leaf stands at a right angle, the headrail meets the reveal."
    assert value_of(found, "clear_width_covered") < value_of(found, "clear_width_bare")
    assert_worked_out(found)


def test_a_shallower_reveal_is_met_by_its_casing_s_edge() -> None:
    found = swing(shade_travel(door_with(reveal=150.0, wall_gap=4000.0), depth=75.0))
    # The casing's edge stands 3 + 4.7625 mm beside the leaf and 150 + 17 - 8 mm out from the pin.
    reach = math.hypot(7.7625, 159.0)
    expected = 90 + math.degrees(math.atan(7.7625 / 159.0) - math.acos(150.0 / reach))
    assert value_of(found, "swing_covered") == pytest.approx(expected)
    assert stops(figure_of(found, "swing_covered")) == ("headrail", "casing")
    assert_worked_out(found)


def test_the_edge_of_a_reveal_stops_the_leaf_itself_just_past_a_right_angle() -> None:
    found = swing(shade_travel(door_with(reveal=150.0, wall_gap=4000.0, casing_width=0.0), depth=20.0))
    expected = 90 + math.degrees(math.atan(3.0 / 142.0) + math.asin(8.0 / math.hypot(3.0, 142.0)))
    assert value_of(found, "swing_bare") == pytest.approx(expected)
    assert stops(figure_of(found, "swing_bare")) == ("leaf", "reveal")
    assert_worked_out(found)


def test_beside_a_sidelight_the_handle_lies_back_against_its_frame() -> None:
    door = door_with(layout="sidelights", sidelight_width=1200.0, sidelight_glass_width=1000.0, wall_gap=FAR_WALL)
    found = swing(shade_travel(door, depth=20.0))
    assert stops(figure_of(found, "swing_bare")) == ("grip", "sidelight")
    assert_worked_out(found)


def test_a_covering_that_stands_above_the_leaf_cannot_leave_the_opening() -> None:
    tall = size_with(y1=12 + 80 * INCH + 10.0)
    found = swing(shade_travel(door_with(reveal=100.0), tall))
    assert value_of(found, "swing_covered") == 0
    assert verdict_of(found, "swing")["state"] == "blocked"
    assert why(found) == "The leaf cannot open: closed already, the headrail stands in the head of the opening."
    outwards = swing(shade_travel(door_with(swing="out", stop_lap=14.0), size_with(y1=12 + 80 * INCH - 5.0)))
    assert why(outwards) == "As the leaf turns outwards, the headrail strikes the stop at the head."


def test_a_shallow_covering_lets_the_handle_touch_first() -> None:
    found = swing(shade_travel(depth=20.0))
    assert value_of(found, "swing_covered") == value_of(found, "swing_bare")
    assert verdict_of(found, "swing")["state"] == "clears"
    assert why(found).endswith("as without it, the grip of the handle meets the side wall first.")
    assert stops(figure_of(found, "swing_covered")) == ("grip", "side-wall")


def test_a_deep_headrail_stops_the_leaf_before_the_handle_does() -> None:
    found = swing(shade_travel(door_with(wall_gap=60.0), depth=90.0))
    assert value_of(found, "swing_covered") < value_of(found, "swing_bare")
    assert "the headrail meets the side wall" in why(found)


def test_a_wall_close_by_makes_the_covering_guided_by_hand_and_closer_still_blocked() -> None:
    near = swing(shade_travel(door_with(wall_gap=40.0), depth=120.0))
    assert 45 < value_of(near, "swing_covered") < 90
    assert verdict_of(near, "swing")["state"] == "guide by hand"
    deep = swing(shade_travel(door_with(wall_gap=40.0), depth=500.0))
    assert value_of(deep, "swing_covered") < 45
    assert verdict_of(deep, "swing")["state"] == "blocked"


def test_a_leaf_held_short_of_a_right_angle_leaves_less_width() -> None:
    found = swing(shade_travel(door_with(wall_gap=40.0), depth=120.0))
    turn = math.radians(value_of(found, "swing_covered"))
    width = 36 * INCH
    # Stop 1/2 in; the leaf's other face stands its thickness and the pin's distance away from the pin.
    left = width - 12.7 - width * math.cos(turn) - (44.45 + 8) * math.sin(turn)
    assert value_of(found, "clear_width_covered") == pytest.approx(left)
    assert value_of(found, "clear_width_covered") < value_of(found, "clear_width_bare")
    assert_worked_out(found)


def test_in_swing_the_covering_takes_no_width_at_a_right_angle() -> None:
    found = swing(shade_travel(door_with(wall_gap=FAR_WALL)))
    expected = 36 * INCH - 12.7 - 44.45 - 8
    assert value_of(found, "clear_width_bare") == pytest.approx(expected)
    assert value_of(found, "clear_width_covered") == pytest.approx(expected)


def test_out_swing_the_covering_comes_off_the_clear_width() -> None:
    found = swing(shade_travel(door_with(swing="out", stop_lap=14.0), depth=63.0))
    bare = 36 * INCH - 14.0 - 44.45 - 8
    assert value_of(found, "clear_width_bare") == pytest.approx(bare)
    assert value_of(found, "clear_width_covered") == pytest.approx(bare - 63.0)
    assert {figure["id"] for figure in found["figures"]} == {"clear_width_bare", "clear_width_covered"}
    assert verdict_of(found, "swing")["state"] == "clears"
    assert_worked_out(found)


def test_out_swing_a_deep_covering_near_the_latch_strikes_the_stop() -> None:
    found = swing(shade_travel(door_with(swing="out", stop_lap=14.0), size_with(x1=880.0), depth=200.0))
    assert verdict_of(found, "swing")["state"] == "blocked"
    assert "the stop at the latch" in why(found)


def test_a_pair_is_measured_at_its_active_leaf_alone() -> None:
    pair = door_with(layout="pair", swing="out", stop_lap=14.0, astragal_width=45.0, meeting_gap=3.0)
    found = swing(shade_travel(pair))
    assert value_of(found, "clear_width_bare") == pytest.approx(36 * INCH - 21.0 - 44.45 - 8)


def test_a_covering_that_laps_the_other_leaf_s_covering_cannot_turn() -> None:
    pair = door_with(layout="pair", wall_gap=FAR_WALL, meeting_gap=3.0)
    assert value_of(swing(shade_travel(pair)), "swing_covered") > 90
    lapped = swing(shade_travel(pair, size_with(x1=36 * INCH + 5.0)))
    assert value_of(lapped, "swing_covered") == 0
    assert "the other leaf's covering" in why(lapped)


def test_in_swing_a_lowered_covering_over_the_opening_keeps_the_leaf_shut() -> None:
    travel = shade_travel(
        door_with(wall_gap=FAR_WALL),
        over(),
        **numbers_of("accordion", pitch=20.0, closed_thickness=3.0, cell_depth=25.0),
    )
    found = swing(travel)
    assert value_of(found, "raised_over_leaf") == pytest.approx(2250.0 - 140.0 - (12 + 80 * INCH))
    assert verdict_of(found, "swing")["state"] == "clears"
    shut = verdict_of(found, "opens_covered")
    assert (shut["state"], shut["end"]) == ("blocked", 1.0)
    assert "open the covering first" in said(shut["why"])
    assert 0 <= shut["start"] < 0.1
    assert_worked_out(found)


def test_in_swing_a_stack_that_hangs_too_low_blocks_the_leaf_even_when_open() -> None:
    found = swing(shade_travel(door_with(wall_gap=FAR_WALL), over(y1=2100.0)))
    assert value_of(found, "raised_over_leaf") == 0
    assert verdict_of(found, "swing")["state"] == "blocked"
    assert verdict_of(found, "opens_covered")["start"] == 0
    assert "first" not in why(found, "opens_covered")
    # The stack is 140 mm high; 10 mm of air keep it off the leaf that opens under it.
    assert value_of(found, "head_needed") == pytest.approx(150.0)


def test_in_swing_a_stack_before_the_leaf_clears_once_it_stands_further_to_the_side() -> None:
    door = door_with(wall_gap=FAR_WALL)
    before = stacked([solid("fabric", [-100.0, 150.0], [12.0, 2100.0], [80.0, 180.0])], over(), door)
    assert verdict_of(before, "swing")["state"] != "clears"
    assert "the leaf itself meets the fabric" in why(before)
    aside = stacked([solid("fabric", [-250.0, 0.0], [12.0, 2100.0], [80.0, 180.0])], over(), door)
    assert verdict_of(aside, "swing")["state"] == "clears"
    assert_worked_out(before)


def test_a_handle_meets_a_stack_before_the_leaf_that_carries_it_does() -> None:
    door = door_with(wall_gap=FAR_WALL)
    low = solid("fabric", [-900.0, -700.0], [12.0, 2100.0], [30.0, 90.0])
    high = solid("fabric", [-900.0, -700.0], [1200.0, 2100.0], [30.0, 90.0])
    caught = stacked([low], over(), door)
    passed = stacked([high], over(), door)
    assert stops(figure_of(caught, "swing_covered"))[0] == "grip"
    assert stops(figure_of(passed, "swing_covered"))[0] == "leaf"
    assert value_of(caught, "swing_covered") < value_of(passed, "swing_covered")


def test_out_swing_the_leaf_opens_away_from_a_covering_over_the_opening() -> None:
    found = swing(shade_travel(door_with(swing="out", stop_lap=14.0), over()))
    assert verdict_of(found, "swing")["state"] == "clears"
    assert verdict_of(found, "opens_covered")["state"] == "clears"
    assert value_of(found, "clear_width_covered") == pytest.approx(value_of(found, "clear_width_bare"))


def test_out_swing_a_side_stack_in_the_doorway_takes_width() -> None:
    door = door_with(swing="out", stop_lap=14.0)
    found = stacked([solid("fabric", [-100.0, 150.0], [12.0, 2100.0], [80.0, 180.0])], over(y1=2150.0), door)
    assert value_of(found, "clear_width_covered") == pytest.approx(36 * INCH - 14.0 - 150.0)


def test_in_swing_a_side_stack_beside_the_opening_costs_nothing_before_a_right_angle() -> None:
    stack = [solid("fabric", [-300.0, -20.0], [12.0, 2100.0], [80.0, 180.0])]
    found = stacked(stack, over(x0=-300.0, y1=2150.0), door_with(wall_gap=FAR_WALL))
    assert 90 < value_of(found, "swing_covered") < 180
    assert verdict_of(found, "swing")["state"] == "clears"
