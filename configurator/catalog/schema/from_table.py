"""Models of content files whose numbers come from the kernel's table of what a tape takes."""

from functools import cache
from typing import Annotated, Any, TypeVar, cast

from pydantic import create_model

from configurator.catalog.fields import Number, Whole
from configurator.catalog.schema.base import Section
from configurator.catalog.schema_check import inner_schema
from configurator.kernel.tape.field import Field
from configurator.kernel.tape.table import fields_of

Model = TypeVar("Model", bound=Section)
Row = tuple[list[str], Field]


def with_numbers(words: type[Model], shape: str) -> type[Model]:
    """Return the model of a ``door``, a ``handle`` or a ``household``: its words, and every number that has a path."""
    return grown(words, [(field["path"].split("."), field) for field in fields_of(shape) if "path" in field])


def grown(words: type[Model], rows: list[Row]) -> type[Model]:
    """Return a model with the numbers, and with the sections that hold them."""
    inside: dict[str, list[Row]] = {}
    for path, field in rows:
        inside.setdefault(path[0], []).append((path[1:], field))
    made: dict[str, Any] = {step: entry(words, step, held) for step, held in inside.items()}
    return create_model(words.__name__, __base__=words, **made)


def entry(words: type[Section], step: str, held: list[Row]) -> tuple[Any, Any]:
    """Return the type of a key, and what stands for it where the file leaves it out."""
    path, field = held[0]
    if not path:
        return number(field)
    model = grown(section_at(words, step), held)
    # A part that only some doors have is a section at the top of the file.
    if field["path"].startswith(f"{step}.") and all("when" in field for _, field in held):
        return model | None, None
    needed = any(one.is_required() for one in model.model_fields.values())
    return model, ... if needed else model()


def section_at(words: type[Section], step: str) -> type[Section]:
    """Return the words of a section; an empty one where it holds nothing but numbers."""
    known = words.model_fields.get(step)
    model = inner_schema(known.annotation) if known else None
    if model and issubclass(model, Section):
        return model
    return type(step.capitalize(), (Section,), {"__module__": __name__})


def number(field: Field) -> tuple[Any, Any]:
    """Return the type of a number with its limits, and what is assumed where it is not measured."""
    low, high = field["limits"]
    assumed = field.get("assumed", [...])[0]
    if field["unit"] == "count":
        return Annotated[int, Whole(int(low), int(high), field["what"])], assumed if assumed is ... else int(assumed)
    return Annotated[float, Number(field["unit"], low, high, field["what"])], assumed


def number_at(section: Section, steps: list[str]) -> float | None:
    """Return the number at a path; None where the section that would hold it is left out."""
    here: Any = section
    for step in steps:
        here = None if here is None else getattr(here, step)
    return cast(float | None, here)


def numbers_of(file: Section, shape: str) -> dict[str, float]:
    """Return every number of a shape that the file has a place for, by its id's last part; 0 for what is left out."""
    return {key: number_at(file, steps) or 0.0 for key, steps in places_of(shape).items()}


@cache
def places_of(shape: str) -> dict[str, list[str]]:
    """Return the path to each number of a shape that files have a place for, by its id's last part."""
    prefix = "" if shape == "door" else f"{shape}."
    return {field["id"].removeprefix(prefix): field["path"].split(".") for field in fields_of(shape) if "path" in field}


@cache
def optional_sections(shape: str) -> dict[str, str]:
    """Return the sections that only some have, by key, and with which part they come (see :class:`Field`)."""
    return {
        field["path"].split(".")[0]: field["when"]
        for field in fields_of(shape)
        if "when" in field and all("when" in other for other in beside(field, shape))
    }


def beside(field: Field, shape: str) -> list[Field]:
    """Return the fields of the section at the top of the file in which a field stands."""
    top = field["path"].split(".")[0]
    return [other for other in fields_of(shape) if "path" in other and other["path"].split(".")[0] == top]
