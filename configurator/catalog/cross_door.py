"""What a door file's numbers must be to each other, and to the handle that it names."""

from collections.abc import Iterable

from configurator.catalog.clauses import Term
from configurator.catalog.denied import note_denied
from configurator.catalog.kernel_door import bare_door, filled, part_filled
from configurator.catalog.length_advice import units_of
from configurator.catalog.located import ContentFile, dotted
from configurator.catalog.schema.door import DoorFile, DoorWords
from configurator.catalog.schema.from_table import optional_sections
from configurator.catalog.schema_check import schema_at
from configurator.catalog.suggest import suggestion
from configurator.kernel.message import message, plain
from configurator.kernel.say import say_length
from configurator.kernel.shapes import Door, Message
from configurator.kernel.tape.impossible import door_denied
from configurator.kernel.tape.table import parts_of_door
from configurator.kernel.tongue import ENGLISH, wording

# A tape is read to the eighth of an inch: stiles, beads and glass must add up to the leaf within one.
TAPE = 3.175
SUMS = {
    "width": wording(
        "leaf.width is {leaf}, but hinge stile {before} + bead {bead} + glass {glass} + bead {bead} "
        "+ latch stile {after} = {total}"
    ),
    "height": wording(
        "leaf.height is {leaf}, but top rail {before} + bead {bead} + glass {glass} + bead {bead} "
        "+ bottom rail {after} = {total}"
    ),
}
ROUNDED_SUMS = {
    "width": wording(
        "leaf.width is {leaf}, but hinge stile {before} + bead {bead} + glass {glass} + bead {bead} "
        "+ latch stile {after} {total}"
    ),
    "height": wording(
        "leaf.height is {leaf}, but top rail {before} + bead {bead} + glass {glass} + bead {bead} "
        "+ bottom rail {after} {total}"
    ),
}


def cross_check_door(file: ContentFile, door: DoorWords, handles: Iterable[str]) -> None:
    """Note what does not fit together."""
    bare = bare_door("", door)
    check_sums(file, door, bare)
    check_layout(file, door, parts_of_door(bare))
    check_hinges(file, door, bare["floor_gap"])
    note_denied(file, door_denied(bare_door("", filled(door))))
    known = list(handles)
    if door.handle.preset not in known:
        unknown = message(
            "handle.preset is '{name}', but there is no such handle", {"name": [door.handle.preset, "name"]}
        )
        file.at_value(("handle", "preset"), unknown, suggestion(door.handle.preset, known))


def check_sums(file: ContentFile, door: DoorWords, part: Door) -> None:
    """Check that the measured parts make the measured leaf."""
    bead = part["bead_width"]
    check_sum(file, "width", door.leaf.width, [part["stile_hinge"], bead, part["glass_width"], part["stile_latch"]])
    check_sum(file, "height", door.leaf.height, [part["rail_top"], bead, part["glass_height"], part["rail_bottom"]])


def check_sum(file: ContentFile, name: str, whole: float, parts: list[float]) -> None:
    """Check one size of the leaf, within what a tape shows; ``parts`` are part, bead, glass and part, all in mm."""
    before, bead, glass, after = parts
    total = before + bead + glass + bead + after
    if abs(total - whole) <= TAPE:
        return
    path = ("leaf", name)
    units = units_of(file.written(path))
    lengths = {"leaf": whole, "before": before, "bead": bead, "glass": glass, "after": after, "total": total}
    terms: dict[str, Term] = {term: [length, "mm"] for term, length in lengths.items()}
    # The mark of a rounded value stands in place of the equals sign.
    rounded = say_length(total, ENGLISH, units).startswith("≈")
    text = (ROUNDED_SUMS if rounded else SUMS)[name]
    file.at_value(path, message(text, terms), plain("they must agree within 1/8 in (3 mm)"), units=units)


def check_layout(file: ContentFile, door: DoorWords, parts: list[str]) -> None:
    """Check that the file speaks of the leaves it has, and of them all."""
    for name, part in optional_sections("door").items():
        given = name in door.model_fields_set
        if given and part not in parts:
            file.at_key((name,), meaningless(name, door, part), plain("take it out"))
        elif part in parts and not given and part_filled(door, name) is None:
            keys = ", ".join(schema_at(DoorFile, (name,)).model_fields)
            needed: dict[str, Term] = {"keys": [keys, "name"], "layout": [door.layout, "name"]}
            missing = message("{path} is missing", {"path": [name, "name"]})
            file.at_key((), missing, message("a mapping with {keys} is expected for the layout {layout}", needed))
    if door.handle.passive and "pair" not in parts:
        text = wording("handle.passive is yes, but the layout {layout} has no other leaf")
        file.at_value(("handle", "passive"), message(text, {"layout": [door.layout, "name"]}))


def meaningless(name: str, door: DoorWords, part: str) -> Message:
    """Return that a section has no meaning for a door, which has not that part."""
    if part == "out":
        text = wording("{path} has no meaning for an in-swing leaf, whose stop is on the other face")
        return message(text, {"path": [name, "name"]})
    terms: dict[str, Term] = {"path": [name, "name"], "layout": [door.layout, "name"]}
    return message("{path} has no meaning for the layout {layout}", terms)


def check_hinges(file: ContentFile, door: DoorWords, floor: float) -> None:
    """Check that the hinges are on the leaf; no form asks for them, so this holds for content alone."""
    for index, height in enumerate(door.hinges.heights):
        if not floor <= height <= floor + door.leaf.height:
            path = ("hinges", "heights", index)
            file.at_value(path, message("{path} is not on the leaf", {"path": [dotted(path), "name"]}))
