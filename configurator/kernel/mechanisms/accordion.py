"""Cells or pleats that close up between rails, with one or two moving rails."""

import math

from configurator.kernel.mechanisms.common import headrail, lower_edge, moving_rail
from configurator.kernel.numbers import blend, step_up
from configurator.kernel.pieces import box
from configurator.kernel.shapes import Piece, Position, Size

ACCORDION_TAKES: dict[str, list[str | float | None]] = {
    "pitch": ["size", None, "height of one cell or pleat when fully drawn out"],
    "closed_thickness": ["length", None, "height of one cell or pleat when stacked"],
    "cell_depth": ["length", None, "depth of a cell or pleat when fully drawn out"],
}


def fold_count(numbers: dict[str, float], size: Size) -> int:
    """Return how many cells or pleats the drop takes."""
    drop = size["y1"] - size["y0"] - numbers["headrail_height"] - numbers["rail_height"]
    return int(step_up(max(drop, numbers["pitch"]) / numbers["pitch"], 1.0))


def fold_depth(numbers: dict[str, float], height: float) -> float:
    """Return a fold's depth at a height: its two panels keep their length as the fold closes."""
    half_pitch = numbers["pitch"] / 2
    half_depth = numbers["cell_depth"] / 2
    panel = math.sqrt(half_pitch * half_pitch + half_depth * half_depth)
    half_height = min(height / 2, panel)
    return 2 * math.sqrt(panel * panel - half_height * half_height)


def fold_run(numbers: dict[str, float], size: Size, count: int, y0: float, y1: float) -> Piece:
    """Return the run of folds between two rails."""
    height = (y1 - y0) / count
    depth = fold_depth(numbers, height)
    middle = size["z0"] + numbers["headrail_depth"] / 2
    z0 = middle - depth / 2
    z1 = middle + depth / 2
    run = box("covering", "cell", size["x0"], size["x1"], y0, y1, z0, z1, numbers["cloth_view"], numbers["cloth_light"])
    run["count"] = count
    run["pitch"] = height
    run["outline"] = [[middle, y0], [z1, y0 + height / 2], [middle, y0 + height], [z0, y0 + height / 2]]
    return run


def accordion(numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return headrail, folds, and one or two moving rails."""
    count = fold_count(numbers, size)
    rail = numbers["rail_height"]
    rails = rail * 2 if numbers["upper_moves"] > 0 else rail
    closed = count * numbers["closed_thickness"]
    bottom = lower_edge(size, numbers["headrail_height"] + rails + closed, place)
    top = size["y1"] - numbers["headrail_height"]
    pieces = [headrail(numbers, size)]
    if numbers["upper_moves"] > 0:
        top = blend(top, bottom + rail + closed + rail, place["upper"])
        pieces.append(moving_rail(numbers, size, "upper-rail", top))
        top = top - rail
    pieces.append(fold_run(numbers, size, count, bottom + rail, top))
    pieces.append(moving_rail(numbers, size, "bottom-rail", bottom + rail))
    return pieces
