"""A whole site in a made-up language: nothing that the program says stays in English."""

import re
from dataclasses import replace

import lxml.html
import pytest

from configurator.catalog import Catalog
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.face.templates import environment
from configurator.site.house import House
from configurator.site.kinds.all_pages import site_pages
from configurator.site.kinds.frame import frame
from configurator.site.site_page import SitePage
from tests.made_up_language import made_up, marked, own_words, plain, says, unmarked

NEXT = "\x1f"
SPOKEN = ("aria-label", "alt", "title", "placeholder", "aria-valuetext")
# One page of each kind; those of a family on a door are alike but for their figures.
KINDS = ("home.html", "coverings.html", "family.html", "doors.html", "door.html", "fitted.html", "measure.html")
KINDS += ("guides.html", "try.html", "lost.html")


def first_of_each(pages: list[SitePage]) -> dict[str, SitePage]:
    """Return the first page of each kind."""
    return {page.template: page for page in reversed(pages)}


def spoken_on(html: str) -> list[str]:
    """Return every text that a page shows, or that it says to those who have it read to them."""
    tree = lxml.html.fromstring(html)
    for node in tree.xpath("//script | //style"):
        node.drop_tree()
    # A sentence may stand over several nodes, with a number in bold between them.
    return [
        *unmarked(NEXT.join(tree.itertext())).split(NEXT),
        *(node.get(name) for name in SPOKEN for node in tree.xpath(f"//*[@{name}]")),
    ]


@pytest.fixture(scope="module")
def house(catalog: Catalog) -> House:
    return House(replace(catalog, words=made_up(marked)), CONTENT, Answers())


@pytest.mark.parametrize("kind", KINDS)
def test_every_text_of_a_page_is_in_its_language(kind: str, house: House) -> None:
    page = first_of_each(site_pages(house))[kind]
    env = environment(house.templates, house.words, house.units)
    html = env.get_template(page.template).render({**frame(house, page), **page.given()})
    content = own_words(house.catalog)
    left = {part.strip() for text in spoken_on(html) for part in re.split("[·:,;—]", unmarked(text))}
    strays = {text for text in left if says(text) and plain(text) not in content}
    assert strays == set()
