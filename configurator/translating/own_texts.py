"""What the program itself says: every marked text of kernel, site, commands, templates and page scripts."""

import ast
import re
from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

from jinja2.ext import babel_extract

from configurator.browser.script_words import script_texts
from configurator.kernel.tongue import FORMS
from configurator.places import THEMES
from configurator.tongues.marked import marked_arguments, marked_as, written_out

PACKAGE = Path(__file__).parent.parent
# What is no word of a text: its terms, and what formulas compute with.
FORMULA = re.compile(r"\{\w+\}|\b(?:max|min|floor|ceil|sqrt|x)\b")
# What templates call to say something, as gettext tools want it told: ``_several`` has two forms.
TEMPLATE_CALLS: Any = {"_": None, "_several": (1, 2)}


@dataclass(frozen=True)
class Said:
    """A text that is said somewhere: its forms (one, or those for one and for many), and where it stands."""

    forms: tuple[str, ...]
    file: str
    line: int

    @property
    def key(self) -> str:
        """The text as the kernel looks it up."""
        return FORMS.join(self.forms)


@cache
def own_texts() -> tuple[Said, ...]:
    """Return each text that the program says wherever it is said, in the order of files and lines."""
    return tuple(all_texts())


def all_texts() -> Iterator[Said]:
    """Yield them as the files are read."""
    for path in sorted(PACKAGE.rglob("*.py")):
        yield from python_texts(path.read_text(encoding="utf-8"), path.relative_to(PACKAGE.parent).as_posix())
    for path in sorted(THEMES.rglob("*.html")):
        yield from template_texts(path, path.relative_to(THEMES.parent).as_posix())
    for path in sorted(THEMES.rglob("*.js")):
        for told in script_texts(path.read_bytes()):
            yield Said(tuple(told.texts), path.relative_to(THEMES.parent).as_posix(), told.line)


def python_texts(source: str, name: str) -> Iterator[Said]:
    """Yield each text that a Python file marks."""
    calls = [node for node in ast.walk(ast.parse(source)) if isinstance(node, ast.Call)]
    for call in sorted(calls, key=lambda each: (each.lineno, each.col_offset)):
        texts = [text for argument in marked_arguments(call) for text in written_out(argument)]
        if marked_as(call.func) == "several":
            yield Said(tuple(str(text.value) for text in texts), name, call.lineno)
        else:
            yield from (Said((str(text.value),), name, text.lineno) for text in texts if has_words(str(text.value)))


def has_words(text: str) -> bool:
    """Return whether a text has words, and is not a formula alone."""
    return re.search(r"[A-Za-z]", FORMULA.sub("", text)) is not None


def template_texts(path: Path, name: str) -> Iterator[Said]:
    """Yield each text that a template says."""
    with path.open("rb") as file:
        for line, _, told, _ in babel_extract(file, TEMPLATE_CALLS, [], {"trimmed": "true"}):
            forms = (told,) if isinstance(told, str) else tuple(form for form in told or () if form)
            yield Said(forms, name, line)
