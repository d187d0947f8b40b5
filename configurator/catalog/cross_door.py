"""What a door file's numbers must be to each other, and to the handle that it names."""

from collections.abc import Iterable

from configurator.catalog.length_advice import units_of
from configurator.catalog.located import ContentFile, KeyPath
from configurator.catalog.schema.door import DoorFile
from configurator.catalog.suggest import what_to_write
from configurator.kernel.door.leaf import PANE
from configurator.kernel.say import say_length

# A tape is read to the eighth of an inch: stiles, beads and glass must add up to the leaf within one.
TAPE = 3.175

PARTS_OF_LAYOUT = {
    "single": (),
    "pair": ("pair",),
    "fixed-pair": ("pair",),
    "sidelights": ("sidelight",),
}


def cross_check_door(file: ContentFile, door: DoorFile, handles: Iterable[str]) -> None:
    """Note what does not fit together."""
    check_sums(file, door)
    check_layout(file, door)
    check_glass(file, door)
    check_heights(file, door)
    known = list(handles)
    if door.handle.preset not in known:
        words = f"handle.preset is '{door.handle.preset}', but there is no such handle; "
        file.at_value(("handle", "preset"), words + what_to_write(door.handle.preset, known))


def check_sums(file: ContentFile, door: DoorFile) -> None:
    """Check that the measured parts make the measured leaf."""
    stiles, rails, bead = door.stiles, door.rails, ("bead", door.bead.width)
    across = [("hinge stile", stiles.hinge), bead, ("glass", door.glass.width), bead, ("latch stile", stiles.latch)]
    up = [("top rail", rails.top), bead, ("glass", door.glass.height), bead, ("bottom rail", rails.bottom)]
    check_sum(file, ("leaf", "width"), door.leaf.width, across)
    check_sum(file, ("leaf", "height"), door.leaf.height, up)


def check_sum(file: ContentFile, path: KeyPath, whole: float, parts: list[tuple[str, float]]) -> None:
    """Check one sum, within what a tape shows."""
    total = sum(length for _, length in parts)
    if abs(total - whole) <= TAPE:
        return
    units = units_of(file.written(path))
    working = " + ".join(f"{name} {say_length(length, units)}" for name, length in parts)
    said = say_length(total, units)
    # The mark of a rounded value stands in place of the equals sign.
    result = said if said.startswith("≈") else f"= {said}"
    words = f"leaf.{path[1]} is {say_length(whole, units)}, but {working} {result}"
    file.at_value(path, f"{words}; they must agree within 1/8 in (3 mm)")


def check_layout(file: ContentFile, door: DoorFile) -> None:
    """Check that the file speaks of the leaves it has, and of them all."""
    parts = PARTS_OF_LAYOUT[door.layout]
    for name in ("pair", "sidelight"):
        given = name in door.model_fields_set
        if given and name not in parts:
            file.at_key((name,), f"{name} has no meaning for the layout {door.layout}; take it out")
    if door.layout == "sidelights" and door.sidelight is None:
        file.at_key((), "sidelight is missing; a mapping with width, glass is expected for the layout sidelights")
    if door.sidelight and door.sidelight.glass >= door.sidelight.width:
        file.at_value(("sidelight", "glass"), "sidelight.glass is not narrower than sidelight.width")
    if door.sidelight and door.gaps.wall < door.sidelight.width:
        units = units_of(file.written(("sidelight", "width")))
        words = f"gaps.wall is {say_length(door.gaps.wall, units)}, less than sidelight.width: "
        file.at_value(("gaps", "wall"), words + "measure from the leaf's hinge edge, the sidelight included")
    if door.swing == "in" and door.stop:
        file.at_key(("stop",), "stop has no meaning for an in-swing leaf, whose stop is on the other face; take it out")
    if door.handle.passive and door.layout not in ("pair", "fixed-pair"):
        file.at_value(("handle", "passive"), f"handle.passive is yes, but the layout {door.layout} has no other leaf")


def check_glass(file: ContentFile, door: DoorFile) -> None:
    """Check the pane's depth and the muntins in front of it."""
    if door.glass.recess + PANE > door.leaf.thickness:
        file.at_value(("glass", "recess"), "glass.recess puts the glass behind the leaf's other face")
    bars = door.muntins
    if (bars.columns > 1 or bars.rows > 1) and bars.width == 0:
        file.at_key(("muntins", "width"), "muntins.width is missing; a length such as 7/8 in or 22 mm is expected")
    across = (bars.columns - 1) * bars.width
    up = (bars.rows - 1) * bars.width
    if across >= door.glass.width or up >= door.glass.height:
        file.at_value(("muntins", "width"), "muntins.width leaves no glass between the muntins")


def check_heights(file: ContentFile, door: DoorFile) -> None:
    """Check what stands at a height: ceiling, hinges and handle."""
    top = door.gaps.floor + door.leaf.height
    if door.room.ceiling < top + door.gaps.head:
        file.at_value(("room", "ceiling"), "room.ceiling is lower than the leaf's top edge with the gap above it")
    for index, height in enumerate(door.hinges.heights):
        if not door.gaps.floor <= height <= top:
            file.at_value(("hinges", "heights", index), f"hinges.heights.{index + 1} is not on the leaf")
    if door.handle.backset >= door.leaf.width / 2:
        file.at_value(("handle", "backset"), "handle.backset is more than half the leaf; measure from the latch edge")
