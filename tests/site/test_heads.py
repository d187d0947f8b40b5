"""What search engines and link previews are told of each page, with the public address and before it is known."""

import dataclasses
import json
from typing import Any

import pytest

from configurator.catalog import Catalog
from configurator.kernel.message import is_said
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.drawings.cards import door_cards, family_urls
from configurator.site.house import OWN_CARD, House
from configurator.site.kinds.all_pages import site_pages
from configurator.site.kinds.frame import frame
from configurator.site.mkdocs.page_html import page_html
from configurator.site.site_page import SitePage

ADDRESS = "https://doors.example/show/"
# A covering and a door without other names.
UNNAMED = ("roller-shade", "metric-single")


def house_at(catalog: Catalog, address: str) -> House:
    """Return a showroom of three doors, one of them too narrow for a blind, and four coverings, at an address or none
    yet; a door and a covering have no other names."""
    doors = {name: catalog.doors[name] for name in ("garden-door", "garden-pair", "metric-single")}
    doors["garden-door"] = {**doors["garden-door"], "glass_width": 170.0}
    names = ("roller-shade", "louvered-shutter", "cellular-shade", "wood-blind")
    families = {name: catalog.families[name] for name in names}
    family_notes = catalog.family_notes | {
        UNNAMED[0]: dataclasses.replace(catalog.family_notes[UNNAMED[0]], also_called=[])
    }
    door_notes = catalog.door_notes | {UNNAMED[1]: dataclasses.replace(catalog.door_notes[UNNAMED[1]], also_called=[])}
    room = catalog.showroom.model_copy(update={"public_address": address})
    shown = dataclasses.replace(
        catalog,
        doors=doors,
        families=families,
        showroom=room,
        formerly={},
        family_notes=family_notes,
        door_notes=door_notes,
    )
    return House(shown, CONTENT, Answers())


@pytest.fixture(scope="module", params=["", ADDRESS.removesuffix("/"), ADDRESS])
def house(request: pytest.FixtureRequest, catalog: Catalog) -> House:
    """The showroom before its address is known, and with it written either way."""
    return house_at(catalog, request.param)


def things(page: dict[str, Any]) -> dict[str, Any]:
    """Return the structured data of a page's head, by its type."""
    return {thing["@type"]: thing for thing in json.loads(page["schema"])["@graph"]}


def told(house: House) -> list[tuple[SitePage, dict[str, Any], dict[str, Any]]]:
    """Return every page with its head and its structured data."""
    heads = [(page, dict(frame(house, page)["head"])) for page in site_pages(house)]
    return [(page, head, things(head)) for page, head in heads]


def test_every_page_is_told_at_its_own_address_once_it_is_known(house: House) -> None:
    for page, head, _ in told(house):
        listed = page.template != "lost.html"
        assert head["listed"] == listed, page.url
        assert head["canonical"] == (ADDRESS + page.url if house.address and listed else ""), page.url


def test_a_trail_leads_from_the_first_page_to_each_once_the_address_is_known(house: House) -> None:
    for page, _, schema in told(house):
        assert ("BreadcrumbList" in schema) == bool(house.address), page.url
        if house.address:
            steps = schema["BreadcrumbList"]["itemListElement"]
            assert [step["position"] for step in steps] == list(range(1, len(steps) + 1))
            assert (steps[-1]["name"], steps[-1]["item"]) == (page.title, ADDRESS + page.url)
            known = {other.url for other in site_pages(house)}
            assert all(step["item"].removeprefix(ADDRESS) in known for step in steps), page.url


def test_link_previews_are_the_page_s_own_and_there(house: House) -> None:
    made = {OWN_CARD, *family_urls(house)}.union(*(door_cards(house, door) for door in house.doors))
    for page, head, schema in told(house):
        way = ADDRESS if house.address else "../" * page.url.count("/")
        assert head["card"].startswith(way), page.url
        card = head["card"].removeprefix(way)
        assert card in made, page.url
        assert (card == OWN_CARD) == (page.template not in ("family.html", "door.html", "fitted.html")), page.url
        if "Product" in schema:
            whole = (schema["Product"].get("url"), schema["Product"].get("image"))
            assert whole == ((ADDRESS + page.url, head["card"]) if house.address else (None, None)), page.url
    cards = [page.card for page in site_pages(house) if page.card]
    assert len(cards) == len(set(cards))


def test_a_product_is_each_covering_alone_and_on_a_door(house: House) -> None:
    for page, head, schema in told(house):
        assert ("Product" in schema) == (page.template in ("family.html", "fitted.html")), page.url
        if "Product" in schema:
            assert schema["Product"]["name"] == page.title
            assert head["description"].startswith(schema["Product"]["description"]), page.url


def test_titles_and_descriptions_tell_pages_apart(house: House) -> None:
    heads = told(house)
    assert len({head["title"] for _, head, _ in heads}) == len(heads)
    for page, head, _ in heads:
        assert house.showroom.name in head["title"]
        assert (head["title"] == house.showroom.name) == (page.url == "index.html")
        assert head["description"], page.url
    fitted = {page.title: page.description for page, _, _ in heads if page.template == "fitted.html"}
    assert len(fitted) == len(house.doors) * len(house.families)
    for door in house.doors:
        for family in house.families:
            refused = is_said(house.answer(door, family)["refusal"])
            words = fitted[house.on_door(door, family)]
            assert ("it does not go on" in words) == refused
            assert ("of the glass stays clear" in words) != refused
    assert is_said(house.answer(house.doors[0], house.catalog.families["wood-blind"])["refusal"])


def test_other_names_are_told_in_title_and_description_where_there_are_any(house: House) -> None:
    for page, head, schema in told(house):
        ident = page.url.rpartition("/")[2].removesuffix(".html")
        names: list[str] = []
        if page.template == "family.html":
            names = house.catalog.family_notes[ident].also_called
        elif page.template == "door.html":
            names = house.catalog.door_notes[ident].also_called
        (thing,) = [one for kind, one in schema.items() if kind in ("Product", "WebPage")] or [{}]
        assert thing.get("alternateName", []) == names, page.url
        also = f" Also called: {', '.join(names)}." if names else ""
        assert head["description"].partition(" Also called:")[1:] == (also[:13], also[13:]), page.url
        if page.url != "index.html":
            known = ", ".join([page.title, *names[:1]])
            assert head["title"] == f"{known} · {house.showroom.name}"


def test_the_menu_marks_the_page_and_the_part_that_it_is_in(house: House) -> None:
    for page in site_pages(house):
        marked = {entry["url"]: entry["here"] for entry in frame(house, page)["menu"] if entry["here"]}
        part = f"{page.url.split('/')[0]}/index.html" if "/" in page.url else page.url
        assert set(marked) <= {part}
        assert all(mark == ("page" if page.url == part else "true") for mark in marked.values())


def test_a_page_is_told_to_search_engines_where_it_stands_and_to_nobody_where_it_is_lost(house: House) -> None:
    page = next(page for page in site_pages(house) if page.url == "404.html")
    html = page_html(house, page)
    assert "noindex" in html
    assert frame(house, page)["root"] == ("/show/" if house.address else "")
