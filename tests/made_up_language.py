"""A language made up for tests: every text of the program between marks, and half as long again."""

import re
from collections.abc import Callable

from configurator.catalog import Catalog
from configurator.kernel.tongue import ENGLISH, FORMS, Words
from configurator.translating.own_texts import own_texts

OPENED, CLOSED = "⟦", "⟧"
# What stands with a number is no text.
UNITS = {"mm", "in", "kg", "sq", "ft", "yd"}


def marked(form: str) -> str:
    """Return a text between the marks."""
    return f"{OPENED}{form}{CLOSED}"


def longer(form: str) -> str:
    """Return a text with half as many letters again, in words of its own length; its terms stay as they are."""
    words = re.findall(r"[A-Za-z]+", re.sub(r"\{\w+\}", "", form))
    return form + "".join(f" {word}" for word in words[::2])


def made_up(change: Callable[[str], str]) -> Words:
    """Return the language in which every text of the program is changed."""
    said = {told.key: FORMS.join(change(form) for form in told.forms) for told in own_texts()}
    return {**ENGLISH, "language": "eo", "said": said}


def own_words(catalog: Catalog) -> str:
    """Return all that the content says: names and prose are in its own language."""
    notes = [*catalog.door_notes.values(), *catalog.family_notes.values(), *catalog.handle_notes.values()]
    return plain(repr([catalog.showroom, notes, [*catalog.families.values()]]).replace("\\n", " "))


def unmarked(text: str) -> str:
    """Return what stands outside all marks."""
    depth, outside = 0, ""
    for sign in text:
        depth += (sign == OPENED) - (sign == CLOSED)
        outside += sign if depth == 0 and sign not in (OPENED, CLOSED) else ""
    return outside


def plain(text: str) -> str:
    """Return a text without what typography does to it."""
    return " ".join(text.replace("’", "'").lower().split()).strip(" .()")


def says(text: str) -> bool:
    """Return whether a text says more than numbers with their units."""
    return any(len(word) > 1 and word.isalpha() and word not in UNITS for word in text.split())
