"""A page of a paper as a PDF, through fpdf2: its measures and letters, what of it is left, and its foot."""

from importlib.resources import as_file, files
from typing import cast

from fpdf import FPDF
from fpdf.enums import Align, MethodReturnValue, XPos, YPos

from configurator.kernel.message import message
from configurator.kernel.papers.blocks import Paper
from configurator.papers.reader import RULE_LENGTH, Reader, rule_words

TYPEFACE = "paper"
FACES = {"": "SourceSansPro-Regular.ttf", "B": "SourceSansPro-Semibold.ttf"}
# Mm of paper.
MARGIN = 11.0
FOOT = 11.0
GAP = 4.0
ROW = 4.2
# Points.
BODY = 9.0
SMALL = 8.0
TITLES = {1.0: 17.0, 2.0: 13.0, 3.0: 10.5}
INK = (29, 35, 38)
SOFT = (80, 88, 90)


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
