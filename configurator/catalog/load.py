"""What a content folder says, read and checked whole."""

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from configurator.kernel.shapes import Door, Family, Handle, Household
from configurator.kernel.tongue import Words
from configurator.kernel.visit.visit_shapes import Visit

if TYPE_CHECKING:
    from configurator.catalog.former_ids import FormerIds
    from configurator.catalog.notes import DoorNotes, FamilyNotes, HandleNotes
    from configurator.catalog.pricing import Pricing
    from configurator.catalog.schema.showroom import Showroom
    from configurator.catalog.texts import ContentText, Translations


@dataclass(frozen=True)
class Reading:
    """What the kernel and a terminal need of a showroom's content, by file name: plain data, whatever it was read with.

    ``words`` is the language that the content is read in, ``units`` are ``in`` or ``mm``. ``formerly`` gives today's id
    by what had another, as links look it up.
    """

    folder: Path
    units: str
    household: Household
    handles: dict[str, Handle]
    doors: dict[str, Door]
    families: dict[str, Family]
    words: Words
    formerly: "FormerIds"


@dataclass(frozen=True)
class Catalog(Reading):
    """Everything a showroom's content says: kernel shapes beside the words for pages.

    ``translations`` are what the content itself translates into its language. ``texts`` are all that the content says,
    as it stands there. ``prices`` are there where the showroom writes quotes and everything was asked for.
    ``visits`` are its examples by the names of their files.
    """

    showroom: "Showroom"
    handle_notes: "dict[str, HandleNotes]"
    door_notes: "dict[str, DoorNotes]"
    family_notes: "dict[str, FamilyNotes]"
    pages: list[Path]
    translations: "Translations"
    texts: "list[ContentText]"
    prices: "Pricing | None"
    visits: dict[str, Visit]


class Wanted(NamedTuple):
    """The door and the family that alone are asked about, by their ids."""

    door: str
    family: str


def load(folder: Path, language: str | None = None, wanted: Wanted | None = None) -> Catalog:
    """Read a content folder in a language, or in the first of its own.

    Of what is ``wanted`` nothing else is read than it needs; where there is no such door or family, all of them are.

    :raises configurator.catalog.ContentProblems: with every problem of every file that is read
    :raises ValueError: where there is no such language
    """
    # The schema is slow to load; who is given what was read before does not wait for it.
    from configurator.catalog.loading import loaded

    return loaded(folder, language, wanted)
