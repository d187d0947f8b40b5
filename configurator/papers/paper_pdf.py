"""A paper as a PDF, through fpdf2, in the same typeface as pictures: a4 or letter, drawings in true millimeters."""

from collections.abc import Callable

from fpdf.enums import Align, TableBordersLayout, XPos, YPos
from fpdf.fonts import FontFace

from configurator.kernel.message import is_said, plain
from configurator.kernel.papers import blocks as kinds
from configurator.kernel.papers.blocks import Block, Paper
from configurator.papers.pdf_drawn import put_code, put_drawings
from configurator.papers.pdf_page import GAP, INK, MARGIN, ROW, SMALL, SOFT, TITLES, PdfPaper
from configurator.papers.pdf_runs import (
    CELL_ABOVE,
    CELL_ASIDE,
    CELL_LINE,
    POINT_ASIDE,
    POINT_BELOW,
    SIGNED,
    TITLE_LINE,
    need_whole,
    point_height,
    titled,
)
from configurator.papers.reader import Reader

# Mm of paper.
BOX = 3.0
RULED = 7.0
WRITTEN = 7.4
WARM = (156, 63, 29)


def put_title(pdf: PdfPaper, block: Block) -> None:
    """Write a title; it stays with what follows it."""
    size = TITLES[block["size"]]
    pdf.need(size + 14)
    pdf.ln(0 if pdf.get_y() <= MARGIN + 1 else 2.5)
    pdf.body_print("B", size)
    pdf.multi_cell(
        pdf.epw, size * TITLE_LINE, pdf.reader.told(block["text"]), align=Align.L, new_x=XPos.LMARGIN, new_y=YPos.NEXT
    )
    pdf.ln(1.5)


def put_text(pdf: PdfPaper, block: Block) -> None:
    """Write a paragraph."""
    pdf.body_print()
    pdf.paragraph(pdf.reader.told(block["text"]))
    pdf.ln(1.5)


def put_caution(pdf: PdfPaper, block: Block) -> None:
    """Write a paragraph behind a heavy upright, so that it is seen."""
    pdf.body_print("B")
    text = pdf.reader.told(block["text"])
    pdf.need(pdf.height_of(text, pdf.epw - GAP) + 2)
    top = pdf.get_y()
    pdf.set_x(MARGIN + GAP)
    pdf.multi_cell(pdf.epw - GAP, ROW, text, align=Align.L, new_x=XPos.LMARGIN, new_y=YPos.NEXT)
    pdf.set_draw_color(*WARM)
    pdf.set_line_width(1.0)
    pdf.line(MARGIN + 1, top + 0.4, MARGIN + 1, pdf.get_y() - 0.4)
    pdf.ln(1.5)


def put_points(pdf: PdfPaper, block: Block) -> None:
    """Write points, each behind a dash or, where it is to be ticked, behind a box."""
    for item in block["items"]:
        pdf.body_print()
        text = pdf.reader.told(item)
        pdf.need(point_height(pdf, text))
        top = pdf.get_y()
        pdf.set_draw_color(*INK)
        pdf.set_line_width(0.25)
        if block["kind"] == kinds.TICKS:
            pdf.rect(MARGIN + 0.5, top + 0.6, BOX, BOX)
        else:
            pdf.line(MARGIN + 1, top + ROW / 2, MARGIN + 3, top + ROW / 2)
        pdf.set_x(MARGIN + POINT_ASIDE)
        pdf.multi_cell(pdf.epw - POINT_ASIDE, ROW, text, align=Align.L, new_x=XPos.LMARGIN, new_y=YPos.NEXT)
        pdf.ln(POINT_BELOW)
    pdf.ln(1.0)


