"""Languages as the kernel's words, from gettext catalogs: our own, and those that a showroom keeps."""

import re
from collections.abc import Mapping, Sequence
from gettext import c2py
from pathlib import Path

from babel.core import Locale, UnknownLocaleError, get_global
from babel.messages.catalog import Catalog
from babel.messages.pofile import read_po
from babel.numbers import get_decimal_symbol

from configurator.kernel.tongue import FORMS, Words

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


def read_catalog(path: Path) -> Catalog:
    """Return a gettext catalog; one without entries where there is no file."""
    if not path.is_file():
        return Catalog()
    with path.open("rb") as file:
        return read_po(file)


def key_of(ident: str | Sequence[str]) -> str:
    """Return a catalog's entry as the kernel looks it up: all its forms joined."""
    return FORMS.join(forms_of(ident))


def forms_of(string: str | Sequence[str] | None) -> list[str]:
    """Return a text, or what it is in a language, in all its forms."""
    return [string or ""] if string is None or isinstance(string, str) else list(string)


def said_in(catalog: Catalog) -> dict[str, str]:
    """Return what a catalog translates; what is unfinished or marked as unsure is left out."""
    found: dict[str, str] = {}
    for entry in catalog:
        forms = forms_of(entry.string)
        if entry.id and all(forms) and not entry.fuzzy:
            found[key_of(entry.id)] = FORMS.join(forms)
    return found


def percent_pattern(locale: Locale) -> str:
    """Return how a language writes a share: the sign's side, and whether a space parts it from the number."""
    written = locale.percent_formats[None].pattern.partition(";")[0]
    # Pages set their own spaces, which do not break a measure.
    return re.sub(r"\s", " ", re.sub(r"[#,.0]+", "{share}", written))


def plural_places(locale: Locale) -> list[int]:
    """Return which form goes with 0, 1, 2 … things, by the rule that gettext catalogs of a language have."""
    rule = c2py(Catalog(locale=locale).plural_expr)
    return [rule(number) for number in range(COUNTED)]


def speech(language: str, further: Mapping[str, str] | None = None) -> Words:
    """Return a language with our own translations and further ones, which go before ours.

    :raises ValueError: where there is no such language
    """
    locale = locale_of(language)
    return {
        "language": language,
        "said": {**said_in(read_catalog(own_catalog(language))), **(further or {})},
        "decimal": get_decimal_symbol(locale),
        "percent": percent_pattern(locale),
        "plural": plural_places(locale),
    }
