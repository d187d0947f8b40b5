"""A proposal on its leaves: which it dresses, and what is told of each."""

import pytest

from configurator.kernel.message import is_said
from configurator.kernel.visit.hung_leaves import hung_leaves, is_offered, proposal_answers
from configurator.kernel.visit.visit_shapes import VisitStock
from tests.weir_cottage import house, opening_of, proposal_of


@pytest.mark.parametrize(
    ("opening", "proposal", "leaves"),
    [
        ("study", "a", ["active", "other"]),
        ("hall", "a", ["active"]),
        ("dining", "a", ["active"]),
        ("dining", "b", ["active", "left-sidelight", "right-sidelight"]),
        ("dining", "c", ["active"]),
    ],
)
def test_a_proposal_dresses_what_it_says_or_all_that_it_goes_on(
    opening: str, proposal: str, leaves: list[str], stock: VisitStock
) -> None:
    visit = house()
    hung = hung_leaves(opening_of(visit, opening), proposal_of(visit, opening, proposal), stock)
    assert [one["leaf"] for one in hung] == leaves
    assert not any(is_said(one["fit"]["size"]["refusal"]) for one in hung)


def test_each_leaf_of_a_pair_is_ordered_to_its_own_glass(stock: VisitStock) -> None:
    visit = house()
    study, shade = opening_of(visit, "study"), proposal_of(visit, "study", "a")
    active, other = proposal_answers(visit, study, shade, stock)
    # Its glass is an eighth narrower, and nothing but the glass and its overlaps decides.
    narrower = active["figures"]["order_width"]["value"] - other["figures"]["order_width"]["value"]
    assert narrower == pytest.approx(25.4 / 8)
    assert other["figures"]["order_height"]["value"] == active["figures"]["order_height"]["value"]


def test_what_has_no_handle_is_not_asked_about_one(stock: VisitStock) -> None:
    visit = house()
    alike = proposal_answers(visit, opening_of(visit, "dining"), proposal_of(visit, "dining", "b"), stock)
    assert "pass_through" in alike[0]["verdicts"]
    for side in alike[1:]:
        assert not {"pass_through", "handle_works"} & side["verdicts"].keys()
        assert side["figures"]["order_width"]["value"] < alike[0]["figures"]["order_width"]["value"]


def test_a_family_that_is_not_offered_is_told_apart_and_a_renamed_one_is_found(stock: VisitStock) -> None:
    renamed: VisitStock = {**stock, "formerly": {"family/old-shade": "cellular-shade"}}
    visit = house()
    shade = proposal_of(visit, "study", "a")
    shade["family"] = "nothing-we-know"
    assert not is_offered(shade, renamed)
    shade["family"] = "old-shade"
    assert is_offered(shade, renamed)
    hung = hung_leaves(opening_of(visit, "study"), shade, renamed)
    assert hung[0]["fit"]["family"]["id"] == "cellular-shade"