def put_table(pdf: PdfPaper, block: Block) -> None:
    """Write a table under its caption; its head is repeated on every page."""
    if is_said(block["text"]):
        pdf.need(22)
        pdf.body_print("B", TITLES[3.0])
        pdf.paragraph(pdf.reader.told(block["text"]))
        pdf.ln(0.5)
    pdf.body_print(size=SMALL)
    pdf.set_draw_color(*SOFT)
    pdf.set_line_width(0.13)
    headed = any(is_said(column["name"]) for column in block["columns"])
    written = any(row["kind"] == "write" for row in block["rows"])
    plain_lines = TableBordersLayout.HORIZONTAL_LINES if headed else TableBordersLayout.NONE
    with pdf.table(
        align=Align.L,
        borders_layout=TableBordersLayout.ALL if written else plain_lines,
        col_widths=[column["wide"] for column in block["columns"]],
        first_row_as_headings=headed,
        headings_style=FontFace(emphasis="B", color=SOFT),
        line_height=ROW * CELL_LINE,
        padding=(CELL_ABOVE, CELL_ASIDE),
        text_align=tuple("RIGHT" if column["side"] == "end" else "LEFT" for column in block["columns"]),
        v_align="TOP",
        width=pdf.epw,
    ) as table:
        if headed:
            table.row([pdf.reader.told(column["name"]) for column in block["columns"]])
        for row in block["rows"]:
            style = FontFace(emphasis="B") if row["kind"] == "total" else None
            high = WRITTEN if row["kind"] == "write" else None
            table.row(pdf.reader.cells(row, block["columns"]), style=style, min_height=high)
    pdf.ln(3)


def put_signatures(pdf: PdfPaper, block: Block) -> None:
    """Draw lines to sign on side by side, each with room for the date."""
    pdf.need(SIGNED)
    y = pdf.get_y() + SIGNED - 5
    pdf.set_draw_color(*INK)
    pdf.set_line_width(0.25)
    pdf.small_print()
    across = pdf.epw / len(block["items"])
    for at, item in enumerate(block["items"]):
        start = MARGIN + at * across
        for x, wide, word in (
            (start, across * 0.58, item),
            (start + across * 0.62, across * 0.32, plain("date")),
        ):
            pdf.line(x, y, x + wide, y)
            pdf.set_xy(x, y)
            pdf.cell(wide, 4, pdf.reader.told(word))
    pdf.set_xy(MARGIN, y + 5)


def put_room(pdf: PdfPaper, block: Block) -> None:
    """Draw empty lines to write on, under what they are for."""
    pdf.need(block["size"] + ROW)
    pdf.small_print()
    pdf.paragraph(pdf.reader.told(block["text"]))
    pdf.set_draw_color(*SOFT)
    pdf.set_line_width(0.13)
    top = pdf.get_y()
    for line in range(1, int(block["size"] / RULED) + 1):
        pdf.line(MARGIN, top + line * RULED, MARGIN + pdf.epw, top + line * RULED)
    pdf.set_xy(MARGIN, top + block["size"] + 2)


def put_page(pdf: PdfPaper, block: Block) -> None:
    """Begin a new page where this one has been written on."""
    if pdf.get_y() > MARGIN + 1:
        pdf.add_page()


PUT: dict[str, Callable[[PdfPaper, Block], None]] = {
    kinds.TITLE: put_title,
    kinds.TEXT: put_text,
    kinds.CAUTION: put_caution,
    kinds.LIST: put_points,
    kinds.TICKS: put_points,
    kinds.TABLE: put_table,
    kinds.DRAWING: put_drawings,
    kinds.CODE: put_code,
    kinds.SIGNATURES: put_signatures,
    kinds.ROOM: put_room,
    kinds.PAGE: put_page,
}


def paper_pdf(paper: Paper, reader: Reader) -> bytes:
    """Return a paper as a PDF file."""
    pdf = PdfPaper(paper, reader)
    for run in titled(paper["blocks"]):
        need_whole(pdf, run)
        for block in run:
            PUT[block["kind"]](pdf, block)
    return bytes(pdf.output())
