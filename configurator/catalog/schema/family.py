"""A family file: one kind of covering that a showroom offers, its choices and the words for its pages.

``numbers`` are named as the mechanism takes them (``configurator.kernel.mechanisms``); an option's
``numbers`` set any of them anew. Which names there are depends on the mechanism, so the
catalog checks them after this schema. ``look`` is how it is drawn and what its swatches show,
``photo`` (of the family, of an option) what its pages show instead. ``also_called`` are
the names by which people know such a covering, never those of a product or its maker. ``price_level`` (1 is the
lowest), ``cleaning`` and ``animals`` (what a cat or dog that pushes through does to it) are facts that no number
tells: each has a source as a number has, and stays out where nobody can say. ``formerly`` are ids that a family
(its file's name), a choice or an option had before: links and addresses made with them lead to it.
"""

from typing import Annotated

from configurator.catalog.fields import Hex, Number
from configurator.catalog.schema.base import (
    Former,
    Ident,
    Line,
    Name,
    OneOf,
    OtherNames,
    Prose,
    Section,
    SourceMark,
    Whole,
    YesNo,
)
from configurator.catalog.schema.photograph import Photograph
from configurator.kernel.fact_words import ANIMAL_WORDS, CLEANING_WORDS, PRICE_WORDS
from configurator.kernel.looks import LUSTERS
from configurator.kernel.tongue import wording
from configurator.kernel.views.weaves import WEAVES


class CassetteFile(Section):
    """A cassette size: the largest roll it takes (its diameter) and its own section."""

    name: Name
    roll: Annotated[float, Number("length", 10, 300, wording("a roll diameter"))]
    height: Annotated[float, Number("length", 10, 300, wording("a cassette height"))]
    depth: Annotated[float, Number("length", 10, 300, wording("a cassette depth"))]


class LookFile(Section):
    """What the eye has of a material; an option's sets any part of its family's anew."""

    color: Annotated[str, Hex()] = ""
    weave: Annotated[str, OneOf(tuple(WEAVES))] = ""
    luster: Annotated[str, OneOf(tuple(LUSTERS))] = ""


class OptionFile(Section):
    """One thing a client may pick. A retired option stays readable in old links but is not offered."""

    name: Name
    formerly: Former = []
    note: Line = ""
    retired: YesNo = False
    look: LookFile = LookFile()
    photo: Photograph | None = None
    price_band: Line = ""
    numbers: dict[str, object] = {}


class ChoiceFile(Section):
    """What the client may pick; the first option is the preset."""

    name: Name
    formerly: Former = []
    note: Line = ""
    options: dict[str, OptionFile]


class FamilyFile(Section):
    """The whole file."""

    name: Name
    also_called: OtherNames = []
    formerly: Former = []
    summary: Line
    source: SourceMark
    mechanism: Ident
    look: LookFile = LookFile()
    photo: Photograph | None = None
    price_level: Annotated[int, Whole(1, len(PRICE_WORDS) - 1, wording("a price level"))] = 0
    cleaning: Annotated[str, OneOf(tuple(CLEANING_WORDS))] = ""
    animals: Annotated[str, OneOf(tuple(ANIMAL_WORDS))] = ""
    retired: YesNo = False
    description: Prose
    moves: Prose
    good_at: Prose
    bad_at: Prose
    care: Prose
    safety: Prose
    numbers: dict[str, object]
    cassettes: list[CassetteFile] = []
    choices: dict[str, ChoiceFile]
