"""Papers as PDF files: what is read at a glance stands on one page."""

import pypdfium2
import pytest

from configurator.kernel.message import plain
from configurator.kernel.papers import blocks
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import ENGLISH
from configurator.papers.paper_pdf import paper_pdf
from configurator.papers.reader import Reader


def pages_of(rows: int, lines_before: int) -> list[str]:
    """Return what each page says of a paper with a table under its titles, after some lines."""
    columns = [blocks.word_column(plain("What"), 2.0), blocks.word_column(plain("How it comes about"), 1.0)]
    told: Message = plain("A line that is so long that it takes more than one of its narrow cell, whatever is left.")
    table = [blocks.paper_row([blocks.named_cell(f"Row {row}."), told]) for row in range(rows)]
    written = [
        *[blocks.paper_text(blocks.named_cell(f"Line {line}.")) for line in range(lines_before)],
        blocks.paper_title(blocks.named_cell("The bill"), 2.0),
        blocks.paper_title(blocks.named_cell("Best"), 3.0),
        blocks.paper_table(plain(""), columns, table),
    ]
    paper: blocks.Paper = {"id": "bill", "title": plain("Bill"), "foot": plain("Foot"), "blocks": written}
    made = pypdfium2.PdfDocument(paper_pdf(paper, Reader(ENGLISH, "in", "letter")))
    return [page.get_textpage().get_text_range() for page in made]


@pytest.mark.parametrize("lines_before", range(0, 44, 4))
def test_a_bill_stands_on_one_page_with_its_titles(lines_before: int) -> None:
    (page,) = [page for page in pages_of(8, lines_before) if "The bill" in page]
    assert all(told in page for told in ("Best", *(f"Row {row}." for row in range(8))))


def test_a_bill_that_has_room_begins_no_page() -> None:
    (page,) = pages_of(8, 4)
    assert "Line 3." in page


def test_a_long_table_goes_on_where_it_must() -> None:
    first, *_, last = pages_of(60, 4)
    assert "Row 0." in first
    assert "Row 59." in last
    assert "How it comes about" in last
