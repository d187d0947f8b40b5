"""What all schemas share."""

from typing import Annotated

from pydantic import BaseModel, ConfigDict

from configurator.catalog.fields import Field, Like, Number, OneOf, Paragraphs, Switch, Text, Whole
from configurator.catalog.files import ID
from configurator.catalog.sources import EXPECTED, Source, read_source

Name = Annotated[str, Text("a name")]
Line = Annotated[str, Text("a line of text")]
Prose = Annotated[list[str], Paragraphs("a description")]
YesNo = Annotated[bool, Switch()]
# Ids that something had before it was given today's, so that what was kept under them still leads to it.
Former = list[Annotated[str, Like(ID.pattern, "an id", "garden-door")]]
LightShare = Annotated[float, Number("share", 0, 1, "a share")]

__all__ = [
    "Field",
    "Former",
    "LightShare",
    "Line",
    "Name",
    "Number",
    "OneOf",
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


SourceMark = Annotated[Source, _SourceField()]


class Section(BaseModel):
    """A mapping in which an unknown key is a slip to be told of."""

    model_config = ConfigDict(extra="forbid", frozen=True)
