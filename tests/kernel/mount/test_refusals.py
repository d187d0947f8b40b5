"""Doors and numbers at the end of what may be written: a plain reason, or sound figures, never a crash."""

import math

import pytest

from configurator.catalog import Catalog
from configurator.catalog.family_numbers import LIMITS, takes_of
from configurator.kernel.answer import ask
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.shapes import Choice, Door, Family, Option
from tests.kernel.questions.question_samples import said


def with_number(family: Family, name: str, value: float) -> Family:
    """Return a family with one number of its own, whatever its options say."""
    options: list[Option] = [
        {**option, "numbers": {key: number for key, number in option["numbers"].items() if key != name}}
        for choice in family["choices"]
        for option in choice["options"][:1]
    ]
    choices: list[Choice] = [
        {**choice, "options": [option]} for choice, option in zip(family["choices"], options, strict=True)
    ]
    return {**family, "numbers": {**family["numbers"], name: value}, "choices": choices}


@pytest.mark.parametrize("mechanism", MECHANISMS)
@pytest.mark.parametrize("end", [1, 2], ids=["least", "most"])
def test_any_number_that_the_catalog_takes_gives_figures_or_a_reason(
    catalog: Catalog, mechanism: str, end: int
) -> None:
    family = next(family for family in catalog.families.values() if family["mechanism"] == mechanism)
    for name, take in takes_of(mechanism).items():
        spoiled = with_number(family, name, float(LIMITS[str(take[0])][end]))
        answer = ask(catalog.doors["garden-pair"], spoiled, {}, catalog.household)
        assert answer["figures"] or said(answer["refusal"]).endswith("."), name
        values = [figure["value"] for figure in answer["figures"].values()]
        assert all(math.isfinite(value) for value in values), name


@pytest.mark.parametrize("family", ["cellular-shade", "traversing-drapery"])
@pytest.mark.parametrize("bars", [("muntin_columns", 12), ("muntin_rows", 40)])
def test_muntins_that_leave_no_glass_are_the_reason(catalog: Catalog, family: str, bars: tuple[str, int]) -> None:
    door: Door = catalog.doors["garden-pair"] | {"muntin_width": 80.0, bars[0]: bars[1]}  # type: ignore[assignment]
    refusal = ask(door, catalog.families[family], {}, catalog.household)["refusal"]
    assert said(refusal) == "The door's muntins leave no glass between them."


@pytest.mark.parametrize("over", [0.0, 1.0], ids=["on the leaf", "over the opening"])
def test_rails_higher_than_the_room_for_them_are_the_reason(catalog: Catalog, over: float) -> None:
    family = with_number(catalog.families["cellular-shade"], "over_opening", over)
    family = with_number(family, "rail_height", 2500.0)
    refusal = ask(catalog.doors["garden-pair"], family, {}, catalog.household)["refusal"]
    assert said(refusal) == "Its rails alone are higher than the room that this door leaves for it."


def test_a_size_that_is_not_made_is_told_with_what_is_needed_and_what_is_made(catalog: Catalog) -> None:
    family = with_number(catalog.families["cellular-shade"], "width_most", 508.0)
    refusal = ask(catalog.doors["garden-door"], family, {}, catalog.household)["refusal"]
    words = "It is not made as wide as this opening needs: 25 in, against 20 in at the most."
    assert said(refusal) == words
