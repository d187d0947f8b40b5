"""A handle file: a preset of door hardware, measured from its axis.

Its numbers stand in the kernel's table of what a tape takes, but for the grip's, whose names hang on its kind.
"""

from typing import Annotated

from configurator.catalog.schema.base import Former, Line, Name, Number, OneOf, Section, SourceMark
from configurator.catalog.schema.from_table import with_numbers
from configurator.kernel.tongue import wording


class Grip(Section):
    """What the hand takes.

    A lever: ``length`` from the axis to its tip, and ``height``. A knob: ``diameter``.
    A pull: ``width`` and ``height``. What the kind does not use stays out.
    """

    length: Annotated[float, Number("length", 10, 300, wording("a lever length"))] | None = None
    height: Annotated[float, Number("length", 5, 1200, wording("a grip height"))] | None = None
    diameter: Annotated[float, Number("length", 20, 100, wording("a knob diameter"))] | None = None
    width: Annotated[float, Number("length", 5, 200, wording("a pull width"))] | None = None


class HandleWords(Section):
    """All but the numbers, and the grip.

    Of the numbers, ``gap`` is the free depth between the leaf's face and the back of the grip, ``projection``
    reaches to the front of the grip. ``plate`` is the plate, rose or foot on the leaf, its middle ``below`` the
    axis. ``neck`` is the diameter of what carries the grip (for a pull: the height of each post). ``turn`` is a
    thumb-turn or deadbolt ``above`` the axis. ``formerly`` are names that the file had before: links
    made with them find it.
    """

    name: Name
    formerly: Former = []
    summary: Line
    source: SourceMark
    kind: Annotated[str, OneOf(("lever", "knob", "pull"))]
    grip: Grip


# The whole file.
HandleFile: type[HandleWords] = with_numbers(HandleWords, "handle")
