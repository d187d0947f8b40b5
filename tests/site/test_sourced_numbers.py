"""The numbers behind a covering's figures, as its page lists them: which, in which units, and where each is from."""

from dataclasses import replace

import pytest

from configurator.catalog import load
from configurator.catalog.measures import Measure
from configurator.catalog.sources import Source
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.house import House
from configurator.site.kinds.sourced_numbers import said, sourced_numbers

HOUSE = House(load(CONTENT), CONTENT, Answers())
PUBLISHED = Source("published", "A handbook, table 2")


def measure(value: float, unit: str = "length", assumed: bool = False, path: str = "pitch") -> Measure:
    """Return a number of a file."""
    return Measure(path, "pitch of the folds", value, unit, PUBLISHED, assumed)


@pytest.mark.parametrize(
    ("value", "unit", "inches", "metric"),
    [
        (38.1, "length", "1 1/2 in", "38.1 mm"),
        # What no tape shows exactly is told in millimeters in either units.
        (0.3456, "length", "0.346 mm", "0.346 mm"),
        (10.0, "length", "10 mm", "10 mm"),
        (0.253, "mass", "0.25 kg/m²", "0.25 kg/m²"),
        (0.6, "run-mass", "0.6 kg/m", "0.6 kg/m"),
        (1.25, "weight", "1.25 kg", "1.25 kg"),
        (3.0, "count", "3", "3"),
        (45.0, "degree", "45°", "45°"),
    ],
)
def test_a_number_is_told_exactly_with_its_unit(value: float, unit: str, inches: str, metric: str) -> None:
    assert said(measure(value, unit), ENGLISH, "in") == inches
    assert said(measure(value, unit), ENGLISH, "mm") == metric


def test_a_number_that_switches_or_presets_nothing_is_left_out_and_no_other() -> None:
    notes = HOUSE.catalog.family_notes["roller-shade"]
    kept = [measure(0.0), measure(12.7, assumed=True), measure(12.7)]
    left = [measure(1.0, "switch"), measure(0.0, "switch"), measure(0.0, assumed=True)]
    (group,) = sourced_numbers(HOUSE, replace(notes, measures=[*kept, *left]))
    assert group["name"] == "whatever is chosen"
    assert [line["value"] for line in group["lines"]] == ["0 in", "1/2 in", "1/2 in"]
    source = "published — A handbook, table 2"
    assert [line["source"] for line in group["lines"]] == [source, f"{source}, assumed", source]


def test_each_number_stands_under_the_pick_that_it_belongs_to() -> None:
    for family in HOUSE.families:
        notes = HOUSE.catalog.family_notes[family["id"]]
        groups = sourced_numbers(HOUSE, notes)
        names = [group["name"] for group in groups]
        assert len(names) == len(set(names))
        assert names[0] == "whatever is chosen"
        picks = {
            f"{choice.name}: {option.name}" for choice in notes.choices.values() for option in choice.options.values()
        }
        others = {name for name in names[1:] if not name.startswith("cassette ")}
        assert others <= picks, family["id"]
        # Its unit stands beside its value.
        assert not any(", kg" in line["name"] for group in groups for line in group["lines"])
