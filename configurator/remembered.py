"""What a content folder says, read and checked by one command and remembered for the next, until anything changes."""

from collections.abc import Callable, Mapping
from contextlib import suppress
from dataclasses import asdict, fields
from typing import Any, TypedDict

from configurator.cache.by_content import ByContent
from configurator.catalog import ContentProblems, Problem, Reading, Wanted, load
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import ENGLISH, Words


class Checked(TypedDict):
    """What a check has found in sound content: how many doors, handles, families and pages, and in clauses how much is
    not translated into each further language; ``addressed`` is whether it says where its site will stand, ``words`` the
    language in which it is told."""

    counts: list[int]
    addressed: bool
    notes: list[list[Message]]
    words: Words


def first_words(memory: ByContent) -> Words | None:
    """Return the words of the first language that a content folder names, sound or not; None where it is none."""

    def read() -> list[Words]:
        from configurator.catalog.own_language import first_language

        # What is no language's code is told of as the content is read.
        with suppress(ValueError):
            return [words_of(first_language(memory.folder))]
        return []

    found: list[Words] = memory.once(read, "first")
    return found[0] if found else None


def words_of(language: str) -> Words:
    """Return the words of a language; raises ValueError where there is no such language."""
    if language == ENGLISH["language"]:
        return ENGLISH
    # What is known of languages is slow to load, and English needs none of it.
    from configurator.tongues.speech import speech

    return speech(language)


def reading(memory: ByContent, language: str | None, wanted: Wanted | None) -> Reading:
    """Return what a content folder says, or what is ``wanted`` of it, in a language or in the first of its own.

    :raises ContentProblems: with every problem of every file that is read
    """

    def read() -> dict[str, Any]:
        return as_data(load(memory.folder, language, wanted))

    # What all of it says, where that is remembered and sound, holds what is wanted.
    whole = memory.found("reading", language or "") if wanted else None
    if whole is None or "problems" in whole:
        whole = memory.once(lambda: told(read), "reading", language or "", *(wanted or ()))
    return Reading(memory.folder, **sound(whole))


def checked(memory: ByContent, language: str | None) -> Checked:
    """Return what a check of a content folder finds, in a language or in the first of its own.

    :raises ContentProblems: with every problem of every file
    """
    found: Checked = sound(memory.once(lambda: told(lambda: check(memory, language)), "check", language or ""))
    return found


def check(memory: ByContent, language: str | None) -> Checked:
    """Return what there is to tell of sound content, and remember what it says for those who need no more."""
    catalog = load(memory.folder, language)
    memory.remember(as_data(catalog), "reading", language or "")
    notes: list[list[Message]] = []
    if catalog.showroom.tongues[1:]:
        from configurator.translating import untranslated

        notes = list(untranslated.notes(catalog))
    counts = [len(things) for things in (catalog.doors, catalog.handles, catalog.families, catalog.pages)]
    addressed = bool(catalog.showroom.public_address)
    return {"counts": counts, "addressed": addressed, "notes": notes, "words": catalog.words}


def told(make: Callable[[], Mapping[str, Any]]) -> Mapping[str, Any]:
    """Return what ``make`` gives, or the content's problems as data."""
    try:
        return make()
    except ContentProblems as found:
        return {"problems": [asdict(problem) for problem in found.problems]}


def sound(data: Mapping[str, Any]) -> Any:
    """Return data that tells of no problem.

    :raises ContentProblems: with the problems that it tells of
    """
    if "problems" in data:
        raise ContentProblems([Problem(**{**each, "clauses": tuple(each["clauses"])}) for each in data["problems"]])
    return data


def as_data(read: Reading) -> dict[str, Any]:
    """Return what was read as JSON has it, without the folder, which its stamp tells."""
    return {each.name: getattr(read, each.name) for each in fields(Reading) if each.name != "folder"}
