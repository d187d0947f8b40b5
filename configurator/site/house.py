"""What every page is made from: the catalog, the answers already worked out, and the site's own frame."""

from collections.abc import Callable, Iterable
from functools import cached_property
from pathlib import Path
from typing import Any

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import encode
from configurator.browser.link.shapes import Stock
from configurator.browser.link.state import fresh_configuration, fresh_state
from configurator.catalog import Catalog
from configurator.catalog.schema.showroom import Showroom
from configurator.drawing import room
from configurator.drawing.photo import widths_of
from configurator.kernel.answer import ask, ruled_out
from configurator.kernel.message import ENGLISH, say
from configurator.kernel.shapes import Answer, Door, Family, Message
from configurator.site import schema
from configurator.site.answers import Answers, Kept, digest
from configurator.site.guides import is_guide
from configurator.site.photos import Photo, logo_markup, photographs
from configurator.site.sitepage import SitePage, way_up
from configurator.site.themes import template_folders, theme_opens_with

MENU = (
    ("coverings/index.html", "Coverings", "coverings/"),
    ("doors/index.html", "Doors", "doors/"),
    ("measure.html", "Measure", "measure.html"),
    ("guides/index.html", "Guides", "guides/"),
    ("try.html", "Your door", "try.html"),
)
SMALL_MENU = (
    {"url": "guides/safety-for-children.html", "name": "Safety for children"},
    {"url": "imprint.html", "name": "Imprint"},
    {"url": "privacy.html", "name": "Privacy"},
)
ROOM = "room"
OWN_CARD = "cards/showroom.png"


