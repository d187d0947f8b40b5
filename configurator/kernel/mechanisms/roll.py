"""What the rolled mechanisms share: the roll as a spiral, its cassette or brackets, its cloth line."""

import math
from typing import TypedDict

from configurator.kernel.mechanisms.cassette import cassette_for
from configurator.kernel.mechanisms.common import whole_width
from configurator.kernel.mechanisms.gather import CLOTH_TAKES
from configurator.kernel.mechanisms.holds import bracket_at, brackets_along
from configurator.kernel.numbers import about
from configurator.kernel.pieces import solid
from configurator.kernel.shapes import Fit, Foothold, Piece, Position
from configurator.kernel.tongue import wording

ROLL_TAKES: dict[str, list[str | float | None]] = {
    "tube": ["size", None, wording("outer diameter of the tube")],
    "cloth_thickness": ["length", None, wording("thickness of the cloth as it rolls, all layers together")],
    "wraps_spare": ["length", 200.0, wording("cloth that stays on the tube when the covering is down")],
    "roll_clear": ["length", 4.0, wording("air between the full roll and what is behind it")],
    "bracket_gap": ["length", 15.0, wording("how much narrower the cloth is than the headrail, each side")],
    "end_cap": ["length", 3.0, wording("thickness of each end cap of the cassette")],
    "tube_mass": ["run-mass", 0.5, wording("mass of the tube by its length, kg/m")],
    **CLOTH_TAKES,
}

ROLL_SIDES = 24
# Sheet metal, as brackets are usually bent from; no source.
BRACKET = 3.0
# Air that a turning roll keeps to its cassette, all round.
ROLL_AIR = 2.0


class Hang(TypedDict):
    """The roll with the cloth still on it: its center, its radius, and the z of the cloth's back as it leaves it."""

    y: float
    z: float
    radius: float
    back: float


def roll_diameter(tube: float, thickness: float, length: float) -> float:
    """Return the diameter of a roll: the cloth's edge area t x L lies as a ring round the tube."""
    return math.sqrt(tube * tube + 4 * thickness * max(length, 0.0) / math.pi)


def wound_diameter(fit: Fit, wound: float) -> float:
    """Return the roll's diameter with ``wound`` of the drop and the spare wraps rolled up."""
    numbers = fit["numbers"]
    return roll_diameter(numbers["tube"], numbers["cloth_thickness"], wound + numbers["wraps_spare"])


def full_roll(fit: Fit) -> float:
    """Return the diameter with the whole drop and the spare wraps rolled up."""
    return wound_diameter(fit, fit["size"]["y1"] - fit["size"]["y0"])


def set_roll_head(fit: Fit) -> float:
    """Set the smallest cassette that takes the full roll, if one is wanted; return how far cassette or roll reach down.

    Where no cassette takes it the size has none, and the mount says so.
    """
    if fit["numbers"]["cassette"] > 0:
        fit["size"]["cassette"] = cassette_for(fit["family"]["cassettes"], full_roll(fit) + ROLL_AIR)
    return roll_head(fit)


def roll_head(fit: Fit) -> float:
    """Return how far the cassette, or the full open roll, reaches down from the top."""
    if fit["size"]["cassette"]["roll"] > 0:
        return fit["size"]["cassette"]["height"]
    return full_roll(fit)


def roll_hang(fit: Fit, wound: float) -> Hang:
    """Return the roll with ``wound`` of the drop on it: mid-cassette, or hung so that the full roll clears."""
    size = fit["size"]
    radius = wound_diameter(fit, wound) / 2
    if size["cassette"]["roll"] > 0:
        y = size["y1"] - size["cassette"]["height"] / 2
        z = size["z0"] + size["cassette"]["depth"] / 2
    else:
        full = full_roll(fit) / 2
        y = size["y1"] - full
        z = size["z0"] + fit["numbers"]["roll_clear"] + full
    return {"y": y, "z": z, "radius": radius, "back": z - radius}


def cloth_span(fit: Fit) -> list[float]:
    """Return the cloth's span along x: narrower than the headrail by the brackets."""
    gap = fit["numbers"]["bracket_gap"]
    return [fit["size"]["x0"] + gap, fit["size"]["x1"] - gap]


def circle_outline(y: float, z: float, radius: float) -> list[list[float]]:
    """Return a circle as a polygon of ``[z, y]`` points."""
    points: list[list[float]] = []
    for i in range(ROLL_SIDES):
        turn = 2 * math.pi * i / ROLL_SIDES
        points.append([z + radius * math.cos(turn), y + radius * math.sin(turn)])
    return points


def roll_pieces(fit: Fit, place: Position, hang: Hang) -> list[Piece]:
    """Return the roll and its cassette or brackets."""
    size = fit["size"]
    y = hang["y"]
    z = hang["z"]
    roll = solid("roll", cloth_span(fit), about(y, hang["radius"] * 2), about(z, hang["radius"] * 2))
    if not place["coarse"]:
        roll["outline"] = circle_outline(y, z, hang["radius"])
    up = [size["y1"] - roll_head(fit), size["y1"]]
    if size["cassette"]["roll"] > 0:
        out = [size["z0"], size["z0"] + size["cassette"]["depth"]]
        return [solid("headrail", whole_width(fit), up, out), roll]
    out = [size["z0"], z + fit["numbers"]["tube"] / 2]
    return [
        solid("bracket", [size["x0"], size["x0"] + BRACKET], up, out),
        solid("bracket", [size["x1"] - BRACKET, size["x1"]], up, out),
        roll,
    ]


def bottom_bar(fit: Fit, bottom: float, middle: float, depth: float) -> Piece:
    """Return the bar at the foot of the cloth, its lower edge at ``bottom``, of a ``depth`` about ``middle``."""
    return solid("bottom-rail", cloth_span(fit), [bottom, bottom + fit["numbers"]["rail_height"]], about(middle, depth))


def roll_holds(fit: Fit) -> list[Foothold]:
    """Return the brackets of a cassette, or those at both ends of an open roll, whose feet turn inwards."""
    head = roll_head(fit)
    if fit["size"]["cassette"]["roll"] > 0:
        return brackets_along(fit, head)
    size = fit["size"]
    half = fit["numbers"]["bracket_width"] / 2
    up = [size["y1"] - head, size["y1"]]
    ends = [size["x0"] + half, size["x1"] - half]
    holds = [bracket_at(fit, x, [x, x], up) for x in ends]
    for hold in holds:
        hold["held"] = "roll"
    return holds
