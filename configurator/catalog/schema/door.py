"""A door file: a glazed leaf, a pair or a leaf with sidelights, as a site visit measures it.

Its words stand here, its numbers in the kernel's table of what a tape takes (``configurator/kernel/tape/``).
What is not measured takes the preset named there; the catalog marks each such number as
assumed, so that no page shows a preset as if it were a measurement.
"""

from typing import Annotated

from configurator.catalog.fields import Number
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
    YesNo,
)
from configurator.catalog.schema.from_table import with_numbers
from configurator.catalog.schema.photograph import Photograph
from configurator.kernel.tape.leaf_fields import HINGE_LIMITS
from configurator.kernel.tape.table import DOOR_WORDS
from configurator.kernel.tongue import wording

Layout = Annotated[str, OneOf(tuple(DOOR_WORDS["layout"]["options"]))]
Swing = Annotated[str, OneOf(tuple(DOOR_WORDS["swing"]["options"]))]
Side = Annotated[str, OneOf(tuple(DOOR_WORDS["hinge_side"]["options"]))]
HingeHeight = Annotated[float, Number("length", HINGE_LIMITS[0], HINGE_LIMITS[1], wording("a hinge height"))]


class Leaf(Section):
    """The leaf's own size, tape to its edges, which its parts must add up to."""

    width: Annotated[float, Number("length", 300, 1500, wording("a leaf width"))]
    height: Annotated[float, Number("length", 1500, 3100, wording("a leaf height"))]


class Glass(Section):
    """The glass that shows between the beads."""

    type: Line = wording("clear double glazing")


class Hinges(Section):
    """``side`` is that of the active leaf, seen from the room.

    ``heights`` are the hinges' middles above the finished floor; unmeasured: 7 in below the
    leaf's top, 11 in above its bottom, and halfway.
    """

    side: Side
    heights: list[HingeHeight] = []


class DoorHandle(Section):
    """``preset`` is the name of a file in ``handles/`` without its ending.

    ``passive`` says whether a pair's other leaf has the handle too.
    """

    preset: Ident
    passive: YesNo = False


class DoorWords(Section):
    """All but the numbers. ``measured`` says whether it records a site visit or is a preset to start from.

    ``also_called`` are the names by which people know such a door; ``formerly`` are names that the file
    had before: links and addresses made with them lead here.
    """

    name: Name
    also_called: OtherNames = []
    formerly: Former = []
    summary: Line
    description: Prose = []
    photo: Photograph | None = None
    source: SourceMark
    measured: Annotated[str, OneOf(("site visit", "preset"))]
    layout: Layout
    swing: Swing
    leaf: Leaf
    glass: Glass
    hinges: Hinges
    handle: DoorHandle


# The whole file.
DoorFile: type[DoorWords] = with_numbers(DoorWords, "door")
