"""Short folds that tuck behind each other: the stack keeps its height, its depth grows."""

from configurator.kernel.mechanisms.common import headrail, lower_edge, moving_rail
from configurator.kernel.numbers import step_up
from configurator.kernel.pieces import box
from configurator.kernel.shapes import Piece, Position, Size

NESTED_FOLD_TAKES: dict[str, list[str | float | None]] = {
    "fold_height": ["size", None, "height of one fold, and so of the stack of folds"],
    "layer_thickness": ["length", None, "depth that each tucked fold adds to the stack"],
}


def nested_layers(numbers: dict[str, float], length: float) -> float:
    """Return how many folds a length of tucked cloth makes, the last one in part."""
    return length / numbers["fold_height"]


def nested_stack(numbers: dict[str, float]) -> float:
    """Return the height of the stack: headrail, one fold, bottom rail, whatever the drop."""
    return numbers["headrail_height"] + numbers["fold_height"] + numbers["rail_height"]


def tucked_folds(numbers: dict[str, float], size: Size, place: Position, bottom: float, layers: float) -> list[Piece]:
    """Return the tucked folds on the room side of the hanging cloth, the newest only part of a layer."""
    flat = numbers["layer_thickness"]
    back = size["z0"] + numbers["headrail_depth"] / 2 + flat
    top = bottom + numbers["fold_height"]
    count = 1 if place["coarse"] else int(step_up(layers, 1.0))
    folds: list[Piece] = []
    for i in range(count):
        z0 = back + i * flat
        z1 = back + layers * flat if i == count - 1 else z0 + flat
        folds.append(
            box(
                "covering",
                "fold",
                size["x0"],
                size["x1"],
                bottom,
                top,
                z0,
                z1,
                numbers["cloth_view"],
                numbers["cloth_light"],
            )
        )
    return folds


def nested_fold(numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return headrail, the flat cloth, the folds tucked so far and the bottom rail.

    The tucked folds travel with the bottom rail and lie on the room side of the hanging cloth.
    """
    rail = numbers["rail_height"]
    top = size["y1"] - numbers["headrail_height"]
    bottom = lower_edge(size, nested_stack(numbers), place) + rail
    tucked = bottom - rail - size["y0"]
    back = size["z0"] + numbers["headrail_depth"] / 2
    flat = numbers["layer_thickness"]
    view = numbers["cloth_view"]
    light = numbers["cloth_light"]
    pieces = [headrail(numbers, size)]
    pieces.append(box("covering", "fabric", size["x0"], size["x1"], bottom, top, back, back + flat, view, light))
    if tucked > 0:
        pieces.extend(tucked_folds(numbers, size, place, bottom, nested_layers(numbers, tucked)))
    pieces.append(moving_rail(numbers, size, "bottom-rail", bottom))
    return pieces
