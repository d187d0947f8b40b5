"""The first page."""

from typing import TypedDict

from configurator.kernel.shapes import Door, Family
from configurator.site.drawings.pictures import Window, half_svg, tile_window
from configurator.site.drawings.rooms import hero_photo
from configurator.site.drawings.shown_photos import ShownPhoto
from configurator.site.drawings.subjects import first_single, fitting
from configurator.site.house import House

SHOWN = 6


class HomeTile(TypedDict):
    """A covering half way down: its drawing, its name, its page and what it is in a sentence."""

    svg: str
    name: str
    url: str
    summary: str


class HomePage(TypedDict):
    """What the first page shows."""

    hero: ShownPhoto
    families: list[HomeTile]
    doors: list[Door]


def tile(house: House, door: Door, family: Family, window: Window) -> HomeTile:
    """Return a family as a small drawing half way down, with its summary."""
    return {
        "svg": half_svg(house, door, family, window, f"{family['id']}-"),
        "name": family["name"],
        "url": f"coverings/{family['id']}.html",
        "summary": house.catalog.family_notes[family["id"]].summary,
    }


def home(house: House) -> HomePage:
    """Return what the first page shows."""
    single = first_single(house)
    shown = fitting(house, single)[:SHOWN]
    window = tile_window(house, single, shown)
    return {
        "hero": hero_photo(house),
        "families": [tile(house, single, family, window) for family in shown],
        "doors": house.doors,
    }
