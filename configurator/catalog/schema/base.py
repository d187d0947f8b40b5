"""What all schemas share."""

from typing import Annotated

from pydantic import BaseModel, ConfigDict

from configurator.catalog.fields import Code, Field, Fixed, Like, Number, OneOf, Paragraphs, Switch, Tell, Text, Whole
from configurator.catalog.files import ID
from configurator.catalog.located import KeyPath
from configurator.catalog.sources import EXPECTED, Source, read_source

# Texts, which a language may tell otherwise.
Name = Annotated[str, Text("a name")]
# What else people call a thing; never the name of a product or its maker.
OtherNames = list[Name]
Line = Annotated[str, Text("a line of text")]
Prose = Annotated[list[str], Paragraphs("a description")]
# What is the same in every language.
Ident = Annotated[str, Fixed("a name")]
Constant = Annotated[str, Fixed("a line of text")]
Language = Annotated[str, Code()]
YesNo = Annotated[bool, Switch()]
# Ids that something had before it was given today's, so that what was kept under them still leads to it.
Former = list[Annotated[str, Like(ID.pattern, "an id", "garden-door")]]
LightShare = Annotated[float, Number("share", 0, 1, "a share")]

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

    @property
    def expected(self) -> str:
        return EXPECTED

    def read(self, text: str) -> Source:
        return read_source(text)

    def told(self, value: Source, path: KeyPath, tell: Tell) -> Source:
        return value.told(tell, path)


SourceMark = Annotated[Source, _SourceField()]


class Section(BaseModel):
    """A mapping in which an unknown key is a slip to be told of."""

    model_config = ConfigDict(extra="forbid", frozen=True)
