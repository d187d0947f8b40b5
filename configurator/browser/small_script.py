"""A script that the pages have as it is written, made small once for each code."""

from functools import partial
from typing import cast

from configurator.browser.squeeze import squeezed
from configurator.cache.by_code import once_for_code


def small_script(text: str) -> str:
    """Return a script, made small as :func:`configurator.browser.squeeze.squeezed` does."""
    return cast(str, once_for_code(partial(squeezed, text), "script", text))
