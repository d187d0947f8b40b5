"""The numbers from which a family's figures are worked out, each with where it comes from."""

from typing import TypedDict

from configurator.catalog.measures import Measure
from configurator.catalog.notes import FamilyNotes
from configurator.kernel.say import decimals, say_length, say_value
from configurator.kernel.tongue import ENGLISH
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
        groups.setdefault(group_name(notes, measure), []).append(line(measure, house.units))
    return [{"name": name, "lines": lines} for name, lines in groups.items()]


def group_name(notes: FamilyNotes, measure: Measure) -> str:
    """Return in words what a number belongs to."""
    parts = measure.path.split(".")
    if parts[0] == "choices":
        choice = notes.choices[parts[1]]
        return f"{choice.name}: {choice.options[parts[3]].name}"
    return f"cassette {parts[1]}" if parts[0] == "cassettes" else "whatever is chosen"


def line(measure: Measure, units: str) -> NumberLine:
    """Return a number's name, its value in words and its source."""
    source = f"{measure.source}, assumed" if measure.assumed else str(measure.source)
    name = measure.name.removesuffix(", kg/m2").removesuffix(", kg/m").removesuffix(", kg")
    return {"name": name, "value": said(measure, units), "source": source}


def said(measure: Measure, units: str) -> str:
    """Return a number with its unit; a length that no tape shows exactly in millimeters."""
    if measure.unit == "mass":
        return f"{decimals(measure.value, 2, ENGLISH)} kg/m²"
    if measure.unit == "run-mass":
        return f"{decimals(measure.value, 2, ENGLISH)} kg/m"
    if measure.unit == "weight":
        return f"{decimals(measure.value, 2, ENGLISH)} kg"
    if measure.unit != "length":
        return say_value(measure.value, SAID[measure.unit], ENGLISH, units)
    words = say_length(measure.value, ENGLISH, units)
    return f"{decimals(measure.value, 3, ENGLISH)} mm" if words.startswith("≈") else words
