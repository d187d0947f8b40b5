"""Papers as PDF files: what is read at a glance stands on one page."""

from typing import NamedTuple

import pypdfium2
import pytest

from configurator.kernel.message import plain
from configurator.kernel.papers import blocks
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import ENGLISH
from configurator.papers.paper_pdf import paper_pdf
from configurator.papers.reader import Reader

POINT = 25.4 / 72
PATH, TEXT = pypdfium2.raw.FPDF_PAGEOBJ_PATH, pypdfium2.raw.FPDF_PAGEOBJ_TEXT
# Above the foot, which has a line of its own, mm from the lower edge.
FOOT = 15
MARGIN = 11


class Printed(NamedTuple):
    """Where something stands on a page, mm from its left and lower edge."""

    left: float
    bottom: float
    right: float
    top: float


def printed(kind: int, *written: blocks.Block) -> list[Printed]:
    """Return where all of a kind stands above the foot of a paper's first page, from the top."""
    paper: blocks.Paper = {"id": "bill", "title": plain("Bill"), "foot": plain("Foot"), "blocks": list(written)}
    page = pypdfium2.PdfDocument(paper_pdf(paper, Reader(ENGLISH, "in", "letter")))[0]
    all_of_it = [
        Printed(*(edge * POINT for edge in one.get_bounds())) for one in page.get_objects() if one.type == kind
    ]
    return sorted((one for one in all_of_it if one.bottom > FOOT), key=lambda one: -one.top)


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


@pytest.mark.parametrize("names", [["Client"], ["Client", "Consultant"], ["Client", "Consultant", "Installer"]])
def test_who_signs_has_a_line_and_one_for_the_date_beside_it(names: list[str]) -> None:
    before = blocks.paper_text(plain("What is signed"))
    signed = [before, blocks.signature_lines([blocks.named_cell(name) for name in names])]
    above, *words = printed(TEXT, *signed)
    lines = sorted(printed(PATH, *signed))
    words.sort()
    assert len(lines) == len(words) == 2 * len(names)
    for line, word in zip(lines, words, strict=True):
        # Each is named where it begins, and whoever signs has room to write above it.
        assert 0 < word.left - line.left < 2
        assert 0 < line.bottom - word.top < 3
        assert above.bottom - line.top > 5
    edges = [edge for line in lines for edge in (line.left, line.right)]
    assert edges == sorted(edges)
    assert MARGIN - 1 < edges[0] < edges[-1] < 215.9 - MARGIN + 1


def table_of(name: str) -> blocks.Block:
    """Return a table of two rows whose columns have that name, or none."""
    columns = [blocks.word_column(plain(name), 1.0), blocks.word_column(plain(""), 1.0)]
    return blocks.paper_table(plain(""), columns, [blocks.paper_row([plain("Width"), plain("Height")])] * 2)


def test_a_table_without_names_has_no_head_and_no_lines() -> None:
    named, bare = table_of("What"), table_of("")
    lines = printed(PATH, named)
    assert lines
    # A head is ruled off; boxes are for what is written by hand.
    assert all(line.top - line.bottom < 1 for line in lines)
    assert not printed(PATH, bare)
    # Without a head the first row stands in its place.
    assert len(printed(TEXT, bare)) == 4
    assert printed(TEXT, bare)[0].top == pytest.approx(printed(TEXT, named)[0].top, abs=0.5)
