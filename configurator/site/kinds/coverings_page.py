"""All coverings, to be sifted by what people want."""

from typing import TypedDict

from configurator.drawing.photo import TILE
from configurator.kernel.message import plain, several
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Door, Family
from configurator.kernel.tongue import wording
from configurator.site.drawings.pictures import Window, half_svg, tile_window
from configurator.site.drawings.shown_photos import ShownPhoto, shown_photo
from configurator.site.drawings.subjects import first_single
from configurator.site.house import House
from configurator.site.kinds.compare import Line, NamedLine, compared, light_when_closed, view_when_closed
from configurator.site.kinds.search_words import covering_words

WANTS = (
    ("passes", wording("Passes the handle")),
    ("clears", wording("Clears the glass")),
    ("low", wording("Lowest profile")),
    ("private", wording("Private with light")),
    ("dark", wording("Darkens the room")),
    ("cordless", wording("No cords")),
)
# What a wish means in figures: invented limits, chosen so that each parts the field.
CLEAR_GLASS = 0.9
LOW_PROFILE = 45.0
PRIVATE_VIEW = 0.05
PRIVATE_LIGHT = 0.15
DARK_LIGHT = 0.05


class CoveringTile(NamedLine):
    """A family half closed on the door, its photograph where it has one, the wishes it fulfils, its values to order by
    and its words to search in."""

    summary: str
    also_called: list[str]
    svg: str
    photo: ShownPhoto | None
    wants: list[str]
    order: dict[str, float]
    words: str


class Want(TypedDict):
    """A wish that the list can be sifted by."""

    id: str
    name: str


class CoveringsPage(TypedDict):
    """What the page of all coverings shows."""

    families: list[CoveringTile]
    wants: list[Want]
    tallies: list[str]
    door_name: str


def wants(line: Line, family: Family) -> list[str]:
    """Return which wishes a family fulfils with its first choices."""
    if line["refusal"]:
        return []
    value = {name: figure["value"] for name, figure in line["figures"].items()}
    numbers = resolve(family, {})
    light = light_when_closed(line)
    fulfilled = {
        "passes": line["state"] != "blocked",
        "clears": value["visible_glass_open"] >= CLEAR_GLASS,
        "low": value["projection_most"] <= LOW_PROFILE,
        "private": view_when_closed(line) <= PRIVATE_VIEW and light >= PRIVATE_LIGHT,
        "dark": light <= DARK_LIGHT,
        "cordless": numbers["cord_length"] + numbers["loop_length"] == 0,
    }
    return [want for want, met in fulfilled.items() if met]


def order(line: Line) -> dict[str, float]:
    """Return the values by which the list can be ordered, smallest first; what does not fit comes last."""
    if line["refusal"]:
        return {"clear": 9, "low": 9999, "dark": 9, "bright": 9}
    value = {name: figure["value"] for name, figure in line["figures"].items()}
    light = round(light_when_closed(line), 4)
    clear = round(value["visible_glass_open"], 4)
    return {"clear": -clear, "low": round(value["projection_most"], 1), "dark": light, "bright": -light}


def item(house: House, door: Door, family: Family, window: Window) -> CoveringTile:
    """Return a family as a tile that shows so much of the door."""
    line = compared(house, door, family)
    notes = house.catalog.family_notes[family["id"]]
    fulfilled = wants(line, family)
    return {
        **line,
        "name": notes.name,
        "summary": notes.summary,
        "also_called": notes.also_called,
        "url": f"coverings/{family['id']}.html",
        "svg": half_svg(house, door, family, window, f"{family['id']}-"),
        "photo": shown_photo(house, notes.photo, TILE),
        "wants": fulfilled,
        "order": order(line),
        "words": covering_words(house, family, fulfilled),
    }


def counted_coverings(house: House) -> list[str]:
    """Return what is told of the number of families that are found: of none, of one and so on."""
    none = plain("No covering has all of that. Take one wish back, or search with fewer or other words.")
    counts = range(1, len(house.families) + 1)
    found = [several("{count} covering", "{count} coverings", {"count": [count, "count"]}) for count in counts]
    return [house.phrase(told) for told in [none, *found]]


def coverings(house: House) -> CoveringsPage:
    """Return what the page of all coverings shows."""
    door = first_single(house)
    window = tile_window(house, door, house.families)
    return {
        "families": [item(house, door, family, window) for family in house.families],
        "wants": [{"id": ident, "name": house.named(name)} for ident, name in WANTS],
        "tallies": counted_coverings(house),
        "door_name": door["name"],
    }
