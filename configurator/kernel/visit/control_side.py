"""On which side a covering is worked, by wand, loop or motor: as somebody has said, else away from the handle."""

from configurator.kernel.message import plain
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import wording
from configurator.kernel.visit.visit_fields import is_sidelight
from configurator.kernel.visit.visit_shapes import HungLeaf

# Of each side what it is called by itself, and where nobody has said it.
SIDE_NAMES: dict[str, str] = {
    "left": wording("on the left, seen from the room"),
    "right": wording("on the right, seen from the room"),
}
SIDES_BY_RULE: dict[str, str] = {
    "left": wording("on the left, seen from the room: away from the handle, as no side is said"),
    "right": wording("on the right, seen from the room: away from the handle, as no side is said"),
}


def is_worked_aside(numbers: dict[str, float]) -> bool:
    """Return whether a covering has a wand, a loop or a motor, which is on one side of it."""
    return numbers["hand_drop"] > 0 or numbers["loop_length"] > 0 or numbers["motor_mass"] > 0


def ruled_side(one: HungLeaf) -> str:
    """Return the side where nobody has said one: at the hinges; beside the door, the far side from it.

    There a hand is out of the handle's way, a lead crosses to the frame, and what draws aside is stacked.
    """
    if is_sidelight(one["leaf"]):
        return "left" if one["leaf"] == "left-sidelight" else "right"
    return one["fit"]["door"]["hinge_side"]


def control_side(one: HungLeaf, said: str) -> str:
    """Return ``left`` or ``right``, seen from the room; nothing for what is worked by its rail or not at all."""
    if not is_worked_aside(one["fit"]["numbers"]):
        return ""
    return said if said in SIDE_NAMES else ruled_side(one)


def side_told(side: str) -> Message:
    """Return a side as a value that is told; that there is none."""
    return plain(SIDE_NAMES[side]) if side in SIDE_NAMES else plain("no wand, loop or motor")


def control_told(one: HungLeaf, said: str) -> Message:
    """Return on which side a covering is worked, and that it is so by the rule where nobody has said it."""
    side = control_side(one, said)
    if side == "" or said == side:
        return side_told(side)
    return plain(SIDES_BY_RULE[side])
