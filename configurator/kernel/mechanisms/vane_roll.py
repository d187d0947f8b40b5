"""Soft vanes between two sheers: they tilt when fully down, and all of it rolls away.

Each vane is fixed by one edge to the back sheer and by the other to the front sheer. Turning the
roll a little lifts the front sheer, which levels the vanes (tilt 0) and carries the sheers apart;
let down again the vanes hang closed between them (tilt 90). Rolling, they always hang closed.
The vanes are fixed to the cloth, so they travel with the bottom rail and wind on at the top. The
bottom rail turns with them, so it always reaches from sheer to sheer.
"""

import math

from configurator.kernel.mechanisms.blades import FLAT_BLADE, blade_deep, blade_radians, level_blade
from configurator.kernel.mechanisms.common import lower_edge
from configurator.kernel.mechanisms.roll import (
    ROLL_TAKES,
    cloth_span,
    head_height,
    roll_centre,
    roll_diameter,
    roll_pieces,
)
from configurator.kernel.pieces import box, solid
from configurator.kernel.shapes import Piece, Position, Size

VANE_ROLL_TAKES: dict[str, list[str | float | None]] = {
    "tube": ROLL_TAKES["tube"],
    "cloth_thickness": ROLL_TAKES["cloth_thickness"],
    "wraps_spare": ROLL_TAKES["wraps_spare"],
    "cassette": ROLL_TAKES["cassette"],
    "roll_clear": ROLL_TAKES["roll_clear"],
    "bracket_gap": ROLL_TAKES["bracket_gap"],
    "vane_width": ["length", None, "width of a vane from sheer to sheer"],
    "vane_pitch": ["size", None, "distance between vanes; less than their width, so that they close"],
    "vane_thickness": ["length", 1.0, "thickness of a vane"],
    "sheer_thickness": ["length", 0.4, "thickness of each sheer"],
    "sheer_view": ["share", None, "how much of the view comes through one sheer"],
    "sheer_light": ["share", None, "how much of the light comes through one sheer"],
}


def hung_vanes(
    numbers: dict[str, float], cloth: list[float], bottom: float, top: float, back: float, tilt: float
) -> list[Piece]:
    """Return the vanes off the roll; the lowest just clears the rail when closed."""
    width = numbers["vane_width"]
    drop = width * math.sin(blade_radians(tilt)) / 2
    middle = back + blade_deep(width, numbers["vane_thickness"], tilt) / 2
    pieces: list[Piece] = []
    centre = bottom + width - drop
    while True:
        vane = level_blade(
            "vane",
            FLAT_BLADE,
            cloth[0],
            cloth[1],
            centre,
            middle,
            width,
            numbers["vane_thickness"],
            tilt,
            numbers["cloth_view"],
            numbers["cloth_light"],
        )
        if vane["y0"] >= top:
            return pieces
        vane["y0"] = max(vane["y0"], bottom)
        vane["y1"] = min(vane["y1"], top)
        vane["outline"] = [[point[0], min(max(point[1], bottom), top)] for point in vane["outline"]]
        pieces.append(vane)
        centre = centre + numbers["vane_pitch"]


def vane_roll(numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return roll and cassette, back sheer, vanes, front sheer and the bottom rail."""
    rail = numbers["rail_height"]
    bottom = lower_edge(size, head_height(numbers, size) + rail, place)
    wound = bottom - size["y0"]
    centre = roll_centre(numbers, size)
    radius = roll_diameter(numbers["tube"], numbers["cloth_thickness"], wound + numbers["wraps_spare"]) / 2
    cloth = cloth_span(numbers, size)
    sheer = numbers["sheer_thickness"]
    top = centre[0]
    low = bottom + rail
    back = centre[1] - radius
    apart = blade_deep(numbers["vane_width"], numbers["vane_thickness"], place["tilt"])
    front = back + sheer + apart

    def hung(kind: str, z0: float, z1: float, view: float, light: float) -> Piece:
        return box("covering", kind, cloth[0], cloth[1], low, top, z0, z1, view, light)

    pieces = roll_pieces(numbers, size, place, wound)
    pieces.append(hung("sheer", back, back + sheer, numbers["sheer_view"], numbers["sheer_light"]))
    if place["coarse"]:
        pieces.append(hung("vane", back + sheer, front, numbers["cloth_view"], numbers["cloth_light"]))
    else:
        pieces.extend(hung_vanes(numbers, cloth, low, top, back + sheer, place["tilt"]))
    pieces.append(hung("sheer", front, front + sheer, numbers["sheer_view"], numbers["sheer_light"]))
    middle = (back + front + sheer) / 2
    half = max(numbers["rail_depth"], front + sheer - back) / 2
    pieces.append(solid("bottom-rail", cloth[0], cloth[1], bottom, low, middle - half, middle + half))
    return pieces
