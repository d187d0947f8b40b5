"""Soft vanes between two sheers: they tilt when fully down, and all of it rolls away.

Each vane is fixed by one edge to the back sheer and by the other to the front sheer. Turning the
roll a little lifts the front sheer, which levels the vanes (tilt 0) and carries the sheers apart;
let down again the vanes hang closed between them (tilt 90). Rolling, they always hang closed.
The vanes are fixed to the cloth, so they travel with the bottom rail and wind on at the top. The
bottom rail turns with them, so it always reaches from sheer to sheer.
"""

import math

from configurator.kernel.mechanisms.blades import blade_radians, blade_reach, flat_blade, level_blades
from configurator.kernel.mechanisms.common import lower_edge
from configurator.kernel.mechanisms.legs import RAISED_WORDS, blade_peaks, lower_leg, turning_leg
from configurator.kernel.mechanisms.roll import ROLL_TAKES, bottom_bar, cloth_span, roll_hang, roll_head, roll_pieces
from configurator.kernel.mechanisms.roll_cuts import roll_cuts, single_length
from configurator.kernel.pieces import cloth_optics, optics, veil
from configurator.kernel.shapes import Cuts, Fit, Leg, Piece, Position
from configurator.kernel.tongue import wording

VANE_ROLL_TAKES: dict[str, list[str | float | None]] = {
    **ROLL_TAKES,
    "vane_width": ["length", None, wording("width of a vane from sheer to sheer")],
    "vane_pitch": ["size", None, wording("distance between vanes; less than their width, so that they close")],
    "vane_thickness": ["length", 1.0, wording("thickness of a vane")],
    "sheer_thickness": ["length", 0.4, wording("thickness of each sheer")],
    "sheer_view": ["share", None, wording("how much of the view comes through one sheer")],
    "sheer_light": ["share", None, wording("how much of the light comes through one sheer")],
}


def vane_roll_legs(numbers: dict[str, float]) -> list[Leg]:
    """Return the legs: let down, and the vanes turned, which they do only all the way down."""
    legs = [lower_leg(numbers, RAISED_WORDS, ["bottom-rail"])]
    for leg in turning_leg(numbers, "vanes", ["vane"], blade_peaks(numbers["vane_width"], numbers["vane_thickness"])):
        leg["alone"] = True
        legs.append(leg)
    return legs


def sheers_apart(numbers: dict[str, float], tilt: float) -> float:
    """Return how far the vanes hold the two sheers apart."""
    return blade_reach(flat_blade("vane", numbers, tilt), False)


def vane_centers(fit: Fit, span: list[float], tilt: float) -> list[float]:
    """Return the heights of the vanes off the roll, over a span and one beyond; the lowest just clears the rail."""
    width = fit["numbers"]["vane_width"]
    center = span[0] + width - width * math.sin(blade_radians(tilt)) / 2
    centers: list[float] = []
    while center < span[1] + width:
        centers.append(center)
        center = center + fit["numbers"]["vane_pitch"]
    return centers


def hung_vanes(fit: Fit, span: list[float], back: float, tilt: float) -> list[Piece]:
    """Return the vanes off the roll between the heights of a span, their backs at ``back``."""
    numbers = fit["numbers"]
    cloth = cloth_span(fit)
    middle = back + sheers_apart(numbers, tilt) / 2
    places = [[cloth[0], cloth[1], center] for center in vane_centers(fit, span, tilt)]
    pieces: list[Piece] = []
    for vane in level_blades(flat_blade("vane", numbers, tilt), places, middle):
        if vane["y0"] < span[1]:
            vane["y0"] = max(vane["y0"], span[0])
            vane["y1"] = min(vane["y1"], span[1])
            vane["outline"] = [[point[0], min(max(point[1], span[0]), span[1])] for point in vane["outline"]]
            pieces.append(vane)
    return pieces


def vane_roll(fit: Fit, place: Position) -> list[Piece]:
    """Return roll and cassette, back sheer, vanes, front sheer and the bottom rail."""
    numbers = fit["numbers"]
    bottom = lower_edge(fit, roll_head(fit) + numbers["rail_height"], place)
    hang = roll_hang(fit, bottom - fit["size"]["y0"])
    sheer = numbers["sheer_thickness"]
    span = [bottom + numbers["rail_height"], hang["y"]]
    back = hang["back"]
    front = back + sheer + sheers_apart(numbers, place["tilt"])
    thin = optics(numbers["sheer_view"], numbers["sheer_light"])
    pieces = roll_pieces(fit, place, hang)
    pieces.append(veil("sheer", cloth_span(fit), span, [back, back + sheer], thin))
    if place["coarse"]:
        pieces.append(veil("vane", cloth_span(fit), span, [back + sheer, front], cloth_optics(numbers)))
    else:
        pieces.extend(hung_vanes(fit, span, back + sheer, place["tilt"]))
    pieces.append(veil("sheer", cloth_span(fit), span, [front, front + sheer], thin))
    deep = max(numbers["rail_depth"], front + sheer - back)
    pieces.append(bottom_bar(fit, bottom, (back + front + sheer) / 2, deep))
    return pieces


def vane_roll_cuts(fit: Fit) -> Cuts:
    """Return the cloth, its sheers and vanes made up as one, the tube, the cassette and the bottom bar."""
    return roll_cuts(fit, single_length(fit))
