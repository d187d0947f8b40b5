"""The environment in which every page of the site is made."""

from pathlib import Path

import jinja2

from configurator.kernel.tongue import Words
from configurator.site.face.template_words import add_words


def environment(folders: list[Path], words: Words, units: str) -> jinja2.Environment:
    """Return the templates' manners: escaped, strict about names, without stray white space."""
    env = jinja2.Environment(
        loader=jinja2.FileSystemLoader(folders),
        autoescape=True,
        undefined=jinja2.StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
    )
    add_words(env, words, units)
    return env
