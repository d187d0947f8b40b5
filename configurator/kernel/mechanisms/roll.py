"""What the rolled mechanisms share: the roll as a spiral, its cassette or brackets, its cloth line."""

import math

from configurator.kernel.pieces import solid
from configurator.kernel.shapes import Piece, Position, Size

ROLL_TAKES: dict[str, list[str | float | None]] = {
    "tube": ["size", None, "outer diameter of the tube"],
    "cloth_thickness": ["length", None, "thickness of the cloth as it rolls, all layers together"],
    "wraps_spare": ["length", 200.0, "cloth that stays on the tube when the covering is down"],
    "cassette": ["switch", 0.0, "1 when the roll sits in a cassette"],
    "roll_clear": ["length", 4.0, "air between the full roll and what is behind it"],
    "bracket_gap": ["length", 15.0, "how much narrower the cloth is than the headrail, each side"],
}

ROLL_SIDES = 24
# Sheet metal, as brackets are usually bent from; no source.
BRACKET = 3.0


def roll_diameter(tube: float, thickness: float, length: float) -> float:
    """Return the diameter of a roll: the cloth's edge area t x L lies as a ring round the tube."""
    return math.sqrt(tube * tube + 4 * thickness * max(length, 0.0) / math.pi)


def full_roll(numbers: dict[str, float], drop: float) -> float:
    """Return the diameter with the whole drop and the spare wraps rolled up."""
    return roll_diameter(numbers["tube"], numbers["cloth_thickness"], drop + numbers["wraps_spare"])


def roll_centre(numbers: dict[str, float], size: Size) -> list[float]:
    """Return the roll's centre as ``[y, z]``: mid-cassette, or hung so that the full roll clears."""
    if size["cassette"]["roll"] > 0:
        cassette = size["cassette"]
        return [size["y1"] - cassette["height"] / 2, size["z0"] + cassette["depth"] / 2]
    radius = full_roll(numbers, size["y1"] - size["y0"]) / 2
    return [size["y1"] - radius, size["z0"] + numbers["roll_clear"] + radius]


def head_height(numbers: dict[str, float], size: Size) -> float:
    """Return how far the cassette, or the full open roll, reaches down from the top."""
    if size["cassette"]["roll"] > 0:
        return size["cassette"]["height"]
    return full_roll(numbers, size["y1"] - size["y0"])


def cloth_span(numbers: dict[str, float], size: Size) -> list[float]:
    """Return the cloth's span along x: narrower than the headrail by the brackets."""
    return [size["x0"] + numbers["bracket_gap"], size["x1"] - numbers["bracket_gap"]]


def circle_outline(y: float, z: float, radius: float) -> list[list[float]]:
    """Return a circle as a polygon of ``[z, y]`` points."""
    points: list[list[float]] = []
    for i in range(ROLL_SIDES):
        turn = 2 * math.pi * i / ROLL_SIDES
        points.append([z + radius * math.cos(turn), y + radius * math.sin(turn)])
    return points


def roll_pieces(numbers: dict[str, float], size: Size, place: Position, wound: float) -> list[Piece]:
    """Return the roll with ``wound`` millimetres of cloth on it, and its cassette or brackets."""
    centre = roll_centre(numbers, size)
    radius = roll_diameter(numbers["tube"], numbers["cloth_thickness"], wound + numbers["wraps_spare"]) / 2
    cloth = cloth_span(numbers, size)
    y = centre[0]
    z = centre[1]
    roll = solid("roll", cloth[0], cloth[1], y - radius, y + radius, z - radius, z + radius)
    if not place["coarse"]:
        roll["outline"] = circle_outline(y, z, radius)
    pieces: list[Piece] = []
    if size["cassette"]["roll"] > 0:
        cassette = size["cassette"]
        y0 = size["y1"] - cassette["height"]
        z1 = size["z0"] + cassette["depth"]
        pieces.append(solid("headrail", size["x0"], size["x1"], y0, size["y1"], size["z0"], z1))
    else:
        y0 = size["y1"] - head_height(numbers, size)
        front = z + numbers["tube"] / 2
        pieces.append(solid("bracket", size["x0"], size["x0"] + BRACKET, y0, size["y1"], size["z0"], front))
        pieces.append(solid("bracket", size["x1"] - BRACKET, size["x1"], y0, size["y1"], size["z0"], front))
    pieces.append(roll)
    return pieces
