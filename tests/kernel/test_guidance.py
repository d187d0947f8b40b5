"""General guidance is told apart from what must be minded with this very covering on this very door."""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.guidance import binding_cautions, general_cautions, general_guidance
from configurator.kernel.shapes import Caution

# What can hurt somebody with this covering on this door stands open, however often it is told.
NEVER_FOLDED = {
    "child_safety",
    "clear_height",
    "clear_width",
    "hot_glass",
    "way_out_covered",
    "way_out_low",
    "way_out_mid",
    "weight",
    "weight_leaf",
    "wired_leaf",
}


@pytest.fixture(scope="module")
def told(catalog: Catalog) -> list[list[Caution]]:
    """The cautions of every pick of every lift on every door, so that each kind of caution is among them."""
    answers = []
    for door in catalog.doors.values():
        for family in catalog.families.values():
            options = [choice["options"] for choice in family["choices"] if choice["id"] == "lift"]
            lifts = [option["id"] for option in options[0]] if options else []
            answers += [ask(door, family, {"lift": lift}, catalog.household) for lift in lifts or [""]]
    return [answer["cautions"] for answer in answers]


def test_only_the_guidance_is_folded_and_never_a_danger(told: list[list[Caution]]) -> None:
    general = {caution["id"] for cautions in told for caution in general_cautions(cautions)}
    assert general == {caution["id"] for caution in general_guidance()}
    assert general & NEVER_FOLDED == set()
    binding = {caution["id"] for cautions in told for caution in binding_cautions(cautions)}
    assert {"child_safety", "clear_width", "hot_glass", "weight", "weight_leaf"} <= binding


def test_every_caution_is_in_one_of_the_two(told: list[list[Caution]]) -> None:
    for cautions in told:
        both = binding_cautions(cautions) + general_cautions(cautions)
        assert sorted(caution["id"] for caution in both) == sorted(caution["id"] for caution in cautions)
