"""Rounded folds that stand proud and gather from the bottom, stacking at the top."""

import math

from configurator.kernel.mechanisms.common import headrail, lower_edge, moving_rail
from configurator.kernel.numbers import step_up
from configurator.kernel.pieces import box
from configurator.kernel.shapes import Piece, Position, Size

SOFT_FOLD_TAKES: dict[str, list[str | float | None]] = {
    "fold_drop": ["size", None, "height of one fold when down"],
    "fold_thickness": ["length", None, "height of one fold when stacked"],
    "proud_depth": ["length", None, "how far a fold stands proud of the flat cloth when down (0 for flat folds)"],
    "gathered_depth": ["length", None, "how far a stacked fold stands proud of the flat cloth"],
    "cloth_thickness": ["length", 1.5, "thickness of the flat cloth"],
    "last_fold": ["length", None, "height of the lowest fold, which hangs below the stack"],
}


def soft_count(numbers: dict[str, float], size: Size) -> int:
    """Return how many folds hang above the last one when the covering is down."""
    drop = size["y1"] - size["y0"] - numbers["headrail_height"] - numbers["rail_height"] - numbers["last_fold"]
    return int(step_up(max(drop, numbers["fold_drop"]) / numbers["fold_drop"], 1.0))


def soft_stack(numbers: dict[str, float], size: Size) -> float:
    """Return the height when raised: headrail, the stacked folds, the last fold, bottom rail."""
    folds = soft_count(numbers, size) * numbers["fold_thickness"]
    return numbers["headrail_height"] + folds + numbers["last_fold"] + numbers["rail_height"]


def fold_outline(z0: float, z1: float, y0: float, height: float) -> list[list[float]]:
    """Return one fold's cut: flat at the back, rounded to the room, fullest low down."""
    points: list[list[float]] = [[z0, y0 + height]]
    for i in range(1, 8):
        turn = math.pi * i / 8
        points.append([z0 + (z1 - z0) * math.sin(turn), y0 + height * (0.35 + 0.65 * (1 + math.cos(turn)) / 2)])
    points.append([z0, y0])
    return points


def soft_run(
    numbers: dict[str, float], size: Size, place: Position, count: int, y0: float, y1: float, proud: float
) -> Piece:
    """Return a run of equal folds standing ``proud`` of the flat cloth."""
    z0 = size["z0"] + numbers["headrail_depth"] / 2
    z1 = z0 + max(proud, numbers["cloth_thickness"])
    pitch = (y1 - y0) / count
    run = box("covering", "fold", size["x0"], size["x1"], y0, y1, z0, z1, numbers["cloth_view"], numbers["cloth_light"])
    run["count"] = count
    run["pitch"] = pitch
    if not place["coarse"]:
        run["outline"] = fold_outline(z0, z1, y0, pitch)
    return run


def soft_fold(numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return headrail, the folds still hanging, those gathered, the last fold and the bottom rail."""
    rail = numbers["rail_height"]
    count = soft_count(numbers, size)
    top = size["y1"] - numbers["headrail_height"]
    bottom = lower_edge(size, soft_stack(numbers, size), place) + rail
    shelf = bottom + numbers["last_fold"]
    drop = top - shelf
    full = size["y1"] - size["y0"] - numbers["headrail_height"] - rail - numbers["last_fold"]
    hanging_pitch = full / count
    # Each gathered fold takes fold_thickness instead of its hanging pitch; the rest of the drop hangs.
    gathered_count = (full - drop) / max(hanging_pitch - numbers["fold_thickness"], 1e-6)
    stack = min(gathered_count * numbers["fold_thickness"], drop)
    pieces = [headrail(numbers, size)]
    if drop - stack > 1e-6:
        hanging = int(step_up((drop - stack) / hanging_pitch, 1.0))
        pieces.append(soft_run(numbers, size, place, hanging, shelf + stack, top, numbers["proud_depth"]))
    if stack > 1e-6:
        folds = int(step_up(gathered_count, 1.0))
        pieces.append(soft_run(numbers, size, place, folds, shelf, shelf + stack, numbers["gathered_depth"]))
    pieces.append(soft_run(numbers, size, place, 1, bottom, shelf, numbers["proud_depth"]))
    pieces.append(moving_rail(numbers, size, "bottom-rail", bottom))
    return pieces
