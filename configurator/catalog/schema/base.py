"""What all schemas share."""

from typing import Annotated

from pydantic import BaseModel, ConfigDict

from configurator.catalog.fields import Code, Field, Fixed, Like, Number, OneOf, Paragraphs, Switch, Tell, Text, Whole
from configurator.catalog.files import ID
from configurator.catalog.located import KeyPath
from configurator.catalog.sources import EXPECTED, Source, read_source
from configurator.kernel.message import plain
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import wording

# Texts, which a language may tell otherwise.
Name = Annotated[str, Text(wording("a name"))]
# What else people call a thing; never the name of a product or its maker.
OtherNames = list[Name]
Line = Annotated[str, Text(wording("a line of text"))]
Prose = Annotated[list[str], Paragraphs(wording("a description"))]
# What is the same in every language.
Ident = Annotated[str, Fixed(wording("a name"))]
Constant = Annotated[str, Fixed(wording("a line of text"))]
Language = Annotated[str, Code()]
YesNo = Annotated[bool, Switch()]
# Ids that something had before it was given today's, so that what was kept under them still leads to it.
Former = list[Annotated[str, Like(ID.pattern, wording("an id"), "garden-door")]]
LightShare = Annotated[float, Number("share", 0, 1, wording("a share"))]

__all__ = [
    "Constant",
    "Field",
    "Former",
    "Ident",
    "Language",
    "LightShare",
    "Line",
    "Name",
    "Number",
    "OneOf",
    "OtherNames",
    "Prose",
    "Section",
    "SourceMark",
    "Whole",
    "YesNo",
]


class _SourceField(Field):
    """``invented``, ``common practice`` or ``published — <where>``."""

    is_text = True

    @property
    def expected(self) -> Message:
        return plain(EXPECTED)

    def read(self, text: str) -> Source:
        return read_source(text)

    def told(self, value: Source, path: KeyPath, tell: Tell) -> Source:
        return value.told(tell, path)


SourceMark = Annotated[Source, _SourceField()]


class Section(BaseModel):
    """A mapping in which an unknown key is a slip to be told of."""

    model_config = ConfigDict(extra="forbid", frozen=True)
