"""A family file as words and numbers for its pages."""

from collections.abc import Mapping
from dataclasses import replace

from configurator.catalog.family_numbers import marker_of, takes_of
from configurator.catalog.located import KeyPath, dotted
from configurator.catalog.measures import Measure, measures
from configurator.catalog.notes import ChoiceNotes, FamilyNotes, OptionNotes, other_names
from configurator.catalog.schema.family import ChoiceFile, FamilyFile
from configurator.catalog.sources import PRESET, Source
from configurator.kernel.shapes import Family
from configurator.kernel.tongue import wording

CASSETTE_NAMES = {
    "roll": wording("roll diameter"),
    "height": wording("cassette height"),
    "depth": wording("cassette depth"),
}

FACTS = ("price_level", "cleaning", "animals")


def choice_notes(ident: str, choice: ChoiceFile) -> ChoiceNotes:
    """Return a choice's words."""
    options = {
        name: OptionNotes(name, option.name, option.note, option.retired, option.price_band, option.photo)
        for name, option in choice.options.items()
    }
    return ChoiceNotes(ident, choice.name, choice.note, options)


def family_measures(file: FamilyFile, family: Family, sources: Mapping[KeyPath, Source]) -> list[Measure]:
    """Return the family's numbers, its options' and its cassettes'; mechanism presets are marked as assumed."""
    takes = takes_of(file.mechanism)
    found: list[Measure] = []

    def add(path: KeyPath, numbers: Mapping[str, float], given: Mapping[str, object]) -> None:
        for name, value in numbers.items():
            assumed = name not in given
            source = PRESET if assumed else sources.get((*path, name), file.source)
            unit, meaning = marker_of(takes[name]).unit, str(takes[name][2])
            found.append(Measure(dotted((*path, name)), meaning, value, unit, source, assumed))

    add(("numbers",), family["numbers"], file.numbers)
    for choice in family["choices"]:
        for option in choice["options"]:
            path = ("choices", choice["id"], "options", option["id"], "numbers")
            add(path, option["numbers"], option["numbers"])
    for index, cassette in enumerate(file.cassettes):
        inside = {path[2:]: source for path, source in sources.items() if path[:2] == ("cassettes", index)}
        for measure in measures(cassette, file.source, inside):
            place = f"cassettes.{index + 1}.{measure.path}"
            found.append(replace(measure, path=place, name=CASSETTE_NAMES[measure.path]))
    return found


def fact_sources(file: FamilyFile, sources: Mapping[KeyPath, Source]) -> dict[str, Source]:
    """Return where each fact comes from that the file gives."""
    return {name: sources.get((name,), file.source) for name in FACTS if name in file.model_fields_set}


def family_notes(file: FamilyFile, family: Family, sources: Mapping[KeyPath, Source]) -> FamilyNotes:
    """Return the family's words and numbers."""
    return FamilyNotes(
        id=family["id"],
        name=file.name,
        also_called=other_names(file.name, file.also_called),
        summary=file.summary,
        photo=file.photo,
        source=file.source,
        retired=file.retired,
        mechanism=file.mechanism,
        fact_sources=fact_sources(file, sources),
        description=file.description,
        moves=file.moves,
        good_at=file.good_at,
        bad_at=file.bad_at,
        care=file.care,
        safety=file.safety,
        choices={name: choice_notes(name, choice) for name, choice in file.choices.items()},
        measures=family_measures(file, family, sources),
    )
