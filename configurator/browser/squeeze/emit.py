"""A parsed script written out with nothing but what it needs."""

import re

from tree_sitter import Node

from configurator.browser.squeeze.brackets import is_bare, needless
from configurator.browser.squeeze.scopes import text_of

# Ends a statement; a closing brace makes it needless.
END = "\n"
WHOLE = {"string", "regex", "number"}
ENDED = {
    "expression_statement",
    "lexical_declaration",
    "variable_declaration",
    "return_statement",
    "throw_statement",
    "break_statement",
    "continue_statement",
    "debugger_statement",
    "do_statement",
    "field_definition",
}
SHORTHANDS = {"shorthand_property_identifier", "shorthand_property_identifier_pattern"}


def emitted(root: Node, short: dict[int, str]) -> str:
    """Return the script with the given short names, by node id."""
    tokens: list[str] = []
    emit(root, short, tokens)
    return joined(tokens)


def emit(node: Node, short: dict[int, str], tokens: list[str]) -> None:
    """Add a node's tokens."""
    if node.type == "comment":
        return
    if node.type == "template_string":
        tokens.append(template(node, short))
    elif node.child_count == 0 or node.type in WHOLE:
        tokens.append(named(node, short))
    else:
        children = node.children[1:-1] if needless(node) or is_bare(node) else node.children
        if node.type in ENDED:
            children = [child for child in children if child.type != ";"]
        if goes_on(node):
            tokens[-1] = ","
            children = children[1:]
        for child in children:
            emit(child, short, tokens)
        if node.type in ENDED:
            tokens.append(END)


def goes_on(node: Node) -> bool:
    """Return whether a ``const`` or ``let`` follows another of its kind, whose names it can join."""
    before = node.prev_sibling
    while before is not None and before.type == "comment":
        before = before.prev_sibling
    if before is None or before.type != "lexical_declaration" or node.type != before.type:
        return False
    return before.children[0].type == node.children[0].type


def named(node: Node, short: dict[int, str]) -> str:
    """Return a leaf's text, shortened where it names something that is."""
    text = text_of(node)
    if node.type == "number":
        # Without its point, 1.0.toFixed would read as a number that goes on.
        member = node.parent is not None and node.parent.type == "member_expression"
        return text if member else number(text)
    if node.id not in short:
        return text
    return f"{text}:{short[node.id]}" if node.type in SHORTHANDS else short[node.id]


def number(text: str) -> str:
    """Return a number without needless noughts."""
    if re.fullmatch(r"\d+\.\d+", text) is None:
        return text.replace("e-0", "e-")
    short = text.rstrip("0").rstrip(".")
    return short[1:] if short.startswith("0.") else short


def template(node: Node, short: dict[int, str]) -> str:
    """Return a template string, spaces in its text kept."""
    parts = []
    for child in node.children:
        if child.type == "template_substitution":
            parts.append(emitted(child, short))
        else:
            parts.append(text_of(child))
    return "".join(parts)


def joined(tokens: list[str]) -> str:
    """Return the tokens with spaces only where two would run into one, semicolons only where a statement goes on."""
    parts: list[str] = []
    last = " "
    for token in tokens:
        if token == "}" and last == ",":
            parts.pop()
        elif last == END and token not in ("}", END):
            parts.append(";")
        elif (is_word(last) and is_word(token[0])) or (last in "+-/" and token[0] == last):
            parts.append(" ")
        if token != END:
            parts.append(token)
        last = token[-1]
    return "".join(parts)


def is_word(letter: str) -> bool:
    """Return whether a letter can be part of a name or number."""
    return letter.isalnum() or letter in "_$#" or ord(letter) > 127
