"""The number that is worked with, of the readings of a field: the smallest inside, the largest where it is covered.

Common practice, no source: what must go inside or beside something (the glass, a wall, a gap) goes by the tightest
place, what must be covered or cleared (a bead, a handle, casing) by the furthest.
"""

from configurator.kernel.message import message
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import wording
from configurator.kernel.visit.visit_shapes import Leaf, Reading, Used

# What must be covered or cleared; of everything else the smallest counts.
LARGEST_USED = [
    "bead_width",
    "bead_projection",
    "muntin_width",
    "muntin_projection",
    "hinge_pin_out",
    "backset",
    "handle.projection",
    "handle.grip_length",
    "handle.grip_height",
    "handle.plate_width",
    "handle.plate_height",
    "handle.plate_thickness",
    "handle.neck",
    "handle.turn_width",
    "handle.turn_height",
    "handle.turn_projection",
    "casing_width",
    "casing_projection",
    "astragal_width",
    "astragal_projection",
    "sidelight_width",
    "stop_lap",
    "leaf_twist",
]
# From the surest to the least sure.
HOWS = ["measured", "assumed", "preset"]
HOW_WORDS: dict[str, str] = {
    "measured": wording("measured"),
    "assumed": wording("assumed"),
    "preset": wording("preset"),
}
# How a number came about, by how many readings there are; the last goes for all that are more.
SMALLEST_RULES = [
    wording("{first}, read once"),
    wording("the smaller of {first} and {second}"),
    wording("the smallest of {first}, {second} and {third}"),
    wording("the smallest of {count} readings between {least} and {most}"),
]
LARGEST_RULES = [
    wording("{first}, read once"),
    wording("the larger of {first} and {second}"),
    wording("the largest of {first}, {second} and {third}"),
    wording("the largest of {count} readings between {least} and {most}"),
]


def is_newer(reading: Reading, other: Reading) -> bool:
    """Return whether a reading that stands later in the file counts in place of another of its spot."""
    return reading["on"] >= other["on"]


def newest_of_spots(readings: list[Reading]) -> list[Reading]:
    """Return of each spot the newest reading, in the order in which the spots were first taken."""
    newest: list[Reading] = []
    for reading in readings:
        places = [i for i in range(len(newest)) if newest[i]["spot"] == reading["spot"]]
        if len(places) == 0:
            newest.append(reading)
        elif is_newer(reading, newest[places[0]]):
            newest[places[0]] = reading
    return newest


def how_sure(reading: Reading) -> int:
    """Return 0 for what was measured, more for what is less sure; what nobody knows is the least sure."""
    surer = 0
    for how in HOWS:
        if how == reading["how"]:
            return surer
        surer += 1
    return surer


def surest(readings: list[Reading]) -> list[Reading]:
    """Return the readings that are as sure as the surest: what was measured outdoes what was assumed."""
    best = min([how_sure(reading) for reading in readings])
    return [reading for reading in readings if how_sure(reading) == best]


def taken_readings(leaf: Leaf, field: str) -> list[Reading]:
    """Return the readings of a field that count, or none."""
    own = newest_of_spots([reading for reading in leaf["readings"] if reading["field"] == field])
    return surest(own) if len(own) > 0 else own


def used_rule(field: str, taken: list[Reading]) -> Message:
    """Return in words how the used number comes of the readings."""
    lengths = [reading["mm"] for reading in taken]
    texts = LARGEST_RULES if field in LARGEST_USED else SMALLEST_RULES
    unit = "count" if field == "muntin_columns" or field == "muntin_rows" else "mm"
    count = len(taken)
    terms: dict[str, list[float | str]] = {"first": [lengths[0], unit]}
    if count == 2 or count == 3:
        terms["second"] = [lengths[1], unit]
    if count == 3:
        terms["third"] = [lengths[2], unit]
    if count > 3:
        terms = {"count": [count, "count"], "least": [min(lengths), unit], "most": [max(lengths), unit]}
    return message(texts[min(count, len(texts)) - 1], terms)


def used_of(field: str, taken: list[Reading]) -> Used:
    """Return the used number of readings that count, one at least."""
    lengths = [reading["mm"] for reading in taken]
    mm = max(lengths) if field in LARGEST_USED else min(lengths)
    return {"field": field, "mm": mm, "how": taken[0]["how"], "taken": taken, "rule": used_rule(field, taken)}


def used_numbers(leaf: Leaf) -> dict[str, Used]:
    """Return the used number of every field of which a leaf has readings, by the field's id."""
    found: dict[str, Used] = {}
    for reading in leaf["readings"]:
        if reading["field"] not in found:
            found[reading["field"]] = used_of(reading["field"], taken_readings(leaf, reading["field"]))
    return found
