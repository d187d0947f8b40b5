"""What comes out of the printer: the sheet for the client, or drawings and figures to scale, with their link."""

import ctypes
import math
import re
from collections.abc import Iterator
from contextlib import contextmanager
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
POINT = 72 / 25.4
PAPER = {"A4": (210.0, 297.0), "Letter": (215.9, 279.4)}


@contextmanager
def printed(page: Page, paper: str) -> Iterator[Any]:
    """Print a page, and give the document."""
    document = pypdfium2.PdfDocument(page.pdf(format=paper, print_background=False))
    yield document
    document.close()


def picture_of(sheet: Any) -> Image.Image:
    """Return a page of a PDF as a picture."""
    picture: Image.Image = sheet.render(scale=DPI / 72).to_pil().convert("RGB")
    return picture


def pages_printed(page: Page, paper: str) -> list[tuple[Image.Image, str]]:
    """Return every printed page as a picture and as its text."""
    with printed(page, paper) as document:
        return [(picture_of(sheet), text_of(sheet)) for sheet in document]


def first_printed(page: Page, paper: str) -> tuple[Image.Image, str]:
    """Return the first printed page as a picture and as its text."""
    with printed(page, paper) as document:
        return picture_of(document[0]), text_of(document[0])


def words_printed(page: Page, paper: str) -> list[str]:
    """Return the text of every printed page."""
    with printed(page, paper) as document:
        return [text_of(sheet) for sheet in document]


def count_printed(page: Page, paper: str) -> int:
    """Return how many pages are printed."""
    with printed(page, paper) as document:
        return len(document)


def chosen(page: Page, kind: str) -> None:
    """Choose on the last step which sheet is printed."""
    to_step(page, "Take along")
    page.locator(f"input[name=paper][value={kind}]").check()


def points_of(page: Page, paper: str) -> set[float]:
    """Return the sizes of all letters on the printed pages, in points."""
    sizes: set[float] = set()
    with printed(page, paper) as document:
        for sheet in document:
            for thing in sheet.get_objects(filter=[pypdfium2.raw.FPDF_PAGEOBJ_TEXT]):
                size = ctypes.c_float()
                pypdfium2.raw.FPDFTextObj_GetFontSize(thing, size)
                matrix = thing.get_matrix()
                sizes.add(round(size.value * math.hypot(matrix.b, matrix.d), 2))
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


