"""What page scripts say: the texts written out in calls of ``_`` and ``_several``, and those put into a language."""

import ast
import json
from collections.abc import Iterator
from dataclasses import dataclass

from tree_sitter import Node

from configurator.browser.syntax_tree import PARSER, text_of, within
from configurator.kernel.tongue import FORMS, Words, in_words

# How many of their arguments are texts.
SAYING = {"_": 1, "_several": 2}


@dataclass(frozen=True)
class ScriptText:
    """What one call says: its texts (one, or the forms for one and for many), where they stand, and its line."""

    texts: list[str]
    nodes: list[Node]
    line: int


def script_texts(source: bytes) -> Iterator[ScriptText]:
    """Yield what each call in a script says.

    :raises ValueError: with the line, where such a call has anything but texts written out
    """
    for node in within(PARSER.parse(source).root_node):
        called, given = node.child_by_field_name("function"), node.child_by_field_name("arguments")
        if node.type == "call_expression" and called is not None and given is not None and text_of(called) in SAYING:
            texts = given.named_children[: SAYING[text_of(called)]]
            line = node.start_point.row + 1
            if len(texts) < SAYING[text_of(called)] or any(text.type != "string" for text in texts):
                raise ValueError(f"{line}: {text_of(called)} takes its words written out, in quotes")
            yield ScriptText([unquoted(text) for text in texts], texts, line)


def unquoted(string: Node) -> str:
    """Return what a string of a script holds; Python spells those that occur alike."""
    return str(ast.literal_eval(text_of(string)))


def in_language(source: bytes, words: Words) -> bytes:
    """Return a script with what it says put into a language."""
    put: dict[tuple[int, int], str] = {}
    for said in script_texts(source):
        forms = in_words(FORMS.join(said.texts), words).split(FORMS)
        spans = [(node.start_byte, node.end_byte) for node in said.nodes]
        put[spans[0]] = forms[0]
        if len(spans) > 1:
            put[spans[1]] = FORMS.join(forms[1:] or forms)
    for (start, end), text in sorted(put.items(), reverse=True):
        source = source[:start] + json.dumps(text, ensure_ascii=False).encode() + source[end:]
    return source
