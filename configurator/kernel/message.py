"""What the kernel says: whole sentences with named terms, made to read in a language and in units.

The English sentence is the key of the translations; what is not translated is said in English.
"""

from configurator.kernel.piece_kinds import kind_name
from configurator.kernel.say import in_percent, say_value
from configurator.kernel.shapes import Figure, Message
from configurator.kernel.tongue import FORMS, Words, in_form, in_words


def message(text: str, terms: dict[str, list[float | str]]) -> Message:
    """Return a sentence with its terms; see :class:`configurator.kernel.shapes.Message`."""
    return {"text": text, "terms": terms}


def plain(text: str) -> Message:
    """Return a sentence that names no term."""
    return {"text": text, "terms": {}}


def several(one: str, many: str, terms: dict[str, list[float | str]]) -> Message:
    """Return a sentence about as many things as its term ``count`` says, in the form for one or for many."""
    return {"text": one + FORMS + many, "terms": terms}


def silence() -> Message:
    """Return the message that says nothing."""
    return {"text": "", "terms": {}}


def is_said(given: Message) -> bool:
    """Return whether a message says anything."""
    return given["text"] != ""


def say_one_term(term: list[float | str], words: Words, units: str) -> str:
    """Return one term of a message as it reads."""
    unit = str(term[1])
    if unit == "name":
        return str(term[0])
    if unit == "text":
        return in_words(str(term[0]), words)
    if unit == "kind":
        return in_words(kind_name(str(term[0])), words)
    if unit == "percent":
        return in_percent(float(term[0]), 0, words)
    return say_value(float(term[0]), unit, words, units)


def with_terms(text: str, terms: dict[str, list[float | str]], words: Words, units: str) -> str:
    """Return a text with its terms put in."""
    for name, term in terms.items():
        text = text.replace("{" + name + "}", say_one_term(term, words, units))
    return text


def say_phrase(given: Message, words: Words, units: str) -> str:
    """Return a message as it reads in a language and in ``units`` (``in`` or ``mm``), within a sentence."""
    terms = given["terms"]
    if FORMS in given["text"]:
        return with_terms(in_form(given["text"], float(terms["count"][0]), words), terms, words, units)
    return with_terms(in_words(given["text"], words), terms, words, units)


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
    result = say_value(figure["value"], figure["unit"], words, units)
    # The mark of a rounded value stands in place of the equals sign.
    return text + " " + (result if result.startswith("≈") else "= " + result)


def say_working(figure: Figure, words: Words, units: str) -> str:
    """Return a figure's working in one line: the rule, the numbers put in, the result."""
    return say_rule(figure, words, units) + ": " + say_sum(figure, words, units)
