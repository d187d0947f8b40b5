"""Page scripts as syntax trees."""

from collections.abc import Iterator

import tree_sitter_javascript
from tree_sitter import Language, Node, Parser

PARSER = Parser(Language(tree_sitter_javascript.language()))


def within(node: Node) -> Iterator[Node]:
    """Yield a node and all within it."""
    waiting = [node]
    while waiting:
        here = waiting.pop()
        yield here
        waiting.extend(reversed(here.children))


def text_of(node: Node) -> str:
    """Return a node's text."""
    return (node.text or b"").decode()
