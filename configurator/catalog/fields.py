"""The kinds of value that a content file may hold, as markers for the pydantic models.

Each marker reads what was written into what the program needs, or raises :class:`Slip` with what to
write instead: ``a glass width … is expected``.
"""

import re
from abc import ABC, abstractmethod
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any, ClassVar

from pydantic import GetCoreSchemaHandler
from pydantic_core import core_schema

from configurator.catalog.clauses import Slip, Term, listed
from configurator.catalog.contrast import EXPECTED as COLOR_EXPECTED
from configurator.catalog.contrast import read_color
from configurator.catalog.length_advice import units_of
from configurator.catalog.located import KeyPath
from configurator.catalog.suggest import did_you_mean, nearest
from configurator.catalog.units import EXPECTED, READERS, SPELLED
from configurator.kernel.lengths import drawn_in
from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Message

# Gives what stands in place of a text that stands at a path.
Tell = Callable[[str, KeyPath], str]


class Field(ABC):
    """A marker in ``Annotated[type, marker]``; ``expected`` says what to write, ``is_text`` if it is translated."""

    is_text: ClassVar[bool] = False

    @property
    @abstractmethod
    def expected(self) -> Message:
        """Return ``a … is expected``."""

    @abstractmethod
    def read(self, text: str) -> Any:
        """Return the value of a written text.

        :raises Slip: with what to write
        """

    def checked(self, written: object) -> Any:
        """Return the value of whatever was written.

        :raises Slip: with what to write
        """
        if not isinstance(written, str):
            raise Slip(self.expected)
        return self.read(written)

    def told(self, value: Any, path: KeyPath, tell: Tell) -> Any:
        """Return a value with its texts told anew; one that holds no text is the same in every language."""
        return value

    def __get_pydantic_core_schema__(self, source: Any, handler: GetCoreSchemaHandler) -> core_schema.CoreSchema:
        return core_schema.no_info_plain_validator_function(self.checked)


@dataclass(frozen=True)
class Number(Field):
    """A number in a unit that :mod:`units` reads, between two limits."""

    unit: str
    low: float
    high: float
    what: str

    @property
    def expected(self) -> Message:
        return plain(EXPECTED[self.unit])

    def read(self, text: str) -> float:
        value = READERS[self.unit](text)
        if not self.low <= value <= self.high:
            raise self.out_of_limits(units_of(text))
        return value

    def out_of_limits(self, units: str) -> Slip:
        """Return what tells the limits, lengths in ``units``, all else as content writes it."""
        if self.unit == "length":
            low, high = drawn_in([self.low, self.high], units)
            terms: dict[str, Term] = {"least": [low, "mm"], "most": [high, "mm"]}
        else:
            spelled = SPELLED[self.unit]
            terms = {"least": [f"{self.low:g}{spelled}", "name"], "most": [f"{self.high:g}{spelled}", "name"]}
        terms["what"] = [self.what, "text"]
        return Slip(message("{what} between {least} and {most} is expected", terms), units=units)


@dataclass(frozen=True)
class Whole(Field):
    """A whole number between two limits."""

    low: int
    high: int
    what: str

    @property
    def expected(self) -> Message:
        terms: dict[str, Term] = {
            "what": [self.what, "text"],
            "least": [self.low, "count"],
            "most": [self.high, "count"],
        }
        return message("{what}, a whole number between {least} and {most}, is expected", terms)

    def read(self, text: str) -> int:
        if not text.isascii() or not text.isdecimal() or not self.low <= int(text[:9]) <= self.high:
            raise Slip(self.expected)
        return int(text)


@dataclass(frozen=True)
class Text(Field):
    """A line of text, which a language may tell otherwise."""

    is_text = True
    what: str

    @property
    def expected(self) -> Message:
        return message("{what} is expected", {"what": [self.what, "text"]})

    def read(self, text: str) -> str:
        return " ".join(text.split())

    def told(self, value: str, path: KeyPath, tell: Tell) -> str:
        return tell(value, path)


class Fixed(Text):
    """A line that is the same in every language: an id, a file's name, a telephone number."""

    is_text = False

    def told(self, value: str, path: KeyPath, tell: Tell) -> str:
        return value


@dataclass(frozen=True)
class Code(Field):
    """A language's code."""

    @property
    def expected(self) -> Message:
        return plain("a language's code such as en, es or en-GB is expected")

    def read(self, text: str) -> str:
        # What is known of languages is slow to load, and most content names none.
        from configurator.tongues.speech import code_of, locale_of

        try:
            code = code_of(locale_of(text.replace("_", "-")))
        except ValueError:
            raise Slip(self.expected) from None
        if code != text:
            raise Slip(self.expected, did_you_mean(code))
        return text


@dataclass(frozen=True)
class Like(Field):
    """A text of a certain form, of which ``example`` is one."""

    pattern: str
    what: str
    example: str

    @property
    def expected(self) -> Message:
        terms: dict[str, Term] = {"what": [self.what, "text"], "example": [self.example, "name"]}
        return message("{what} such as {example} is expected", terms)

    def read(self, text: str) -> str:
        if not re.fullmatch(self.pattern, text):
            raise Slip(self.expected)
        return text


@dataclass(frozen=True)
class Paragraphs(Field):
    """One or more paragraphs: a list, or a text with blank lines between them."""

    is_text = True
    what: str

    @property
    def expected(self) -> Message:
        terms: dict[str, Term] = {"what": [self.what, "text"]}
        return message("{what} in words is expected: a text, or a list of texts", terms)

    def read(self, text: str) -> list[str]:
        return [" ".join(part.split()) for part in text.split("\n\n") if part.strip()]

    def checked(self, written: object) -> Any:
        if isinstance(written, list) and all(isinstance(item, str) for item in written):
            return [" ".join(item.split()) for item in written]
        return super().checked(written)

    def told(self, value: list[str], path: KeyPath, tell: Tell) -> list[str]:
        return [tell(part, (*path, index)) for index, part in enumerate(value)]


@dataclass(frozen=True)
class OneOf(Field):
    """One of a few words."""

    words: tuple[str, ...]

    @property
    def expected(self) -> Message:
        return message("{words} is expected", {"words": listed(self.words, "or")})

    def read(self, text: str) -> str:
        if text not in self.words:
            near = nearest(text, self.words)
            raise Slip(self.expected, did_you_mean(near)) if near else Slip(self.expected)
        return text


@dataclass(frozen=True)
class Switch(Field):
    """``yes`` or ``no``."""

    @property
    def expected(self) -> Message:
        return plain(EXPECTED["switch"])

    def read(self, text: str) -> bool:
        return READERS["switch"](text) > 0


@dataclass(frozen=True)
class Hex(Field):
    """A color as ``'#rrggbb'``."""

    @property
    def expected(self) -> Message:
        return plain(COLOR_EXPECTED)

    def read(self, text: str) -> str:
        read_color(text)
        return text.lower()
