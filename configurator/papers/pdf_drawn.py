"""What of a paper is drawn: drawings at their scale, and square codes beside their addresses."""

from fpdf.enums import Align, WrapMode, XPos, YPos

from configurator.kernel.papers.blocks import Block, Scaled
from configurator.papers.drawn_marks import put_drawing
from configurator.papers.pdf_page import GAP, INK, MARGIN, ROW, PdfPaper
from configurator.papers.square_code import CODE_WIDE, SquareCode, square_code

# Under a narrow drawing, mm.
CAPTION_LEAST = 30.0


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
