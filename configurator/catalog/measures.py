"""Every number of a file with its name, its unit and where it comes from, for pages to show."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache
from typing import Any, get_args

from pydantic import BaseModel

from configurator.catalog.fields import Number, Whole
from configurator.catalog.located import KeyPath, dotted
from configurator.catalog.sources import PRESET, Source


@dataclass(frozen=True)
class Measure:
    """``path`` as in the file (``glass.width``); ``assumed`` where a preset stands in for a measurement.

    ``unit`` is ``length`` (``value`` in mm), ``share``, ``count``, ``degree``, ``switch``, ``mass`` (kg/m2),
    ``u-value`` (W/m2K) or ``radius`` (px).
    """

    path: str
    name: str
    value: float
    unit: str
    source: Source
    assumed: bool


def measures(model: BaseModel, source: Source, sources: Mapping[KeyPath, Source]) -> list[Measure]:
    """Return the numbers of a file in its own order."""
    return [
        Measure(
            dotted(path),
            marker.what.removeprefix("a ").removeprefix("an "),
            value,
            marker.unit if isinstance(marker, Number) else "count",
            PRESET if assumed else sources.get(path, source),
            assumed,
        )
        for path, value, marker, assumed in numbers_in(model, (), False)
    ]


def numbers_in(model: BaseModel, path: KeyPath, assumed: bool) -> Iterator[tuple[KeyPath, float, Number | Whole, bool]]:
    """Yield each number of a model with its path, its marker and whether it is a preset."""
    for name, marker in number_markers(type(model)).items():
        value = getattr(model, name)
        here = (*path, name)
        preset = assumed or name not in model.model_fields_set
        if isinstance(value, BaseModel):
            yield from numbers_in(value, here, preset)
        elif marker and isinstance(value, list):
            for index, item in enumerate(value):
                yield (*here, index), item, marker, preset
        elif marker and value is not None:
            yield here, value, marker, preset


@cache
def number_markers(schema: type[BaseModel]) -> dict[str, Number | Whole | None]:
    """Return the number marker, if any, of each field of a section."""
    return {name: number_marker([*field.metadata, field.annotation]) for name, field in schema.model_fields.items()}


def number_marker(parts: list[Any]) -> Number | Whole | None:
    """Return the number marker among annotations, however deep."""
    for part in parts:
        if isinstance(part, Number | Whole):
            return part
        found = number_marker([*get_args(part)])
        if found:
            return found
    return None
