"""The words by which coverings and doors are found: their names, what is said of them, what people need them for."""

from collections.abc import Iterable

from configurator.catalog.notes import DoorNotes, FamilyNotes
from configurator.kernel.shapes import Family
from configurator.kernel.tongue import wording
from configurator.site.house import House

# What people look for where a family's facts are these; what tears is no answer to "cat".
WITH_ANIMALS = wording("cat dog pet animal claws")
ANIMAL_NEEDS = {"stands up": WITH_ANIMALS, "gives way": WITH_ANIMALS}
CLEANING_NEEDS = {
    "wiped": wording("easy to clean wiped kitchen"),
    "dusted": wording("dusted brush"),
    "washed": wording("easy to clean washed machine"),
    "specialist": wording("specialist"),
}
PRICE_NEEDS = {1: wording("cheap inexpensive affordable")}
# The same for the wishes that the list can be sifted by.
WISH_NEEDS = {
    "passes": wording("passes handle"),
    "clears": wording("clear view"),
    "low": wording("slim thin shallow flat"),
    "private": wording("private privacy neighbors"),
    "dark": wording("dark darkness blackout bedroom sleep"),
    "cordless": wording("no cord cordless child safe"),
}


def distinct(texts: Iterable[str]) -> str:
    """Return the words of some texts in small letters, each once."""
    return " ".join(dict.fromkeys(" ".join(texts).lower().split()))


def needs(family: Family, wishes: list[str]) -> list[str]:
    """Return which words of need a family answers to, by its facts and the wishes that it fulfils."""
    texts = [
        ANIMAL_NEEDS.get(family["animals"], ""),
        CLEANING_NEEDS.get(family["cleaning"], ""),
        PRICE_NEEDS.get(int(family["price_level"]), ""),
        *(WISH_NEEDS[wish] for wish in wishes),
    ]
    return [text for text in texts if text]


def covering_words(house: House, family: Family, wishes: list[str]) -> str:
    """Return the words by which a family is found that fulfils some wishes."""
    notes = house.catalog.family_notes[family["id"]]
    needed = [house.named(text) for text in needs(family, wishes)]
    return distinct([notes.name, *notes.also_called, notes.summary, *notes.good_at, *offered(notes), *needed])


def offered(notes: FamilyNotes) -> list[str]:
    """Return the names of what is offered of a family, with what is said of each."""
    options = [option for choice in notes.choices.values() for option in choice.options.values()]
    return [text for option in options if not option.retired for text in (option.name, option.note)]


def door_words(notes: DoorNotes, further: list[str]) -> str:
    """Return the words by which a door is found, some of its tile's among them."""
    return distinct([notes.name, *notes.also_called, notes.summary, *notes.description, notes.glass_type, *further])
