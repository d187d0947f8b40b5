"""The texts of a content file: found by their markers in its schema, wherever they stand, and told in a language."""

from dataclasses import dataclass
from functools import cache
from typing import Any, TypeVar, get_args

from pydantic import BaseModel

from configurator.catalog.fields import Field, Tell
from configurator.catalog.located import KeyPath

Model = TypeVar("Model", bound=BaseModel)
# What each text is in a language.
Translations = dict[str, str]
# The type of a value and what is marked on it.
Marks = list[Any]


@dataclass(frozen=True)
class ContentText:
    """A text that the content says: as it stands there, in which file (from the content folder) and line."""

    text: str
    file: str
    line: int


def told(model: Model, tell: Tell, path: KeyPath = ()) -> Model:
    """Return a section of a file with each of its texts told anew, presets among them; all else stays."""
    entries = {
        name: told_value(getattr(model, name), marks, tell, (*path, name))
        for name, marks in speaking(type(model)).items()
    }
    if not entries:
        return model
    return type(model).model_construct(_fields_set=model.model_fields_set, **{**dict(model), **entries})


def told_value(value: Any, marks: Marks, tell: Tell, path: KeyPath) -> Any:
    """Return a value with its texts told anew."""
    marker = next((mark for mark in marks if isinstance(mark, Field)), None)
    if marker:
        return marker.told(value, path, tell)
    if isinstance(value, BaseModel):
        return told(value, tell, path)
    if isinstance(value, list):
        inner = inside(marks)
        return [told_value(item, inner, tell, (*path, index)) for index, item in enumerate(value)]
    if isinstance(value, dict):
        inner = inside(marks)
        return {key: told_value(item, inner, tell, (*path, key)) for key, item in value.items()}
    return value


def inside(marks: Marks) -> Marks:
    """Return the marks of what a list or a mapping holds."""
    return [part for mark in marks for argument in get_args(mark) for part in (argument, *get_args(argument))]


@cache
def speaking(schema: type[BaseModel]) -> dict[str, Marks]:
    """Return the fields of a section that hold texts, however deep, with their marks."""
    marked = {name: [*field.metadata, field.annotation] for name, field in schema.model_fields.items()}
    return {name: marks for name, marks in marked.items() if speaks(marks)}


def speaks(marks: Marks) -> bool:
    """Return whether what is marked so holds texts."""
    for mark in marks:
        if isinstance(mark, Field):
            return mark.is_text
        if isinstance(mark, type) and issubclass(mark, BaseModel) and speaking(mark):
            return True
    inner = inside(marks)
    return len(inner) > 0 and speaks(inner)
