"""The texts of a content file: found by their markers in its schema, wherever they stand, and told in a language."""

from dataclasses import dataclass
from typing import Any, TypeVar, get_args

from pydantic import BaseModel

from configurator.catalog.fields import Field, Tell
from configurator.catalog.located import KeyPath

Model = TypeVar("Model", bound=BaseModel)


@dataclass(frozen=True)
class ContentText:
    """A text that the content says: as it stands there, in which file (from the content folder) and line."""

    text: str
    file: str
    line: int


def told(model: Model, tell: Tell, path: KeyPath = ()) -> Model:
    """Return a section of a file with each of its texts told anew, presets among them; all else stays."""
    entries = {
        name: told_value(getattr(model, name), [*field.metadata, field.annotation], tell, (*path, name))
        for name, field in type(model).model_fields.items()
    }
    return type(model).model_construct(_fields_set=model.model_fields_set, **entries)


def told_value(value: Any, marks: list[Any], tell: Tell, path: KeyPath) -> Any:
    """Return a value with its texts told anew; ``marks`` are its type and what is marked on it."""
    marker = next((mark for mark in marks if isinstance(mark, Field)), None)
    if marker:
        return marker.told(value, path, tell)
    if isinstance(value, BaseModel):
        return told(value, tell, path)
    inner = [part for mark in marks for argument in get_args(mark) for part in (argument, *get_args(argument))]
    if isinstance(value, list):
        return [told_value(item, inner, tell, (*path, index)) for index, item in enumerate(value)]
    if isinstance(value, dict):
        return {key: told_value(item, inner, tell, (*path, key)) for key, item in value.items()}
    return value
