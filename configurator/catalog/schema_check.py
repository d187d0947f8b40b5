"""A content file against its schema: what pydantic finds, in the project's own words."""

from collections.abc import Mapping
from typing import Any, TypeVar, get_args, get_origin

from pydantic import BaseModel, ValidationError
from pydantic.fields import FieldInfo
from pydantic_core import ErrorDetails

from configurator.catalog.clauses import Slip, Term
from configurator.catalog.fields import Field
from configurator.catalog.located import ContentFile, KeyPath, dotted, what_is
from configurator.catalog.suggest import nearest, suggestion
from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Message

Model = TypeVar("Model", bound=BaseModel)


def check(file: ContentFile, schema: type[Model]) -> Model | None:
    """Return the file's data as a model, or None with every problem noted."""
    try:
        return schema.model_validate(file.data)
    except ValidationError as found:
        errors = found.errors(include_url=False)
        meant = {meant_by(schema, error["loc"]) for error in errors if error["type"] == "extra_forbidden"}
        for error in errors:
            # A key that is missing only because it is misspelt is told of once, at the slip.
            if error["type"] != "missing" or error["loc"] not in meant:
                note(file, schema, error)
        return None


def meant_by(schema: type[BaseModel], path: KeyPath) -> KeyPath:
    """Return the path that an unknown key was probably meant to be."""
    return (*path[:-1], nearest(str(path[-1]), schema_at(schema, path[:-1]).model_fields) or "")


def note(file: ContentFile, schema: type[BaseModel], error: ErrorDetails) -> None:
    """Note one of pydantic's errors at its place."""
    path: KeyPath = error["loc"]
    if error["type"] == "missing":
        # An empty value has been noted already, where it stands.
        if path not in file.keys:
            missing = message("{path} is missing", {"path": [dotted(path), "name"]})
            file.at_key(path, missing, expected_at(schema, path))
    elif error["type"] == "extra_forbidden":
        known = schema_at(schema, path[:-1]).model_fields
        key = str(path[-1])
        file.at_key(path, message("unknown key '{key}'", {"key": [key, "name"]}), suggestion(key, known))
    elif error["input"] is None or error["type"] == "default_factory_not_called":
        # A preset that hangs on another value waits for that one.
        pass
    else:
        slip = error.get("ctx", {}).get("error")
        if not isinstance(slip, Slip):
            slip = Slip(expected_at(schema, path))
        file.at_value(path, what_is(path, error["input"]), *slip.clauses, units=slip.units)


def inner_schema(annotation: Any) -> type[BaseModel] | None:
    """Return the model inside an annotation such as ``dict[str, Model]`` or ``Model | None``."""
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return annotation
    for part in get_args(annotation):
        found = inner_schema(part)
        if found:
            return found
    return None


def field_at(schema: type[BaseModel], path: KeyPath) -> FieldInfo | None:
    """Return the field that a path leads to or into."""
    found = None
    model: type[BaseModel] | None = schema
    for step in path:
        if model and step in model.model_fields:
            found = model.model_fields[str(step)]
            model = inner_schema(found.annotation)
    return found


def schema_at(schema: type[BaseModel], path: KeyPath) -> type[BaseModel]:
    """Return the model that a path leads to."""
    field = field_at(schema, path)
    return (inner_schema(field.annotation) if field else None) or schema


def expected_at(schema: type[BaseModel], path: KeyPath) -> Message:
    """Return what is expected at a path."""
    field = field_at(schema, path)
    for marker in field.metadata if field else []:
        if isinstance(marker, Field):
            return marker.expected
    inner = inner_schema(field.annotation) if field else None
    container = get_origin(field.annotation) if field and path[-1] in schema_fields(schema, path) else None
    if inner is None:
        in_list = container is list or isinstance(path[-1], int)
        return plain("a list in [ ] is expected" if in_list else "a mapping is expected")
    keys: dict[str, Term] = {"keys": [", ".join(inner.model_fields), "name"]}
    if container is list:
        return message("a list of mappings with {keys} is expected", keys)
    if container is dict:
        return message("a mapping from ids to mappings with {keys} is expected", keys)
    return message("a mapping with {keys} is expected", keys)


def schema_fields(schema: type[BaseModel], path: KeyPath) -> Mapping[str, FieldInfo]:
    """Return the fields among which the last step of a path is one, unless it is an item or an id."""
    return schema_at(schema, path[:-1]).model_fields