@pytest.mark.parametrize("units", ["in", "mm"])
def test_the_drawing_measures_to_scale(page: Page, catalog: Catalog, units: str) -> None:
    open_page(page, both(catalog, units))
    sky = color_of(page, "sky")
    chosen(page, "workroom")
    for paper in PAPER:
        picture, words = first_printed(page, paper)
        stated = re.search(r"Scale .*?1:(\d+)", words)
        assert stated, paper
        assert int(stated[1]) <= 25, paper
        # Beside and below the views, what is enlarged shows glass too.
        wide, _ = extent_of(picture.crop((0, 0, picture.width // 2, picture.height * 2 // 5)), sky)
        glass = catalog.doors["garden-door"]["glass_width"]
        assert wide == pytest.approx(glass / int(stated[1]), abs=0.4), paper


@pytest.mark.parametrize(("units", "length"), [("in", 101.6), ("mm", 100.0)])
def test_the_line_to_lay_a_ruler_on_is_as_long_as_it_says(
    page: Page, catalog: Catalog, units: str, length: float
) -> None:
    open_page(page, both(catalog, units))
    chosen(page, "workroom")
    with printed(page, "A4") as document:
        words = document[0].get_textpage()
        found = words.search("This line is").get_next()
        assert found
        left, low, _, high = (place * DPI / 72 for place in words.get_charbox(found[0]))
        picture = picture_of(document[0])
    # It stands before its words, and nothing else does.
    before = picture.crop((0, round(picture.height - high - 20), round(left) - 4, round(picture.height - low + 20)))
    across = ImageChops.invert(before.convert("L")).point([255 * (value > 128) for value in range(256)]).getbbox()
    assert across
    assert (across[2] - across[0]) * MM == pytest.approx(length, abs=0.2)


def test_drawings_and_figures_have_all_that_belongs_to_a_configuration(page: Page, catalog: Catalog) -> None:
    open_page(page, both(catalog, "in"))
    chosen(page, "workroom")
    for paper, size in PAPER.items():
        with printed(page, paper) as document:
            sheets = [(list(sheet.get_size()), text_of(sheet)) for sheet in document]
        assert len(sheets) == 4, paper
        for found, _ in sheets:
            # In whole points.
            assert found == pytest.approx([side * POINT for side in size], abs=1), paper
        for i, (door, family) in enumerate([("garden-door", "roller-shade"), ("garden-pair", "cellular-shade")]):
            has_all_that_belongs(f"{sheets[2 * i][1]} {sheets[2 * i + 1][1]}", catalog, door, family)


def has_all_that_belongs(words: str, catalog: Catalog, door: str, family: str) -> None:
    """Check that the printed words have all that belongs to a covering on a door."""
    answer = ask(catalog.doors[door], catalog.families[family], {}, catalog.household)
    expected = [catalog.doors[door]["name"], catalog.families[family]["name"], "Position", "Scale", "Date"]
    expected += [figure["name"] for figure in answer["figures"].values()]
    expected += [caution["source"] for caution in answer["cautions"]]
    for part in expected:
        assert part.lower() in words.lower()
    assert "This line is 4 in long" in words
    assert "At the handle, cut level, 3 in = 1 ft (1:4)" in words
    assert "At the handle, cut upright, 3 in = 1 ft (1:4)" in words


@pytest.mark.parametrize("kind", ["workroom", "client"])
def test_nothing_is_printed_smaller_than_eight_point(page: Page, catalog: Catalog, kind: str) -> None:
    open_page(page, both(catalog, "mm"))
    chosen(page, kind)
    for paper in PAPER:
        # A printer's grid is a little coarser than the point.
        assert min(points_of(page, paper)) >= 7.98, paper


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


@pytest.mark.parametrize("units", ["in", "mm"])
def test_the_client_has_one_page_with_what_decides(page: Page, catalog: Catalog, units: str) -> None:
    open_page(page, both(catalog, units))
    chosen(page, "client")
    showroom = catalog.showroom
    size = {"in": "25 in wide, 68 in high", "mm": "635 mm wide, 1727.2 mm high"}[units]
    for paper in PAPER:
        pages = pages_printed(page, paper)
        assert len(pages) == 2, paper
        for (picture, words), family in zip(pages, ("roller-shade", "cellular-shade"), strict=True):
            expected = [catalog.families[family]["name"], "Size to order", "How high it stacks"]
            expected += ["How much of the glass", "How far it stands off", "Does it pass the handle?", "Price level"]
            expected += ["Notes", showroom.name, showroom.contact.telephone, showroom.contact.hours[0].time]
            for part in expected:
                assert part.lower() in words.lower(), (paper, part)
            assert zxingcpp.read_barcodes(picture)[0].text.split("/")[-1] in words.replace(" ", ""), paper
        assert size in pages[1][1], paper


def test_every_covering_has_one_page_for_the_client(page: Page, catalog: Catalog) -> None:
    for door, paper in (("tall-door", "Letter"), ("fixed-pair", "A4")):
        for first in range(0, len(catalog.families), 4):
            four = list(catalog.families)[first : first + 4]
            open_page(page, fragment(catalog, *(covering(catalog, door, one, at=(1.0, 0.0, 0.0)) for one in four)))
            assert count_printed(page, paper) == len(four)


def test_the_printed_code_reads_back_to_its_page(page: Page, catalog: Catalog) -> None:
    open_page(page, both(catalog, "in"))
    for picture, words in pages_printed(page, "A4"):
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
    picture, _ = first_printed(page, "A4")
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
            assert count_printed(page, paper) == 8


def test_the_comparison_is_printed_at_one_scale(page: Page, catalog: Catalog) -> None:
    open_page(page, both(catalog, "in"))
    page.evaluate("window.print = () => window.dispatchEvent(new Event('printed'))")
    page.get_by_role("button", name="Print the comparison").click()
    words = " ".join(words_printed(page, "A4"))
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
    with_trees, _ = first_printed(page, "A4")
    page.evaluate(
        """() => {
          const bare = new CSSStyleSheet();
          bare.replaceSync(".tree, .trunk { display: none; }");
          document.adoptedStyleSheets = [bare];
        }"""
    )
    faint = ImageChops.difference(with_trees, first_printed(page, "A4")[0])
    assert (max(high for _, high in faint.getextrema()) > 1) == shows
