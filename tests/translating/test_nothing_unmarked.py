"""What users are told is marked to be translated: no other text of several words stands in the source."""

import ast
import re
from collections.abc import Iterator
from pathlib import Path

import pytest

from configurator.tongues.marked import marked_arguments

PACKAGE = Path(__file__).parents[2] / "configurator"
ROOMS = ("catalog", "site", "translating")
FILES = sorted([*PACKAGE.glob("*.py"), *(path for room in ROOMS for path in (PACKAGE / room).rglob("*.py"))])
SEVERAL_WORDS = re.compile(r"[A-Za-z]{2,}[,;:]? [a-z]{2,}")
# What no user is told: states and keys that are compared, faces, markup, what others say and is looked for.
SILENT = {
    "site visit",
    "does not fit",
    "guide by hand",
    "pair card",
    "photo card",
    "room card",
    "open and closed",
    "ruled out",
    "frame now",
    "astragal words ",
    "Window covering",
}
SILENT_FORMS = re.compile(r"[<@]|ui-|msgid|Doc file")


def told_elsewhere(tree: ast.Module) -> Iterator[ast.AST]:
    """Yield what is no text to be told: docstrings, keys, what is marked or compared, what only programmers meet."""
    for node in ast.walk(tree):
        if isinstance(node, ast.Module | ast.FunctionDef | ast.ClassDef) and ast.get_docstring(node):
            yield node.body[0]
        elif isinstance(node, ast.Dict):
            yield from (key for key in node.keys if key)
        elif isinstance(node, ast.Call):
            yield from marked_arguments(node)
            if ast.unparse(node.func).endswith(("startswith", "RuntimeError")):
                yield node


def unmarked(source: str) -> list[str]:
    """Return each text of several words that a file holds and does not mark."""
    tree = ast.parse(source)
    passed = {inner for node in told_elsewhere(tree) for inner in ast.walk(node)}
    texts = [node.value for node in ast.walk(tree) if isinstance(node, ast.Constant) and node not in passed]
    return [text for text in texts if isinstance(text, str) and SEVERAL_WORDS.search(text)]


@pytest.mark.parametrize("path", FILES, ids=lambda path: path.relative_to(PACKAGE).as_posix())
def test_no_words_are_left_unmarked(path: Path) -> None:
    found = [text for text in unmarked(path.read_text(encoding="utf-8")) if text not in SILENT]
    found = [text for text in found if not SILENT_FORMS.search(text)]
    assert found == []


def test_words_that_are_left_unmarked_are_found() -> None:
    assert unmarked('raise Slip(f"{name} is not known")\n') == [" is not known"]
    assert unmarked('click.echo("no such door")\n') == ["no such door"]
    assert unmarked('"""What it does."""\nraise Slip(plain("no such door"))\n') == []
