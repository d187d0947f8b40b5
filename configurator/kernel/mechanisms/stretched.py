"""Fabric gathered between two rods; nothing moves."""

import math

from configurator.kernel.mechanisms.common import whole_width
from configurator.kernel.mechanisms.gather import CLOTH_TAKES, GATHER_TAKES, LINING_TAKES
from configurator.kernel.numbers import about
from configurator.kernel.pieces import cloth_optics, solid, veil
from configurator.kernel.shapes import Fit, Foothold, Piece, Position
from configurator.kernel.tongue import wording

STRETCHED_TAKES: dict[str, list[str | float | None]] = {
    **CLOTH_TAKES,
    **LINING_TAKES,
    "side_hem": GATHER_TAKES["side_hem"],
    "pocket_turn": ["length", 12.7, wording("cloth turned under along the edge of a rod pocket")],
    "pocket_ease": ["length", 15.9, wording("how much wider a rod pocket is than its rod")],
    "rod_holder": [
        "length",
        0.0,
        wording("how much shorter the rods are than the order width, each end, for their holders"),
    ],
    "rod_mass": ["run-mass", 0.3, wording("mass of a rod by its length, kg/m")],
    "rod_diameter": ["length", None, wording("diameter of each rod")],
    "rod_stand_off": ["length", None, wording("from the mounting plane to the rod's center")],
    "fullness": ["count", None, GATHER_TAKES["fullness"][2]],
    "gather_depth": ["length", None, wording("depth of the gathered cloth between the rods")],
    "ruffle": ["length", 0.0, wording("height of the gathered header above the top rod; 0 for none")],
}


ROD_SIDES = 8


def rod_middle(fit: Fit) -> float:
    """Return the z of the rods' centers."""
    return fit["size"]["z0"] + fit["numbers"]["rod_stand_off"]


def rod_piece(fit: Fit, middle: float) -> Piece:
    """Return one rod with its center at the height ``middle``."""
    thick = fit["numbers"]["rod_diameter"]
    z = rod_middle(fit)
    rod = solid("rod", whole_width(fit), about(middle, thick), about(z, thick))
    half = thick / 2
    for i in range(ROD_SIDES):
        turn = 2 * math.pi * i / ROD_SIDES
        rod["outline"].append([z + half * math.cos(turn), middle + half * math.sin(turn)])
    return rod


def gathered(fit: Fit, kind: str, y0: float, y1: float) -> Piece:
    """Return a stretch of gathered cloth."""
    out = about(rod_middle(fit), fit["numbers"]["gather_depth"])
    return veil(kind, whole_width(fit), [y0, y1], out, cloth_optics(fit["numbers"]))


def rod_heights(fit: Fit) -> list[float]:
    """Return the heights of the rods' centers, the upper one first."""
    half = fit["numbers"]["rod_diameter"] / 2
    return [fit["size"]["y1"] - fit["numbers"]["ruffle"] - half, fit["size"]["y0"] + half]


def rod_holds(fit: Fit) -> list[Foothold]:
    """Return a holder at each end of either rod; its foot may be set a little further in, up or down."""
    numbers = fit["numbers"]
    half = numbers["bracket_width"] / 2
    span = whole_width(fit)
    slide = max(numbers["bracket_inset"], half)
    holds: list[Foothold] = []
    for y in rod_heights(fit):
        for across in [[span[0] + half, span[0] + slide], [span[1] - slide, span[1] - half]]:
            holds.append(
                {
                    "kind": "rod-holder",
                    "held": "rod",
                    "x": across[0] if across[0] < (span[0] + span[1]) / 2 else across[1],
                    "y": y,
                    "across": across,
                    "up": [y - half, y + half],
                    "screws": max(1, int(numbers["bracket_screws"])),
                    "spread": [0.0, half],
                    "width": numbers["bracket_width"],
                    "height": numbers["bracket_width"],
                }
            )
    return holds


def stretched(fit: Fit, place: Position) -> list[Piece]:
    """Return both rods and the cloth between them, with its ruffle; the position changes nothing."""
    numbers = fit["numbers"]
    high = fit["size"]["y1"]
    rods = rod_heights(fit)
    top = rods[0]
    bottom = rods[1]
    pieces = [rod_piece(fit, top), gathered(fit, "fabric", bottom, top)]
    if numbers["ruffle"] > 0:
        pieces.append(gathered(fit, "ruffle", top, high))
    pieces.append(rod_piece(fit, bottom))
    return pieces
