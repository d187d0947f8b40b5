from configurator.kernel.questions.child import child_question
from configurator.kernel.shapes import Reply
from tests.kernel.questions.question_samples import (
    HOUSEHOLD,
    assert_workings,
    cautions_of,
    shade_travel,
    value_of,
    verdict_of,
)


def child(**changes: float) -> Reply:
    return child_question(shade_travel(**changes), HOUSEHOLD)


def test_a_cordless_covering_is_clear_and_silent() -> None:
    found = child()
    assert verdict_of(found, "child_safety")["state"] == "clears"
    assert found["cautions"] == []
    assert found["figures"] == []


def test_a_long_free_cord_is_held_hazardous() -> None:
    found = child(cord_length=900.0)
    assert verdict_of(found, "child_safety")["state"] == "blocked"
    assert value_of(found, "cord_length") == 900.0
    assert "8 years" in cautions_of(found)["child_safety"]
    assert "87 FR 73144" in found["cautions"][0]["source"]
    assert_workings(found)


def test_eight_inches_are_still_short() -> None:
    assert verdict_of(child(cord_length=203.2), "child_safety")["state"] == "caution"


def test_a_retained_loop_is_still_cautioned_and_a_free_one_is_worse() -> None:
    held = child(loop_length=900.0, loop_retained=1.0)
    free = child(loop_length=900.0)
    assert verdict_of(held, "child_safety")["state"] == "caution"
    assert "tension device" in verdict_of(held, "child_safety")["why"]["text"]
    assert verdict_of(free, "child_safety")["state"] == "blocked"
