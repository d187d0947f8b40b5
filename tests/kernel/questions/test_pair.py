from configurator.kernel.questions.pair import pair_answers
from tests.kernel.questions.question_samples import assert_workings, size_with, value_of, verdict_of


def test_two_leaves_of_one_size_match() -> None:
    found = pair_answers(size_with(), size_with())
    assert verdict_of(found, "pair")["state"] == "clears"
    assert value_of(found, "pair_loss") == 0
    assert_workings(found)


def test_the_wider_leaf_gives_up_what_the_handle_takes_from_the_other() -> None:
    found = pair_answers(size_with(x1=700.0), size_with(x1=720.0))
    assert value_of(found, "pair_width_active") == 550.0
    assert value_of(found, "pair_width_passive") == 570.0
    assert value_of(found, "pair_width_common") == 550.0
    assert value_of(found, "pair_loss") == 20.0
    assert verdict_of(found, "pair")["state"] == "caution"
    assert "3/4 in (20 mm)" in verdict_of(found, "pair")["why"]
    assert "common width" in verdict_of(found, "pair")["fixes"][0]


def test_rails_at_different_heights_are_said() -> None:
    found = pair_answers(size_with(), size_with(y1=1950.0))
    assert "heights differ" in verdict_of(found, "pair")["why"]


def test_a_leaf_that_cannot_take_it_breaks_the_pair() -> None:
    found = pair_answers(size_with(), size_with(refusal="It is not made as narrow as this glass needs."))
    assert verdict_of(found, "pair")["state"] == "blocked"
    assert value_of(found, "pair_width_passive") == 0
