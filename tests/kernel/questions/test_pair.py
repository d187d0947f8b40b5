from configurator.kernel.message import plain
from configurator.kernel.questions.pair import pair_question
from configurator.kernel.shapes import Reply, Size
from tests.kernel.questions.question_samples import (
    HOUSEHOLD,
    assert_workings,
    fit_with,
    said,
    shade_travel,
    size_with,
    value_of,
    verdict_of,
)


def pair(active: Size, passive: Size) -> Reply:
    travel = shade_travel(size=active)
    travel["leaves"] = [travel["fit"], fit_with(size=passive)]
    return pair_question(travel, HOUSEHOLD)


def test_one_leaf_is_no_pair() -> None:
    assert pair_question(shade_travel(), HOUSEHOLD) == {"figures": [], "verdicts": [], "cautions": []}


def test_two_leaves_of_one_size_match() -> None:
    found = pair(size_with(), size_with())
    assert verdict_of(found, "pair")["state"] == "clears"
    assert value_of(found, "pair_loss") == 0
    assert_workings(found)


def test_the_wider_leaf_gives_up_what_the_handle_takes_from_the_other() -> None:
    found = pair(size_with(x1=700.0), size_with(x1=720.0))
    assert value_of(found, "pair_width_active") == 550.0
    assert value_of(found, "pair_width_passive") == 570.0
    assert value_of(found, "pair_width_common") == 550.0
    assert value_of(found, "pair_loss") == 20.0
    assert verdict_of(found, "pair")["state"] == "caution"
    assert "20 mm" in said(verdict_of(found, "pair")["why"], "mm")
    assert "550 mm" in said(verdict_of(found, "pair")["why"], "mm")


def test_rails_at_different_heights_are_said() -> None:
    found = pair(size_with(), size_with(y1=1950.0))
    assert "heights differ" in said(verdict_of(found, "pair")["why"])


def test_a_leaf_that_cannot_take_it_breaks_the_pair() -> None:
    refused = size_with(refusal=plain("It is not made as narrow as this glass needs."))
    found = pair(size_with(), refused)
    assert verdict_of(found, "pair")["state"] == "blocked"
    assert value_of(found, "pair_width_passive") == 0
