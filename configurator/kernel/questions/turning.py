"""A leaf turning about its pin: what it meets, and what width it leaves in the doorway.

Plan geometry, hinges on the left. Angles are degrees; 0 is closed.
"""

import math

from configurator.kernel.door.leaf import leaf_box, leaf_width
from configurator.kernel.door.opening import has_passive
from configurator.kernel.questions.around import BEYOND_ALL, other_leaf_around, walls_around
from configurator.kernel.questions.outline import handle_outline, own_outline
from configurator.kernel.questions.touch import HALF_TURN, closed_touch, earlier, first_touch, from_pin
from configurator.kernel.shapes import Door, Outer, Touch

RIGHT_ANGLE = 90.0
# The stop of an in-swing leaf laps its other face, where nobody measures: common practice, no source.
UNSEEN_STOP = 12.7
# Less than this a leaf cannot be walked past: half of a right angle, no source.
LEAST_TURN = 45.0


def own_turn(door: Door) -> Touch:
    """Return what stops an in-swing leaf and its handle before half a turn, without any covering.

    The leaf's own edge is taken to pass the other leaf's: it is bevelled for that.
    """
    pin = door["hinge_pin_out"]
    walls = first_touch(from_pin(own_outline(door), pin), walls_around(door), HALF_TURN)
    if not has_passive(door):
        return walls
    return earlier(walls, first_touch(from_pin(handle_outline(door), pin), other_leaf_around(door, []), HALF_TURN))


def covered_turn(door: Door, covering: list[Outer]) -> Touch:
    """Return what stops the covering on an in-swing leaf before half a turn, a pair's other leaf dressed alike."""
    over = over_head(door, covering)
    if over != "":
        return closed_touch(over, "head")
    turning = from_pin(covering, door["hinge_pin_out"])
    obstacles = walls_around(door)
    obstacles.extend(other_leaf_around(door, covering))
    return first_touch(turning, obstacles, HALF_TURN)


def over_head(door: Door, outers: list[Outer]) -> str:
    """Return the kind of what reaches so high on the leaf that it cannot pass under the head; empty for none.

    Under the head of an in-swing leaf is under the opening's, where it does not hang in front of reveal and casing;
    of an out-swing leaf, under the stop that laps its room face.
    """
    line = leaf_box(door)["y1"] - door["stop_lap"]
    deep = BEYOND_ALL
    if door["swing"] == "in":
        line = leaf_box(door)["y1"] + door["head_gap"]
        deep = door["reveal"] + door["casing_projection"]
    for outer in outers:
        if outer["y1"] > line and outer["z0"] < deep:
            return outer["kind"]
    return ""


def latch_stop(door: Door) -> float:
    """Return how far the stop, or a pair's astragal, stands into the doorway at the latch."""
    if door["swing"] == "in":
        return UNSEEN_STOP
    if has_passive(door):
        return max(door["stop_lap"], (door["astragal_width"] - door["meeting_gap"]) / 2)
    return door["stop_lap"]


def leaf_front(door: Door) -> float:
    """Return where the face of the leaf that bounds the doorway stands at 90 degrees, from the closed hinge edge."""
    return door["leaf_thickness"] + door["hinge_pin_out"]


def clear_width(door: Door, turn: float, front: float) -> float:
    """Return the width left in the doorway from the leaf's face to the stop, at least 0.

    leaf - stop - (leaf·cos t + front·sin t), with t the leaf's ``turn`` but no more than 90, and ``front``
    how far its face (or what hangs on it) stands from the pin. Measured as in 2010 ADA Standards
    404.2.3 and IRC R311.2: face of the door to the stop, door open 90 degrees.
    """
    width = leaf_width(door)
    angle = min(turn, RIGHT_ANGLE) * math.pi / HALF_TURN
    return max(0.0, width - latch_stop(door) - (width * math.cos(angle) + front * math.sin(angle)))


def meets_stop(door: Door, outers: list[Outer]) -> bool:
    """Return whether an outer corner on an out-swing leaf's room face strikes the stop at the latch as it turns.

    At the distance R from the pin, the corner first swings towards the latch; it crosses the stop's line,
    S from the pin, when R > S, sqrt(R² - S²) in front of the pin, and strikes if that is still inside the room.
    """
    line = leaf_width(door) - latch_stop(door)
    front = leaf_front(door)
    for outer in outers:
        out = outer["z1"] + front
        if outer["x1"] * outer["x1"] + out * out > line * line + front * front:
            return True
    return False
