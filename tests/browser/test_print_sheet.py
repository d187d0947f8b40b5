"""What comes out of the printer: the sheet for the client, or drawings and figures to scale, with their link."""

import ctypes
import math
import re
from typing import Any

import pypdfium2
import pytest
import zxingcpp
from PIL import Image, ImageChops
from playwright.sync_api import Page

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from tests.browser.trying import covering, fragment, open_page, to_step

DPI = 300
MM = 25.4 / DPI
PAPER = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}

every_paper = pytest.mark.parametrize("paper", PAPER)


def printed(page: Page, paper: str) -> list[tuple[Image.Image, str]]:
    """Return every printed page as a picture and as its text."""
    document = pypdfium2.PdfDocument(page.pdf(format=paper, print_background=False))
    pages = [(sheet.render(scale=DPI / 72).to_pil().convert("RGB"), text_of(sheet)) for sheet in document]
    document.close()
    return pages


def pages_printed(page: Page, paper: str) -> int:
    """Return how many pages are printed."""
    document = pypdfium2.PdfDocument(page.pdf(format=paper, print_background=False))
    count = len(document)
    document.close()
    return count


def chosen(page: Page, kind: str) -> None:
    """Choose on the last step which sheet is printed."""
    to_step(page, "Take along")
    page.locator(f"input[name=paper][value={kind}]").check()


def points_of(page: Page, paper: str) -> set[float]:
    """Return the sizes of all letters on the printed pages, in points."""
    document = pypdfium2.PdfDocument(page.pdf(format=paper, print_background=False))
    sizes: set[float] = set()
    for sheet in document:
        for thing in sheet.get_objects(filter=[pypdfium2.raw.FPDF_PAGEOBJ_TEXT]):
            size = ctypes.c_float()
            pypdfium2.raw.FPDFTextObj_GetFontSize(thing, size)
            matrix = thing.get_matrix()
            sizes.add(round(size.value * math.hypot(matrix.b, matrix.d), 2))
    document.close()
    return sizes


def text_of(sheet: Any) -> str:
    """Return the words on a page of a PDF."""
    words: str = sheet.get_textpage().get_text_range()
    return " ".join(words.split())


def extent_of(picture: Image.Image, color: tuple[int, int, int]) -> tuple[float, float]:
    """Return how wide and how high a color reaches on the paper, in mm."""
    bands = [
        band.point([255 if value == want else 0 for value in range(256)])
        for band, want in zip(picture.split(), color, strict=True)
    ]
    box = ImageChops.darker(ImageChops.darker(bands[0], bands[1]), bands[2]).getbbox()
    assert box
    return (box[2] - box[0]) * MM, (box[3] - box[1]) * MM


def color_of(page: Page, role: str) -> tuple[int, int, int]:
    """Return the fill of a role on paper."""
    page.emulate_media(media="print")
    fill = page.locator(f".still .{role}").first.evaluate("node => getComputedStyle(node).fill")
    page.emulate_media(media="null")
    red, green, blue = (int(value) for value in re.findall(r"\d+", fill)[:3])
    return red, green, blue


def both(catalog: Catalog, units: str) -> str:
    """Return the address of a single door and a pair, each with a covering that is open."""
    return fragment(
        catalog,
        covering(catalog, "garden-door", "roller-shade", at=(0.0, 0.0, 0.0)),
        covering(catalog, "garden-pair", "cellular-shade", at=(0.3, 0.0, 0.0)),
        units=units,
    )


