"""Do the parts of a leaf make its whole? Stiles, beads and glass against the leaf, across and in height."""

from typing import TypedDict

from configurator.kernel.message import is_said, message, plain, silence
from configurator.kernel.shapes import Message
from configurator.kernel.tape.leaf_fields import LEAF_FIELDS
from configurator.kernel.tongue import wording
from configurator.kernel.visit.finding import are_read, read_mm, slip_found
from configurator.kernel.visit.visit_shapes import Finding, Used

# Five readings, each to a sixteenth, add up to within a quarter of an inch (common practice, no source).
PARTS_WITHIN = 6.4


class Whole(TypedDict):
    """One direction of a leaf: its whole, its glass, what lies on either side of that, and how both are said."""

    field: str
    glass: str
    sides: list[str]
    text: str
    beside: str
    again: str


WHOLES: list[Whole] = [
    {
        "field": "leaf_width",
        "glass": "glass_width",
        "sides": ["stile_hinge", "stile_latch"],
        "text": wording(
            "Across, glass, beads and both sides make {parts}, but the whole leaf was read as {whole}: {off} apart."
        ),
        "beside": wording("A leaf of {whole} would leave only {left} beside the glass, beads and both stiles in it."),
        "again": wording("Measure the whole width again; if it stays, the glass and what is beside it on both sides."),
    },
    {
        "field": "leaf_height",
        "glass": "glass_height",
        "sides": ["rail_top", "rail_bottom"],
        "text": wording(
            "In height, glass, beads and both rails make {parts}, but the whole leaf was read as {whole}: {off} apart."
        ),
        "beside": wording(
            "A leaf of {whole} would leave only {left} above and below the glass, beads and rails in it."
        ),
        "again": wording("Measure the whole height again; if it stays, the glass and the rails above and below it."),
    },
]


def parts_of_leaf(whole: Whole, used: dict[str, Used]) -> float:
    """Return what glass, beads and both sides make, all of which have been read."""
    sides = read_mm(used, whole["sides"][0]) + read_mm(used, whole["sides"][1])
    return sides + read_mm(used, whole["glass"]) + read_mm(used, "bead_width") * 2


def least_sides(whole: Whole) -> float:
    """Return the least that both sides of the glass can be together."""
    least = [field["limits"][0] for field in LEAF_FIELDS if field["id"] in whole["sides"]]
    return least[0] + least[1]


def whole_denied(whole: Whole, used: dict[str, Used]) -> Message:
    """Return why a whole leaf cannot be as it was read; nothing is said where it can."""
    read = read_mm(used, whole["field"])
    left = read - read_mm(used, whole["glass"])
    terms: dict[str, list[float | str]] = {"whole": [read, "mm"], "left": [left, "mm"]}
    if left < least_sides(whole):
        return message(whole["beside"], terms)
    fields = ["bead_width"]
    fields.extend(whole["sides"])
    if not are_read(used, fields):
        return silence()
    parts = parts_of_leaf(whole, used)
    if abs(parts - read) <= PARTS_WITHIN:
        return silence()
    return message(whole["text"], {**terms, "parts": [parts, "mm"], "off": [abs(parts - read), "mm"]})


def part_findings(leaf: str, used: dict[str, Used]) -> list[Finding]:
    """Return where a whole leaf and its parts cannot all be as they were read."""
    found: list[Finding] = []
    for whole in WHOLES:
        if are_read(used, [whole["field"], whole["glass"]]):
            why = whole_denied(whole, used)
            if is_said(why):
                found.append(slip_found(leaf, whole["field"], why, plain(whole["again"])))
    return found
