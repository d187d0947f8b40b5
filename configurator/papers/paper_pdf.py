"""A paper as a PDF, through fpdf2, in the same typeface as pictures: a4 or letter, drawings in true millimeters."""

from collections.abc import Callable, Iterator
from importlib.resources import as_file, files
from typing import cast

from fpdf import FPDF
from fpdf.enums import Align, MethodReturnValue, TableBordersLayout, WrapMode, XPos, YPos
from fpdf.fonts import FontFace

from configurator.kernel.message import is_said, message, plain
from configurator.kernel.papers import blocks as kinds
from configurator.kernel.papers.blocks import Block, Paper, Scaled
from configurator.papers.drawn_marks import put_drawing
from configurator.papers.reader import RULE_LENGTH, Reader, rule_words
from configurator.papers.square_code import CODE_WIDE, SquareCode, square_code

TYPEFACE = "paper"
FACES = {"": "SourceSansPro-Regular.ttf", "B": "SourceSansPro-Semibold.ttf"}
# Mm of paper.
MARGIN = 11.0
FOOT = 11.0
GAP = 4.0
ROW = 4.2
CAPTION_LEAST = 30.0
BOX = 3.0
RULED = 7.0
SIGNED = 13.0
WRITTEN = 7.4
# Points.
BODY = 9.0
SMALL = 8.0
TITLES = {1.0: 17.0, 2.0: 13.0, 3.0: 10.5}
# Room round what a cell says, mm.
CELL_ABOVE, CELL_ASIDE = 0.7, 1.8
# How high a line of a cell stands, in lines of the text, and one of a title, in mm of its points.
CELL_LINE, TITLE_LINE = 0.9, 0.42
# A table of so many rows is read at a glance, and is not broken over two pages.
TOGETHER = 16
INK = (29, 35, 38)
SOFT = (80, 88, 90)
WARM = (156, 63, 29)


class PdfPaper(FPDF):
    """A document whose pages bear a foot."""

    def __init__(self, paper: Paper, reader: Reader) -> None:
        super().__init__(format=reader.sheet)
        self.reader = reader
        self.paper = paper
        for style, name in FACES.items():
            with as_file(files("font_source_sans_pro") / "files" / name) as path:
                self.add_font(TYPEFACE, style, path)
        self.set_margins(MARGIN, MARGIN, MARGIN)
        self.set_auto_page_break(True, FOOT + 1)
        self.set_title(reader.told(paper["title"]))
        self.set_lang(reader.words["language"])
        self.set_font(TYPEFACE, size=BODY)
        self.add_page()

    def footer(self) -> None:
        """Write the foot, a line to lay a ruler on, and the page's number."""
        self.set_y(-FOOT)
        self.small_print()
        long = RULE_LENGTH[self.reader.units]
        self.set_line_width(0.25)
        self.set_draw_color(*SOFT)
        top = self.get_y()
        for x in (MARGIN, MARGIN + long):
            self.line(x, top - 1, x, top + 1)
        self.line(MARGIN, top, MARGIN + long, top)
        self.set_y(top + 1.5)
        self.cell(self.epw, 4, self.reader.told(rule_words(self.reader)))
        numbered = message("{page} of {pages}", {"page": [str(self.page_no()), "name"], "pages": ["{nb}", "name"]})
        self.set_y(top + 1.5)
        told = f"{self.reader.told(self.paper['foot'])} · {self.reader.told(numbered)}"
        self.cell(self.epw, 4, told, align=Align.R)

    def small_print(self) -> None:
        """Take the letters of captions and feet."""
        self.set_font(TYPEFACE, size=SMALL)
        self.set_text_color(*SOFT)

    def body_print(self, style: str = "", size: float = BODY) -> None:
        """Take the letters of the text."""
        self.set_font(TYPEFACE, style, size)
        self.set_text_color(*INK)

    def room_left(self) -> float:
        """Return how much of the page is left, mm."""
        return float(self.page_break_trigger - self.get_y())

    def need(self, high: float) -> None:
        """Begin a new page where so much is not left of this one, mm."""
        if high > self.room_left() and self.get_y() > MARGIN + 1:
            self.add_page()

    def height_of(self, text: str, wide: float) -> float:
        """Return how high a paragraph of a width stands, mm."""
        lines = self.multi_cell(wide, ROW, text, align=Align.L, dry_run=True, output=MethodReturnValue.LINES)
        return len(cast(list[str], lines)) * ROW

    def paragraph(self, text: str) -> None:
        """Write a paragraph across the page."""
        self.multi_cell(self.epw, ROW, text, align=Align.L, new_x=XPos.LMARGIN, new_y=YPos.NEXT)


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
        wide = pdf.epw - 6
        pdf.need(pdf.height_of(text, wide) + 1)
        top = pdf.get_y()
        pdf.set_draw_color(*INK)
        pdf.set_line_width(0.25)
        if block["kind"] == kinds.TICKS:
            pdf.rect(MARGIN + 0.5, top + 0.6, BOX, BOX)
        else:
            pdf.line(MARGIN + 1, top + ROW / 2, MARGIN + 3, top + ROW / 2)
        pdf.set_x(MARGIN + 6)
        pdf.multi_cell(wide, ROW, text, align=Align.L, new_x=XPos.LMARGIN, new_y=YPos.NEXT)
        pdf.ln(1.0)
    pdf.ln(1.0)


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


