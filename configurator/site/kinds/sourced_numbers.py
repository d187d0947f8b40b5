"""The numbers from which a family's figures are worked out, each with where it comes from."""

from typing import TypedDict

from configurator.catalog.measures import Measure
from configurator.catalog.notes import FamilyNotes
from configurator.kernel.message import message
from configurator.kernel.say import decimals, say_length, say_value
from configurator.kernel.tongue import Words, wording
from configurator.site.house import House

# How the units of a content file other than lengths are said.
SAID = {"share": "share", "degree": "deg", "count": "count"}


class NumberLine(TypedDict):
    """A number's name, its value and its source, in words."""

    name: str
    value: str
    source: str


class NumberGroup(TypedDict):
    """The numbers that hold under one choice, or whatever is chosen."""

    name: str
    lines: list[NumberLine]


def sourced_numbers(house: House, notes: FamilyNotes) -> list[NumberGroup]:
    """Return the family's numbers in groups: those of every choice first, then those of each option.

    Left out is what switches something on or off, and a preset of nothing.
    """
    groups: dict[str, list[NumberLine]] = {}
    for measure in notes.measures:
        if measure.unit == "switch" or (measure.assumed and measure.value == 0):
            continue
        groups.setdefault(group_name(house, notes, measure), []).append(line(house, measure))
    return [{"name": name, "lines": lines} for name, lines in groups.items()]


def group_name(house: House, notes: FamilyNotes, measure: Measure) -> str:
    """Return in words what a number belongs to."""
    parts = measure.path.split(".")
    if parts[0] == "choices":
        choice = notes.choices[parts[1]]
        return f"{choice.name}: {choice.options[parts[3]].name}"
    if parts[0] == "cassettes":
        return house.phrase(message("cassette {number}", {"number": [parts[1], "text"]}))
    return house.named(wording("whatever is chosen"))


def line(house: House, measure: Measure) -> NumberLine:
    """Return a number's name, its value in words and its source."""
    source = house.source(measure.source)
    if measure.assumed:
        source = house.phrase(message("{source}, assumed", {"source": [source, "text"]}))
    name = house.named(measure.name).removesuffix(", kg/m2").removesuffix(", kg/m").removesuffix(", kg")
    return {"name": name, "value": said(measure, house.words, house.units), "source": source}


def said(measure: Measure, words: Words, units: str) -> str:
    """Return a number with its unit; a length that no tape shows exactly in millimeters."""
    if measure.unit == "mass":
        return f"{decimals(measure.value, 2, words)} kg/m²"
    if measure.unit == "run-mass":
        return f"{decimals(measure.value, 2, words)} kg/m"
    if measure.unit == "weight":
        return f"{decimals(measure.value, 2, words)} kg"
    if measure.unit != "length":
        return say_value(measure.value, SAID[measure.unit], words, units)
    told = say_length(measure.value, words, units)
    return f"{decimals(measure.value, 3, words)} mm" if told.startswith("≈") else told
