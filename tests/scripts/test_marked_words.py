"""Whatever the pages' scripts say is marked to be translated."""

import re
from collections.abc import Iterator
from pathlib import Path

import pytest
from tree_sitter import Node

from configurator.browser.script_words import script_texts
from configurator.browser.syntax_tree import PARSER, text_of, within
from configurator.places import THEMES

MODULES = sorted(THEMES.rglob("*.js"))
# Attributes and entries that hold no words.
MACHINE_NAMES = {"class", "style", "id", "for", "viewBox", "transform", "aria-describedby", "aria-labelledby", "d"}
# Calls whose texts name elements, classes, events and the like.
MACHINE_CALLS = re.compile(r"(querySelector|querySelectorAll|addEventListener|createElement|setProperty|import|\.add)$")
# Words: two with a space between, or one that begins with a capital.
WORDS = re.compile(r"[^\W\d_]{2,},? [^\W\d_]{2,}|^[A-Z][a-z]")
# Tags, also where a value cuts them in two.
MARKUP = re.compile(r"<[^<>]*>?|^[^<>]*>")
# Each with its reason.
NO_WORDS = {
    "Content-Type": "is a header",
    "does not fit": "is a state, for machines",
    "column active": "are classes",
    "hold upright": "are classes",
    "hold level": "are classes",
    "use strict": "is a directive",
    "Escape": "is a key",
    "QuotaExceededError": "is the name of an error",
}


def literals(root: Node) -> Iterator[Node]:
    """Yield each text written out that may be words."""
    if root.type in ("string", "template_string") and not is_for_machines(root):
        yield root
    if root.type != "import_statement":
        for child in root.children:
            yield from literals(child)


def is_for_machines(text: Node) -> bool:
    """Return whether a text stands where no words are."""
    holder = text.parent
    if holder is None:
        return False
    if holder.type == "pair":
        key = holder.child_by_field_name("key")
        return key is not None and (key == text or text_of(key).strip('"') in MACHINE_NAMES)
    called = holder.parent.child_by_field_name("function") if holder.type == "arguments" and holder.parent else None
    return called is not None and MACHINE_CALLS.search(text_of(called)) is not None


def told(text: Node) -> str:
    """Return a text with a pair of braces for whatever is put into it."""
    return re.sub(r"\$\{(?:[^{}]|\{[^{}]*\})*\}", "{}", text_of(text)[1:-1])


def unmarked(source: bytes) -> list[str]:
    """Return the words in a script that are not marked, each with its line."""
    marked = {node.start_byte for said in script_texts(source) for node in said.nodes}
    found = [node for node in literals(PARSER.parse(source).root_node) if node.start_byte not in marked]
    words = [node for node in found if WORDS.search(MARKUP.sub("", told(node))) and told(node) not in NO_WORDS]
    return [f"{node.start_point.row + 1}: {told(node)}" for node in words]


@pytest.mark.parametrize("path", MODULES, ids=lambda path: path.stem)
def test_no_words_are_left_unmarked(path: Path) -> None:
    assert unmarked(path.read_bytes()) == []


@pytest.mark.parametrize(
    "slip",
    [
        'element("p", {}, "Take care")',
        'element("p", { title: "take care" })',
        "setText(node, `${count} more figures`)",
        'const a = b ? "Open" : _("Closed")',
        '_("A {b}", { b: "more words" })',
    ],
)
def test_unmarked_words_are_found(slip: str) -> None:
    assert len(unmarked(slip.encode())) == 1


def test_each_exception_is_needed() -> None:
    trees = [PARSER.parse(path.read_bytes()).root_node for path in MODULES]
    every = {told(node) for tree in trees for node in within(tree) if node.type in ("string", "template_string")}
    assert set(NO_WORDS) <= every
