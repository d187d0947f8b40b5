"""Structured data (published: schema.org Product, LocalBusiness, BreadcrumbList; JSON-LD 1.1, embedding in HTML)."""

import json
from pathlib import Path
from typing import Any

import html5lib

from configurator.catalog import Catalog
from configurator.site.kinds.structured_data import also_called, breadcrumbs, business, product, script_text
from configurator.site.site_page import Crumb
from tests.site.kinds import KINDS
from tests.site.pages import parsed

ADDRESS = "https://doors.example/show/"
SCRIPT = "//script[@type='application/ld+json']"


def things(page: Path) -> dict[str, Any]:
    """Return what a page's structured data tells, by its type."""
    (script,) = parsed(page)[0].xpath(SCRIPT)
    return {thing["@type"]: thing for thing in json.loads(script.text)["@graph"]}


def test_the_showroom_says_how_to_reach_it(demo: Path, catalog: Catalog) -> None:
    told = things(demo / KINDS["home"])["LocalBusiness"]
    contact = catalog.showroom.contact
    assert (told["name"], told["telephone"], told["email"]) == (catalog.showroom.name, contact.telephone, contact.mail)
    assert told["address"]["@type"] == "PostalAddress"
    assert all(line in told["address"]["streetAddress"] for line in contact.address)


def test_a_covering_is_a_product_in_the_words_of_its_page(demo: Path, catalog: Catalog) -> None:
    page = demo / KINDS["a family"]
    told = things(page)["Product"]
    assert told["name"] == parsed(page)[0].xpath("string(//h1)").strip()
    assert told["description"] in parsed(page)[0].xpath("string(//main)")
    assert told["brand"] == {"@type": "Brand", "name": catalog.showroom.name}


def test_other_names_are_told_of_coverings_and_doors(demo: Path, catalog: Catalog) -> None:
    covering = things(demo / KINDS["a family"])["Product"]
    assert covering["alternateName"] == catalog.family_notes["cellular-shade"].also_called
    door = things(demo / KINDS["a door"])["WebPage"]
    assert door["name"] == catalog.door_notes["garden-pair"].name
    assert door["alternateName"] == catalog.door_notes["garden-pair"].also_called
    assert also_called({"name": "Shade"}, []) == {"name": "Shade"}


def test_a_trail_is_told_only_with_its_addresses(demo: Path) -> None:
    for kind in ("a family", "a door", "a family on a door", "a guide"):
        assert "BreadcrumbList" not in things(demo / KINDS[kind])


def test_addresses_are_whole_once_the_public_one_is_known(catalog: Catalog) -> None:
    trail = breadcrumbs([Crumb("Doors", "doors/index.html")], "Garden door", "doors/garden-door.html", ADDRESS)
    assert [(item["@type"], item["position"], item["item"]) for item in trail["itemListElement"]] == [
        ("ListItem", 1, f"{ADDRESS}doors/index.html"),
        ("ListItem", 2, f"{ADDRESS}doors/garden-door.html"),
    ]
    assert business(catalog.showroom, ADDRESS)["url"] == ADDRESS
    made = product(
        {"name": "Shade", "description": "Low.", "category": ""}, "Us", f"{ADDRESS}a.html", f"{ADDRESS}a.png"
    )
    assert (made["url"], made["image"]) == (f"{ADDRESS}a.html", f"{ADDRESS}a.png")


def test_no_words_end_the_script_that_they_stand_in() -> None:
    words = 'A "shade" </script><script>alert(1)</script> <!-- & more'
    page = f"<!doctype html><script type='application/ld+json'>{script_text([{'name': words}])}</script>"
    (script,) = html5lib.parse(page, namespaceHTMLElements=False).iter("script")
    assert json.loads(script.text)["@graph"] == [{"name": words}]
