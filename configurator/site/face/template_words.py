"""Filters that templates use: shares and other values in the showroom's units."""

import re
from collections.abc import Callable
from functools import lru_cache
from typing import Any

import jinja2
from markupsafe import Markup

from configurator.kernel.message import ENGLISH, say, say_rule, say_sum
from configurator.kernel.say import say_value
from configurator.kernel.shapes import Figure, Message
from configurator.kernel.typeset import typeset

# Most words stand on many pages.
typeset_words = lru_cache(maxsize=8192)(typeset)


def dial(telephone: str) -> str:
    """Return a telephone number as a ``tel:`` address wants it."""
    return re.sub(r"[^+0-9]", "", telephone)


def percent(share: float) -> str:
    """Return a share as a whole percentage, with a narrow no-break space before the sign."""
    return f"{share * 100:.0f}\u202f%"


def sentence(words: str) -> str:
    """Return words with a capital at their start."""
    return words[:1].upper() + words[1:]


def typeset_value(value: object) -> object:
    """Return words as a page sets them: curved apostrophes, and no line ending inside a measure."""
    return typeset_words(value) if isinstance(value, str) and not isinstance(value, Markup) else value


def raw(html: str) -> Markup:
    """Mark HTML or SVG that the project itself has made as ready for the page."""
    return Markup(html)


def add_words(env: jinja2.Environment, units: str) -> None:
    """Give a template environment the filters, in the showroom's units (``in`` or ``mm``)."""

    def said(figure: Figure) -> str:
        return say_value(figure["value"], figure["unit"], units)

    def working(figure: Figure) -> str:
        return say_sum(figure, ENGLISH, units)

    def rule(figure: Figure) -> str:
        return say_rule(figure, ENGLISH, units)

    def tell(told: Message) -> str:
        return say(told, ENGLISH, units)

    filters: dict[str, Callable[..., Any]] = {
        "dial": dial,
        "percent": percent,
        "raw": raw,
        "rule": rule,
        "sentence": sentence,
        "said": said,
        "tell": tell,
        "working": working,
    }
    env.filters.update(filters)
    env.finalize = typeset_value
