"""Every number of a file with its name, its unit and where it comes from, for pages to show."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from configurator.catalog.content_section import Section
from configurator.catalog.fields import Number, Whole
from configurator.catalog.kind import Items, Kind
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


def measures(file: Section, source: Source, sources: Mapping[KeyPath, Source]) -> list[Measure]:
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
        for path, value, marker, assumed in numbers_in(file, (), False)
    ]


def numbers_in(section: Section, path: KeyPath, assumed: bool) -> Iterator[tuple[KeyPath, float, Number | Whole, bool]]:
    """Yield each number of a section with its path, its marker and whether it is a preset."""
    for name, entry in section.entries.items():
        value = getattr(section, name)
        here = (*path, name)
        preset = assumed or name not in section.given
        marker = number_marker(entry.kind)
        if isinstance(value, Section):
            yield from numbers_in(value, here, preset)
        elif marker and isinstance(value, list):
            for index, item in enumerate(value):
                yield (*here, index), item, marker, preset
        elif marker and value is not None:
            yield here, value, marker, preset


def number_marker(kind: Kind) -> Number | Whole | None:
    """Return the marker of a number or of a list of them; None for anything else."""
    inner = kind.item if isinstance(kind, Items) else kind
    return inner if isinstance(inner, Number | Whole) else None
