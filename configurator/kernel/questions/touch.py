"""The first touch of what turns about a pin with what stands still: solved in plan, box against box.

All lengths are taken from the pin with the leaf closed: ``x`` across the doorway towards the latch, ``z`` into the
room; what turns goes from x towards z. Two boxes meet first where a corner of the one comes upon a face of the other.
A point at the distance R stands at the angle asin(z / R) when closed, and comes upon a face at x = c when its own
angle is acos(c / R), upon one at z = h when it is asin(h / R) or 180° less that. A corner that stands still is the
same seen from the leaf.
"""

import math

from configurator.kernel.shapes import Outer, Solid, Touch

HALF_TURN = 180.0
NEVER = 1e9
# What is met by less than this, radians and mm, is only touched where it stands.
ONLY_TOUCHED = 1e-9


class Obstacle(Solid):
    """What stands still, as a box from the pin; ``side`` and ``face`` are the kinds of what is met from beside and from
    the room. ``near`` is its distance from the pin, ``start`` the least angle, radians, at which any of it stands.
    """

    side: str
    face: str
    near: float
    start: float


def no_touch(limit: float) -> Touch:
    """Return what a leaf meets that opens freely up to an angle, further than which nobody asks."""
    return {
        "angle": limit,
        "kind": "",
        "met": "",
        "way": "never",
        "along": 0.0,
        "out": 0.0,
        "across": 0.0,
        "ahead": 0.0,
    }


def closed_touch(kind: str, met: str) -> Touch:
    """Return what stands in something while the leaf is still closed."""
    return {**no_touch(0.0), "kind": kind, "met": met, "way": "closed"}


def earlier(one: Touch, other: Touch) -> Touch:
    """Return whichever comes first; ``one`` when both come together."""
    return other if other["angle"] < one["angle"] else one


def standing_at(x: float, z: float) -> float:
    """Return the angle, radians, at which a fixed point stands about the pin: -90° to 270°."""
    reach = math.sqrt(x * x + z * z)
    if reach == 0:
        return 0.0
    lift = math.asin(z / reach)
    return lift if x > 0 else math.pi - lift


def obstacle(names: list[str], across: list[float], up: list[float], ahead: list[float]) -> Obstacle:
    """Return what stands still; ``names`` are the kinds met from beside and from the room, spans are from the pin."""
    beside = max(across[0], -across[1], 0.0)
    before = max(ahead[0], -ahead[1], 0.0)
    start = NEVER
    for x in across:
        for z in ahead:
            start = min(start, standing_at(x, z))
    return {
        "side": names[0],
        "face": names[1],
        "x0": across[0],
        "x1": across[1],
        "y0": up[0],
        "y1": up[1],
        "z0": ahead[0],
        "z1": ahead[1],
        "near": math.sqrt(beside * beside + before * before),
        "start": start,
    }


def sooner(best: Touch, way: str, turn: float, points: list[float]) -> Touch:
    """Return the touch in a way after a turn, radians, if it comes before ``best``; ``points`` are those of a Touch."""
    angle = turn * HALF_TURN / math.pi
    if turn < -ONLY_TOUCHED or angle >= best["angle"]:
        return best
    return {
        "angle": max(0.0, angle),
        "kind": best["kind"],
        "met": best["met"],
        "way": way,
        "along": points[0],
        "out": points[1],
        "across": points[2],
        "ahead": points[3],
    }


def corner_meets_side(best: Touch, along: float, out: float, met: Obstacle) -> Touch:
    """Return the touch of a turning corner with an obstacle's side, if it comes before ``best``."""
    square = along * along + out * out
    reach = math.sqrt(square)
    if abs(met["x1"]) < reach:
        high = math.sqrt(square - met["x1"] * met["x1"])
        if met["z0"] <= high and high <= met["z1"]:
            turn = math.acos(met["x1"] / reach) - math.asin(out / reach)
            best = sooner(best, "side", turn, [along, out, met["x1"], 0.0])
    if abs(met["x0"]) < reach:
        low = -math.sqrt(square - met["x0"] * met["x0"])
        if met["z0"] <= low and low <= met["z1"]:
            lift = math.asin(out / reach)
            turn = math.acos(met["x0"] / reach)
            if met["x0"] > 0:
                best = sooner(best, "far side", -turn - lift, [along, out, met["x0"], 0.0])
            else:
                best = sooner(best, "outer side", 2 * math.pi - turn - lift, [along, out, met["x0"], 0.0])
    return best


