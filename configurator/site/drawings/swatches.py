"""Which options of a family are shown with a swatch."""

from typing import NamedTuple

from configurator.kernel.shapes import Family
from configurator.site.house import House


class Swatch(NamedTuple):
    """A swatch: its address, its color as ``#rrggbb`` and its material."""

    choice: str
    option: str
    url: str
    color: str
    material: str


def swatches(house: House, family: Family) -> list[Swatch]:
    """Return the swatches of a family's options, those that are no longer offered left out."""
    notes = house.catalog.family_notes[family["id"]]
    return [
        Swatch(choice.id, option.id, f"swatches/{family['id']}-{option.id}.png", option.swatch, notes.material)
        for choice in notes.choices.values()
        for option in choice.options.values()
        if option.swatch and not option.retired
    ]
