"""All doors, drawn to one scale."""

from typing import TypedDict

from configurator.drawing.page_svg import screen_svg
from configurator.kernel.message import plain, several
from configurator.kernel.say import say_length
from configurator.kernel.shapes import Door
from configurator.kernel.tongue import wording
from configurator.site.drawings.pictures import Window, door_frame, leaf_size, whole_door, window_of
from configurator.site.house import House
from configurator.site.kinds.search_words import door_words

OPENS = {"in": wording("into the room"), "out": wording("out of the room")}


class DoorItem(TypedDict):
    """A door as a tile: its drawing, the sizes of leaf and glass in words, how it opens, its handle, and the words
    by which it is found."""

    name: str
    summary: str
    also_called: list[str]
    url: str
    svg: str
    leaf: str
    glass: str
    opens: str
    handle: str
    words: str


class DoorsPage(TypedDict):
    """What the page of all doors shows."""

    doors: list[DoorItem]
    tallies: list[str]


def counted_doors(house: House) -> list[str]:
    """Return what is told of the number of doors that are found: of none, of one and so on."""
    none = plain("No door is found by that. Search with fewer or other words, or set every measurement yourself.")
    counts = range(1, len(house.doors) + 1)
    found = [several("{count} door", "{count} doors", {"count": [count, "count"]}) for count in counts]
    return [house.phrase(told) for told in [none, *found]]


def centered(windows: list[Window], own: Window) -> Window:
    """Return a window as wide and high as the largest, with the own one in its middle, on the floor."""
    across = max(x1 - x0 for x0, _, x1, _ in windows)
    top = min(y0 for _, y0, _, _ in windows)
    middle = (own[0] + own[2]) / 2
    return (middle - across / 2, top, middle + across / 2, 0.0)


def by(width: float, height: float, house: House) -> str:
    """Return a width by a height with the unit, and the mark of a rounded value, named once."""
    said = [say_length(side, house.words, house.units) for side in (width, height)]
    unit = house.named(house.units)
    bare = " × ".join(side.removeprefix("≈ ").removesuffix(f" {unit}") for side in said)
    return ("≈ " if any(side.startswith("≈") for side in said) else "") + f"{bare} {unit}"


def item(house: House, door: Door, window: Window) -> DoorItem:
    """Return a door as a tile."""
    notes = house.catalog.door_notes[door["id"]]
    width, height = leaf_size(door)
    opens, handle = house.named(OPENS[door["swing"]]), house.catalog.handle_notes[notes.handle].name
    return {
        "name": notes.name,
        "summary": notes.summary,
        "also_called": notes.also_called,
        "url": f"doors/{door['id']}.html",
        "svg": house.once(
            lambda: screen_svg(whole_door(house, door, window), f"{door['id']}-"), "door", door, window, notes.summary
        ),
        "leaf": by(width, height, house),
        "glass": by(door["glass_width"], door["glass_height"], house),
        "opens": opens,
        "handle": handle,
        "words": door_words(notes, [opens, handle]),
    }


def doors(house: House) -> DoorsPage:
    """Return what the page of all doors shows."""
    windows = {door["id"]: window_of(door_frame(door)) for door in house.doors}
    every = list(windows.values())
    return {
        "doors": [item(house, door, centered(every, windows[door["id"]])) for door in house.doors],
        "tallies": counted_doors(house),
    }
