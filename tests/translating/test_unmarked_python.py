"""Whatever kernel, site, drawing and browser say is marked to be translated."""

import ast
import re
from collections.abc import Iterator
from functools import cache
from pathlib import Path

import pytest

from configurator.tongues.marked import marked_arguments, written_out
from configurator.translating.own_texts import PACKAGE

ROOMS = ("kernel", "site", "drawing", "browser")
# What speaks to those who carry on the code, in English: the translation to JavaScript, with what it refuses.
FOR_PROGRAMMERS = ("dialect", "emit", "squeeze", "declarations", "join", "page_module", "script", "script_words")
FILES = [path for room in ROOMS for path in sorted((PACKAGE / room).rglob("*.py"))]
HEARD = [path for path in FILES if not {*path.parts, path.stem}.intersection(FOR_PROGRAMMERS)]
# Words: two with a space between, one beside a term, or one that begins with a capital.
WORDS = re.compile(r"[^\W\d_]{2,}[,;:]? [^\W\d_]{2,}|\{\} [^\W\d_]{3,}|[^\W\d_]{3,} \{\}|^[A-Z][a-z]+")
# Markup and style: tags, also where a value cuts them in two, rules of CSS, and declarations.
MARKUP = re.compile(r"<[^<>]*>?|^[^<>]*>|@media [^{]*\{?|[\w-]+:[^;:]+;")
# Calls whose texts name types, fonts and their files, or what a house keeps in mind.
MACHINE_CALLS = {"TypeVar", "WebFont", "StandIn", "once", "here", "RuntimeError"}
# Keys of what is written for machines.
MACHINE_KEYS = {"@type"}
# Each with its reason.
NO_WORDS = {
    "does not fit": "is a state, for machines",
    "frame now": "are classes",
    "{}-title {}-desc": "are ids",
    "SourceSansPro-Regular.ttf": "is a file of a package",
    "Astragal.example='{}';\n": "is a script",
    "Astragal Sans": "is a font's name",
    "Astragal Serif": "is a font's name",
    "{} Stand-In": "is a font's name",
}
CLASSES = set(re.findall(r"\.([a-z-]+)", (PACKAGE / "drawing" / "drawing.css").read_text(encoding="utf-8")))


def texts(node: ast.AST) -> Iterator[ast.Constant | ast.JoinedStr]:
    """Yield each text written out, one with values in it as a whole."""
    if isinstance(node, ast.JoinedStr) or (isinstance(node, ast.Constant) and isinstance(node.value, str)):
        yield node
    for part in () if is_for_machines(node) else parts(node):
        yield from texts(part)


def parts(node: ast.AST) -> Iterator[ast.AST]:
    """Yield what stands within a node, but for annotations."""
    if isinstance(node, ast.JoinedStr):
        yield from (part.value for part in node.values if isinstance(part, ast.FormattedValue))
        return
    for name, value in ast.iter_fields(node):
        if name not in ("annotation", "returns"):
            yield from (each for each in (value if isinstance(value, list) else [value]) if isinstance(each, ast.AST))


def is_for_machines(node: ast.AST) -> bool:
    """Return whether what is written is a docstring, or a call whose texts are no words for people."""
    if isinstance(node, ast.Expr) and isinstance(node.value, ast.Constant):
        return True
    called = node.func if isinstance(node, ast.Call) else None
    name = called.attr if isinstance(called, ast.Attribute) else called.id if isinstance(called, ast.Name) else ""
    return name in MACHINE_CALLS


def told(text: ast.Constant | ast.JoinedStr) -> str:
    """Return a text with a pair of braces for whatever is put into it."""
    if isinstance(text, ast.Constant):
        return str(text.value)
    return "".join(str(part.value) if isinstance(part, ast.Constant) else "{}" for part in text.values)


def marked(tree: ast.AST) -> set[ast.Constant]:
    """Return the texts that are marked."""
    calls = [node for node in ast.walk(tree) if isinstance(node, ast.Call)]
    return {text for call in calls for argument in marked_arguments(call) for text in written_out(argument)}


def idents(tree: ast.AST) -> Iterator[str]:
    """Yield what is a key, is compared, or goes with a key of machines: ids, states and classes."""
    for node in ast.walk(tree):
        named: list[ast.expr | None] = []
        if isinstance(node, ast.Dict):
            named += node.keys
            pairs = zip(node.keys, node.values, strict=True)
            named += [value for key, value in pairs if isinstance(key, ast.Constant) and key.value in MACHINE_KEYS]
        elif isinstance(node, ast.Compare):
            named += [node.left, *node.comparators]
        yield from (str(name.value) for name in named if isinstance(name, ast.Constant))


@cache
def every_ident() -> frozenset[str]:
    """Return the ids of all rooms."""
    return frozenset(ident for path in FILES for ident in idents(ast.parse(path.read_text(encoding="utf-8"))))


def holds_words(text: str) -> bool:
    """Return whether a text holds words for people."""
    return WORDS.search(MARKUP.sub("", text)) is not None and not CLASSES.issuperset(text.split())


def unmarked(source: str) -> list[str]:
    """Return the words in a Python file that are not marked, each with its line."""
    tree = ast.parse(source)
    known = marked(tree)
    no_words = every_ident().union(NO_WORDS)
    found = [text for text in texts(tree) if text not in known and told(text) not in no_words]
    return [f"{text.lineno}: {told(text)}" for text in found if holds_words(told(text))]


@pytest.mark.parametrize("path", HEARD, ids=lambda path: path.relative_to(PACKAGE).as_posix())
def test_no_words_are_left_unmarked(path: Path) -> None:
    assert unmarked(path.read_text(encoding="utf-8")) == []


@pytest.mark.parametrize(
    "slip",
    [
        'told = "take care"',
        'told = f"{count} doors"',
        'told = f"<p>{count}</p> <b>more figures</b>"',
        'names = ["Open", wording("Closed")]',
        'told = message("A {b}", {"b": ["more words", "text"]})',
        'told = say(wording("Take care") if near else "mind the gap")',
    ],
)
def test_unmarked_words_are_found(slip: str) -> None:
    assert len(unmarked(slip)) == 1


def test_each_exception_is_needed() -> None:
    every = {told(text) for path in HEARD for text in texts(ast.parse(path.read_text(encoding="utf-8")))}
    assert every.issuperset(NO_WORDS)


def test_what_speaks_to_programmers_is_there() -> None:
    assert {name for path in FILES for name in (*path.parts, path.stem)}.issuperset(FOR_PROGRAMMERS)
