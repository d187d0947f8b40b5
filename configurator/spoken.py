"""The language of a command: the one asked for with ``--language``, or else that of the content that is read."""

from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path

import click

from configurator.catalog import Catalog, Wanted, load
from configurator.catalog.clauses import Clauses, say_clauses
from configurator.catalog.own_language import first_language
from configurator.kernel.message import say, say_phrase
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import ENGLISH, Words
from configurator.spoken_click import give_click


@dataclass
class Voice:
    """In which language a command speaks, where that is known; ``asked`` where it was asked for.

    ``folder`` is where click looks up its own words.
    """

    folder: Path
    words: Words
    asked: bool


def words_of(language: str) -> Words:
    """Return the words of a language; raises ValueError where there is no such language."""
    if language == "en":
        return ENGLISH
    # What is known of languages is slow to load, and English needs none of it.
    from configurator.tongues.speech import speech

    return speech(language)


def voice(context: click.Context | None = None) -> Voice | None:
    """Return the voice of a command, or else of the one that runs; None where none does."""
    context = context or click.get_current_context(silent=True)
    return context.find_root().obj if context else None


def words(context: click.Context | None = None) -> Words:
    """Return the words in which a command speaks, or else the one that runs."""
    speaking = voice(context)
    return speaking.words if speaking else ENGLISH


def speak(given: Words) -> None:
    """Have the command speak a language from here on."""
    speaking = voice()
    if speaking:
        speaking.words = given
        give_click(given, speaking.folder)


def speak_as(folder: Path) -> None:
    """Have the command speak the first language of a content folder where none was asked for."""
    speaking = voice()
    if speaking and not speaking.asked:
        # What is no language's code is told of as the content is read.
        with suppress(ValueError):
            speak(words_of(first_language(folder)))


def told(given: Message) -> str:
    """Return a message as a line of its own."""
    return say(given, words(), "in")


def phrase(given: Message) -> str:
    """Return a message as it stands within a line."""
    return say_phrase(given, words(), "in")


def clauses(given: Clauses) -> str:
    """Return clauses as they stand within a line."""
    return say_clauses(given, words(), "in")


def read(folder: Path, wanted: Wanted | None) -> Catalog:
    """Return the catalog of a content folder, or what is wanted of it, in the language asked for or else in its own.

    :raises ContentProblems: with every problem of every file that is read
    """
    speaking = voice()
    return load(folder, speaking.words["language"] if speaking and speaking.asked else None, wanted)