@every_paper
@pytest.mark.parametrize("units", ["in", "mm"])
def test_the_drawing_measures_to_scale(page: Page, catalog: Catalog, paper: str, units: str) -> None:
    open_page(page, both(catalog, units))
    sky = color_of(page, "sky")
    chosen(page, "workroom")
    picture, words = printed(page, paper)[0]
    stated = re.search(r"Scale .*?1:(\d+)", words)
    assert stated
    assert int(stated[1]) <= 25
    # Beside and below the views, what is enlarged shows glass too.
    wide, _ = extent_of(picture.crop((0, 0, picture.width // 2, picture.height * 2 // 5)), sky)
    assert wide == pytest.approx(catalog.doors["garden-door"]["glass_width"] / int(stated[1]), abs=0.4)


@pytest.mark.parametrize(("units", "length"), [("in", 101.6), ("mm", 100.0)])
def test_the_line_to_lay_a_ruler_on_is_as_long_as_it_says(
    page: Page, catalog: Catalog, units: str, length: float
) -> None:
    open_page(page, both(catalog, units))
    chosen(page, "workroom")
    document = pypdfium2.PdfDocument(page.pdf(format="A4", print_background=False))
    sheet = document[0]
    words = sheet.get_textpage()
    found = words.search("This line is").get_next()
    assert found
    left, low, _, high = (place * DPI / 72 for place in words.get_charbox(found[0]))
    picture = sheet.render(scale=DPI / 72).to_pil().convert("RGB")
    document.close()
    # It stands before its words, and nothing else does.
    before = picture.crop((0, round(picture.height - high - 20), round(left) - 4, round(picture.height - low + 20)))
    across = ImageChops.invert(before.convert("L")).point([255 * (value > 128) for value in range(256)]).getbbox()
    assert across
    assert (across[2] - across[0]) * MM == pytest.approx(length, abs=0.2)


@every_paper
def test_drawings_and_figures_have_all_that_belongs_to_a_configuration(
    page: Page, catalog: Catalog, paper: str
) -> None:
    open_page(page, both(catalog, "in"))
    chosen(page, "workroom")
    pages = printed(page, paper)
    assert len(pages) == 4
    for i, (door, family) in enumerate([("garden-door", "roller-shade"), ("garden-pair", "cellular-shade")]):
        picture = pages[2 * i][0]
        words = f"{pages[2 * i][1]} {pages[2 * i + 1][1]}"
        assert picture.size == pytest.approx([side / MM for side in PAPER[paper]], abs=8)
        answer = ask(catalog.doors[door], catalog.families[family], {}, catalog.household)
        expected = [catalog.doors[door]["name"], catalog.families[family]["name"], "Position", "Scale", "Date"]
        expected += [figure["name"] for figure in answer["figures"].values()]
        expected += [caution["source"] for caution in answer["cautions"]]
        for part in expected:
            assert part.lower() in words.lower()
        assert "This line is 4 in long" in words
        assert "At the handle, cut level, 3 in = 1 ft (1:4)" in words
        assert "At the handle, cut upright, 3 in = 1 ft (1:4)" in words


@every_paper
@pytest.mark.parametrize("kind", ["workroom", "client"])
def test_nothing_is_printed_smaller_than_eight_point(page: Page, catalog: Catalog, paper: str, kind: str) -> None:
    open_page(page, both(catalog, "mm"))
    chosen(page, kind)
    # A printer's grid is a little coarser than the point.
    assert min(points_of(page, paper)) >= 7.98


def test_the_place_that_decides_is_printed_at_a_quarter(page: Page, catalog: Catalog) -> None:
    open_page(page, fragment(catalog, covering(catalog, "garden-door", "roller-shade", at=(1.0, 0.0, 0.0))))
    chosen(page, "workroom")
    ruled = page.evaluate(
        """() => {
          window.dispatchEvent(new Event("beforeprint"));
          const cuts = [...document.querySelectorAll(".drawings-page figure svg")].slice(1);
          return cuts.map((svg) => svg.viewBox.baseVal.width / parseFloat(svg.getAttribute("width")));
        }"""
    )
    assert ruled == pytest.approx([4, 4], rel=0.01)


@every_paper
@pytest.mark.parametrize("units", ["in", "mm"])
def test_the_client_has_one_page_with_what_decides(page: Page, catalog: Catalog, paper: str, units: str) -> None:
    open_page(page, both(catalog, units))
    chosen(page, "client")
    pages = printed(page, paper)
    assert len(pages) == 2
    showroom = catalog.showroom
    size = {"in": "25 in wide, 68 in high", "mm": "635 mm wide, 1727.2 mm high"}[units]
    for (picture, words), family in zip(pages, ("roller-shade", "cellular-shade"), strict=True):
        expected = [catalog.families[family]["name"], "Size to order", "How high it stacks", "How much of the glass"]
        expected += ["How far it stands off", "Does it pass the handle?", "Price level", "Notes"]
        expected += [showroom.name, showroom.contact.telephone, showroom.contact.hours[0].time]
        for part in expected:
            assert part.lower() in words.lower(), part
        assert zxingcpp.read_barcodes(picture)[0].text.split("/")[-1] in words.replace(" ", "")
    assert size in pages[1][1]


def test_every_covering_has_one_page_for_the_client(page: Page, catalog: Catalog) -> None:
    for door, paper in (("tall-door", "Letter"), ("fixed-pair", "A4")):
        for first in range(0, len(catalog.families), 4):
            four = list(catalog.families)[first : first + 4]
            open_page(page, fragment(catalog, *(covering(catalog, door, one, at=(1.0, 0.0, 0.0)) for one in four)))
            assert pages_printed(page, paper) == len(four)


def test_the_printed_code_reads_back_to_its_page(page: Page, catalog: Catalog) -> None:
    open_page(page, both(catalog, "in"))
    for picture, words in printed(page, "A4"):
        codes = zxingcpp.read_barcodes(picture)
        assert len(codes) == 1
        assert codes[0].text.startswith(page.url.split("#")[0] + "#2/in/")
        assert codes[0].text.split("/")[-1] in words.replace(" ", "")
        open_page(page, codes[0].text)
        assert page.locator("#configurator .notice").is_hidden()
        open_page(page, both(catalog, "in"))


def test_paper_is_white_in_the_evening_too(page: Page, catalog: Catalog) -> None:
    page.emulate_media(color_scheme="dark")
    open_page(page, both(catalog, "mm"))
    picture, _ = printed(page, "A4")[0]
    assert picture.getpixel((20, 20)) == (255, 255, 255)
    light = sum(picture.convert("L").histogram()[200:])
    assert light > 0.75 * picture.width * picture.height


def test_every_family_fits_its_two_pages(page: Page, catalog: Catalog) -> None:
    four = list(catalog.families)[7:11]
    for door in ("sidelight-door", "tall-door"):
        address = fragment(catalog, *(covering(catalog, door, family, at=(1.0, 0.0, 0.0)) for family in four))
        open_page(page, address)
        chosen(page, "workroom")
        for paper in PAPER:
            assert pages_printed(page, paper) == 8


def test_the_comparison_is_printed_at_one_scale(page: Page, catalog: Catalog) -> None:
    open_page(page, both(catalog, "in"))
    page.evaluate("window.print = () => window.dispatchEvent(new Event('printed'))")
    page.get_by_role("button", name="Print the comparison").click()
    words = " ".join(text for _, text in printed(page, "A4"))
    assert "What differs" in words
    assert "The same in all" in words
    assert re.search(r"Scale .*1:\d+", words)


@pytest.mark.parametrize(("fabric", "shows"), [("linen-oat", True), ("stripe-ink", False)])
def test_on_paper_a_garden_shows_as_faintly_as_a_cloth_lets_it(
    page: Page, catalog: Catalog, fabric: str, shows: bool
) -> None:
    shade = covering(catalog, "garden-door", "soft-fold-shade", choices={"fabric": fabric}, at=(1.0, 0.0, 0.0))
    open_page(page, fragment(catalog, shade))
    chosen(page, "client")
    with_trees = printed(page, "A4")[0][0]
    page.evaluate(
        """() => {
          const bare = new CSSStyleSheet();
          bare.replaceSync(".tree, .trunk { display: none; }");
          document.adoptedStyleSheets = [bare];
        }"""
    )
    faint = ImageChops.difference(with_trees, printed(page, "A4")[0][0])
    assert (max(high for _, high in faint.getextrema()) > 1) == shows
