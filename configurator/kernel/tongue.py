"""A language, and what an English sentence or name is in it."""

from typing import TypedDict

# Between the forms of a sentence that names a number of things, as in a compiled gettext catalog.
FORMS = "\u0000"
# From here on, the form of a number of things goes by its last two digits, in every language.
HUNDRED = 100


class Words(TypedDict):
    """A language: its code (RFC 5646), what each English sentence or name is in it, and how it writes numbers.

    ``said`` holds, for a sentence with forms for one and for many, all of the language's forms, joined by ``FORMS`` on
    either side. ``plural`` gives the place among them for 0, 1, 2 … things; its last entry, or its last hundred where
    there are more, go on for ever. ``decimal`` is the decimal sign; ``percent`` writes a share, its number in place of
    ``{share}``.
    """

    language: str
    said: dict[str, str]
    decimal: str
    percent: str
    plural: list[int]


ENGLISH: Words = {"language": "en", "said": {}, "decimal": ".", "percent": "{share}%", "plural": [1, 0, 1]}


def wording(text: str) -> str:
    """Return a text as it is; in the source this marks it as words to be translated, said by :func:`in_words`."""
    return text


def in_words(text: str, words: Words) -> str:
    """Return what a sentence or a name is in a language; in English where it is not translated."""
    return words["said"].get(text, text)


def form_place(number: float, words: Words) -> int:
    """Return which of a language's forms goes with a number of things."""
    plural = words["plural"]
    if number < len(plural):
        return plural[int(number)]
    if len(plural) <= HUNDRED:
        return plural[len(plural) - 1]
    return plural[len(plural) - HUNDRED + int(number - len(plural)) % HUNDRED]


def in_form(text: str, number: float, words: Words) -> str:
    """Return the form of a sentence, given in all its English forms, that goes with a number of things."""
    forms = in_words(text, words).split(FORMS)
    return forms[min(form_place(number, words), len(forms) - 1)]
