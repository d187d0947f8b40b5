"""What the kernel says: whole sentences with named terms, made to read in a language and in units.

The English sentence is the key of the translations; what is not translated is said in English.
"""

from typing import TypedDict

from configurator.kernel.piece_kinds import kind_name
from configurator.kernel.say import decimals, say_value
from configurator.kernel.shapes import Figure, Message


class Words(TypedDict):
    """A language: its code (RFC 5646) and what each English sentence or name is in it."""

    language: str
    said: dict[str, str]


ENGLISH: Words = {"language": "en", "said": {}}


def message(text: str, terms: dict[str, list[float | str]]) -> Message:
    """Return a sentence with its terms; see :class:`configurator.kernel.shapes.Message`."""
    return {"text": text, "terms": terms}


def plain(text: str) -> Message:
    """Return a sentence that names no term."""
    return {"text": text, "terms": {}}


def silence() -> Message:
    """Return the message that says nothing."""
    return {"text": "", "terms": {}}


def is_said(given: Message) -> bool:
    """Return whether a message says anything."""
    return given["text"] != ""


def in_words(text: str, words: Words) -> str:
    """Return what a sentence or a name is in a language."""
    return words["said"].get(text, text)


def say_one_term(term: list[float | str], words: Words, units: str) -> str:
    """Return one term of a message as it reads."""
    unit = str(term[1])
    if unit == "text":
        return in_words(str(term[0]), words)
    if unit == "kind":
        return in_words(kind_name(str(term[0])), words)
    if unit == "percent":
        return decimals(float(term[0]) * 100, 0) + " %"
    return say_value(float(term[0]), unit, units)


def with_terms(text: str, terms: dict[str, list[float | str]], words: Words, units: str) -> str:
    """Return a text with its terms put in."""
    for name, term in terms.items():
        text = text.replace("{" + name + "}", say_one_term(term, words, units))
    return text


def say_phrase(given: Message, words: Words, units: str) -> str:
    """Return a message as it reads in a language and in ``units`` (``in`` or ``mm``), within a sentence."""
    return with_terms(in_words(given["text"], words), given["terms"], words, units)


def say(given: Message, words: Words, units: str) -> str:
    """Return a message as a sentence of its own, its first letter a capital."""
    text = say_phrase(given, words, units)
    return text[:1].upper() + text[1:]


def say_rule(figure: Figure, words: Words, units: str) -> str:
    """Return the rule of a figure's working in words, within a sentence."""
    working = figure["working"]
    return with_terms(in_words(working["rule"], words), working["terms"], words, units)


def say_sum(figure: Figure, words: Words, units: str) -> str:
    """Return a figure's working with the numbers put in, and the result."""
    working = figure["working"]
    text = with_terms(in_words(working["template"], words), working["terms"], words, units)
    result = say_value(figure["value"], figure["unit"], units)
    # The mark of a rounded value stands in place of the equals sign.
    return text + " " + (result if result.startswith("≈") else "= " + result)


def say_working(figure: Figure, words: Words, units: str) -> str:
    """Return a figure's working in one line: the rule, the numbers put in, the result."""
    return say_rule(figure, words, units) + ": " + say_sum(figure, words, units)
