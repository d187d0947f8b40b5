"""Horizontal slats that tilt, and gather on the bottom rail as it is raised.

The slats that the rail has not reached yet hang at their pitch; those it has picked up lie flat
on it, one thickness each.
"""

from configurator.kernel.mechanisms.blades import (
    blade_reach,
    blade_sweep,
    flat_blade,
    level_blades,
    spread_centers,
    spread_count,
)
from configurator.kernel.mechanisms.common import (
    hanging_drop,
    head_middle,
    headrail,
    lower_edge,
    moving_rail,
    whole_width,
)
from configurator.kernel.mechanisms.legs import blade_peaks, raised_legs, turning_leg
from configurator.kernel.numbers import about
from configurator.kernel.pieces import cloth_optics, pushed, veil
from configurator.kernel.shapes import Fit, Leg, Piece, Position
from configurator.kernel.tongue import wording

SLATTED_TAKES: dict[str, list[str | float | None]] = {
    "slat_width": ["size", None, wording("width of a slat")],
    "slat_pitch": ["size", None, wording("greatest distance between slats; less than their width, so that they close")],
    "slat_thickness": ["length", None, wording("height that one slat takes in the stack, its crown included")],
}


def slatted_legs(numbers: dict[str, float]) -> list[Leg]:
    """Return the legs: let down, and the slats turned."""
    legs = raised_legs(numbers)
    peaks = blade_peaks(numbers["slat_width"], numbers["slat_thickness"])
    legs.extend(turning_leg(numbers, "slats", ["slat"], peaks))
    return legs


def slat_sweep(numbers: dict[str, float]) -> float:
    """Return the diameter of the circle in which a slat turns."""
    return blade_sweep(numbers["slat_width"], numbers["slat_thickness"])


def slat_homes(fit: Fit) -> list[float]:
    """Return the heights of the slats when fully down, lowest first."""
    numbers = fit["numbers"]
    low = fit["size"]["y0"] + numbers["rail_height"]
    return spread_centers(low, low + hanging_drop(fit), numbers["slat_pitch"], slat_sweep(numbers))


def slat_stack(fit: Fit) -> float:
    """Return the height when raised: headrail, every slat flat on the next, bottom rail."""
    numbers = fit["numbers"]
    slats = spread_count(hanging_drop(fit), numbers["slat_pitch"], slat_sweep(numbers))
    return numbers["headrail_height"] + slats * numbers["slat_thickness"] + numbers["rail_height"]


def slat_pile(fit: Fit, count: int, bottom: float) -> Piece:
    """Return the slats that lie flat on the bottom rail as one run: a level ray goes the whole width of a slat."""
    numbers = fit["numbers"]
    thick = numbers["slat_thickness"]
    through = pushed(cloth_optics(numbers), numbers["slat_width"], thick)
    out = about(head_middle(fit), numbers["slat_width"])
    pile = veil("slat", whole_width(fit), [bottom, bottom + count * thick], out, through)
    pile["count"] = count
    pile["pitch"] = thick
    pile["outline"] = [[out[0], bottom], [out[1], bottom], [out[1], bottom + thick], [out[0], bottom + thick]]
    return pile


def hanging_slats(fit: Fit, homes: list[float], rests: list[float], tilt: float) -> list[Piece]:
    """Return the slats still on the ladders; one lies down as the pile below it reaches its rest."""
    numbers = fit["numbers"]
    size = fit["size"]
    middle = head_middle(fit)
    free = (slat_sweep(numbers) - numbers["slat_thickness"]) / 2
    slats: list[Piece] = []
    turning: list[list[float]] = []
    for i in range(len(homes)):
        span = [size["x0"], size["x1"], homes[i]]
        share = (homes[i] - rests[i]) / free
        if share >= 1:
            turning.append(span)
        else:
            slats.extend(level_blades(flat_blade("slat", numbers, tilt * max(share, 0.0)), [span], middle))
    slats.extend(level_blades(flat_blade("slat", numbers, tilt), turning, middle))
    return slats


def slat_bounds(fit: Fit, bottom: float, tilt: float) -> Piece:
    """Return the box that bounds all slats, lying or hanging."""
    numbers = fit["numbers"]
    deep = max(numbers["slat_width"], blade_reach(flat_blade("slat", numbers, tilt), False))
    up = [bottom, fit["size"]["y1"] - numbers["headrail_height"]]
    return veil("slat", whole_width(fit), up, about(head_middle(fit), deep), cloth_optics(numbers))


def slatted(fit: Fit, place: Position) -> list[Piece]:
    """Return headrail, the hanging and the gathered slats, and the bottom rail."""
    numbers = fit["numbers"]
    bottom = lower_edge(fit, slat_stack(fit), place) + numbers["rail_height"]
    pieces = [headrail(fit)]
    if place["coarse"]:
        pieces.append(slat_bounds(fit, bottom, place["tilt"]))
    else:
        homes = slat_homes(fit)
        rests = [bottom + (i + 0.5) * numbers["slat_thickness"] for i in range(len(homes))]
        lying = 0
        while lying < len(homes) and homes[lying] <= rests[lying]:
            lying += 1
        pieces.extend(hanging_slats(fit, homes[lying:], rests[lying:], place["tilt"]))
        if lying > 0:
            pieces.append(slat_pile(fit, lying, bottom))
    pieces.append(moving_rail(fit, "bottom-rail", bottom))
    return pieces
