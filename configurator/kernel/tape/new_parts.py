"""A door that is given another part: its new numbers get a usual size, so that it is drawn before it is measured."""

from typing import Any

from configurator.kernel.shapes import Door
from configurator.kernel.tape.table import fields_of, is_there, parts_of_door


def with_new_parts(before: Door, door: Door) -> Door:
    """Return a door, changed in a word or a count from ``before``, with a size for all that it has now and had not."""
    had = parts_of_door(before)
    has = parts_of_door(door)
    given: Any = door.copy()
    for field in fields_of("door"):
        comes = is_there(field, has) and not is_there(field, had)
        if comes and "when_new" in field and given[field["id"]] == 0:
            given[field["id"]] = field["when_new"]
    return with_room(given)


def with_room(door: Door) -> Door:
    """Return a door with what follows from its parts: where the wall stands, and what a lone or in-swing leaf lacks."""
    parts = parts_of_door(door)
    return {
        **door,
        "stop_lap": door["stop_lap"] if "out" in parts else 0.0,
        "passive_handle": door["passive_handle"] and "pair" in parts,
        "wall_gap": beyond_sidelight(door) if "sidelights" in parts else door["wall_gap"],
    }


def beyond_sidelight(door: Door) -> float:
    """Return the gap to a wall that stands no nearer than the side panel reaches."""
    return max(door["wall_gap"], door["sidelight_width"])
