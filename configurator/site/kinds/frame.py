"""What every page is given beside its own matter: its head, the menus and the showroom's words."""

from typing import TypedDict

from markupsafe import Markup

from configurator.catalog.schema.showroom import Showroom
from configurator.kernel.tongue import wording
from configurator.site.house import OWN_CARD, House
from configurator.site.kinds import structured_data
from configurator.site.site_page import Crumb, SitePage, way_up

MENU = (
    ("coverings/index.html", wording("Coverings"), "coverings/"),
    ("doors/index.html", wording("Doors"), "doors/"),
    ("measure.html", wording("Measure"), "measure.html"),
    ("guides/index.html", wording("Guides"), "guides/"),
    ("try.html", wording("Your door"), "try.html"),
)
SMALL_MENU = (
    ("guides/safety-for-children.html", wording("Safety for children")),
    ("imprint.html", wording("Imprint")),
    ("privacy.html", wording("Privacy")),
)


class Head(TypedDict):
    """What a page says of itself to browsers and search engines; ``card`` is the link preview's address."""

    title: str
    description: str
    canonical: str
    card: str
    listed: bool
    schema: Markup


class MenuEntry(TypedDict):
    """An entry of the main menu; ``here`` is ``page``, ``true`` or nothing, as aria-current wants it."""

    url: str
    name: str
    lead: bool
    here: str


class SmallMenuEntry(TypedDict):
    """An entry of the menu at a page's foot."""

    url: str
    name: str


class Frame(TypedDict):
    """What every template is given; ``root`` is the relative way back to the site's root."""

    root: str
    language: str
    head: Head
    kind: str
    trail: list[Crumb]
    showroom: Showroom
    menu: list[MenuEntry]
    small_menu: list[SmallMenuEntry]
    logo: str


def head(house: House, page: SitePage) -> Head:
    """Return a page's head."""
    crumbs = structured_data.breadcrumbs(trail(house, page), page.title, page.url, house.address)
    name = house.showroom.name
    stands = page.listed or page.moved_to != ""
    return {
        "title": name if page.url == "index.html" else f"{page.title} · {name}",
        "description": page.description,
        "canonical": house.address + (page.moved_to or page.url) if house.address and stands else "",
        "card": (house.address or way_up(page.url)) + (page.card or OWN_CARD),
        "listed": stands,
        "schema": structured_data.script_text([*page.schema, crumbs]),
    }


def trail(house: House, page: SitePage) -> list[Crumb]:
    """Return the pages above a page, by their names in the language of the pages."""
    return [Crumb(house.named(crumb.name), crumb.url) for crumb in page.crumbs]


def menu(house: House, url: str) -> list[MenuEntry]:
    """Return the main menu as it stands on a page."""
    return [
        {
            "url": to,
            "name": house.named(name),
            "lead": to == "try.html",
            "here": "page" if url == to else "true" if url.startswith(under) else "",
        }
        for to, name, under in MENU
    ]


def small_menu(house: House) -> list[SmallMenuEntry]:
    """Return the menu at a page's foot, of those Markdown pages that the content has."""
    urls = {page.url for page in house.markdown.values()}
    return [{"url": url, "name": house.named(name)} for url, name in SMALL_MENU if url in urls]


def frame(house: House, page: SitePage) -> Frame:
    """Return what a page's template is given beside the matter of its kind."""
    return {
        "root": way_up(page.url),
        "head": head(house, page),
        "kind": page.template.removesuffix(".html"),
        "language": house.words["language"],
        "trail": trail(house, page),
        "showroom": house.showroom,
        "menu": menu(house, page.url),
        "small_menu": small_menu(house),
        "logo": house.logo_markup,
    }
