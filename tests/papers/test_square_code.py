"""The address of a paper as a square code: a telephone reads it back from the page."""

import io
from copy import deepcopy
from typing import cast

import pypdfium2
import pytest
import resvg_py
import zxingcpp
from PIL import Image

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.decode import read_link
from configurator.browser.link.made_links import linked_order
from configurator.browser.link.visit_link import opening_link
from configurator.catalog import Catalog
from configurator.kernel.papers.blocks import CODE, Paper
from configurator.kernel.papers.install_paper import install_paper
from configurator.kernel.papers.order_paper import order_paper
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.visit.agreed import agreed_now
from configurator.kernel.visit.visit_shapes import Stamp
from configurator.papers.paper_html import paper_html
from configurator.papers.paper_pdf import paper_pdf
from configurator.papers.reader import Reader
from configurator.papers.square_code import square_code
from tests.kernel.papers.paper_samples import commission_of, desk, fit_of
from tests.weir_cottage import house

# As long as a link to a measured door is.
ADDRESS = "https://doors.example/show/try.html#2/in/" + "garden-door,leaf_width=762,glass_height=1625.6/" * 8 + "x7k2"
POINT = 25.4 / 72
HOME = "https://doors.example/show/"


def paper(catalog: Catalog, link: str) -> Paper:
    """Return the order of a shade that came of a link."""
    commission = commission_of(catalog, fit_of(catalog, "garden-door", "cellular-shade"))
    return order_paper([commission], {**desk(), "link": link})


def first_page(pdf: bytes) -> Image.Image:
    """Return the first page as a picture of 200 dots an inch."""
    return cast(Image.Image, pypdfium2.PdfDocument(pdf)[0].render(scale=200 / 72).to_pil())


@pytest.mark.parametrize("sheet", ["letter", "a4"])
def test_a_printed_code_leads_to_the_address_beside_it(catalog: Catalog, sheet: str) -> None:
    pdf = paper_pdf(paper(catalog, ADDRESS), Reader(ENGLISH, "in", sheet))
    found = zxingcpp.read_barcodes(first_page(pdf))
    assert [code.text for code in found] == [ADDRESS]
    words = pypdfium2.PdfDocument(pdf)[0].get_textpage().get_text_range()
    assert ADDRESS in "".join(words.replace("\ufffe", "").split())


def test_a_code_keeps_four_clear_squares_on_each_side() -> None:
    # ISO/IEC 18004: a code of version v is 17 + 4v squares wide, in a quiet zone of four; its corners are dark.
    for long in (10, 60, 200):
        code = square_code(ADDRESS[:long])
        assert code
        assert (code.size - 8 - 17) % 4 == 0
        assert min(start for start, _, _ in code.runs) == min(row for _, row, _ in code.runs) == 4
        assert (
            max(start + wide for start, _, wide in code.runs)
            == max(row for _, row, _ in code.runs) + 1
            == code.size - 4
        )


def test_a_code_hides_no_words(catalog: Catalog) -> None:
    pdf = paper_pdf(paper(catalog, ADDRESS), Reader(ENGLISH, "in", "letter"))
    page = pypdfium2.PdfDocument(pdf)[0]
    boxes = [(shape.type, shape.get_bounds()) for shape in page.get_objects()]
    words = [box for kind, box in boxes if kind == pypdfium2.raw.FPDF_PAGEOBJ_TEXT]
    drawn = [box for kind, box in boxes if kind == pypdfium2.raw.FPDF_PAGEOBJ_PATH]
    # A row of the code is thicker than a table's rule.
    squares = [box for box in drawn if 0.8 < box[3] - box[1] < 2 and box[2] * POINT < 46]
    assert len(squares) > 500
    left, bottom = min(box[0] for box in squares), min(box[1] for box in squares)
    right, top = max(box[2] for box in squares), max(box[3] for box in squares)
    assert (right - left) * POINT == pytest.approx((top - bottom) * POINT, abs=0.6)
    assert not [box for box in words if box[0] < right and box[2] > left and box[1] < top and box[3] > bottom]


