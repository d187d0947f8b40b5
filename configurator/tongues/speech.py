"""Languages as the kernel's words, from gettext catalogs: our own, and those that a showroom keeps."""

import re
from collections.abc import Iterable, Mapping
from pathlib import Path

from babel.core import Locale, UnknownLocaleError, get_global

from configurator.kernel.tongue import FORMS, Words
from configurator.tongues.po import PoEntry, read_po

FOLDER = Path(__file__).parent
# How many numbers of things tell every language's plurals: from 100 on, the last two digits do.
COUNTED = 200


def locale_of(language: str) -> Locale:
    """Return what is known of a language such as ``es`` or ``en-GB``.

    :raises ValueError: where there is no such language
    """
    try:
        return Locale.parse(language, sep="-")
    except (UnknownLocaleError, ValueError, TypeError) as wrong:
        raise ValueError(f"{language} is no language's code; such as en, es or en-GB is expected") from wrong


def code_of(locale: Locale) -> str:
    """Return a language's code as a showroom writes it and a page tells it: ``es``, ``en-GB``."""
    return str(locale).replace("_", "-")


def name_of(language: str) -> str:
    """Return a language's name in the language itself."""
    locale = locale_of(language)
    return locale.get_display_name(locale) or language


def regional(language: str) -> str:
    """Return a language with its country, or where there is none with the one where most speak it: ``en_US``."""
    locale = locale_of(language)
    likely = str(get_global("likely_subtags").get(str(locale), "")).rpartition("_")[2]
    country = locale.territory or likely
    return f"{locale.language}_{country}" if country.isalpha() else locale.language


def catalog_name(locale: Locale) -> str:
    """Return the name of a language's catalog as a file: ``es.po``, ``en_GB.po``."""
    return f"{locale}.po"


def own_catalog(language: str) -> Path:
    """Return where our own translations into a language stand, be there any or not."""
    return FOLDER / catalog_name(locale_of(language))


def read_catalog(path: Path) -> list[PoEntry]:
    """Return the entries of a gettext catalog, as those of :func:`read_po`; none where there is no file."""
    return read_po(path.read_text(encoding="utf-8")) if path.is_file() else []


def said_in(catalog: Iterable[PoEntry]) -> dict[str, str]:
    """Return what a catalog translates, as the kernel looks it up: all forms joined.

    What is unfinished or marked as unsure is left out.
    """
    return {
        FORMS.join(entry.forms): FORMS.join(entry.said)
        for entry in catalog
        if any(entry.forms) and all(entry.said) and not entry.fuzzy
    }


def percent_pattern(locale: Locale) -> str:
    """Return how a language writes a share: the sign's side, and whether a space parts it from the number."""
    written = locale.percent_formats[None].pattern.partition(";")[0]
    # Pages set their own spaces, which do not break a measure.
    return re.sub(r"\s", " ", re.sub(r"[#,.0]+", "{share}", written))


def plural_places(locale: Locale) -> list[int]:
    """Return which form goes with 0, 1, 2 … things, by the rule that gettext catalogs of a language have."""
    from gettext import c2py

    from babel.messages.plurals import get_plural

    rule = c2py(get_plural(str(locale)).plural_expr)
    return [rule(number) for number in range(COUNTED)]


def speech(language: str, further: Mapping[str, str] | None = None) -> Words:
    """Return a language with our own translations and further ones, which go before ours.

    :raises ValueError: where there is no such language
    """
    from babel.numbers import get_decimal_symbol

    locale = locale_of(language)
    return {
        "language": language,
        "said": {**said_in(read_catalog(own_catalog(language))), **(further or {})},
        "decimal": get_decimal_symbol(locale),
        "percent": percent_pattern(locale),
        "plural": plural_places(locale),
    }
