"""A Markdown page of the content as blocks that are translated one by one: a paragraph, a heading, a list item, a row.

What is fenced, and the addresses of links given at a page's foot, are no words and stay as they stand.
"""

import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass

import yaml

# What the lines between --- at a page's top say to readers.
HEAD_TEXTS = ("title", "lede", "description")
HEAD = re.compile(r"\A---[ \t]*\n(.*?\n)(?:---|\.\.\.)[ \t]*(?:\n|\Z)", re.DOTALL)
FENCE = re.compile(r"\s*(```+|~~~+)")
# What opens a block of its own: a heading, an item of a list, a quotation, a definition.
OPENING = re.compile(r"(?:#{1,6}[ \t]+|\s*(?:[-*+]|\d+[.)])[ \t]+|\s*>[ \t]?|:[ \t]+)")
HEADING = re.compile(r"#{1,6}[ \t]")
# What closes a heading: its own marks, and the anchor that it is given.
CLOSING = re.compile(r"(?:[ \t]+#+)?(?:[ \t]*\{[:#.][^}]*\})?[ \t]*$")
WORDLESS = re.compile(r"\s*(?:\[[^\]]+\]:\s|[-=*_|: \t]+$|\{:[^}]*\}\s*$)")
LINE_END = "  \n"


@dataclass(frozen=True)
class Block:
    """Lines of a page, from ``line`` on (from 0): ``before`` and ``after`` stand round ``text``, which may be empty."""

    line: int
    source: str
    text: str = ""
    before: str = ""
    after: str = ""

    def told(self, text: str) -> str:
        """Return the block's lines with another text in place of its own; its own leaves them as they stand."""
        if text == self.text:
            return self.source
        indent = " " * len(self.before)
        return self.before + text.replace("\n", LINE_END + indent) + self.after + "\n"


def blocks(markdown: str) -> Iterator[Block]:
    """Yield every line of a page, whose head has been taken off, in blocks."""
    lines = markdown.splitlines(keepends=True)
    at = 0
    while at < len(lines):
        end = block_end(lines, at)
        yield block(at, lines[at:end])
        at = end


def block_end(lines: list[str], start: int) -> int:
    """Return after which line a block that starts at one ends."""
    fence = FENCE.match(lines[start])
    if fence:
        mark = fence[1]
        closing = (at for at in range(start + 1, len(lines)) if lines[at].strip().startswith(mark))
        return next(closing, len(lines) - 1) + 1
    end = start + 1
    if alone(lines[start]) or HEADING.match(lines[start]):
        return end
    while end < len(lines) and goes_on(lines[end]):
        end += 1
    return end


def alone(line: str) -> bool:
    """Return whether a line is a block by itself: an empty one, a rule, an address, a row of a table."""
    return not line.strip() or bool(WORDLESS.match(line)) or line.lstrip().startswith("|")


def goes_on(line: str) -> bool:
    """Return whether a line goes on with the block of the line above it."""
    return not (alone(line) or FENCE.match(line) or OPENING.match(line))


def block(line: int, lines: list[str]) -> Block:
    """Return lines as a block."""
    source = "".join(lines)
    if FENCE.match(source) or not source.strip() or WORDLESS.match(lines[0]):
        return Block(line, source)
    opening = OPENING.match(source)
    before = opening[0] if opening else source[: len(source) - len(source.lstrip())]
    inner = source[len(before) :].rstrip("\n")
    closing = CLOSING.search(inner) if HEADING.match(source) else None
    after = closing[0].rstrip() if closing else ""
    text = inner[: closing.start()] if closing else inner
    return Block(line, source, joined(text), before, after)


def joined(text: str) -> str:
    """Return a text in one line, but for those line endings that are meant."""
    kept = [" ".join(part.split()) for part in re.split(r" {2,}\n|\\\n", text)]
    return "\n".join(kept)


def told_page(markdown: str, tell: Callable[[str], str]) -> str:
    """Return a page's Markdown with the text of every block told anew."""
    return "".join(each.told(tell(each.text)) if each.text else each.source for each in blocks(markdown))


def page_texts(source: str) -> Iterator[tuple[str, int]]:
    """Yield each text of a Markdown file with its line, from 1: those of its head, then those of its blocks."""
    head = HEAD.match(source)
    if head:
        yield from head_texts(head[1])
    rest = source[head.end() :] if head else source
    above = source.count("\n") - rest.count("\n") + 1
    for each in blocks(rest):
        if each.text:
            yield each.text, above + each.line


def head_texts(head: str) -> Iterator[tuple[str, int]]:
    """Yield the texts of a page's head with their lines in the file; what is no YAML is told of as the page is made."""
    try:
        root = yaml.compose(head)
    except yaml.YAMLError:
        return
    for key, value in root.value if isinstance(root, yaml.MappingNode) else []:
        if key.value in HEAD_TEXTS and isinstance(value, yaml.ScalarNode) and value.value.strip():
            yield value.value, value.start_mark.line + 2
