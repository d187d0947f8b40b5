"""The kinds of value that a content file may hold, as markers for the pydantic models.

Each marker reads what was written into what the program needs, or raises ValueError with a
sentence that goes on after the value's path: ``is 0 mm; a glass width … is expected``.
"""

import re
from abc import ABC, abstractmethod
from collections.abc import Callable
from dataclasses import dataclass
from typing import Any

from pydantic import GetCoreSchemaHandler
from pydantic_core import core_schema

from configurator.catalog.contrast import read_color
from configurator.catalog.length_advice import units_of
from configurator.catalog.located import KeyPath
from configurator.catalog.suggest import one_of, what_to_write
from configurator.catalog.units import EXPECTED, READERS, SPELLED
from configurator.kernel.lengths import say_span
from configurator.kernel.tongue import ENGLISH
from configurator.tongues.speech import code_of, locale_of

# Gives what stands in place of a text that stands at a path.
Tell = Callable[[str, KeyPath], str]


def kind_of(written: object) -> str:
    """Return what a written value is, for a sentence."""
    if isinstance(written, dict):
        return "a mapping"
    if isinstance(written, list):
        return "a list"
    text = str(written)
    return text if text.lstrip("-.")[:1].isdigit() else f"'{text}'"


class Field(ABC):
    """A marker in ``Annotated[type, marker]``; ``expected`` says what to write."""

    @property
    @abstractmethod
    def expected(self) -> str:
        """Return ``a … is expected``."""

    @abstractmethod
    def read(self, text: str) -> Any:
        """Return the value of a written text; raises ValueError with what to write."""

    def checked(self, written: object) -> Any:
        """Return the value of whatever was written."""
        if not isinstance(written, str):
            raise ValueError(f"is {kind_of(written)}; {self.expected}")
        try:
            return self.read(written)
        except ValueError as slip:
            raise ValueError(f"is {kind_of(written)}; {slip}") from slip

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
    def expected(self) -> str:
        return EXPECTED[self.unit]

    def read(self, text: str) -> float:
        value = READERS[self.unit](text)
        if not self.low <= value <= self.high:
            raise ValueError(f"{self.what} {self.span(text)} is expected")
        return value

    def span(self, text: str) -> str:
        """Return the limits in the units in which the text is written."""
        if self.unit == "length":
            return say_span(self.low, self.high, ENGLISH, units_of(text))
        return f"between {self.low:g}{SPELLED[self.unit]} and {self.high:g}{SPELLED[self.unit]}"


@dataclass(frozen=True)
class Whole(Field):
    """A whole number between two limits."""

    low: int
    high: int
    what: str

    @property
    def expected(self) -> str:
        return f"{self.what}, a whole number between {self.low} and {self.high}, is expected"

    def read(self, text: str) -> int:
        if not text.isascii() or not text.isdecimal() or not self.low <= int(text[:9]) <= self.high:
            raise ValueError(self.expected)
        return int(text)


@dataclass(frozen=True)
class Text(Field):
    """A line of text, which a language may tell otherwise."""

    what: str

    @property
    def expected(self) -> str:
        return f"{self.what} is expected"

    def read(self, text: str) -> str:
        return " ".join(text.split())

    def told(self, value: str, path: KeyPath, tell: Tell) -> str:
        return tell(value, path)


class Fixed(Text):
    """A line that is the same in every language: an id, a file's name, a telephone number."""

    def told(self, value: str, path: KeyPath, tell: Tell) -> str:
        return value


@dataclass(frozen=True)
class Code(Field):
    """A language's code."""

    @property
    def expected(self) -> str:
        return "a language's code such as en, es or en-GB is expected"

    def read(self, text: str) -> str:
        try:
            code = code_of(locale_of(text.replace("_", "-")))
        except ValueError:
            raise ValueError(self.expected) from None
        if code != text:
            raise ValueError(f"{self.expected}; did you mean '{code}'?")
        return text


@dataclass(frozen=True)
class Like(Field):
    """A text of a certain form, of which ``example`` is one."""

    pattern: str
    what: str
    example: str

    @property
    def expected(self) -> str:
        return f"{self.what} such as {self.example} is expected"

    def read(self, text: str) -> str:
        if not re.fullmatch(self.pattern, text):
            raise ValueError(self.expected)
        return text


@dataclass(frozen=True)
class Paragraphs(Field):
    """One or more paragraphs: a list, or a text with blank lines between them."""

    what: str

    @property
    def expected(self) -> str:
        return f"{self.what} in words is expected: a text, or a list of texts"

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
    def expected(self) -> str:
        return f"{one_of(self.words)} is expected"

    def read(self, text: str) -> str:
        if text not in self.words:
            near = what_to_write(text, self.words)
            raise ValueError(f"{self.expected}; {near}" if near.startswith("did") else self.expected)
        return text


@dataclass(frozen=True)
class Switch(Field):
    """``yes`` or ``no``."""

    @property
    def expected(self) -> str:
        return EXPECTED["switch"]

    def read(self, text: str) -> bool:
        return READERS["switch"](text) > 0


@dataclass(frozen=True)
class Hex(Field):
    """A color as ``'#rrggbb'``."""

    @property
    def expected(self) -> str:
        return "a color such as '#1f2a33' (in quotes) is expected"

    def read(self, text: str) -> str:
        read_color(text)
        return text.lower()
