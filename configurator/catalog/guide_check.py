"""A Markdown page of the content: whether it can be read, and whether all that it asks for can be had."""

from pathlib import Path

from configurator.catalog.drawing_blocks import Shop, unsound_blocks
from configurator.catalog.files import shown
from configurator.catalog.live_markup import live_in_markdown
from configurator.catalog.located import ContentFile, read_text, take_text
from configurator.catalog.page_blocks import HEAD
from configurator.catalog.problem import Problem
from configurator.catalog.syntax import unprintable_problem
from configurator.kernel.message import plain

OUT = plain("take it out")


def read_guide(path: Path, problems: list[Problem]) -> str:
    """Return a page's text; nothing, with what is wrong noted, where it cannot be read or does what no page may."""
    file = ContentFile(shown(path))
    text = (read_text(path, file) or "").replace("\r\n", "\n")
    if "\x00" in text:
        file.problems.append(unprintable_problem(file.name, text))
    head = HEAD.match(text)
    if head:
        # In place of the line above it, so that lines count as they do in the file.
        take_text(file, "\n" + head[1])
    file.problems += [Problem(file.name, line, column, (what, OUT)) for what, line, column in live_in_markdown(text)]
    problems.extend(file.problems)
    return "" if file.problems else text


def note_blocks(path: Path, text: str, shop: Shop, problems: list[Problem]) -> None:
    """Note each drawing of a page that cannot be made, at its line."""
    for line, slip in unsound_blocks(text, shop):
        problems.append(Problem(shown(path), line, 1, slip.clauses, slip.units))
