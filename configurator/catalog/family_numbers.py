"""A family's numbers against what its mechanism takes."""

from collections.abc import Mapping
from functools import cache

from configurator.catalog.clauses import Slip, Term
from configurator.catalog.fields import Number
from configurator.catalog.located import ContentFile, KeyPath, dotted, what_is
from configurator.catalog.schema.family import FamilyFile
from configurator.catalog.suggest import nearest, suggestion
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.mechanisms.common import COMMON_TAKES
from configurator.kernel.message import message
from configurator.kernel.tongue import wording

# How a number of each unit is written and what it can be at all: wide limits, for slips of the pen.
LIMITS = {
    "length": ("length", 0.0, 10000.0),
    "size": ("length", 0.5, 10000.0),
    "share": ("share", 0.0, 1.0),
    "count": ("count", 0.0, 100.0),
    "degree": ("degree", -180.0, 180.0),
    "switch": ("switch", 0.0, 1.0),
    "mass": ("mass", 0.0, 50.0),
    "run-mass": ("run-mass", 0.0, 20.0),
    "weight": ("weight", 0.0, 20.0),
}

# What a slip calls a number of each unit.
WHAT = {
    "length": wording("a length"),
    "share": wording("a share"),
    "count": wording("a count"),
    "degree": wording("a degree"),
    "switch": wording("a switch"),
    "mass": wording("a mass"),
    "run-mass": wording("a run-mass"),
    "weight": wording("a weight"),
}


def takes_of(mechanism: str) -> dict[str, list[str | float | None]]:
    """Return the numbers a mechanism takes: name to unit, preset (None: needed) and meaning."""
    return {**COMMON_TAKES, **MECHANISMS[mechanism]["takes"]}


def marker_of(take: list[str | float | None]) -> Number:
    """Return how a number of a mechanism is written, between which limits."""
    return marker_in(str(take[0]))


@cache
def marker_in(unit: str) -> Number:
    """Return the same by the unit that the mechanism states."""
    spelled, low, high = LIMITS[unit]
    return Number(spelled, low, high, WHAT[spelled])


def read_numbers(
    file: ContentFile, takes: Mapping[str, list[str | float | None]], written: Mapping[str, object], path: KeyPath
) -> dict[str, float]:
    """Return the numbers under a path; what is unknown or unreadable is noted."""
    numbers: dict[str, float] = {}
    for name, value in written.items():
        here = (*path, name)
        if name not in takes:
            unknown = message("unknown number '{name}'", {"name": [name, "name"]})
            file.at_key(here, unknown, suggestion(name, takes))
            continue
        try:
            numbers[name] = float(marker_of(takes[name]).checked(value))
        except Slip as slip:
            file.at_value(here, what_is(here, value), *slip.clauses, units=slip.units)
    return numbers


def all_numbers(family: FamilyFile) -> list[dict[str, object]]:
    """Return the family's numbers and those of each option."""
    return [family.numbers] + [
        option.numbers for choice in family.choices.values() for option in choice.options.values()
    ]


def always_given(family: FamilyFile, name: str) -> bool:
    """Return whether a number is there whatever the client picks."""
    if name in family.numbers:
        return True
    return any(all(name in option.numbers for option in choice.options.values()) for choice in family.choices.values())


def check_needed(file: ContentFile, takes: Mapping[str, list[str | float | None]], family: FamilyFile) -> None:
    """Note the numbers that the mechanism needs and the family does not give."""
    misspelt = {nearest(name, takes) for numbers in all_numbers(family) for name in numbers if name not in takes}
    for name, take in takes.items():
        if take[1] is None and not always_given(family, name) and name not in misspelt:
            named = dotted(("numbers", name))
            terms: dict[str, Term] = {"path": [named, "name"], "meaning": [str(take[2]), "text"]}
            missing = message("{path} is missing: {meaning}", terms)
            what: dict[str, Term] = {"what": [marker_of(take).what, "text"]}
            advice = message("{what} is expected here or in each option of one choice", what)
            file.at_key(("numbers",), missing, advice)
