"""What every page is made from: the catalog, the answers already worked out, and the site's own frame."""

from collections.abc import Callable, Iterable
from functools import cached_property
from pathlib import Path
from typing import TypedDict, cast

import jinja2

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link.encode import encode_answered
from configurator.browser.link.shapes import Stock
from configurator.browser.link.state import FRESH_STEP, LINKED_STEP, fresh_configuration, fresh_state
from configurator.catalog import Catalog, load
from configurator.catalog.schema.showroom import Showroom
from configurator.catalog.sources import Source
from configurator.kernel.answer import ruled_out_beside
from configurator.kernel.message import say, say_phrase
from configurator.kernel.mount.hung import hung
from configurator.kernel.remedy.fixes import fixes_found, picks_told, searched
from configurator.kernel.shapes import Answer, Door, Family, Fit, Fix, Message
from configurator.kernel.tongue import Words, in_words
from configurator.kernel.views.words import covering_words
from configurator.site.answers import Answers, Kept, digest
from configurator.site.face.photos import Photo, logo_markup, photographs
from configurator.site.face.site_palette import Tokens
from configurator.site.face.templates import environment
from configurator.site.face.themes import day_colors, template_folders
from configurator.site.site_page import SitePage

Terms = dict[str, list[float | str]]
OWN_CARD = "cards/showroom.png"


class Told(TypedDict):
    """What is told of a family with its preset choices on a door, and what comes of other picks: what mends what does
    not clear, and the options that are ruled out, by choice, with the reason."""

    answer: Answer
    fixes: list[Fix]
    ruled_out: dict[str, dict[str, Message]]


