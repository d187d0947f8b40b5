"""Each term that a sentence names is given with it, in Python, templates and page scripts."""

import ast
import re
from collections.abc import Iterator
from functools import cache
from typing import cast

import jinja2
from jinja2 import nodes
from tree_sitter import Node

from configurator.browser.script_words import SAYING, unquoted
from configurator.browser.syntax_tree import PARSER, text_of, within
from configurator.places import THEMES
from configurator.tongues.marked import MARKS, marked_arguments, marked_as, written_out
from configurator.translating.own_texts import PACKAGE

# Calls whose terms follow their texts.
WITH_TERMS = ("message", "several", "working")
HOLDERS = ast.FunctionDef | ast.ClassDef
Scope = dict[str, list[ast.expr]]
# Lists what click says, which puts in the terms itself.
CLICKS = PACKAGE / "spoken_click.py"


def named(text: str) -> set[str]:
    """Return the terms that a text names."""
    return set(re.findall(r"\{(\w+)\}", text))


def bound(tree: ast.AST) -> Scope:
    """Return what each name is bound to within a tree; under ``name[]`` the keys that are set in it."""
    found: Scope = {}
    for node in ast.walk(tree):
        if isinstance(node, ast.Assign | ast.AnnAssign) and node.value is not None:
            for target in node.targets if isinstance(node, ast.Assign) else [node.target]:
                if isinstance(target, ast.Name):
                    found.setdefault(target.id, []).append(node.value)
                elif isinstance(target, ast.Subscript):
                    found.setdefault(f"{ast.unparse(target.value)}[]", []).append(target.slice)
    return found


@cache
def returned() -> Scope:
    """Return what each function of the package returns."""
    found: Scope = {}
    for path in PACKAGE.rglob("*.py"):
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if isinstance(node, ast.FunctionDef):
                returns = [each.value for each in ast.walk(node) if isinstance(each, ast.Return) and each.value]
                found.setdefault(node.name, []).extend(returns)
    return found


def reaching(name: ast.Name, known: Scope) -> list[ast.expr]:
    """Return what a name is bound to where it is used: by the last line before it."""
    before = [value for value in known.get(name.id, []) if value.lineno < name.lineno]
    return sorted(before, key=lambda value: value.lineno)[-1:] or known.get(name.id, [])


def keys_of(given: ast.expr, known: Scope) -> set[str] | None:
    """Return the keys of a dict as far as it is written out somewhere; None where it is not."""
    if isinstance(given, ast.Dict):
        keys: set[str] = set()
        for key, value in zip(given.keys, given.values, strict=True):
            more = keys_of(value, known) if key is None else {str(cast(ast.Constant, key).value)}
            if more is None:
                return None
            keys |= more
        return keys
    name = given.func if isinstance(given, ast.Call) else given
    if not isinstance(name, ast.Name):
        return None
    sources = returned().get(name.id, []) if isinstance(given, ast.Call) else reaching(name, known)
    every = [keys_of(one, known) if isinstance(one, ast.Dict) else None for one in sources]
    sure = [keys for keys in every if keys is not None]
    added = {key.value for key in known.get(f"{name.id}[]", []) if isinstance(key, ast.Constant)}
    return set.intersection(*sure) | added if sure and len(sure) == len(every) else None


def texts_of(argument: ast.expr, known: Scope) -> Iterator[str]:
    """Yield the texts of an argument: written out there, or where its name is bound."""
    for one in reaching(argument, known) if isinstance(argument, ast.Name) else [argument]:
        marked = one.args[0] if isinstance(one, ast.Call) and marked_as(one.func) == "wording" else one
        yield from (str(text.value) for text in written_out(marked))


def given_with(call: ast.Call, known: Scope) -> set[str] | None:
    """Return the terms that are given with a sentence; None where they are not written out, or none are wanted."""
    mark = marked_as(call.func)
    if mark in WITH_TERMS:
        return keys_of(call.args[MARKS[mark][-1] + 1], known)
    return set() if mark == "plain" else None


