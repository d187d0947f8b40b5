"""What of a paper is not broken over two pages: titles with what follows them, short tables, and what is signed."""

from collections.abc import Iterator

from configurator.kernel.message import is_said
from configurator.kernel.papers import blocks as kinds
from configurator.kernel.papers.blocks import Block
from configurator.papers.pdf_page import ROW, SMALL, TITLES, PdfPaper

# Room round what a cell says, mm.
CELL_ABOVE, CELL_ASIDE = 0.7, 1.8
# How high a line of a cell stands, in lines of the text, and one of a title, in mm of its points.
CELL_LINE, TITLE_LINE = 0.9, 0.42
# How far what a point says stands aside, for its dash or box, and the room beneath it, mm.
POINT_ASIDE, POINT_BELOW = 6.0, 1.0
# Room for a name and its line, mm.
SIGNED = 13.0
# A table of so many rows is read at a glance, and is not broken over two pages.
TOGETHER = 16


def table_height(pdf: PdfPaper, block: Block) -> float:
    """Return how high a table stands with its caption and its head, mm."""
    whole = sum(column["wide"] for column in block["columns"])
    wides = [pdf.epw * column["wide"] / whole - 2 * CELL_ASIDE for column in block["columns"]]
    heads = [pdf.reader.told(column["name"]) for column in block["columns"]]
    rows = [heads, *(pdf.reader.cells(row, block["columns"]) for row in block["rows"])]
    pdf.body_print(size=SMALL)
    high = [max(pdf.height_of(cell, wide) for cell, wide in zip(row, wides, strict=True)) for row in rows]
    caption = ROW + 0.5 if is_said(block["text"]) else 0.0
    return caption + sum(one * CELL_LINE + 2 * CELL_ABOVE for one in high)


def is_signed(rest: list[Block]) -> bool:
    """Return whether a paper goes on with lines to sign on, room to write above them or not."""
    after = [block["kind"] for block in rest if block["kind"] != kinds.ROOM]
    return after[:1] == [kinds.SIGNATURES]


def titled(blocks: list[Block]) -> Iterator[list[Block]]:
    """Yield each block with the titles before it; what is signed is one with the lines to sign on."""
    run: list[Block] = []
    for at, block in enumerate(blocks):
        run.append(block)
        if block["kind"] != kinds.TITLE and not is_signed(blocks[at + 1 :]):
            yield run
            run = []
    if run:
        yield run


def point_height(pdf: PdfPaper, text: str) -> float:
    """Return how high a point of a list stands, mm."""
    return pdf.height_of(text, pdf.epw - POINT_ASIDE) + POINT_BELOW


def height_in_run(pdf: PdfPaper, block: Block) -> float:
    """Return how high a block stands of which a run is made that is not broken, mm."""
    if block["kind"] == kinds.TITLE:
        return TITLES[block["size"]] * TITLE_LINE + 4
    if block["kind"] == kinds.TABLE:
        return table_height(pdf, block)
    if block["kind"] == kinds.SIGNATURES:
        return SIGNED
    pdf.body_print()
    points = sum(point_height(pdf, pdf.reader.told(item)) for item in block["items"])
    return points + (ROW + block["size"] + 2 if block["kind"] == kinds.ROOM else ROW)


def need_whole(pdf: PdfPaper, run: list[Block]) -> None:
    """Begin a new page where a short table, or what is signed, would not stand on this one with its titles."""
    last = run[-1]
    if last["kind"] == kinds.SIGNATURES or (last["kind"] == kinds.TABLE and len(last["rows"]) <= TOGETHER):
        pdf.need(sum(height_in_run(pdf, block) for block in run))
