"""A paper as a terminal shows it: titles, points and tables in order; what is only for a pen is left out."""

from textwrap import fill

from configurator.kernel.papers import blocks as kinds
from configurator.kernel.papers.blocks import Block, Paper, Row
from configurator.papers.reader import Reader

WIDTH = 100
NAME = 44
AMOUNT = 14
# Columns of a table of numbers alone.
FIRST = 24
NEXT = 26


def set_in(text: str, by: int) -> str:
    """Return a paragraph set in."""
    return fill(text, WIDTH, initial_indent=" " * by, subsequent_indent=" " * by)


def paper_text(paper: Paper, reader: Reader) -> str:
    """Return a paper as lines."""
    parts = [block_text(block, reader) for block in paper["blocks"]]
    return "\n".join(part for part in parts if part)


def block_text(block: Block, reader: Reader) -> str:
    """Return a block as lines; nothing of what is only drawn or written on."""
    text = reader.says(block["text"])
    if block["kind"] == kinds.TITLE:
        return ("\n" if block["size"] > 1 else "") + set_in(text, int(block["size"] - 1) * 2)
    if block["kind"] in (kinds.TEXT, kinds.CAUTION):
        return set_in(text, 4)
    if block["kind"] == kinds.LIST:
        return "\n".join(set_in(reader.says(item), 4) for item in block["items"])
    if block["kind"] == kinds.TABLE:
        caption = [set_in(text, 4)] if text else []
        return "\n".join([*caption, *table_lines(block, reader)])
    return ""


def table_lines(block: Block, reader: Reader) -> list[str]:
    """Return a table's rows: one of numbers alone side by side under its names, another with its workings below."""
    if all(column["side"] == "end" for column in block["columns"][1:]):
        names = [reader.says(column["name"]) for column in block["columns"]]
        rows = [[reader.says(cell) for cell in row["cells"]] for row in block["rows"]]
        return ["    " + beside(row).rstrip() for row in [names, *rows]]
    return [row_text(row, reader) for row in block["rows"]]


def beside(cells: list[str]) -> str:
    """Return cells in columns."""
    return f"{cells[0]:<{FIRST}}" + "".join(f" {cell:>{NEXT}}" for cell in cells[1:])


def row_text(row: Row, reader: Reader) -> str:
    """Return a row: its name and amount on one line, what lies between below it."""
    first = f"    {reader.says(row['cells'][0]):<{NAME}} {reader.says(row['cells'][-1]):>{AMOUNT}}"
    between = ": ".join(reader.phrase(cell) for cell in row["cells"][1:-1] if cell["text"])
    return f"{first}\n{set_in(between, 8)}" if between else first
