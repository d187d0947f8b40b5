"""The words that go with doors, handles and families, for pages to show; figures come from the kernel."""

from dataclasses import dataclass

from configurator.catalog.measures import Measure
from configurator.catalog.schema.photograph import Photograph
from configurator.catalog.sources import Source


def other_names(name: str, also_called: list[str]) -> list[str]:
    """Return what else a thing is called, each name once: a language may have one word for several."""
    return [other for other in dict.fromkeys(also_called) if other.casefold() != name.casefold()]


@dataclass(frozen=True)
class HandleNotes:
    """A handle in words."""

    id: str
    name: str
    summary: str
    source: Source
    measures: list[Measure]


@dataclass(frozen=True)
class DoorNotes:
    """A door in words. ``measured`` is ``site visit`` or ``preset``; ``handle`` is the handle's id.

    ``also_called`` are other names that people have for it.
    """

    id: str
    name: str
    also_called: list[str]
    summary: str
    description: list[str]
    source: Source
    photo: Photograph | None
    measured: str
    glass_type: str
    handle: str
    measures: list[Measure]


@dataclass(frozen=True)
class OptionNotes:
    """An option in words."""

    id: str
    name: str
    note: str
    retired: bool
    price_band: str
    photo: Photograph | None


@dataclass(frozen=True)
class ChoiceNotes:
    """A choice in words, with its options by id."""

    id: str
    name: str
    note: str
    options: dict[str, OptionNotes]


@dataclass(frozen=True)
class FamilyNotes:
    """A family in words; each text is a list of paragraphs or points. ``also_called`` are other names that people
    have for it.

    ``fact_sources`` are of those facts that are given, by name: ``price_level``, ``cleaning``, ``animals``.
    """

    id: str
    name: str
    also_called: list[str]
    summary: str
    photo: Photograph | None
    source: Source
    retired: bool
    mechanism: str
    fact_sources: dict[str, Source]
    description: list[str]
    moves: list[str]
    good_at: list[str]
    bad_at: list[str]
    care: list[str]
    safety: list[str]
    choices: dict[str, ChoiceNotes]
    measures: list[Measure]
