"""What turning blades share, be they louvers, slats or vanes: their reach and their cut.

A tilt of 0 stands edge-on to the view. A positive tilt lowers the room-side edge of a
horizontal blade (closed down); a negative one raises it (closed up).
"""

import math

from configurator.kernel.numbers import step_up
from configurator.kernel.pieces import box
from configurator.kernel.shapes import Piece

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


def blade_deep(width: float, thickness: float, tilt: float) -> float:
    """Return a blade's reach along z at a tilt: that of its rectangular cut."""
    turn = blade_radians(tilt)
    return width * abs(math.cos(turn)) + thickness * abs(math.sin(turn))


def blade_broad(width: float, thickness: float, tilt: float) -> float:
    """Return a blade's reach across the view (y, or x when it hangs upright) at a tilt."""
    turn = blade_radians(tilt)
    return width * abs(math.sin(turn)) + thickness * abs(math.cos(turn))


def blade_sweep(width: float, thickness: float) -> float:
    """Return the diameter of the circle in which a blade turns: its diagonal."""
    return math.sqrt(width * width + thickness * thickness)


def blade_outline(
    corners: list[list[float]], a: float, b: float, along_a: float, along_b: float, width: float, thickness: float
) -> list[list[float]]:
    """Return a blade's cut about the centre ``[a, b]``, its width along the unit vector ``along``."""
    points: list[list[float]] = []
    for corner in corners:
        u = corner[0] * width / 2
        v = corner[1] * thickness / 2
        points.append([a + u * along_a - v * along_b, b + u * along_b + v * along_a])
    return points


def level_blade(
    kind: str,
    corners: list[list[float]],
    x0: float,
    x1: float,
    y: float,
    z: float,
    width: float,
    thickness: float,
    tilt: float,
    view: float,
    light: float,
) -> Piece:
    """Return a horizontal blade from ``x0`` to ``x1`` about the centre line at ``y``, ``z``."""
    return level_blades(kind, corners, [[x0, x1, y]], z, width, thickness, tilt, view, light)[0]


def level_blades(
    kind: str,
    corners: list[list[float]],
    spans: list[list[float]],
    z: float,
    width: float,
    thickness: float,
    tilt: float,
    view: float,
    light: float,
) -> list[Piece]:
    """Return equal horizontal blades, one for each of the ``[x0, x1, y]`` spans, all at one tilt."""
    turn = blade_radians(tilt)
    dy = blade_broad(width, thickness, tilt) / 2
    dz = blade_deep(width, thickness, tilt) / 2
    cut = blade_outline(corners, z, 0.0, math.cos(turn), -math.sin(turn), width, thickness)
    blades: list[Piece] = []
    for span in spans:
        y = span[2]
        blade = box("covering", kind, span[0], span[1], y - dy, y + dy, z - dz, z + dz, view, light)
        blade["outline"] = [[point[0], point[1] + y] for point in cut]
        blades.append(blade)
    return blades


def upright_blade(
    kind: str,
    x: float,
    y0: float,
    y1: float,
    z: float,
    width: float,
    thickness: float,
    tilt: float,
    view: float,
    light: float,
) -> Piece:
    """Return a vertical blade from ``y0`` to ``y1`` about the centre line at ``x``, ``z``."""
    turn = blade_radians(tilt)
    dx = blade_broad(width, thickness, tilt) / 2
    dz = blade_deep(width, thickness, tilt) / 2
    piece = box("covering", kind, x - dx, x + dx, y0, y1, z - dz, z + dz, view, light)
    piece["axis"] = "y"
    piece["outline"] = blade_outline(FLAT_BLADE, x, z, math.sin(turn), math.cos(turn), width, thickness)
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


def spread_centres(low: float, high: float, pitch: float, sweep: float) -> list[float]:
    """Return the centres of the blades between ``low`` and ``high``, lowest first."""
    count = spread_count(high - low, pitch, sweep)
    if count == 1:
        return [(low + high) / 2]
    even = spread_pitch(high - low, count, sweep)
    return [low + sweep / 2 + i * even for i in range(count)]
