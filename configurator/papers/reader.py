"""Who reads a paper: in which language, in which units, on which sheet."""

from typing import NamedTuple

from configurator.kernel.message import message, say, say_phrase
from configurator.kernel.papers.blocks import Column, Row
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import Words
from configurator.kernel.typeset import typeset

# The sheet that goes with the units, where none is asked for.
SHEETS = {"in": "letter", "mm": "a4"}
# The line to lay a ruler on, mm.
RULE_LENGTH = {"in": 101.6, "mm": 100.0}


class Reader(NamedTuple):
    """The language's words, ``in`` or ``mm``, and ``letter`` or ``a4``."""

    words: Words
    units: str
    sheet: str

    def says(self, given: Message) -> str:
        """Return what a message says to this reader, as data hold it."""
        return say(given, self.words, self.units)

    def phrase(self, given: Message) -> str:
        """Return the same as it stands, without a capital."""
        return say_phrase(given, self.words, self.units)

    def told(self, given: Message) -> str:
        """Return what a message says, as paper sets it."""
        return typeset(self.says(given))

    def sum(self, given: Message) -> str:
        """Return arithmetic as it stands, as paper sets it."""
        return typeset(self.phrase(given))

    def cells(self, row: Row, columns: list[Column]) -> list[str]:
        """Return what a row's cells say; arithmetic is told as it stands."""
        return [
            self.sum(cell) if column["side"] == "sum" else self.told(cell)
            for cell, column in zip(row["cells"], columns, strict=True)
        ]


def rule_words(reader: Reader) -> Message:
    """Return what stands under the line to lay a ruler on: no printer is trusted to keep the scale."""
    return message("This line is {length} long when the scale is true.", {"length": [RULE_LENGTH[reader.units], "mm"]})
