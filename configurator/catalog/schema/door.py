"""A door file: a glazed leaf, a pair or a leaf with sidelights, as a site visit measures it.

What is not measured takes the preset named here; the catalog marks each such number as
assumed, so that no page shows a preset as if it were a measurement.
"""

from typing import Annotated

from configurator.catalog.schema.base import (
    Former,
    LightShare,
    Line,
    Name,
    Number,
    OneOf,
    Prose,
    Section,
    SourceMark,
    Whole,
    YesNo,
)


class Leaf(Section):
    """The leaf's own size, tape to its edges. ``thickness`` unmeasured: 44.45 mm (1 3/4 in)."""

    width: Annotated[float, Number("length", 300, 1500, "a leaf width")]
    height: Annotated[float, Number("length", 1500, 3100, "a leaf height")]
    thickness: Annotated[float, Number("length", 25, 100, "a leaf thickness")] = 44.45


class Glass(Section):
    """The glass that shows between the beads.

    ``recess`` is from the leaf's face back to the glass; unmeasured 10 mm. ``light``, ``solar``
    and ``u`` are the glazing's light and solar transmittance and its U-value; unmeasured those
    of clear uncoated double glazing: 0.80, 0.75 and 2.8 W/m2K.
    """

    width: Annotated[float, Number("length", 100, 1500, "a glass width")]
    height: Annotated[float, Number("length", 200, 3000, "a glass height")]
    recess: Annotated[float, Number("length", 0, 80, "a glass recess")] = 10.0
    type: Line = "clear double glazing"
    light: LightShare = 0.80
    solar: LightShare = 0.75
    u: Annotated[float, Number("u-value", 0.3, 6, "a U-value")] = 2.8


class Stiles(Section):
    """From the leaf's edge to the outside of the glazing bead, at the hinges and at the latch."""

    hinge: Annotated[float, Number("length", 30, 400, "a hinge stile")]
    latch: Annotated[float, Number("length", 30, 400, "a latch stile")]


class Rails(Section):
    """From the leaf's top and bottom edge to the outside of the glazing bead."""

    top: Annotated[float, Number("length", 30, 600, "a top rail")]
    bottom: Annotated[float, Number("length", 30, 2000, "a bottom rail")]


class Bead(Section):
    """The glazing bead, or the frame of a lite insert. ``projection`` is 0 mm where it lies flush."""

    width: Annotated[float, Number("length", 0, 80, "a bead width")]
    projection: Annotated[float, Number("length", 0, 40, "a bead projection")]


class Muntins(Section):
    """The bars that divide the glass. Left out: one undivided lite.

    ``projection`` is in front of the leaf's face; unmeasured 0 mm.
    """

    columns: Annotated[int, Whole(1, 12, "lites across")] = 1
    rows: Annotated[int, Whole(1, 20, "lites in height")] = 1
    width: Annotated[float, Number("length", 0, 80, "a muntin width")] = 0.0
    projection: Annotated[float, Number("length", 0, 40, "a muntin projection")] = 0.0


class Hinges(Section):
    """``side`` is that of the active leaf, seen from the room.

    ``heights`` are the hinges' middles above the finished floor; unmeasured: 7 in below the
    leaf's top, 11 in above its bottom, and halfway. ``pin`` is the pin's distance in front of
    the face to which the leaf opens; unmeasured 8 mm.
    """

    side: Annotated[str, OneOf(("left", "right"))]
    heights: list[Annotated[float, Number("length", 0, 3100, "a hinge height")]] = []
    pin: Annotated[float, Number("length", 0, 60, "a hinge pin")] = 8.0


class Gaps(Section):
    """Under the leaf, from its hinge edge to the side wall, and above it; unmeasured 10, 100 and 3 mm."""

    floor: Annotated[float, Number("length", 0, 60, "a floor gap")] = 10.0
    wall: Annotated[float, Number("length", 0, 5000, "a gap to the side wall")] = 100.0
    head: Annotated[float, Number("length", 0, 30, "a head gap")] = 3.0


class Casing(Section):
    """The trim around the opening; unmeasured 57.15 mm (2 1/4 in) wide and 17.5 mm proud."""

    width: Annotated[float, Number("length", 0, 300, "a casing width")] = 57.15
    projection: Annotated[float, Number("length", 0, 80, "a casing projection")] = 17.5


class Room(Section):
    """``ceiling`` is above the finished floor (unmeasured 2440 mm); ``reveal`` is how far the leaf
    lies behind the wall's face (unmeasured 0 mm)."""

    ceiling: Annotated[float, Number("length", 1800, 8000, "a ceiling height")] = 2440.0
    reveal: Annotated[float, Number("length", 0, 500, "a reveal")] = 0.0
    casing: Casing = Casing()


class Stop(Section):
    """How far the frame's stop laps the room face of an out-swing leaf; unmeasured 12.7 mm (1/2 in)."""

    lap: Annotated[float, Number("length", 0, 60, "a stop's lap")] = 12.7


class Astragal(Section):
    """The moulding that closes the joint of a pair; unmeasured 44 mm wide and 12 mm proud."""

    width: Annotated[float, Number("length", 0, 150, "an astragal width")] = 44.0
    projection: Annotated[float, Number("length", 0, 60, "an astragal projection")] = 12.0


class Pair(Section):
    """The joint of two leaves of one size. ``meeting_gap`` unmeasured: 3 mm."""

    meeting_gap: Annotated[float, Number("length", 0, 30, "a meeting gap")] = 3.0
    astragal: Astragal = Astragal()


class Sidelight(Section):
    """One fixed light on each side of the leaf: its whole width, and its glass."""

    width: Annotated[float, Number("length", 100, 1500, "a sidelight width")]
    glass: Annotated[float, Number("length", 50, 1400, "a sidelight glass width")]


class DoorHandle(Section):
    """Which handle, how far its axis is from the leaf's latch edge and how high above the floor.

    ``preset`` is the name of a file in ``handles/`` without its ending. ``height`` unmeasured:
    914.4 mm (36 in). ``passive`` says whether a pair's other leaf has the handle too.
    """

    preset: Name
    backset: Annotated[float, Number("length", 20, 150, "a backset")]
    height: Annotated[float, Number("length", 700, 1300, "a handle height")] = 914.4
    passive: YesNo = False


class DoorFile(Section):
    """The whole file. ``measured`` says whether it records a site visit or is a preset to start from.

    ``formerly`` are names that the file had before: links and addresses made with them lead here.
    """

    name: Name
    formerly: Former = []
    summary: Line
    description: Prose = []
    source: SourceMark
    measured: Annotated[str, OneOf(("site visit", "preset"))]
    layout: Annotated[str, OneOf(("single", "pair", "fixed-pair", "sidelights"))]
    swing: Annotated[str, OneOf(("in", "out"))]
    leaf: Leaf
    glass: Glass
    stiles: Stiles
    rails: Rails
    bead: Bead
    muntins: Muntins = Muntins()
    hinges: Hinges
    gaps: Gaps = Gaps()
    room: Room = Room()
    stop: Stop | None = None
    pair: Pair | None = None
    sidelight: Sidelight | None = None
    handle: DoorHandle
