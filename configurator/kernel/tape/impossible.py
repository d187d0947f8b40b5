"""What measurements cannot be: by themselves, and what they deny each other. One rule for content and forms."""

from typing import TypedDict

from configurator.kernel.door.leaf import PANE, leaf_height, leaf_width
from configurator.kernel.lengths import drawn_in
from configurator.kernel.message import message, plain, silence
from configurator.kernel.shapes import Door, Handle, Message
from configurator.kernel.tape.field import Field
from configurator.kernel.tape.table import parts_of_door
from configurator.kernel.tongue import wording

# Of the glass, the share that muntins leave at least; and how far under the leaf's top a handle's axis stays, mm
# (common practice, no source).
LEFT_BY_MUNTINS = 0.2
ABOVE_HANDLE = 50.0


class Contradiction(TypedDict):
    """Which field the others deny, by its id, and why."""

    field: str
    why: Message


def denied(field: str, why: Message) -> Contradiction:
    """Return a contradiction."""
    return {"field": field, "why": why}


def span_message(text: str, field: Field, limits: list[float], units: str) -> Message:
    """Return a sentence about a field's two limits; in inches they are drawn in to whole eighths."""
    span = drawn_in(limits, units)
    return message(text, {"name": [field["name"], "text"], "least": [span[0], "mm"], "most": [span[1], "mm"]})


def out_of_limits(field: Field, mm: float, units: str) -> Message:
    """Return why a length cannot be a field's; silence where it can."""
    if mm >= field["limits"][0] and mm <= field["limits"][1]:
        return silence()
    return span_message(wording("{name} must lie between {least} and {most}."), field, field["limits"], units)


def out_of_usual(field: Field, mm: float, units: str) -> Message:
    """Return in what a length is unusual for a field; silence where it is not."""
    usual = field["usual"]
    if mm >= usual[0] and mm <= usual[1]:
        return silence()
    text = wording("Unusual: most are between {least} and {most}. Measure again, or leave it if it is so.")
    return span_message(text, field, usual, units)


def muntins_denied(door: Door) -> list[Contradiction]:
    """Return what is wrong with the bars that divide the glass."""
    across = (door["muntin_columns"] - 1) * door["muntin_width"]
    up = (door["muntin_rows"] - 1) * door["muntin_width"]
    kept = 1 - LEFT_BY_MUNTINS
    if "divided" in parts_of_door(door) and door["muntin_width"] <= 0:
        return [denied("muntin_width", plain("Bars that divide the glass have a width."))]
    if across >= door["glass_width"] * kept or up >= door["glass_height"] * kept:
        return [denied("muntin_width", plain("The muntins would leave hardly any glass between them."))]
    return []


def heights_denied(door: Door) -> list[Contradiction]:
    """Return what stands too high: the leaf under the ceiling, the handle on the leaf."""
    found: list[Contradiction] = []
    top = leaf_height(door) + door["floor_gap"]
    if top + door["head_gap"] > door["ceiling_height"]:
        text = wording("The leaf with the gap above it would reach {top}, higher than the ceiling.")
        found.append(denied("ceiling_height", message(text, {"top": [top + door["head_gap"], "mm"]})))
    if door["handle_height"] > top - ABOVE_HANDLE:
        found.append(denied("handle_height", plain("The handle would sit above the leaf.")))
    return found


def sidelights_denied(door: Door) -> list[Contradiction]:
    """Return what is wrong with the side panels, where there are any."""
    found: list[Contradiction] = []
    wide = door["sidelight_width"]
    if door["layout"] != "sidelights":
        return found
    if door["sidelight_glass_width"] >= wide:
        found.append(denied("sidelight_glass_width", plain("The side panel's glass would be wider than the panel.")))
    if door["wall_gap"] < wide:
        text = wording(
            "The side wall would stand within the side panel, {width}; measure past it, from the leaf's hinge edge."
        )
        found.append(denied("wall_gap", message(text, {"width": [wide, "mm"]})))
    return found


def door_denied(door: Door) -> list[Contradiction]:
    """Return what the measurements of a door deny each other, those of its handle aside."""
    found = muntins_denied(door)
    found.extend(heights_denied(door))
    if door["backset"] >= leaf_width(door) / 2:
        text = wording("The handle would sit past the middle of the leaf; measure from the latch edge.")
        found.append(denied("backset", plain(text)))
    if door["glass_recess"] + PANE > door["leaf_thickness"]:
        found.append(denied("glass_recess", plain("The glass would lie behind the leaf's other face.")))
    found.extend(sidelights_denied(door))
    return found


def handle_denied(handle: Handle) -> list[Contradiction]:
    """Return what the measurements of a handle deny each other."""
    found: list[Contradiction] = []
    if handle["gap"] >= handle["projection"]:
        text = wording("The gap behind the grip must be less than the handle's whole projection, {projection}.")
        found.append(denied("handle.gap", message(text, {"projection": [handle["projection"], "mm"]})))
    if handle["plate_thickness"] > handle["gap"]:
        text = wording("The handle's plate must not reach the grip, {gap} in front of the leaf.")
        found.append(denied("handle.plate_thickness", message(text, {"gap": [handle["gap"], "mm"]})))
    return found


def first_denied(door: Door) -> Message:
    """Return the first thing that the measurements of a door and its handle deny each other; silence where none."""
    found = door_denied(door)
    found.extend(handle_denied(door["handle"]))
    return found[0]["why"] if len(found) > 0 else silence()
