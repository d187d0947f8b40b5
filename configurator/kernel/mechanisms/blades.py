"""What turning blades share, be they louvers, slats or vanes: their reach and their cut.

A tilt of 0 stands edge-on to the view. A positive tilt lowers the room-side edge of a
horizontal blade (closed down); a negative one raises it (closed up).
"""

import math
from typing import TypedDict

from configurator.kernel.numbers import about, step_up
from configurator.kernel.pieces import cloth_optics, veil
from configurator.kernel.shapes import Optics, Piece

# Corners of a blade's cut, in halves of its width and of its thickness.
FLAT_BLADE = [[-1.0, -1.0], [1.0, -1.0], [1.0, 1.0], [-1.0, 1.0]]
LENS_BLADE = [
    [-1.0, 0.0],
    [-0.6, -0.8],
    [0.0, -1.0],
    [0.6, -0.8],
    [1.0, 0.0],
    [0.6, 0.8],
    [0.0, 1.0],
    [-0.6, 0.8],
]


def blade_radians(tilt: float) -> float:
    """Return an angle in radians."""
    return tilt * math.pi / 180


class Blade(TypedDict):
    """A blade's cut, and what comes through it: its corners in halves of its width and thickness, and its tilt."""

    kind: str
    corners: list[list[float]]
    width: float
    thickness: float
    tilt: float
    through: Optics


def flat_blade(kind: str, numbers: dict[str, float], tilt: float) -> Blade:
    """Return what a flat slat or vane, as its numbers call it too, is at a tilt."""
    return {
        "kind": kind,
        "corners": FLAT_BLADE,
        "width": numbers[kind + "_width"],
        "thickness": numbers[kind + "_thickness"],
        "tilt": tilt,
        "through": cloth_optics(numbers),
    }


def blade_reach(blade: Blade, across: bool) -> float:
    """Return a blade's reach at its tilt: across the view (y, or x when it hangs upright), or along z."""
    turn = blade_radians(blade["tilt"])
    wide = abs(math.sin(turn) if across else math.cos(turn)) * blade["width"] / 2
    thick = abs(math.cos(turn) if across else math.sin(turn)) * blade["thickness"] / 2
    most = 0.0
    for corner in blade["corners"]:
        # A cut is alike in all four quarters, so one of them shows its reach.
        if corner[0] >= 0 and corner[1] >= 0:
            most = max(most, corner[0] * wide + corner[1] * thick)
    return most * 2


def blade_sweep(width: float, thickness: float) -> float:
    """Return the diameter of the circle in which a blade turns: its diagonal."""
    return math.sqrt(width * width + thickness * thickness)


def blade_cut(blade: Blade, a: float, b: float, along: list[float]) -> list[list[float]]:
    """Return a blade's cut about the center ``[a, b]``, its width along the unit vector ``along``."""
    points: list[list[float]] = []
    for corner in blade["corners"]:
        u = corner[0] * blade["width"] / 2
        v = corner[1] * blade["thickness"] / 2
        points.append([a + u * along[0] - v * along[1], b + u * along[1] + v * along[0]])
    return points


def level_blades(blade: Blade, spans: list[list[float]], z: float) -> list[Piece]:
    """Return equal horizontal blades about ``z``, one for each of the ``[x0, x1, y]`` spans."""
    turn = blade_radians(blade["tilt"])
    high = blade_reach(blade, True)
    out = about(z, blade_reach(blade, False))
    cut = blade_cut(blade, z, 0.0, [math.cos(turn), -math.sin(turn)])
    blades: list[Piece] = []
    for span in spans:
        y = span[2]
        piece = veil(blade["kind"], [span[0], span[1]], about(y, high), out, blade["through"])
        piece["outline"] = [[point[0], point[1] + y] for point in cut]
        blades.append(piece)
    return blades


def upright_blade(blade: Blade, x: float, up: list[float], z: float) -> Piece:
    """Return a vertical blade over the span ``up`` about the center line at ``x``, ``z``."""
    turn = blade_radians(blade["tilt"])
    across = about(x, blade_reach(blade, True))
    out = about(z, blade_reach(blade, False))
    piece = veil(blade["kind"], across, up, out, blade["through"])
    piece["axis"] = "y"
    piece["outline"] = blade_cut(blade, x, z, [math.sin(turn), math.cos(turn)])
    return piece


def spread_count(length: float, pitch: float, sweep: float) -> int:
    """Return how many blades at no more than ``pitch`` fill a length so that the end ones can turn."""
    spare = length - sweep
    if spare <= 0:
        return 1
    return 1 + int(step_up(spare / pitch, 1.0))


def spread_pitch(length: float, count: int, sweep: float) -> float:
    """Return the pitch that spreads ``count`` blades evenly, the end ones free to turn."""
    if count < 2:
        return 0.0
    return (length - sweep) / (count - 1)


def spread_centers(low: float, high: float, pitch: float, sweep: float) -> list[float]:
    """Return the centers of the blades between ``low`` and ``high``, lowest first."""
    count = spread_count(high - low, pitch, sweep)
    if count == 1:
        return [(low + high) / 2]
    even = spread_pitch(high - low, count, sweep)
    return [low + sweep / 2 + i * even for i in range(count)]
