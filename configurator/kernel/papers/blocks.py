"""What papers are made of: blocks, the same in a browser's print, in a PDF of the command line and in a table.

Everything that a block says is a :class:`configurator.kernel.shapes.Message`, told in a language and in units only when
the paper is rendered. A renderer decides how a block looks; a block says only what it is.
"""

from typing import TypedDict

from configurator.kernel.message import message, silence
from configurator.kernel.shapes import Drawing, Figure, Message

# The kinds of block.
TITLE = "title"
TEXT = "text"
CAUTION = "caution"
LIST = "list"
TICKS = "ticks"
TABLE = "table"
DRAWING = "drawing"
CODE = "code"
SIGNATURES = "signatures"
ROOM = "room"
PAGE = "page"


class Column(TypedDict):
    """A column of a table: its name, its share of the table's width (1 is as wide as most) and what stands in it.

    ``side`` is ``start`` for words, ``end`` for numbers, ``sum`` for arithmetic, which is told as it stands: without a
    capital.
    """

    name: Message
    wide: float
    side: str


class Row(TypedDict):
    """A row of a table: a cell for each column.

    ``kind`` is ``total`` for a sum of the rows above it, ``write`` for one that is high enough to be written in, else
    nothing.
    """

    cells: list[Message]
    kind: str


class Scaled(TypedDict):
    """A drawing on paper at 1:``scale``, with what is written under it (silent for nothing)."""

    drawing: Drawing
    scale: float
    caption: Message


class Block(TypedDict):
    """One part of a paper. What its kind has no use for is silent, empty or 0.

    ========== =========================================================================================
    title      ``text``; ``size`` is its level: 1 the paper's own, 2 a piece's or a part's, 3 within one
    text       ``text``, a paragraph
    caution    ``text``, which is to be seen
    list       ``items``, each a point
    ticks      ``items``, each with a box to tick
    table      ``columns`` and ``rows``; ``text`` is its caption
    drawing    ``drawings``, side by side where there is room
    code       ``code``, an address that is told as it is and as a square code; ``text`` says what it holds
    signatures ``items``, each a line to sign on, with room for the date
    room       ``text`` over empty lines to write on, ``size`` mm high
    page       what follows begins a new page
    ========== =========================================================================================
    """

    kind: str
    text: Message
    size: float
    items: list[Message]
    columns: list[Column]
    rows: list[Row]
    drawings: list[Scaled]
    code: str


class Paper(TypedDict):
    """A paper: its id, its title, what its foot says on every page, and its blocks in order."""

    id: str
    title: Message
    foot: Message
    blocks: list[Block]


def blank_block(kind: str, text: Message) -> Block:
    """Return a block of a kind that holds a text and nothing else."""
    return {
        "kind": kind,
        "text": text,
        "size": 0.0,
        "items": [],
        "columns": [],
        "rows": [],
        "drawings": [],
        "code": "",
    }


def paper_title(text: Message, level: float) -> Block:
    """Return a title: level 1 is the paper's own, 2 a piece's or a part's, 3 one within it."""
    return {**blank_block(TITLE, text), "size": level}


def paper_text(text: Message) -> Block:
    """Return a paragraph."""
    return blank_block(TEXT, text)


def paper_caution(text: Message) -> Block:
    """Return a paragraph that is to be seen before anything is done."""
    return blank_block(CAUTION, text)


def paper_list(items: list[Message]) -> Block:
    """Return a list of points."""
    return {**blank_block(LIST, silence()), "items": items}


def tick_list(items: list[Message]) -> Block:
    """Return a list of points, each with a box to tick."""
    return {**blank_block(TICKS, silence()), "items": items}


def paper_table(caption: Message, columns: list[Column], rows: list[Row]) -> Block:
    """Return a table with its caption."""
    return {**blank_block(TABLE, caption), "columns": columns, "rows": rows}


def paper_drawings(drawings: list[Scaled]) -> Block:
    """Return drawings that stand side by side where there is room."""
    return {**blank_block(DRAWING, silence()), "drawings": drawings}


def paper_code(text: Message, code: str) -> Block:
    """Return an address with words for what it holds."""
    return {**blank_block(CODE, text), "code": code}


def signature_lines(items: list[Message]) -> Block:
    """Return lines to sign on, each with who signs there."""
    return {**blank_block(SIGNATURES, silence()), "items": items}


def room_to_write(text: Message, high: float) -> Block:
    """Return empty lines, together ``high`` mm, with what they are for."""
    return {**blank_block(ROOM, text), "size": high}


def new_page() -> Block:
    """Return the start of a new page."""
    return blank_block(PAGE, silence())


def word_column(name: Message, wide: float) -> Column:
    """Return a column of words."""
    return {"name": name, "wide": wide, "side": "start"}


def number_column(name: Message, wide: float) -> Column:
    """Return a column of numbers."""
    return {"name": name, "wide": wide, "side": "end"}


def sum_column(name: Message, wide: float) -> Column:
    """Return a column of workings with the numbers put in."""
    return {"name": name, "wide": wide, "side": "sum"}


def paper_row(cells: list[Message]) -> Row:
    """Return a row of a table."""
    return {"cells": cells, "kind": ""}


def total_row(cells: list[Message]) -> Row:
    """Return a row that sums up those above it."""
    return {"cells": cells, "kind": "total"}


def row_to_write(cells: list[Message]) -> Row:
    """Return a row that is written in by hand, what its cells say beside what is written."""
    return {"cells": cells, "kind": "write"}


def named_cell(name: str) -> Message:
    """Return what is told as it is written: content's own words, a client's name, money."""
    return message("{name}", {"name": [name, "name"]})


def value_cell(value: float, unit: str) -> Message:
    """Return a value with its unit, as in :class:`configurator.kernel.shapes.Quantity`."""
    return message("{value}", {"value": [value, unit]})


def figure_cell(figure: Figure) -> Message:
    """Return a figure's value."""
    return value_cell(figure["value"], figure["unit"])