def test_what_follows_a_code_stands_on_white_paper(catalog: Catalog) -> None:
    pdf = paper_pdf(paper(catalog, ADDRESS), Reader(ENGLISH, "in", "letter"))
    darkness = first_page(pdf).convert("L").histogram()
    assert sum(darkness[:128]) < 0.06 * sum(darkness)


def test_a_browser_s_page_has_the_same_code(catalog: Catalog) -> None:
    page = paper_html(paper(catalog, ADDRESS), Reader(ENGLISH, "in", "letter"))
    svg = page[page.index('<svg role="img" aria-label="A code') :]
    svg = svg[: svg.index("</svg>") + 6].replace("<svg ", '<svg xmlns="http://www.w3.org/2000/svg" ')
    svg = svg.replace('34mm"', '34"')
    drawn = resvg_py.svg_to_bytes(svg_string=svg, width=600, background="#ffffff")
    assert [code.text for code in zxingcpp.read_barcodes(Image.open(io.BytesIO(bytes(drawn))))] == [ADDRESS]


@pytest.mark.parametrize("written", ["2/in/garden-door/x7k2", "", "https://doors.example/#" + "x" * 1500])
def test_what_a_telephone_cannot_open_has_no_code(written: str) -> None:
    assert square_code(written) is None


def test_without_an_address_of_the_site_the_link_stands_alone(catalog: Catalog) -> None:
    pdf = paper_pdf(paper(catalog, "2/in/garden-door/x7k2"), Reader(ENGLISH, "in", "letter"))
    assert zxingcpp.read_barcodes(first_page(pdf)) == []


def test_each_door_of_a_visit_has_the_code_of_its_link_and_no_name_is_in_it(catalog: Catalog) -> None:
    visit = house()
    visit["openings"][0]["proposals"][0]["liked"] = True
    commissions = linked_order(visit, page_catalog(catalog), opening_link)["commissions"]
    links = [HOME + "try.html#" + link for made in commissions for link in made["links"].values()]
    reader = Reader(ENGLISH, "in", "letter")
    for paper in (
        order_paper(commissions, {**desk(), "home": HOME}),
        install_paper(commissions, {**desk(), "home": HOME}),
    ):
        pages = list(pypdfium2.PdfDocument(paper_pdf(paper, reader)))
        found = [code.text for page in pages for code in zxingcpp.read_barcodes(page.render(scale=200 / 72).to_pil())]
        # Study, hall and kitchen; the study's other leaf was read narrower, so no link opens just that.
        assert sorted(found) == sorted(links)
        assert len(links) == 3
        assert [block["text"]["text"][:30] for block in paper["blocks"] if "no code" in block["text"]["text"]] == [
            "Piece {position} has no code, "
        ]
    secrets = [visit["client"], visit["place"], visit["note"], *(opening["room"] for opening in visit["openings"])]
    assert not [word for text in secrets for word in text.split() if len(word) > 3 and word in " ".join(links)]
    opened = read_link(links[0].partition("#")[2], page_catalog(catalog))["state"]["configurations"][0]
    assert opened["door"] == commissions[0]["leaves"][0]["fit"]["door"]


def test_a_site_that_stands_nowhere_has_no_codes_and_its_papers_say_so(catalog: Catalog) -> None:
    paper = order_paper(linked_order(house(), page_catalog(catalog), opening_link)["commissions"], desk())
    assert not [block for block in paper["blocks"] if block["kind"] == CODE]
    assert [block for block in paper["blocks"] if block["text"]["text"].startswith("There are no codes")]


def test_what_is_no_longer_offered_as_it_was_agreed_has_no_code(catalog: Catalog) -> None:
    visit, stock = house(), page_catalog(catalog)
    opening = visit["openings"][3]
    stamp: Stamp = {"on": "2025-03-20", "catalog": "1"}
    opening["agreed"] = [deepcopy(agreed_now(visit, opening, opening["proposals"][0], stock, stamp))]
    assert linked_order(visit, stock, opening_link)["commissions"][-1]["links"] != {}
    opening["agreed"][0]["choices"]["fabric"] = "dropped"
    opening["agreed"][0]["covering"]["choices"][0]["options"][0]["id"] = "dropped"
    made = linked_order(visit, stock, opening_link)["commissions"][-1]
    assert (made["room"], made["links"]) == ("Kitchen", {})