def height_in_run(pdf: PdfPaper, block: Block) -> float:
    """Return how high a block stands of which a run is made that is not broken, mm."""
    if block["kind"] == kinds.TITLE:
        return TITLES[block["size"]] * TITLE_LINE + 4
    if block["kind"] == kinds.TABLE:
        return table_height(pdf, block)
    if block["kind"] == kinds.SIGNATURES:
        return SIGNED
    pdf.body_print()
    told = [pdf.height_of(pdf.reader.told(item), pdf.epw - 6) + 1 for item in block["items"]]
    return sum(told) + (ROW + block["size"] + 2 if block["kind"] == kinds.ROOM else ROW)


def need_whole(pdf: PdfPaper, run: list[Block]) -> None:
    """Begin a new page where a short table, or what is signed, would not stand on this one with its titles."""
    last = run[-1]
    if last["kind"] == kinds.SIGNATURES or (last["kind"] == kinds.TABLE and len(last["rows"]) <= TOGETHER):
        pdf.need(sum(height_in_run(pdf, block) for block in run))


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


def rows_of(drawings: list[Scaled], wide: float) -> list[list[Scaled]]:
    """Return the drawings in rows, as many side by side as there is room for."""
    rows: list[list[Scaled]] = []
    left = 0.0
    for one in drawings:
        need = one["drawing"]["width"] / one["scale"] + GAP
        if not rows or need > left + GAP:
            rows.append([])
            left = wide
        rows[-1].append(one)
        left -= need
    return rows


def caption_of(pdf: PdfPaper, one: Scaled) -> tuple[str, float]:
    """Return a drawing's caption and how high it stands under it, mm."""
    pdf.small_print()
    text = pdf.reader.told(one["caption"])
    return text, pdf.height_of(text, caption_wide(one)) + 0.5


def caption_wide(one: Scaled) -> float:
    """Return how wide a drawing's caption may run, mm."""
    return max(one["drawing"]["width"] / one["scale"], CAPTION_LEAST)


def put_drawings(pdf: PdfPaper, block: Block) -> None:
    """Draw each drawing at its scale, with its caption under it."""
    for row in rows_of(block["drawings"], pdf.epw):
        high = max(one["drawing"]["height"] / one["scale"] + caption_of(pdf, one)[1] for one in row)
        pdf.need(high)
        x, y = MARGIN, pdf.get_y()
        for one in row:
            put_drawing(pdf, one["drawing"], one["scale"], (x, y))
            text, _ = caption_of(pdf, one)
            pdf.set_xy(x, y + one["drawing"]["height"] / one["scale"])
            pdf.multi_cell(caption_wide(one), ROW, text, align=Align.L)
            x += one["drawing"]["width"] / one["scale"] + GAP
        pdf.set_xy(MARGIN, y + high)


def put_code(pdf: PdfPaper, block: Block) -> None:
    """Write an address as it is, with what it holds, beside its square code where a telephone can open it."""
    code = square_code(block["code"])
    beside = CODE_WIDE + GAP if code else 0.0
    pdf.small_print()
    pdf.need(ROW + max(beside, pdf.height_of(block["code"], pdf.epw - beside)))
    pdf.paragraph(pdf.reader.told(block["text"]))
    top = pdf.get_y()
    if code:
        put_squares(pdf, code, (MARGIN, top))
        pdf.set_xy(MARGIN + beside, top + GAP)
    pdf.set_text_color(*INK)
    pdf.multi_cell(
        pdf.epw - beside,
        ROW,
        block["code"],
        align=Align.L,
        wrapmode=WrapMode.CHAR,
        new_x=XPos.LMARGIN,
        new_y=YPos.NEXT,
    )
    pdf.set_y(max(pdf.get_y(), top + beside))
    pdf.ln(2)


def put_squares(pdf: PdfPaper, code: SquareCode, corner: tuple[float, float]) -> None:
    """Fill the dark squares of a code, its upper left corner at a place of the page, mm."""
    side = CODE_WIDE / code.size
    # What is filled stays with the code: a table after it has no ground.
    with pdf.local_context():
        pdf.set_fill_color(*INK)
        for across, down, long in code.runs:
            pdf.rect(corner[0] + across * side, corner[1] + down * side, long * side, side, style="F")


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
