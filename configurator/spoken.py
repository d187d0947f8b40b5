"""The language of a command: the one asked for with ``--language``, or else that of the content that is read."""

from pathlib import Path

import click

from configurator.catalog import Catalog, load
from configurator.kernel.message import say, say_phrase
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import ENGLISH, Words


def words_of(language: str) -> Words:
    """Return the words of a language; raises ValueError where there is no such language."""
    if language == "en":
        return ENGLISH
    # What is known of languages is slow to load, and English needs none of it.
    from configurator.tongues.speech import speech

    return speech(language)


def words_asked() -> Words | None:
    """Return the words of the language asked for with ``--language``; None where none was."""
    context = click.get_current_context(silent=True)
    return context.find_root().obj if context else None


def words() -> Words:
    """Return the words in which a command speaks before it has read content."""
    return words_asked() or ENGLISH


def told(given: Message) -> str:
    """Return a message as a line of its own."""
    return say(given, words(), "in")


def phrase(given: Message) -> str:
    """Return a message as it stands within a line."""
    return say_phrase(given, words(), "in")


def read(folder: Path) -> Catalog:
    """Return the catalog of a content folder, in the language asked for or else in its own.

    :raises ContentProblems: with every problem of every file
    """
    asked = words_asked()
    return load(folder, asked["language"] if asked else None)
