"""One door, with every covering on it compared."""

from collections.abc import Mapping
from typing import cast

from configurator.drawing.layers import screen_svg
from configurator.kernel.message import is_said
from configurator.kernel.say import say_length
from configurator.kernel.shapes import Door, Family
from configurator.kernel.views.measure import measure_elevation
from configurator.site.compare import COLUMNS, NO_FIT, STATES, Line, best_first, compared
from configurator.site.fields import DOOR_GROUPS
from configurator.site.glance import at_a_glance
from configurator.site.house import House
from configurator.site.kinds.measure import dimensioned
from configurator.site.pictures import Window, door_base, family_window, open_and_closed, whole_door
from configurator.site.sitepage import Given
from configurator.site.trim import trimmed

BASE = "door-behind"
# The dimensions that a door's own drawing shows; the list beside it has all of them.
SHOWN = ("glass_width", "glass_height", "stile_hinge", "stile_latch", "rail_top", "rail_bottom", "handle_height")
WORDS = {
    "clears": "the handle on all of its way",
    "guide by hand": "past the handle",
    "caution": "little room for a hand at the handle",
    "blocked": "by the handle as the door is now",
    NO_FIT: "on this door",
}


def tile(house: House, door: Door, family: Family, window: Window) -> Given:
    """Return a family on the door: its drawing open and closed, its figures and its verdict."""
    line = compared(house, door, family)
    if line["refusal"]:
        svg = screen_svg(whole_door(house, door, window), f"{family['id']}-")
    else:
        svg = open_and_closed(house, door, family, window, BASE)
    return {**line, "name": family["name"], "svg": svg}


def reading(door: Door, field: str) -> float:
    """Return a door's measurement in mm by the field's name; those of the handle begin with ``handle.``."""
    shape: Mapping[str, object] = door["handle"] if field.startswith("handle.") else door
    return float(cast(float, shape[field.removeprefix("handle.")]))


def measures(house: House, door: Door) -> list[Given]:
    """Return what the tape finds on the door, in the order and under the names of the measuring guide."""
    assumed = {measure.path for measure in house.catalog.door_notes[door["id"]].measures if measure.assumed}
    return [
        {
            "name": field.name,
            "text": say_length(reading(door, field.id), house.units),
            "assumed": field.path in assumed,
        }
        for group in DOOR_GROUPS
        for field in group.fields
        if reading(door, field.id)
    ]


def by_state(lines: list[Line]) -> list[Given]:
    """Return the lines under their verdicts, the best verdict first."""
    groups = [{"state": state, "families": [line for line in lines if line["state"] == state]} for state in STATES]
    return [group for group in groups if group["families"]]


def door_page(house: House, door: Door) -> Given:
    """Return what the page of a door shows."""
    notes = house.catalog.door_notes[door["id"]]
    fitting = [family for family in house.families if not is_said(house.answer(door, family)["refusal"])]
    window = family_window(house, door, fitting)
    families = best_first([tile(house, door, family, window) for family in house.families])
    return {
        "name": notes.name,
        "door_name": house.door_name(door),
        "summary": notes.summary,
        "description": notes.description,
        "source": str(notes.source),
        "shared_svg": door_base(door, window, BASE),
        "families": families,
        "glance": at_a_glance(families, house.units),
        "words": WORDS,
        "groups": by_state(families),
        "columns": [{"id": ident, "name": name} for ident, name in COLUMNS],
        "svg": screen_svg(trimmed(dimensioned(measure_elevation(door, house.units), SHOWN)), "measured-"),
        "measures": measures(house, door),
        "try_url": house.try_url(door, None),
    }
