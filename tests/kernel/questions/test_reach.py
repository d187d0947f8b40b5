from configurator.kernel.pieces import solid
from configurator.kernel.questions.reach import reach_question
from configurator.kernel.shapes import Reply
from tests.kernel.questions.question_samples import (
    DOOR,
    HOUSEHOLD,
    assert_workings,
    cautions_of,
    said,
    shade_travel,
    size_with,
    value_of,
    verdict_of,
)

SIZE = size_with()


def reach(person_height: float = 1700.0, **changes: float) -> Reply:
    household = HOUSEHOLD | {"person_height": person_height, "shoulder_height": person_height * 0.82}
    return reach_question(shade_travel(**changes), household)


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
    assert "above the shoulder" in said(verdict_of(found, "reach")["why"])
    assert "15 in to 48 in" in cautions_of(found)["reach"]
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
    assert "remote control" in said(verdict_of(found, "reach")["why"])


def test_a_stretched_panel_has_nothing_to_work() -> None:
    found = reach(lower_moves=0.0)
    assert found["figures"] == []
    assert verdict_of(found, "reach")["state"] == "clears"


def test_what_draws_to_the_side_is_taken_at_the_height_of_the_handle() -> None:
    travel = shade_travel()
    travel["fit"]["legs"][0]["way"] = "aside"
    found = reach_question(travel, HOUSEHOLD)
    assert value_of(found, "hand_open") == DOOR["handle_height"]
    assert verdict_of(found, "reach")["state"] == "clears"


def test_an_upper_rail_is_reached_for_at_its_top() -> None:
    travel = shade_travel(upper_moves=1.0)
    travel["down"].append(solid("upper-rail", [150.0, 700.0], [1850.0, 1870.0], [0.0, 20.0]))
    found = reach_question(travel, HOUSEHOLD)
    assert value_of(found, "hand_upper") == 1860.0
