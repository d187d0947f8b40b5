"""The order and the installer's sheet out of a browser's print: the words and numbers of the command's papers."""

import re

import pypdfium2
import pytest
from playwright.sync_api import Page

from configurator.catalog import Catalog
from configurator.kernel.papers.blocks import DRAWING, TABLE, TICKS, Paper
from configurator.kernel.papers.install_paper import install_paper
from configurator.kernel.papers.order_paper import order_paper
from configurator.kernel.tongue import ENGLISH
from configurator.papers.reader import Reader
from tests.browser.trying import covering, fragment, open_page, to_step
from tests.kernel.papers.paper_samples import commission_of, desk, fit_of

COVERINGS = [("garden-pair", "roller-shade"), ("garden-door", "louvered-shutter")]
MAKE = {"order": order_paper, "install": install_paper}


def squeezed(text: str) -> str:
    """Return a text without the spaces that differ from one way of setting it to another."""
    return re.sub(r"\s+", "", text)


def told(paper: Paper) -> list[str]:
    """Return what all rows of all tables and all boxes of a paper say."""
    reader = Reader(ENGLISH, "in", "letter")
    rows = [
        "".join(reader.cells(row, block["columns"]))
        for block in paper["blocks"]
        if block["kind"] == TABLE and block["text"]["text"]
        for row in block["rows"]
    ]
    ticks = [reader.told(item) for block in paper["blocks"] if block["kind"] == TICKS for item in block["items"]]
    return [squeezed(text) for text in [*rows, *ticks]]


@pytest.mark.parametrize("kind", MAKE)
def test_the_page_prints_what_the_command_writes(page: Page, catalog: Catalog, kind: str) -> None:
    open_page(page, fragment(catalog, *(covering(catalog, *one, at=(1.0, 0.0, 0.0)) for one in COVERINGS), units="in"))
    to_step(page, "Take along")
    page.locator(f"input[name=paper][value={kind}]").check()
    document = pypdfium2.PdfDocument(page.pdf(format="Letter", print_background=False))
    assert len(document) > 3
    page.evaluate("window.dispatchEvent(new Event('beforeprint'))")
    shown = squeezed(page.locator(".sheets").text_content() or "")
    paper = MAKE[kind]([commission_of(catalog, fit_of(catalog, *one), room="") for one in COVERINGS], desk())
    lines = told(paper)
    assert len(lines) > 30
    assert [line for line in lines if line not in shown] == []
    scales = page.evaluate(
        "[...document.querySelectorAll('.paper svg.drawing-sheet')]"
        ".map((svg) => svg.viewBox.baseVal.width / parseFloat(svg.getAttribute('width')))"
    )
    drawn = [one["scale"] for block in paper["blocks"] if block["kind"] == DRAWING for one in block["drawings"]]
    assert scales == pytest.approx(drawn, rel=0.01)
