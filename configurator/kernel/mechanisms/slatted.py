"""Horizontal slats that tilt, and gather on the bottom rail as it is raised.

The slats that the rail has not reached yet hang at their pitch; those it has picked up lie flat
on it, one thickness each.
"""

from configurator.kernel.mechanisms.blades import (
    FLAT_BLADE,
    blade_deep,
    blade_sweep,
    level_blade,
    spread_centres,
    spread_count,
)
from configurator.kernel.mechanisms.common import headrail, lower_edge, moving_rail
from configurator.kernel.numbers import clamp
from configurator.kernel.pieces import box
from configurator.kernel.shapes import Piece, Position, Size

SLATTED_TAKES: dict[str, list[str | float | None]] = {
    "slat_width": ["size", None, "width of a slat"],
    "slat_pitch": ["size", None, "greatest distance between slats; less than their width, so that they close"],
    "slat_thickness": ["length", None, "height that one slat takes in the stack, its crown included"],
}


def slat_drop(numbers: dict[str, float], size: Size) -> float:
    """Return the height between the rails when fully down."""
    return size["y1"] - size["y0"] - numbers["headrail_height"] - numbers["rail_height"]


def slat_homes(numbers: dict[str, float], size: Size) -> list[float]:
    """Return the heights of the slats when fully down, lowest first."""
    low = size["y0"] + numbers["rail_height"]
    sweep = blade_sweep(numbers["slat_width"], numbers["slat_thickness"])
    return spread_centres(low, low + slat_drop(numbers, size), numbers["slat_pitch"], sweep)


def slat_stack(numbers: dict[str, float], size: Size) -> float:
    """Return the height when raised: headrail, every slat flat on the next, bottom rail."""
    sweep = blade_sweep(numbers["slat_width"], numbers["slat_thickness"])
    slats = spread_count(slat_drop(numbers, size), numbers["slat_pitch"], sweep)
    return numbers["headrail_height"] + slats * numbers["slat_thickness"] + numbers["rail_height"]


def slat_pile(numbers: dict[str, float], size: Size, count: int, bottom: float) -> Piece:
    """Return the slats that lie flat on the bottom rail as one run."""
    thick = numbers["slat_thickness"]
    half = numbers["slat_width"] / 2
    middle = size["z0"] + numbers["headrail_depth"] / 2
    pile = box(
        "covering",
        "slat",
        size["x0"],
        size["x1"],
        bottom,
        bottom + count * thick,
        middle - half,
        middle + half,
        numbers["cloth_view"],
        numbers["cloth_light"],
    )
    pile["count"] = count
    pile["pitch"] = thick
    pile["outline"] = [
        [middle - half, bottom],
        [middle + half, bottom],
        [middle + half, bottom + thick],
        [middle - half, bottom + thick],
    ]
    return pile


def hanging_slat(numbers: dict[str, float], size: Size, home: float, rest: float, tilt: float) -> Piece:
    """Return a slat still on the ladders; it lies down as the pile below it reaches ``rest``."""
    width = numbers["slat_width"]
    thick = numbers["slat_thickness"]
    free = (blade_sweep(width, thick) - thick) / 2
    return level_blade(
        "slat",
        FLAT_BLADE,
        size["x0"],
        size["x1"],
        home,
        size["z0"] + numbers["headrail_depth"] / 2,
        width,
        thick,
        tilt * clamp((home - rest) / free, 0.0, 1.0),
        numbers["cloth_view"],
        numbers["cloth_light"],
    )


def slat_bounds(numbers: dict[str, float], size: Size, bottom: float, tilt: float) -> Piece:
    """Return the box that bounds all slats, lying or hanging."""
    half = max(numbers["slat_width"], blade_deep(numbers["slat_width"], numbers["slat_thickness"], tilt)) / 2
    middle = size["z0"] + numbers["headrail_depth"] / 2
    top = size["y1"] - numbers["headrail_height"]
    view = numbers["cloth_view"]
    light = numbers["cloth_light"]
    return box("covering", "slat", size["x0"], size["x1"], bottom, top, middle - half, middle + half, view, light)


def slatted(numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return headrail, the hanging and the gathered slats, and the bottom rail."""
    bottom = lower_edge(size, slat_stack(numbers, size), place) + numbers["rail_height"]
    pieces = [headrail(numbers, size)]
    if place["coarse"]:
        pieces.append(slat_bounds(numbers, size, bottom, place["tilt"]))
    else:
        gathered_slats = 0
        homes = slat_homes(numbers, size)
        for i in range(len(homes)):
            rest = bottom + (i + 0.5) * numbers["slat_thickness"]
            if homes[i] <= rest:
                gathered_slats = i + 1
            else:
                pieces.append(hanging_slat(numbers, size, homes[i], rest, place["tilt"]))
        if gathered_slats > 0:
            pieces.append(slat_pile(numbers, size, gathered_slats, bottom))
    pieces.append(moving_rail(numbers, size, "bottom-rail", bottom))
    return pieces
