"""Fabric gathered between two rods; nothing moves."""

import math

from configurator.kernel.mechanisms.gather import GATHER_TAKES
from configurator.kernel.pieces import box, solid
from configurator.kernel.shapes import Piece, Position, Size

STRETCHED_TAKES: dict[str, list[str | float | None]] = {
    "rod_diameter": ["length", None, "diameter of each rod"],
    "rod_stand_off": ["length", None, "from the mounting plane to the rod's centre"],
    "fullness": ["count", None, GATHER_TAKES["fullness"][2]],
    "bolt_width": GATHER_TAKES["bolt_width"],
    "side_allowance": GATHER_TAKES["side_allowance"],
    "cut_allowance": GATHER_TAKES["cut_allowance"],
    "pattern_repeat": GATHER_TAKES["pattern_repeat"],
    "gather_depth": ["length", None, "depth of the gathered cloth between the rods"],
    "ruffle": ["length", 0.0, "height of the gathered header above the top rod; 0 for none"],
}


def rod_piece(numbers: dict[str, float], size: Size, kind: str, middle: float) -> Piece:
    """Return one rod with its centre at the height ``middle``."""
    half = numbers["rod_diameter"] / 2
    z = size["z0"] + numbers["rod_stand_off"]
    rod = solid(kind, size["x0"], size["x1"], middle - half, middle + half, z - half, z + half)
    cut = half * math.sqrt(0.5)
    rod["outline"] = [
        [z + half, middle],
        [z + cut, middle + cut],
        [z, middle + half],
        [z - cut, middle + cut],
        [z - half, middle],
        [z - cut, middle - cut],
        [z, middle - half],
        [z + cut, middle - cut],
    ]
    return rod


def gathered(numbers: dict[str, float], size: Size, kind: str, y0: float, y1: float) -> Piece:
    """Return a stretch of gathered cloth."""
    z = size["z0"] + numbers["rod_stand_off"]
    half = numbers["gather_depth"] / 2
    return box(
        "covering",
        kind,
        size["x0"],
        size["x1"],
        y0,
        y1,
        z - half,
        z + half,
        numbers["cloth_view"],
        numbers["cloth_light"],
    )


def stretched(numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return both rods and the cloth between them, with its ruffle; the position changes nothing."""
    half = numbers["rod_diameter"] / 2
    top = size["y1"] - numbers["ruffle"] - half
    bottom = size["y0"] + half
    pieces = [rod_piece(numbers, size, "rod", top), gathered(numbers, size, "fabric", bottom, top)]
    if numbers["ruffle"] > 0:
        pieces.append(gathered(numbers, size, "ruffle", top, size["y1"]))
    pieces.append(rod_piece(numbers, size, "rod", bottom))
    return pieces
