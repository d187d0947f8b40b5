"""A handle file: a preset of door hardware, measured from its axis."""

from typing import Annotated

from configurator.catalog.schema.base import Former, Line, Name, Number, OneOf, Section, SourceMark


class Grip(Section):
    """What the hand takes.

    A lever: ``length`` from the axis to its tip, and ``height``. A knob: ``diameter``.
    A pull: ``width`` and ``height``. What the kind does not use stays out.
    """

    length: Annotated[float, Number("length", 10, 300, "a lever length")] | None = None
    height: Annotated[float, Number("length", 5, 1200, "a grip height")] | None = None
    diameter: Annotated[float, Number("length", 20, 100, "a knob diameter")] | None = None
    width: Annotated[float, Number("length", 5, 200, "a pull width")] | None = None


class Plate(Section):
    """The plate, rose or foot on the leaf; ``below``: how far its middle is under the axis (0 mm if left out)."""

    width: Annotated[float, Number("length", 5, 200, "a plate width")]
    height: Annotated[float, Number("length", 5, 1200, "a plate height")]
    thickness: Annotated[float, Number("length", 0, 40, "a plate thickness")]
    below: Annotated[float, Number("length", -400, 400, "a plate's place")] = 0.0


class Turn(Section):
    """A thumb-turn or deadbolt above the axis: how far above, its outline and its projection."""

    above: Annotated[float, Number("length", 20, 400, "a thumb-turn's place")]
    width: Annotated[float, Number("length", 5, 120, "a thumb-turn width")]
    height: Annotated[float, Number("length", 5, 120, "a thumb-turn height")]
    projection: Annotated[float, Number("length", 2, 120, "a thumb-turn projection")]


class HandleFile(Section):
    """The whole file.

    ``gap`` is the free depth between the leaf's face and the back of the grip, ``projection``
    reaches to the front of the grip. ``neck`` is the diameter of what carries the grip (for a
    pull: the height of each post). ``formerly`` are names that the file had before: links made with them find it.
    """

    name: Name
    formerly: Former = []
    summary: Line
    source: SourceMark
    kind: Annotated[str, OneOf(("lever", "knob", "pull"))]
    grip: Grip
    gap: Annotated[float, Number("length", 1, 150, "a free gap")]
    projection: Annotated[float, Number("length", 5, 200, "a projection")]
    plate: Plate
    neck: Annotated[float, Number("length", 3, 80, "a neck")]
    turn: Turn | None = None