def python_slips(source: str) -> tuple[int, list[str]]:
    """Return how many sentences of a file have been read with their terms, and those that lack one, with line."""
    tree = ast.parse(source)
    shared = bound(ast.Module([node for node in tree.body if not isinstance(node, HOLDERS)], []))
    read, slips = 0, []
    for part in tree.body:
        known = {**shared, **bound(part)}
        for call in [node for node in ast.walk(part) if isinstance(node, ast.Call)]:
            given = given_with(call, known)
            texts = [text for argument in marked_arguments(call) for text in texts_of(argument, known)]
            read += given is not None
            slips += [f"{call.lineno}: {text}" for text in texts if given is not None and named(text) - given]
    return read, slips


def template_slips(source: str) -> list[str]:
    """Return the sentences of a template that lack a term."""
    slips = []
    for call in jinja2.Environment().parse(source).find_all(nodes.Call):
        name = call.node.name if isinstance(call.node, nodes.Name) else ""
        given = {word.key for word in call.kwargs} | ({"count"} if name == "_several" else set())
        for text in call.args[: SAYING.get(name, 0)]:
            if isinstance(text, nodes.Const) and named(text.value) - given:
                slips.append(text.value)
    return slips


def script_slips(source: bytes) -> list[str]:
    """Return the sentences of a page script that lack a term; nodes may be put into them by ``around``."""
    slips = []
    for call in within(PARSER.parse(source).root_node):
        name, given = called(call), call.child_by_field_name("arguments")
        if name not in SAYING or given is None:
            continue
        holder = call.parent.parent if call.parent else None
        terms = given.named_children[SAYING[name] :]
        if not terms and holder is not None and called(holder) == "around":
            terms = cast(Node, call.parent).named_children[1:]
        for text in given.named_children[: SAYING[name]]:
            if named(unquoted(text)) - {key for object_ in terms for key in object_keys(object_)}:
                slips.append(unquoted(text))
    return slips


def called(node: Node) -> str:
    """Return the name of the function that a node calls."""
    function = node.child_by_field_name("function")
    return text_of(function) if node.type == "call_expression" and function is not None else ""


def object_keys(node: Node) -> Iterator[str]:
    """Yield the keys of an object that is written out."""
    for entry in node.named_children:
        yield text_of(entry.child_by_field_name("key") or entry)


def test_each_term_of_a_sentence_is_given_in_python() -> None:
    read = 0
    for path in sorted(set(PACKAGE.rglob("*.py")) - {CLICKS}):
        count, slips = python_slips(path.read_text(encoding="utf-8"))
        assert slips == [], path
        read += count
    # What is put together elsewhere is not read; most is written out.
    assert read > 240


def test_each_term_of_a_sentence_is_given_in_templates_and_scripts() -> None:
    for path in sorted(THEMES.rglob("*.html")):
        assert template_slips(path.read_text(encoding="utf-8")) == [], path
    for path in sorted(THEMES.rglob("*.js")):
        assert script_slips(path.read_bytes()) == [], path


def test_no_sentence_is_a_term_of_another() -> None:
    for path in sorted(PACKAGE.rglob("*.py")):
        lists = [node for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))) if isinstance(node, ast.List)]
        assert [ast.unparse(term) for term in lists if ast.unparse(term).endswith("['text'], 'text']")] == [], path


def test_a_missing_term_is_found() -> None:
    head = 'LOW = wording("{a} is low")\nONE: dict[str, int] = {"a": 1}\ndef f(b):\n    two = {"b": b, **ONE}\n'
    assert python_slips(f"{head}    return message(LOW, two)") == (1, [])
    for slip in (
        'message("{a} and {c}", two)',
        'message(LOW, {"b": 1})',
        'several("one", "{count} and {c}", {"count": 2})',
        'working("", "{a} + {c}", two)',
        'plain("{a} is low")',
        'message("a" if b else "{c}", ONE)',
    ):
        assert len(python_slips(f"{head}    return {slip}")[1]) == 1, slip
    assert template_slips('{{ _("{a} and {b}", a=1) }}') == ["{a} and {b}"]
    assert template_slips('{{ _several("{count} {a}", "{count}", 2) }}') == ["{count} {a}"]
    assert script_slips(b'_("{a} and {b}", { a, c: 1 })') == ["{a} and {b}"]
    assert script_slips(b'around(_("{a} and {b}"), { a: node, b })') == []
