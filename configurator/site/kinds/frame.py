"""What every page is given beside its own matter: its head, the menus and the showroom's words."""

from typing import TypedDict
from urllib.parse import urlsplit

from markupsafe import Markup

from configurator.catalog.schema.showroom import Showroom
from configurator.catalog.site_addresses import guide_url
from configurator.kernel.tongue import wording
from configurator.site.house import OWN_CARD, House
from configurator.site.kinds import structured_data
from configurator.site.kinds.policy import POLICY
from configurator.site.site_page import Crumb, SitePage, way_up
from configurator.tongues.speech import name_of, regional

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


class Alternate(TypedDict):
    """A page in another language, or in the one it has for everybody else: where it is, as search engines are told."""

    code: str
    url: str


class Tongue(TypedDict):
    """A language in which a page can be read: its code, its own name, the page in it, and whether this is it."""

    code: str
    name: str
    url: str
    here: bool


class Head(TypedDict):
    """What a page says of itself to browsers and search engines; ``card`` is the link preview's address,
    ``locale`` its language with a country, as social networks name it."""

    title: str
    description: str
    canonical: str
    card: str
    listed: bool
    schema: Markup
    locale: str
    other_locales: list[str]
    alternates: list[Alternate]


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
    """What every template is given; ``root`` is the way back to the root of the page's
    language, ``shared`` to that of all languages. ``tongues`` is empty where there is one."""

    policy: Markup
    root: str
    shared: str
    lang: str
    tongues: list[Tongue]
    head: Head
    kind: str
    trail: list[Crumb]
    showroom: Showroom
    menu: list[MenuEntry]
    small_menu: list[SmallMenuEntry]
    logo: str


def head(house: House, page: SitePage) -> Head:
    """Return a page's head."""
    # A trail without addresses leads nowhere: whoever reads it is told once the public one is known.
    crumbs = (
        [structured_data.breadcrumbs(trail(house, page), page.title, page.url, house.address)] if house.address else []
    )
    name = house.showroom.name
    card = page.card or OWN_CARD
    stands = page.listed or page.moved_to != ""
    return {
        "title": name if page.url == "index.html" else f"{full_title(page)} · {name}",
        "description": page.description,
        "canonical": house.address + (page.moved_to or page.url) if house.address and stands else "",
        "card": (house.first.address or shared_way(house, page)) + house.card_root(card) + card,
        "listed": stands,
        "schema": structured_data.script_text([*page.schema, *crumbs]),
        "locale": regional(house.words["language"]),
        "other_locales": [regional(other.words["language"]) for other in house.tongues if other is not house],
        "alternates": alternates(house, page) if page.listed else [],
    }


def full_title(page: SitePage) -> str:
    """Return a page's title, with the other name that people look for."""
    return f"{page.title}, {page.known_as}" if page.known_as else page.title


def trail(house: House, page: SitePage) -> list[Crumb]:
    """Return the pages above a page, by their names in the language of the pages."""
    return [Crumb(house.named(crumb.name), crumb.url) for crumb in page.crumbs]


def own_way(house: House, page: SitePage) -> str:
    """Return the way from a page back to where its language stands.

    It is relative, so that a site may stand anywhere; but the page for addresses that lead nowhere is shown at any
    depth, so there it is the path of the public address, where that is known.
    """
    return urlsplit(house.address).path if is_lost(page) and house.address else way_up(page.url)


def shared_way(house: House, page: SitePage) -> str:
    """Return the way from a page back to where all languages stand."""
    return own_way(house.first, page) if is_lost(page) and house.address else way_up(house.root + page.url)


def is_lost(page: SitePage) -> bool:
    """Return whether a page is the one that stands for addresses that lead nowhere."""
    return not page.listed and not page.moved_to


def tongues(house: House, page: SitePage) -> list[Tongue]:
    """Return the page in each language; nothing where there is one."""
    if len(house.tongues) == 1:
        return []
    way = shared_way(house, page)
    return [
        {
            "code": other.words["language"],
            "name": name_of(other.words["language"]),
            "url": way + other.root + page.url,
            "here": other is house,
        }
        for other in house.tongues
    ]


def alternates(house: House, page: SitePage) -> list[Alternate]:
    """Return the page in each language as search engines are told, and in the first for everybody else."""
    if len(house.tongues) == 1:
        return []
    way = house.first.address or shared_way(house, page)
    told: list[Alternate] = [
        {"code": other.words["language"], "url": way + other.root + page.url} for other in house.tongues
    ]
    return [*told, {"code": "x-default", "url": way + page.url}]


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
    urls = {guide_url(name) for name in house.page_names}
    return [{"url": url, "name": house.named(name)} for url, name in SMALL_MENU if url in urls]


def frame(house: House, page: SitePage) -> Frame:
    """Return what a page's template is given beside the matter of its kind."""
    return {
        "policy": POLICY,
        "root": own_way(house, page),
        "shared": shared_way(house, page),
        "lang": house.words["language"],
        "tongues": tongues(house, page),
        "head": head(house, page),
        "kind": page.template.removesuffix(".html"),
        "trail": trail(house, page),
        "showroom": house.showroom,
        "menu": menu(house, page.url),
        "small_menu": small_menu(house),
        "logo": house.logo_markup,
    }