class House:
    """The showroom with everything that its pages share. Retired families get no pages."""

    def __init__(self, catalog: Catalog, content: Path, answers: Answers) -> None:
        self.catalog = catalog
        self.content = content
        self.answers = answers
        self.markdown: dict[str, SitePage] = {}
        self.doors: list[Door] = list(catalog.doors.values())
        self.families: list[Family] = [family for family in catalog.families.values() if not family["retired"]]
        self._stamps = {
            id(thing): digest(thing) for thing in [*self.doors, *catalog.families.values(), catalog.household]
        }
        notes = [*catalog.door_notes.values(), *catalog.family_notes.values()]
        self._stamps |= {id(note): digest(repr(note)) for note in notes}

    @property
    def showroom(self) -> Showroom:
        """The showroom's own file."""
        return self.catalog.showroom

    @property
    def units(self) -> str:
        """``in`` or ``mm``."""
        return self.showroom.units

    @property
    def address(self) -> str:
        """The public address with a closing slash, or nothing while it is not known."""
        written = self.showroom.public_address
        return written.rstrip("/") + "/" if written else ""

    @property
    def guides(self) -> list[SitePage]:
        """The guides among the Markdown pages, by their names."""
        return [page for page in self.markdown.values() if is_guide(page.url)]

    @property
    def logo(self) -> Path | None:
        """The showroom's logo, where it has one."""
        written = self.showroom.theme.logo
        return self.content / written if written else None

    @cached_property
    def logo_markup(self) -> str:
        """The logo as it stands in the masthead; nothing leaves it to the theme."""
        return logo_markup(self.logo, self.showroom.theme.colours) if self.logo else ""

    @cached_property
    def photos(self) -> dict[str, Photo]:
        """The photographs in the content's folder of pictures, by name."""
        return photographs(self.content / "pictures")

    @property
    def paints_room(self) -> bool:
        """Whether the theme opens with a room and the showroom has no photograph of its own for that."""
        return theme_opens_with(self.showroom.theme.name) == ROOM and ROOM not in self.photos

    @property
    def hero_photo(self) -> dict[str, Any] | None:
        """The picture that the first page opens with: its name, its widths and its size; None for a drawing."""
        if theme_opens_with(self.showroom.theme.name) != ROOM:
            return None
        own = self.photos.get(ROOM)
        width, height = (own.width, own.height) if own else (room.WIDTH, room.HEIGHT)
        return {"name": ROOM, "widths": widths_of(width), "width": width, "height": height}

    @property
    def templates(self) -> list[Path]:
        """The template folders, in the order of precedence."""
        return template_folders(self.showroom.theme.name)

    def once(self, make: Callable[[], Kept], *inputs: object) -> Kept:
        """Return what ``make`` gives, from memory when the same inputs came before."""
        return self.answers.once(make, *self.stamped(inputs))

    def stamped(self, inputs: Iterable[object]) -> list[object]:
        """Return inputs with what many of them name by its digest, which is worked out once a build."""
        return [self._stamps.get(id(part), part) for part in inputs]

    def page_key(self, page: SitePage) -> str:
        """Return what a page that names its inputs is kept under."""
        return digest(page.url, self.face, *self.stamped(page.inputs))

    @cached_property
    def face(self) -> str:
        """A digest of what every page shows beside its own matter: the showroom, the lists and the templates."""
        files = [path for folder in self.templates for path in sorted(folder.rglob("*.html"))]
        stamps = [[str(path), path.stat().st_mtime_ns] for path in files]
        names = [[thing["id"], thing["name"]] for thing in [*self.doors, *self.families]]
        return digest(repr(self.showroom), names, stamps, self.logo_markup)

    def answer(self, door: Door, family: Family) -> Answer:
        """Return the answer for a family with its preset choices on a door."""
        household = self.catalog.household
        return self.once(lambda: ask(door, family, {}, household), "ask", door, family, household)

    def say(self, told: Message) -> str:
        """Return what the kernel tells as it reads on this showroom's pages; nothing where it is silent."""
        return say(told, ENGLISH, self.units)

    def ruled_out(self, door: Door, family: Family) -> dict[str, dict[str, Message]]:
        """Return the options that the door rules out, with the reason: choice id to option id to reason."""
        return self.once(lambda: ruled_out(door, family, {}), "ruled out", door, family)

    def door_name(self, door: Door) -> str:
        """Return a door's name as it stands in the middle of a sentence."""
        return f"the {door['name'][0].lower()}{door['name'][1:]}"

    def try_url(self, door: Door, family: Family | None) -> str:
        """Return the address of the configurator with a door, and with a family closed on it."""
        stock = self.stock
        chosen = family or self.families[0]
        state = fresh_state(stock)
        state["configurations"] = [fresh_configuration(stock, door["id"], chosen["id"])]
        state["configurations"][0]["place"] = self.answer(door, chosen)["closed"]
        return f"try.html#{encode(state, stock)}"

    @cached_property
    def stock(self) -> Stock:
        """What links to the configurator refer to."""
        return page_catalog(self.catalog)

    def head(self, page: SitePage) -> dict[str, Any]:
        """Return what a page says of itself to browsers and search engines."""
        card = page.card or OWN_CARD
        crumbs = schema.breadcrumbs(page.crumbs, page.title, page.url, self.address)
        name = self.showroom.name
        return {
            "title": name if page.url == "index.html" else f"{page.title} · {name}",
            "description": page.description,
            "canonical": self.address + page.url if self.address and page.listed else "",
            "card": (self.address or way_up(page.url)) + card,
            "listed": page.listed,
            "schema": schema.script_text([*page.schema, crumbs]),
        }

    @property
    def small_menu(self) -> list[dict[str, str]]:
        """The menu at a page's foot, of those Markdown pages that the content has."""
        urls = {page.url for page in self.markdown.values()}
        return [entry for entry in SMALL_MENU if entry["url"] in urls]

    def menu(self, url: str) -> list[dict[str, Any]]:
        """Return the main menu as it stands on a page."""
        return [
            {
                "url": to,
                "name": name,
                "lead": to == "try.html",
                "here": "page" if url == to else "true" if url.startswith(under) else "",
            }
            for to, name, under in MENU
        ]

    def common(self, page: SitePage) -> dict[str, Any]:
        """Return what every template is given."""
        return {
            "root": way_up(page.url),
            "head": self.head(page),
            "kind": page.template.removesuffix(".html"),
            "trail": page.crumbs,
            "showroom": self.showroom,
            "menu": self.menu(page.url),
            "small_menu": self.small_menu,
            "logo": self.logo_markup,
        }
