"""The environment in which every page of the site is made."""

from pathlib import Path

import jinja2
from jinja2.bccache import Bucket

from configurator.cache.by_code import keep_for_code, kept_for_code
from configurator.kernel.tongue import Words
from configurator.site.face.template_words import add_words


class KeptTemplates(jinja2.BytecodeCache):
    """Templates as Python's bytecode, which is kept beside that of our code."""

    KIND = "template"

    def load_bytecode(self, bucket: Bucket) -> None:
        """Load what is kept of a template, if it was made of the same text."""
        found = kept_for_code(self.KIND, bucket.key)
        if found:
            bucket.bytecode_from_string(found)

    def dump_bytecode(self, bucket: Bucket) -> None:
        """Keep a template."""
        keep_for_code(bucket.bytecode_to_string(), self.KIND, bucket.key)


def environment(folders: list[Path], words: Words, units: str) -> jinja2.Environment:
    """Return the templates' manners: escaped, strict about names, without stray white space."""
    env = jinja2.Environment(
        loader=jinja2.FileSystemLoader(folders),
        autoescape=True,
        undefined=jinja2.StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
        auto_reload=False,
        bytecode_cache=KeptTemplates(),
    )
    add_words(env, words, units)
    return env
