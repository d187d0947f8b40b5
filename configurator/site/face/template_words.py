"""Filters that templates use: shares and other values in the showroom's units."""

import re
from collections.abc import Callable, Mapping
from functools import lru_cache, partial
from typing import Any

import jinja2
from markupsafe import Markup, escape

from configurator.kernel.message import say, say_phrase, say_sum
from configurator.kernel.say import in_percent, say_value
from configurator.kernel.shapes import Figure, Message
from configurator.kernel.tongue import FORMS, Words, in_form, in_words
from configurator.kernel.typeset import typeset

# Most words stand on many pages.
typeset_words = lru_cache(maxsize=8192)(typeset)


def dial(telephone: str) -> str:
    """Return a telephone number as a ``tel:`` address wants it."""
    return re.sub(r"[^+0-9]", "", telephone)


def percent(share: float, words: Words) -> str:
    """Return a share as a whole percentage."""
    return typeset_words(in_percent(share, 0, words))


def sentence(words: str) -> str:
    """Return words with a capital at their start."""
    return words[:1].upper() + words[1:]


def typeset_value(value: object) -> object:
    """Return words as a page sets them: curved apostrophes, and no line ending inside a measure."""
    return typeset_words(value) if isinstance(value, str) and not isinstance(value, Markup) else value


def number(words: str) -> Markup:
    """Return a number within a sentence as a page makes it stand out."""
    return Markup('<b class="number">{}</b>').format(words)


def raw(html: str) -> Markup:
    """Mark HTML or SVG that the project itself has made as ready for the page."""
    return Markup(html)


def fill(text: str, terms: Mapping[str, str]) -> Markup:
    """Return a text with its ``{terms}`` put in: what is no HTML yet is escaped, as everywhere in a template."""
    told = str(escape(typeset_words(text)))
    for name, term in terms.items():
        told = told.replace("{" + name + "}", escape(typeset_value(term)))
    return Markup(told)


def add_words(env: jinja2.Environment, words: Words, units: str) -> None:
    """Give a template environment the filters, in a language and the showroom's units (``in`` or ``mm``)."""

    def said(figure: Figure) -> str:
        return say_value(figure["value"], figure["unit"], words, units)

    def working(figure: Figure) -> str:
        return say_sum(figure, words, units)

    def phrase(told: Message) -> str:
        return say_phrase(told, words, units)

    def tell(told: Message) -> str:
        return say(told, words, units)

    def tell_text(text: str, **terms: str) -> str:
        return fill(in_words(text, words), terms)

    def tell_several(one: str, many: str, count: int, **terms: str) -> str:
        return fill(in_form(one + FORMS + many, count, words), {"count": str(count), **terms})

    env.globals.update({"_": tell_text, "_several": tell_several})
    filters: dict[str, Callable[..., Any]] = {
        "dial": dial,
        "number": number,
        "named": partial(in_words, words=words),
        "percent": partial(percent, words=words),
        "phrase": phrase,
        "raw": raw,
        "sentence": sentence,
        "said": said,
        "tell": tell,
        "working": working,
    }
    env.filters.update(filters)
    env.finalize = typeset_value