def corner_meets_face(best: Touch, along: float, out: float, met: Obstacle) -> Touch:
    """Return the touch of a turning corner with an obstacle's face or back, if it comes before ``best``."""
    square = along * along + out * out
    reach = math.sqrt(square)
    if abs(met["z1"]) < reach:
        left = -math.sqrt(square - met["z1"] * met["z1"])
        if met["x0"] <= left and left <= met["x1"]:
            turn = math.pi - math.asin(met["z1"] / reach) - math.asin(out / reach)
            best = sooner(best, "face", turn, [along, out, 0.0, met["z1"]])
    if abs(met["z0"]) < reach:
        right = math.sqrt(square - met["z0"] * met["z0"])
        if met["x0"] <= right and right <= met["x1"]:
            turn = math.asin(met["z0"] / reach) - math.asin(out / reach)
            best = sooner(best, "back", turn, [along, out, 0.0, met["z0"]])
    return best


def standing_meets(best: Touch, outer: Outer, across: float, ahead: float) -> Touch:
    """Return the touch of a turning box's face with a corner that stands still, if it comes before ``best``."""
    square = across * across + ahead * ahead
    reach = math.sqrt(square)
    beyond = "" if across > 0 else " beyond"
    if abs(outer["z1"]) < reach:
        along = math.sqrt(square - outer["z1"] * outer["z1"])
        if outer["x0"] <= along and along <= outer["x1"]:
            turn = standing_at(across, ahead) - math.asin(outer["z1"] / reach)
            best = sooner(best, "front" + beyond, turn, [0.0, outer["z1"], across, ahead])
    if abs(outer["x0"]) < reach:
        out = math.sqrt(square - outer["x0"] * outer["x0"])
        if outer["z0"] <= out and out <= outer["z1"]:
            turn = standing_at(across, ahead) - math.acos(outer["x0"] / reach)
            best = sooner(best, "hinge edge" + beyond, turn, [outer["x0"], 0.0, across, ahead])
    if abs(outer["x1"]) < reach:
        under = -math.sqrt(square - outer["x1"] * outer["x1"])
        if outer["z0"] <= under and under <= outer["z1"]:
            turn = standing_at(across, ahead) + math.acos(outer["x1"] / reach)
            best = sooner(best, "latch edge" + beyond, turn, [outer["x1"], 0.0, across, ahead])
    return best


def lies_within(outer: Outer, met: Obstacle) -> bool:
    """Return whether a box stands in an obstacle before it has turned at all."""
    across = min(outer["x1"], met["x1"]) - max(outer["x0"], met["x0"])
    ahead = min(outer["z1"], met["z1"]) - max(outer["z0"], met["z0"])
    return across > ONLY_TOUCHED and ahead > ONLY_TOUCHED


def touch_between(best: Touch, outer: Outer, met: Obstacle) -> Touch:
    """Return the touch of a turning box with an obstacle if it comes before ``best``."""
    if lies_within(outer, met):
        return closed_touch(outer["kind"], met["side"])
    first = best
    near = met["near"] * met["near"]
    for along in [outer["x0"], outer["x1"]]:
        for out in [outer["z1"], outer["z0"]]:
            if along * along + out * out > near:
                first = corner_meets_side(first, along, out, met)
                first = corner_meets_face(first, along, out, met)
    reach = far_reach(outer)
    for across in [met["x0"], met["x1"]]:
        for ahead in [met["z0"], met["z1"]]:
            if across * across + ahead * ahead < reach * reach:
                first = standing_meets(first, outer, across, ahead)
    if first["angle"] < best["angle"]:
        return {**first, "kind": outer["kind"], "met": met["face"] if first["way"] == "face" else met["side"]}
    return best


def far_reach(outer: Outer) -> float:
    """Return the distance of a box's farthest corner from the pin."""
    out = max(-outer["z0"], outer["z1"])
    return math.sqrt(outer["x1"] * outer["x1"] + out * out)


def foremost(outer: Outer) -> float:
    """Return the greatest angle, radians, at which any of a closed box stands about the pin."""
    return standing_at(outer["x0"] if outer["z1"] > 0 else outer["x1"], outer["z1"])


def from_pin(outers: list[Outer], pin: float) -> list[Outer]:
    """Return boxes of the leaf's space as they stand from the pin, ``pin`` in front of the leaf's face."""
    return [{**outer, "z0": outer["z0"] - pin, "z1": outer["z1"] - pin} for outer in outers]


def first_touch(outers: list[Outer], obstacles: list[Obstacle], limit: float) -> Touch:
    """Return what of a turning leaf first meets which obstacle before the angle ``limit``, in degrees.

    Both stand as from the pin.
    """
    first = no_touch(limit)
    for outer in outers:
        reach = far_reach(outer)
        front = foremost(outer)
        for met in obstacles:
            soon = met["start"] - front < first["angle"] * math.pi / HALF_TURN
            if soon and reach > met["near"] and outer["y0"] < met["y1"] and outer["y1"] > met["y0"]:
                first = touch_between(first, outer, met)
    return first
