from configurator.kernel.questions.child import child_answers
from tests.kernel.questions.question_samples import assert_workings, cautions_of, numbers_with, value_of, verdict_of


def test_a_cordless_covering_is_clear_and_silent() -> None:
    found = child_answers(numbers_with())
    assert verdict_of(found, "child_safety")["state"] == "clears"
    assert found["cautions"] == []
    assert found["figures"] == []


def test_a_long_free_cord_is_held_hazardous() -> None:
    found = child_answers(numbers_with(cord_length=900.0))
    assert verdict_of(found, "child_safety")["state"] == "blocked"
    assert verdict_of(found, "child_safety")["fixes"][0] == "a cordless lift"
    assert value_of(found, "cord_length") == 900.0
    assert "8 years" in cautions_of(found)["child_safety"]
    assert "87 FR 73144" in found["cautions"][0]["source"]
    assert_workings(found)


def test_eight_inches_are_still_short() -> None:
    assert verdict_of(child_answers(numbers_with(cord_length=203.2)), "child_safety")["state"] == "caution"


def test_a_retained_loop_is_still_cautioned_and_a_free_one_is_worse() -> None:
    held = child_answers(numbers_with(loop_length=900.0, loop_retained=1.0))
    free = child_answers(numbers_with(loop_length=900.0))
    assert verdict_of(held, "child_safety")["state"] == "caution"
    assert "tension device" in cautions_of(held)["child_safety"]
    assert verdict_of(free, "child_safety")["state"] == "blocked"
