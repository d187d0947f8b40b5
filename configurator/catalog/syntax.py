"""What a YAML parser says, in words that help to put it right."""

import re

import yaml

from configurator.catalog.problem import Problem
from configurator.kernel.message import plain
from configurator.kernel.tongue import wording

# The parser's own words to what a writer can do about it.
ADVICE = {
    "mapping values are not allowed": wording(
        "a ':' stands where none is expected; check the indentation, or put text that holds ': ' in quotes"
    ),
    "could not find expected ':'": wording("a key without its ':'; write 'key: value'"),
    "did not find expected key": wording("this line does not fit the lines above it; check its indentation and quotes"),
    "did not find expected '-' indicator": wording("this line does not fit the list above it; check its indentation"),
    "did not find expected ',' or ']'": wording("a list in [ ] is not closed, or lacks a comma"),
    "did not find expected ',' or '}'": wording("a mapping in { } is not closed, or lacks a comma"),
    "did not find expected node content": wording("a value is expected here, or a bracket before this is not closed"),
    "unexpected end of stream": wording("a quotation mark is opened and not closed"),
    "expected <document start>": wording("this line does not fit the lines above it; check its indentation and quotes"),
    "block sequence entries are not allowed": wording(
        "a list's '-' stands where none is expected; check the indentation"
    ),
    "found unexpected ':'": wording("a ':' stands where none is expected; put the text in quotes"),
    "while scanning a block scalar": wording("a text of several lines begins on the line after its | or >"),
    "while scanning an alias": wording("a '*' begins no text; put the text in quotes"),
    "while scanning an anchor": wording("a '&' begins no text; put the text in quotes"),
    "undefined alias": wording("anchors and aliases (& and *) are not used here; write the value out"),
    "expected a single document": wording("the file holds a second document; take the line '---' out"),
    "exceeded maximum nesting depth": wording("this is nested far too deep; nothing in the content is"),
    "unknown escape character": wording("a '\\' in double quotes begins nothing known; put the text in single quotes"),
    "while scanning a tag": wording("a '!' begins no text; put the text in quotes"),
    "while scanning a directive": wording("a '%' begins no text; put the text in quotes"),
    "cannot start any token": wording("this sign may not stand here; put the text in quotes"),
}


def advice(said: str) -> str:
    """Return advice for the parser's words, or that the line is to be looked at where there is none."""
    for key, words in ADVICE.items():
        if key in said:
            return words
    return wording("the file is not sound YAML here; check the signs and the indentation of this line")


def syntax_problem(name: str, text: str, slip: yaml.YAMLError) -> Problem:
    """Return the problem that stopped the parser, at its line and column."""
    mark = getattr(slip, "problem_mark", None)
    if mark is None:
        return unprintable_problem(name, text)
    context = str(getattr(slip, "context", None) or "")
    # What is not closed or finished is best shown where it begins, not where the parser gave up.
    if context.startswith(("while parsing a flow", "while scanning")):
        mark = getattr(slip, "context_mark", None) or mark
    lines = text.split("\n")
    line = lines[mark.line] if mark.line < len(lines) else ""
    tab = re.match(r" *\t", line)
    if tab:
        return Problem(name, mark.line + 1, tab.end(), (plain("the line is indented with a tab"), plain("use spaces")))
    if context.startswith("while parsing a flow") and re.search(r"[:,]\s+#", line[mark.column :]):
        return Problem(
            name, mark.line + 1, mark.column + 1, (plain("a '#' begins a remark"), plain("put colors in quotes"))
        )
    said = f"{context} {getattr(slip, 'problem', '') or ''}".strip()
    return Problem(name, mark.line + 1, mark.column + 1, (plain(advice(said)),))


def unprintable_problem(name: str, text: str) -> Problem:
    """Return the problem of a file with a sign that no YAML may hold."""
    found = re.search(r"[^\t\n\r\x20-\x7e\x85\xa0-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]", text)
    start = found.start() if found else 0
    line = text.count("\n", 0, start) + 1
    column = start - (text.rfind("\n", 0, start) + 1) + 1
    unprintable = plain("an unprintable sign stands here")
    return Problem(name, line, column, (unprintable, plain("take it out")))
