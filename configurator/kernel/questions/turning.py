"""A leaf turning about its pin: what it meets, and what width it leaves in the doorway.

Plan geometry, hinges on the left. Distances are taken from the pin: ``along`` the leaf
towards the latch, ``out`` of its room face into the room. Angles are degrees; 0 is closed.
"""

import math
from typing import TypedDict

from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.door.opening import has_passive
from configurator.kernel.numbers import clamp
from configurator.kernel.questions.outline import Outer
from configurator.kernel.shapes import Door, Piece

RIGHT_ANGLE = 90.0
HALF_TURN = 180.0
# The stop of an in-swing leaf laps its other face, where nobody measures: common practice, no source.
UNSEEN_STOP = 12.7
# Less than this a leaf cannot be walked past: half of a right angle, no source.
LEAST_TURN = 45.0


class Touch(TypedDict):
    """The angle at which a turning leaf meets something, and which point it is; 180 and no kind for never.

    ``along`` and ``out`` are the point's place from the pin.
    """

    angle: float
    kind: str
    along: float
    out: float


def no_touch() -> Touch:
    """Return what a leaf meets that opens all the way."""
    return {"angle": HALF_TURN, "kind": "", "along": 0.0, "out": 0.0}


def turn_to_wall(along: float, out: float, wall: float) -> float:
    """Return the angle at which a point of an in-swing leaf meets a side wall; 180 when it never does.

    A point at the distance R = sqrt(along² + out²) from the pin stands, with the leaf open by θ,
    at R·cos(turn + atan2(out, along)) across the doorway. It meets a wall ``wall`` beyond the pin when
    that is -wall: turn = acos(-wall / R) - atan2(out, along), when R > wall. The wall in which the door
    itself stands ends every turn at 180.
    """
    reach = math.sqrt(along * along + out * out)
    if reach <= wall:
        return HALF_TURN
    turn = math.acos(-wall / reach) - math.atan2(out, along)
    return clamp(turn * HALF_TURN / math.pi, 0.0, HALF_TURN)


def first_touch(outers: list[Outer], pin: float, wall: float) -> Touch:
    """Return what first meets the side wall, and at which angle; ``pin`` is the pin's distance in front of the face."""
    first = no_touch()
    for outer in outers:
        out = outer["z1"] - pin
        for along in [outer["x0"], outer["x1"]]:
            turn = turn_to_wall(along, out, wall)
            if turn < first["angle"]:
                first = {"angle": turn, "kind": outer["kind"], "along": along, "out": out}
    return first


def earlier(one: Touch, other: Touch) -> Touch:
    """Return whichever comes first; ``one`` when both come together."""
    return other if other["angle"] < one["angle"] else one


def corners_within(piece: Piece, pin: float, reach: float) -> list[list[float]]:
    """Return ``[along, out]`` of a piece's plan corners from the pin, and of where the circle of ``reach`` cuts it."""
    back = max(piece["z0"] - pin, 0.0)
    front = max(piece["z1"] - pin, 0.0)
    points: list[list[float]] = []
    for out in [back, front]:
        far = math.sqrt(max(reach * reach - out * out, 0.0))
        if piece["x0"] < far and piece["x1"] > -far:
            points.append([max(piece["x0"], -far), out])
            points.append([min(piece["x1"], far), out])
    for along in [piece["x0"], piece["x1"]]:
        far = math.sqrt(max(reach * reach - along * along, 0.0))
        if back < far and front >= far:
            points.append([along, far])
    return points


def turn_to_piece(piece: Piece, pin: float, width: float) -> float:
    """Return the angle at which an in-swing leaf's room face meets a piece that stays on the wall; 180 for never.

    The face passes a corner at the distance R from the pin when turn = atan2(out, along) + asin(pin / R).
    Only what lies within the circle of the leaf's far corner can be met, and nothing nearer to the pin
    than the face stands from it.
    """
    least = HALF_TURN
    for point in corners_within(piece, pin, math.sqrt(width * width + pin * pin)):
        distance = math.sqrt(point[0] * point[0] + point[1] * point[1])
        if distance > pin:
            turn = math.atan2(point[1], point[0]) + math.asin(pin / distance)
            least = min(least, turn * HALF_TURN / math.pi)
    return least


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
