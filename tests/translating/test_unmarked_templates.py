"""Whatever the templates say is marked to be translated."""

import re
from collections.abc import Iterator
from pathlib import Path

import jinja2
import pytest
from jinja2 import nodes

from configurator.places import THEMES
from configurator.site.kinds.compare import NO_FIT

TEMPLATES = sorted(THEMES.rglob("*.html"))
WORD = re.compile(r"[^\W\d_]{2,}")
TAG = re.compile(r"<[^>]*>")
# What a reader hears, or sees where nothing else is.
SPOKEN = re.compile(r'\b(?:aria-label|aria-valuetext|alt|title|placeholder)="([^"]*)"')
# Words of an expression: two with a space between, or one that begins with a capital.
WORDS = re.compile(r"[^\W\d_]{2,},? [^\W\d_]{2,}|^[A-Z][a-z]")


def markup(root: nodes.Template) -> str:
    """Return what a template writes by itself, with a space wherever it puts something in."""
    return " ".join(data.data for data in root.find_all(nodes.TemplateData))


def expressions(node: nodes.Node) -> Iterator[str]:
    """Yield each text of the expressions that is not marked."""
    if isinstance(node, nodes.Const) and isinstance(node.value, str):
        yield node.value
    is_said = isinstance(node, nodes.Call) and isinstance(node.node, nodes.Name) and node.node.name in ("_", "_several")
    for child in node.iter_child_nodes(only=["kwargs"] if is_said else None):
        yield from expressions(child)


def unmarked(source: str) -> list[str]:
    """Return the words in a template that are not marked."""
    root = jinja2.Environment().parse(source)
    written = markup(root)
    shown = re.sub(r"<(style|script)\b.*?</\1>", "", written, flags=re.DOTALL)
    texts = [*TAG.sub("\n", shown).split("\n"), *SPOKEN.findall(written)]
    said = [text for text in expressions(root) if WORDS.search(text) and text != NO_FIT]
    return [text.strip() for text in texts if WORD.search(text)] + said


@pytest.mark.parametrize("path", TEMPLATES, ids=lambda path: path.relative_to(THEMES).as_posix())
def test_no_words_are_left_unmarked(path: Path) -> None:
    assert unmarked(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    "slip",
    [
        "<p>Take care</p>",
        '<p>{{ _("Take care") }} open</p>',
        '<p aria-label="Take care">{{ name }}</p>',
        '<p>{{ "Take care" if near else _("Far off") }}</p>',
        '<p>{{ _("A {b}", b="more words") }}</p>',
    ],
)
def test_unmarked_words_are_found(slip: str) -> None:
    assert len(unmarked(slip)) == 1
