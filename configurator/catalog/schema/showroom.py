"""``showroom.yaml``: who shows the coverings, how to reach them, and the face of the site."""

from typing import Annotated

import pydantic

from configurator.catalog.fields import Hex, Like, Number
from configurator.catalog.schema.base import Constant, Ident, Language, Line, Name, OneOf, Section, SourceMark
from configurator.catalog.schema.from_table import with_numbers
from configurator.catalog.schema.photograph import Photograph
from configurator.catalog.schema.quote_terms import QuoteTerms
from configurator.kernel.tongue import wording
from configurator.places import THEMES

# What a theme says of each stands in its tokens.yaml: the first two are the site's own, the others the reader's.
TYPEFACES = ("serif", "sans", "rounded", "mono")

THEME_NAMES = tuple(sorted(path.parent.name for path in THEMES.glob("*/tokens.yaml")))

# Unless the showroom says otherwise: what its tape shows (common practice, no source), mm.
ORDER_STEPS = {"in": 25.4 / 8, "mm": 1.0}

Face = Annotated[str, OneOf(TYPEFACES)]


class Hours(Section):
    """One line of opening hours, as it should be read."""

    days: Line
    time: Line


class Contact(Section):
    """How to reach the showroom, as far as it says: pages leave out the rest. ``address`` is a list of lines."""

    telephone: Annotated[
        str, Like(r"\+?[\d(][\d\s()./-]*\d[\d\s()./-]*\d", wording("a telephone number"), "(555) 555-0142")
    ] = ""
    mail: Annotated[str, Like(r"[^\s@]+@[^\s@]+", wording("a mail address"), "hello@showroom.example")] = ""
    address: list[Constant] = []
    hours: list[Hours] = []

    @property
    def told(self) -> bool:
        """Whether there is any way to reach the showroom."""
        return bool(self.telephone or self.mail or self.address or self.hours)


class Home(Section):
    """Who lives behind the door and who looks in, until a client says otherwise: nothing but numbers, which stand in
    the kernel's table of what a tape takes."""


class Colors(Section):
    """Paper and ink, one warm and one cool accent. All must be readable on the paper and the grounds mixed from it."""

    paper: Annotated[str, Hex()]
    ink: Annotated[str, Hex()]
    warm: Annotated[str, Hex()]
    cool: Annotated[str, Hex()]


class Typefaces(Section):
    """Which typeface each kind of text takes."""

    text: Face = "serif"
    headings: Face = "serif"
    figures: Face = "sans"


class Theme(Section):
    """``colors`` by day and ``dark`` by night; ``logo`` is a file in the content folder."""

    name: Annotated[str, OneOf(THEME_NAMES)]
    colors: Colors
    dark: Colors
    typefaces: Typefaces = Typefaces()
    corner_radius: Annotated[float, Number("radius", 0, 40, wording("a corner radius"))] = 0.0
    logo: Constant = ""


def usual_order_step(read: dict[str, object]) -> float:
    """Return the order step of a showroom that gives none, from what has been read of its file before."""
    return ORDER_STEPS[str(read.get("units", "in"))]


class Showroom(Section):
    """All but the household's numbers. ``public_address`` is where the site will stand, when that is known.

    ``language`` is the one language of the site; ``languages`` are its languages where there are several, first the one
    that stands at its root. :attr:`tongues` reads either.

    ``first_door`` is the one that the configurator opens with, the commonest. ``photo`` is what the first page
    opens with; left out, a room is painted. ``order_step`` is the step in which sizes are ordered, of every family
    that does not give its own. ``quote`` are the terms of its quotes, where it has price books.
    """

    name: Name
    strapline: Line
    source: SourceMark
    contact: Contact = Contact()
    public_address: Annotated[
        str, Like(r"https?://[^\s/]+(/\S*)?", wording("an address"), "https://showroom.example/")
    ] = ""
    units: Annotated[str, OneOf(("in", "mm"))]
    order_step: Annotated[float, Number("length", 0.5, 50, wording("an order step"))] = pydantic.Field(
        default_factory=usual_order_step
    )
    household: Home
    first_door: Ident = ""
    quote: QuoteTerms | None = None
    photo: Photograph | None = None
    theme: Theme
    language: Language = "en"
    languages: list[Language] = []

    @property
    def tongues(self) -> list[str]:
        """The codes of the site's languages; the first is that of its root."""
        return self.languages or [self.language]


# The whole file.
ShowroomFile: type[Showroom] = with_numbers(Showroom, "household")
