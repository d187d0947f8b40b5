"""Which options of a family are shown with a swatch."""

from typing import NamedTuple

from configurator.kernel.shapes import Family
from configurator.site.house import House

MATERIALS = {"louver-panel": "wood", "slatted": "wood"}


class Swatch(NamedTuple):
    """A swatch: its address, its colour as ``#rrggbb`` and its material."""

    choice: str
    option: str
    url: str
    colour: str
    material: str


def material(family: Family) -> str:
    """Return what a family is made of."""
    if "metal" in family["id"]:
        return "metal"
    return MATERIALS.get(family["mechanism"], "cloth")


def swatches(house: House, family: Family) -> list[Swatch]:
    """Return the swatches of a family's options, those that are no longer offered left out."""
    return [
        Swatch(choice.id, option.id, f"swatches/{family['id']}-{option.id}.png", option.swatch, material(family))
        for choice in house.catalog.family_notes[family["id"]].choices.values()
        for option in choice.options.values()
        if option.swatch and not option.retired
    ]
