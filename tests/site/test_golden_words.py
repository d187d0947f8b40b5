"""What people read of the showroom before all else, word for word, and lengths and areas in either units."""

import dataclasses

import pytest
from lxml.html import HtmlElement, fromstring

from configurator.catalog import Catalog
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.house import House
from configurator.site.kinds.all_pages import door_sheet, family_sheet, fitted_sheet, plain_pages
from configurator.site.kinds.frame import head
from configurator.site.mkdocs.page_html import page_html
from configurator.site.site_page import SitePage

ANSWERS = Answers()
HEADS = {
    "index.html": (
        "Lantern & Sill",
        (
            "Lantern & Sill: Coverings for doors with glass in them. 15 coverings for glazed doors, drawn to scale "
            "on 15 doors."
        ),
    ),
    "coverings/index.html": (
        "Coverings · Lantern & Sill",
        (
            "15 coverings for glazed doors: how much glass each leaves clear, how far it stands out, and whether it "
            "passes the handle."
        ),
    ),
    "try.html": (
        "Your door · Lantern & Sill",
        (
            "Set your own door\N{RIGHT SINGLE QUOTATION MARK}s measurements, move each covering on it and read every "
            "figure."
        ),
    ),
    "coverings/louvered-shutter.html": (
        "Louvered shutter, plantation shutter · Lantern & Sill",
        (
            "Turning louvers in a wooden frame, cut out around the handle. Also called: plantation shutter, interior "
            "shutter, wooden shutter, French door shutter."
        ),
    ),
    "doors/metric-single.html": (
        "Metric single leaf, glazed interior door · Lantern & Sill",
        (
            "A rebated room door leaf for the preferred opening of 885 \N{MULTIPLICATION SIGN} 2005 mm, glazed. 15 "
            "coverings on it, compared to scale. Also called: glazed interior door, glazed room door."
        ),
    ),
    "doors/garden-door/cellular-shade.html": (
        "Cellular shade on Garden door · Lantern & Sill",
        "Open, 98% of the glass stays clear. At the handle: clears. Drawings to scale and all figures.",
    ),
    "doors/tall-door/wood-blind.html": (
        "Wood blind on Eight-foot door · Lantern & Sill",
        "Open, 93% of the glass stays clear. At the handle: blocked. Drawings to scale and all figures.",
    ),
}
# Of a covering on a door: what its handle comes to, figures, and the working of an area.
FITTED = {
    "in": (
        "At its tightest the bottom rail is behind the grip of the handle with 1/4 in to spare.",
        {
            "Order width": "25 in",
            "Height of the stack when open": "≈ 4 in",
            "Cloth in all": "≈ 7.59 yd",
            "Clear width with the covering": "33 7/16 in",
            "Visible glass, open": "≈ 97.7%",
        },
        "≈ 9.56 sq ft / ≈ 9.78 sq ft, of the glass ≈ 97.7%",
    ),
    "mm": (
        "At its tightest the bottom rail is behind the grip of the handle with 6.35 mm to spare.",
        {
            "Order width": "635 mm",
            "Height of the stack when open": "100.4 mm",
            "Cloth in all": "≈ 6.94 m",
            "Clear width with the covering": "≈ 849.3 mm",
            "Visible glass, open": "≈ 97.7%",
        },
        "≈ 0.888 m² / ≈ 0.908 m², of the glass ≈ 97.7%",
    ),
}


@pytest.fixture(params=["in", "mm"])
def house(request: pytest.FixtureRequest, catalog: Catalog) -> House:
    """The starter showroom in either units."""
    room = catalog.showroom.model_copy(update={"units": request.param})
    return House(dataclasses.replace(catalog, showroom=room), CONTENT, ANSWERS)


def sheet(house: House, url: str) -> SitePage:
    """Return a page by its address."""
    names = url.removesuffix(".html").split("/")
    doors, families = house.catalog.doors, house.catalog.families
    if names[0] == "coverings" and names[1] in families:
        return family_sheet(house, families[names[1]])
    if names[0] == "doors":
        door = doors[names[1]]
        return fitted_sheet(house, door, families[names[2]]) if names[2:] else door_sheet(house, door)
    return next(page for page in plain_pages(house) if page.url == url)


def read(part: HtmlElement) -> str:
    """Return the words of a part of a page, as if all spaces were the same."""
    return " ".join(part.text_content().split())


def test_titles_and_descriptions_read_word_for_word(house: House) -> None:
    told = {url: head(house, sheet(house, url)) for url in HEADS}
    assert {url: (one["title"], one["description"]) for url, one in told.items()} == HEADS


def test_a_fitted_page_tells_lengths_and_areas_in_the_showroom_s_units(house: House) -> None:
    page = fromstring(page_html(house, sheet(house, "doors/garden-door/cellular-shade.html")))
    judged, figures, area = FITTED[house.units]
    assert read(page.find_class("judgment")[0].find(".//p")) == judged
    rows = {row[0]: row for row in ([read(cell) for cell in row] for row in page.iterfind(".//main//tr"))}
    assert {name: rows[name][1] for name in figures} == figures
    assert rows["Visible glass, open"][2] == area
