"""What a door file's numbers must be to each other, and to the handle that it names."""

from collections.abc import Iterable

from configurator.catalog.denied import note_denied
from configurator.catalog.kernel_door import bare_door, filled, part_filled
from configurator.catalog.length_advice import units_of
from configurator.catalog.located import ContentFile, KeyPath
from configurator.catalog.schema.door import DoorFile, DoorWords
from configurator.catalog.schema.from_table import optional_sections
from configurator.catalog.schema_check import schema_at
from configurator.catalog.suggest import what_to_write
from configurator.kernel.say import say_length
from configurator.kernel.tape.impossible import door_denied
from configurator.kernel.tape.table import parts_of_door
from configurator.kernel.tongue import ENGLISH

# A tape is read to the eighth of an inch: stiles, beads and glass must add up to the leaf within one.
TAPE = 3.175


def cross_check_door(file: ContentFile, door: DoorWords, handles: Iterable[str]) -> None:
    """Note what does not fit together."""
    check_sums(file, door)
    check_layout(file, door)
    check_hinges(file, door)
    note_denied(file, door_denied(bare_door("", filled(door))))
    known = list(handles)
    if door.handle.preset not in known:
        words = f"handle.preset is '{door.handle.preset}', but there is no such handle; "
        file.at_value(("handle", "preset"), words + what_to_write(door.handle.preset, known))


def check_sums(file: ContentFile, door: DoorWords) -> None:
    """Check that the measured parts make the measured leaf."""
    part = bare_door("", door)
    bead = ("bead", part["bead_width"])
    stiles = (("hinge stile", part["stile_hinge"]), ("latch stile", part["stile_latch"]))
    rails = (("top rail", part["rail_top"]), ("bottom rail", part["rail_bottom"]))
    across = [stiles[0], bead, ("glass", part["glass_width"]), bead, stiles[1]]
    up = [rails[0], bead, ("glass", part["glass_height"]), bead, rails[1]]
    check_sum(file, ("leaf", "width"), door.leaf.width, across)
    check_sum(file, ("leaf", "height"), door.leaf.height, up)


def check_sum(file: ContentFile, path: KeyPath, whole: float, parts: list[tuple[str, float]]) -> None:
    """Check one sum, within what a tape shows."""
    total = sum(length for _, length in parts)
    if abs(total - whole) <= TAPE:
        return
    units = units_of(file.written(path))
    working = " + ".join(f"{name} {say_length(length, ENGLISH, units)}" for name, length in parts)
    said = say_length(total, ENGLISH, units)
    # The mark of a rounded value stands in place of the equals sign.
    result = said if said.startswith("≈") else f"= {said}"
    words = f"leaf.{path[1]} is {say_length(whole, ENGLISH, units)}, but {working} {result}"
    file.at_value(path, f"{words}; they must agree within 1/8 in (3 mm)")


def check_layout(file: ContentFile, door: DoorWords) -> None:
    """Check that the file speaks of the leaves it has, and of them all."""
    parts = parts_of_door(bare_door("", door))
    for name, part in optional_sections("door").items():
        given = name in door.model_fields_set
        if given and part not in parts:
            file.at_key((name,), f"{name} has no meaning for {without(door, part)}; take it out")
        elif part in parts and not given and part_filled(door, name) is None:
            keys = ", ".join(schema_at(DoorFile, (name,)).model_fields)
            file.at_key((), f"{name} is missing; a mapping with {keys} is expected for the layout {door.layout}")
    if door.handle.passive and "pair" not in parts:
        file.at_value(("handle", "passive"), f"handle.passive is yes, but the layout {door.layout} has no other leaf")


def without(door: DoorWords, part: str) -> str:
    """Return which door has not a part."""
    if part == "out":
        return "an in-swing leaf, whose stop is on the other face"
    return f"the layout {door.layout}"


def check_hinges(file: ContentFile, door: DoorWords) -> None:
    """Check that the hinges are on the leaf; no form asks for them, so this holds for content alone."""
    floor = bare_door("", door)["floor_gap"]
    for index, height in enumerate(door.hinges.heights):
        if not floor <= height <= floor + door.leaf.height:
            file.at_value(("hinges", "heights", index), f"hinges.heights.{index + 1} is not on the leaf")
