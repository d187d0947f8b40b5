"""The language of a command: the one asked for with ``--language``, or else that of the content that is read."""

from dataclasses import dataclass
from pathlib import Path

import click

from configurator.cache.by_content import ByContent
from configurator.catalog.clauses import Clauses, say_clauses
from configurator.kernel.message import say, say_phrase
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import ENGLISH, Words
from configurator.remembered import first_words
from configurator.spoken_click import give_click


@dataclass
class Voice:
    """In which language a command speaks, where that is known; ``asked`` where it was asked for.

    ``folder`` is where click looks up its own words.
    """

    folder: Path
    words: Words
    asked: bool


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


def speak_as(memory: ByContent) -> None:
    """Have the command speak the first language of a content folder where none was asked for."""
    speaking = voice()
    if speaking and not speaking.asked:
        first = first_words(memory)
        if first:
            speak(first)


def told(given: Message) -> str:
    """Return a message as a line of its own."""
    return say(given, words(), "in")


def phrase(given: Message) -> str:
    """Return a message as it stands within a line."""
    return say_phrase(given, words(), "in")


def clauses(given: Clauses) -> str:
    """Return clauses as they stand within a line."""
    return say_clauses(given, words(), "in")


def asked_for() -> str | None:
    """Return the code of the language that was asked for; None where the content's own is meant."""
    speaking = voice()
    return speaking.words["language"] if speaking and speaking.asked else None
