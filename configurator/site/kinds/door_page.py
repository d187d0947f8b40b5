"""One door, with every covering on it compared."""

from collections.abc import Mapping
from typing import TypedDict, cast

from configurator.drawing.page_svg import screen_svg
from configurator.drawing.photo import FIGURE
from configurator.kernel.guidance import binding_cautions, general_cautions
from configurator.kernel.say import say_length
from configurator.kernel.shapes import Answer, Caution, Door, Family
from configurator.kernel.tape.table import field_key
from configurator.kernel.tongue import wording
from configurator.kernel.views.measure_elevation import measure_elevation
from configurator.site.drawings.pictures import Window, door_base, family_window, open_and_closed, whole_door
from configurator.site.drawings.shown_photos import ShownPhoto, shown_photo
from configurator.site.drawings.subjects import fitting
from configurator.site.drawings.trim import trimmed
from configurator.site.house import House
from configurator.site.kinds.compare import COLUMNS, NO_FIT, STATES, NamedLine, best_first, compared
from configurator.site.kinds.full_price import price_start
from configurator.site.kinds.glance import Glance, at_a_glance
from configurator.site.kinds.measure_page import dimensioned, tape_groups

BASE = "door-behind"
# The dimensions that a door's own drawing shows; the list beside it has all of them.
SHOWN = ("glass_width", "glass_height", "stile_hinge", "stile_latch", "rail_top", "rail_bottom", "handle_height")
WORDS = {
    "clears": wording("the handle on all of its way"),
    "guide by hand": wording("past the handle"),
    "caution": wording("little room for a hand at the handle"),
    "blocked": wording("by the handle as the door is now"),
    NO_FIT: wording("on this door"),
}


class DoorTile(NamedLine):
    """A family on the door, drawn open and closed, and from which price on it is had, or nothing."""

    svg: str
    price: str


class Reading(TypedDict):
    """A measurement of the door, in words, with the trade's own or nothing; assumed where nobody took it."""

    name: str
    trade: str
    text: str
    assumed: bool


class StateGroup(TypedDict):
    """The families with one verdict."""

    state: str
    says: str
    families: list[DoorTile]


class Column(TypedDict):
    """A column of the comparison: the figure's id and its heading."""

    id: str
    name: str


class DoorPage(TypedDict):
    """What the page of a door shows; ``shared_svg`` is the door that every tile's drawing refers to."""

    name: str
    door_name: str
    seen: ShownPhoto | None
    summary: str
    also_called: list[str]
    description: list[str]
    source: str
    shared_svg: str
    families: list[DoorTile]
    glance: list[Glance]
    words: dict[str, str]
    groups: list[StateGroup]
    cautions: list[Caution]
    guidance: list[Caution]
    columns: list[Column]
    svg: str
    measures: list[Reading]
    try_url: str


def tile(house: House, door: Door, family: Family, window: Window) -> DoorTile:
    """Return a family on the door: its drawing open and closed, its figures and its verdict."""
    line = compared(house, door, family)
    if line["refusal"]:
        svg = screen_svg(whole_door(house, door, window), f"{family['id']}-")
    else:
        svg = open_and_closed(house, door, family, window, BASE)
    return {**line, "name": family["name"], "svg": svg, "price": price_start(house, door, family)}


def reading(door: Door, field: str) -> float:
    """Return a door's measurement in mm by the field's name; those of the handle begin with ``handle.``."""
    shape: Mapping[str, object] = door["handle"] if field.startswith("handle.") else door
    return float(cast(float, shape[field_key(field)]))


def measures(house: House, door: Door) -> list[Reading]:
    """Return what the tape finds on the door, in the order and under the names of the measuring guide."""
    assumed = {measure.path for measure in house.catalog.door_notes[door["id"]].measures if measure.assumed}
    return [
        {
            "name": house.named(field["name"]),
            "trade": house.named(field.get("trade", "")),
            "text": say_length(reading(door, field["id"]), house.words, house.units),
            "assumed": "." not in field["id"] and field["path"] in assumed,
        }
        for group in tape_groups()
        for field in group["fields"]
        if group["id"] != "household" and reading(door, field["id"])
    ]


def by_state(lines: list[DoorTile]) -> list[StateGroup]:
    """Return the lines under their verdicts, the best verdict first."""
    groups: list[StateGroup] = [
        {"state": state, "says": found[0]["says"], "families": found}
        for state in STATES
        if (found := [line for line in lines if line["state"] == state])
    ]
    return groups


def of_the_door(answers: list[Answer]) -> list[Caution]:
    """Return what is to be minded with every covering alike: it is the door's own."""
    first, *others = (binding_cautions(answer["cautions"]) for answer in answers)
    return [caution for caution in first if all(caution in other for other in others)]


def guidance_on(answers: list[Answer]) -> list[Caution]:
    """Return the general guidance that goes for some covering on the door, each told once."""
    told = {caution["id"]: caution for answer in answers for caution in general_cautions(answer["cautions"])}
    return list(told.values())


def door_page(house: House, door: Door) -> DoorPage:
    """Return what the page of a door shows."""
    notes = house.catalog.door_notes[door["id"]]
    going = fitting(house, door)
    answers = [house.answer(door, family) for family in going]
    window = family_window(house, door, going)
    families = best_first([tile(house, door, family, window) for family in house.families])
    return {
        "name": notes.name,
        "door_name": door["name"],
        "seen": shown_photo(house, notes.photo, FIGURE),
        "summary": notes.summary,
        "also_called": notes.also_called,
        "description": notes.description,
        "source": house.source(notes.source),
        "shared_svg": door_base(door, window, BASE),
        "families": families,
        "glance": at_a_glance(families, house),
        "words": {state: house.named(text) for state, text in WORDS.items()},
        "groups": by_state(families),
        "cautions": of_the_door(answers) if answers else [],
        "guidance": guidance_on(answers),
        "columns": [{"id": ident, "name": house.named(name)} for ident, name in COLUMNS],
        "svg": screen_svg(trimmed(dimensioned(measure_elevation(door, house.words, house.units), SHOWN)), "measured-"),
        "measures": measures(house, door),
        "try_url": house.try_url(door, None),
    }