class House:
    """The showroom in one language with everything that its pages share. Retired families get no pages.

    ``tongues`` are the houses of all its languages; that of the ``first`` stands at the site's root, each other one
    under ``root``. What holds no words stands once, under the first.
    """

    def __init__(self, catalog: Catalog, content: Path, answers: Answers, first: "House | None" = None) -> None:
        self.first = first or self
        self.tongues: list[House] = [*first.tongues, self] if first else [self]
        self.first.tongues = self.tongues
        self.root = f"{catalog.words['language']}/" if first else ""
        self.own_cards: set[str] = set()
        self.catalog = catalog
        self.content = content
        self.answers = answers
        self.markdown: dict[str, SitePage] = {}
        self._here: dict[str, object] = {}
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
    def words(self) -> Words:
        """The language of the pages."""
        return self.catalog.words

    @property
    def address(self) -> str:
        """The public address of this language with a closing slash, or nothing while it is not known."""
        written = self.showroom.public_address
        return f"{written.rstrip('/')}/{self.root}" if written else ""

    def card_root(self, card: str) -> str:
        """Return under which path a link preview stands: one that holds no words is the first language's."""
        return self.root if card in self.own_cards else ""

    def tell(self, text: str) -> str:
        """Return a text of the content in the language."""
        return self.catalog.translations.get(text, text)

    def alike(self, door: Door, family: Family) -> tuple[Door, Family]:
        """Return a door and a family as the first language has them: what is worked out of them serves all."""
        if self is self.first:
            return door, family
        catalog = self.first.catalog
        return catalog.doors[door["id"]], catalog.families[family["id"]]

    @cached_property
    def tongue(self) -> str:
        """A digest of the language."""
        return digest(self.words)

    @property
    def logo(self) -> Path | None:
        """The showroom's logo, where it has one."""
        written = self.showroom.theme.logo
        return self.content / written if written else None

    @cached_property
    def logo_markup(self) -> str:
        """The logo as it stands in the masthead; nothing leaves it to the theme."""
        return logo_markup(self.logo, self.showroom.theme.colors) if self.logo else ""

    @cached_property
    def colors(self) -> Tokens:
        """The colors of the site by day, by name."""
        return day_colors(self.showroom.theme)

    @cached_property
    def photos(self) -> dict[str, Photo]:
        """The photographs in the content's folder of pictures, by the names of their files."""
        return photographs(self.content)

    @property
    def templates(self) -> list[Path]:
        """The template folders, in the order of precedence."""
        return template_folders(self.showroom.theme.name)

    @cached_property
    def environment(self) -> jinja2.Environment:
        """The environment in which the pages' templates are filled in."""
        return environment(self.templates, self.words, self.units)

    @cached_property
    def page_names(self) -> list[str]:
        """The names of the content's Markdown pages, known before MkDocs has found their files."""
        return sorted(page.stem for page in self.catalog.pages)

    def once(self, make: Callable[[], Kept], *inputs: object) -> Kept:
        """Return what ``make`` gives, from memory when the same inputs came before in this language."""
        return self.answers.once(make, self.tongue, self.units, *self.stamped([self.catalog.household, *inputs]))

    def here(self, make: Callable[[], Kept], *inputs: object) -> Kept:
        """Return what ``make`` gives, from memory that stays with this house and is sent to no other process.

        What drawings are made from is larger than they are, and sooner worked out again than sent.
        """
        key = digest(*self.stamped(inputs))
        if key not in self._here:
            self._here[key] = make()
        return cast(Kept, self._here[key])

    def stamped(self, inputs: Iterable[object]) -> list[object]:
        """Return inputs with what many of them name by its digest, which is worked out once a build."""
        return [self._stamps.get(id(part), part) for part in inputs]

    def page_key(self, page: SitePage) -> str:
        """Return what a page that names its inputs is kept under."""
        card = self.card_root(page.card)
        return digest(page.url, self.face, self.tongue, card, *self.stamped(page.inputs))

    @cached_property
    def face(self) -> str:
        """A digest of what every page shows beside its own matter: the showroom, the lists and the templates."""
        files = [path for folder in self.templates for path in sorted(folder.rglob("*.html"))]
        stamps = [[path.name, path.read_text(encoding="utf-8")] for path in files]
        names = [[thing["id"], thing["name"]] for thing in [*self.doors, *self.families]]
        photos = [[photo.name, photo.width, photo.height] for photo in self.photos.values()]
        stock = [self.catalog.handles, self.catalog.formerly, repr(self.catalog.prices), photos]
        return digest(repr(self.showroom), names, stock, self.page_names, stamps, self.logo_markup)

    def hung(self, door: Door, family: Family) -> Fit:
        """Return a family with its preset choices, hung on a door."""
        return self.here(lambda: hung(door, family, {}), "hung", door, family)

    def answer(self, door: Door, family: Family) -> Answer:
        """Return the answer for a family with its preset choices on a door."""
        return self.told(door, family)["answer"]

    def say(self, told: Message) -> str:
        """Return what the kernel tells as it reads on this showroom's pages; nothing where it is silent."""
        return say(told, self.words, self.units)

    def on_door(self, door: Door, family: Family) -> str:
        """Return a family on a door, by name."""
        return self.phrase(covering_words({"family": family["name"], "door": door["name"], "place": ""}))

    def phrase(self, told: Message) -> str:
        """Return what is told as it reads within a sentence."""
        return say_phrase(told, self.words, self.units)

    def source(self, source: Source) -> str:
        """Return where a number comes from, in words."""
        return source.said(self.words)

    def named(self, text: str) -> str:
        """Return what words of the kernel's or a table's are in the language of the pages."""
        return in_words(text, self.words)

    def ruled_out(self, door: Door, family: Family) -> dict[str, dict[str, Message]]:
        """Return the options that the door rules out, with the reason: choice id to option id to reason."""
        return self.told(door, family)["ruled_out"]

    def fixes(self, door: Door, family: Family) -> list[Fix]:
        """Return what mends what does not clear of a family with its preset choices on a door."""
        return self.told(door, family)["fixes"]

    def told(self, door: Door, family: Family) -> Told:
        """Return all that is told of a family on a door, which is asked in one go: what mends is sought from what was
        asked, and finds on its way what is ruled out."""
        household = self.first.catalog.household
        door, family = self.alike(door, family)

        def made() -> Told:
            fit = self.first.hung(door, family)
            search = searched(fit, household)
            return {
                "answer": search["first"]["answer"],
                "fixes": fixes_found(search),
                "ruled_out": ruled_out_beside(fit, picks_told(search)),
            }

        return self.first.once(made, "told", door, family, household)

    def try_url(self, door: Door, family: Family | None) -> str:
        """Return the address of the configurator with a family closed on a door, or with all coverings on it."""
        stock = self.stock
        chosen = family or self.families[0]
        state = fresh_state(stock)
        state["step"] = LINKED_STEP if family else FRESH_STEP
        state["configurations"] = [fresh_configuration(stock, door["id"], chosen["id"])]
        answer = self.answer(door, chosen)
        state["configurations"][0]["place"] = answer["closed"]
        return f"try.html#{encode_answered(state, [answer], stock)}"

    @cached_property
    def stock(self) -> Stock:
        """What links to the configurator refer to."""
        return page_catalog(self.catalog)


def open_houses(content: Path, answers: Answers) -> House:
    """Return the showroom in its first language, with those of its further languages among its ``tongues``.

    :raises configurator.catalog.ContentProblems: with every problem of the content
    """
    first = House(load(content), content, answers)
    for language in first.showroom.tongues[1:]:
        House(load(content, language), content, answers, first)
    for house in first.tongues:
        house.tongues = first.tongues
    return first
