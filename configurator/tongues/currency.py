"""How a currency's amounts are written in a language."""

import re

from babel.core import get_global
from babel.numbers import get_currency_precision, get_currency_symbol, get_group_symbol, list_currencies

from configurator.kernel.prices.price_shapes import Money
from configurator.kernel.tongue import Words
from configurator.tongues.speech import locale_of


def is_currency(code: str) -> bool:
    """Return whether a code is that of a currency (ISO 4217)."""
    return code in list_currencies() and code in get_global("all_currencies")


def minor_digits(currency: str) -> int:
    """Return how many decimals a currency's minor unit takes."""
    return get_currency_precision(currency)


def money_in(currency: str, words: Words) -> Money:
    """Return how amounts of a currency are written in a language.

    :raises ValueError: where there is no such language
    """
    locale = locale_of(words["language"])
    written = locale.currency_formats["standard"].pattern.partition(";")[0]
    pattern = re.sub(r"[#,.0]+", "{amount}", written).replace("¤", get_currency_symbol(currency, locale))
    return {
        "currency": currency,
        "digits": float(minor_digits(currency)),
        # Pages and papers set their own spaces.
        "pattern": re.sub(r"\s", " ", pattern),
        "group": re.sub(r"\s", " ", get_group_symbol(locale)),
        "decimal": words["decimal"],
        "percent": words["percent"],
    }
