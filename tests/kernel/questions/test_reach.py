from configurator.kernel.pieces import solid
from configurator.kernel.questions.reach import reach_answers
from configurator.kernel.questions.reply import Reply
from tests.kernel.questions.question_samples import (
    DOOR,
    HOUSEHOLD,
    assert_workings,
    cautions_of,
    numbers_with,
    shade,
    size_with,
    value_of,
    verdict_of,
)

SIZE = size_with()


def reach(person_height: float = 1700.0, **changes: float) -> Reply:
    household = HOUSEHOLD | {"person_height": person_height, "shoulder_height": person_height * 0.82}
    pieces = [shade(SIZE, share) for share in (0.0, 0.5, 1.0)]
    return reach_answers(DOOR, household, numbers_with(**changes), SIZE, *pieces)


def test_the_hand_follows_the_bottom_rail() -> None:
    found = reach()
    raised = SIZE["y1"] - 140.0 + 10.0
    lowered = SIZE["y0"] + 10.0
    assert value_of(found, "hand_open") == raised
    assert value_of(found, "hand_closed") == lowered
    assert value_of(found, "hand_half") == (raised + lowered) / 2
    assert_workings(found)


def test_a_rail_raised_above_48_in_is_cautioned_with_its_rule() -> None:
    found = reach()
    assert verdict_of(found, "reach")["state"] == "caution"
    assert "above the shoulder" in verdict_of(found, "reach")["why"]
    assert "15 to 48 in" in cautions_of(found)["reach"]
    assert found["cautions"][0]["source"] == "2010 ADA Standards 308.2.1, 308.3.1"


def test_a_small_household_cannot_reach_a_raised_rail() -> None:
    assert verdict_of(reach(person_height=1450.0), "reach")["state"] == "blocked"


def test_a_wand_brings_the_hand_down_and_keeps_it_there() -> None:
    found = reach(hand_drop=800.0)
    assert value_of(found, "hand_open") == value_of(found, "hand_closed") == SIZE["y1"] - 40.0 - 800.0
    assert verdict_of(found, "reach")["state"] == "clears"
    assert found["cautions"] == []


def test_a_motor_needs_no_reach() -> None:
    found = reach(hand_away=1.0)
    assert found["figures"] == []
    assert "remote control" in verdict_of(found, "reach")["why"]


def test_a_stretched_panel_has_nothing_to_work() -> None:
    found = reach(lower_moves=0.0)
    assert found["figures"] == []
    assert verdict_of(found, "reach")["state"] == "clears"


def test_what_draws_to_the_side_is_taken_at_the_height_of_the_handle() -> None:
    found = reach(draws_aside=1.0)
    assert value_of(found, "hand_open") == DOOR["handle_height"]
    assert verdict_of(found, "reach")["state"] == "clears"


def test_an_upper_rail_is_reached_for_at_its_top() -> None:
    down = [*shade(SIZE, 1.0), solid("upper-rail", 150.0, 700.0, 1850.0, 1870.0, 0.0, 20.0)]
    numbers = numbers_with(upper_moves=1.0)
    found = reach_answers(DOOR, HOUSEHOLD, numbers, SIZE, shade(SIZE, 0.0), shade(SIZE, 0.5), down)
    assert value_of(found, "hand_upper") == 1860.0
