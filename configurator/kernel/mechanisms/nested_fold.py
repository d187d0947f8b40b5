"""Short folds that tuck behind each other: the stack keeps its height, its depth grows."""

from configurator.kernel.mechanisms.common import (
    hanging_drop,
    head_middle,
    headrail,
    lower_edge,
    moving_rail,
    whole_width,
)
from configurator.kernel.mechanisms.cuts import flat_cloth, hemmed_width, measured, rail_bars, with_lining
from configurator.kernel.mechanisms.gather import CLOTH_TAKES, LINING_TAKES
from configurator.kernel.numbers import step_up
from configurator.kernel.pieces import cloth_optics, layered, veil
from configurator.kernel.shapes import Cuts, Fit, Measured, Piece, Position
from configurator.kernel.tongue import wording

NESTED_FOLD_TAKES: dict[str, list[str | float | None]] = {
    "fold_height": ["size", None, wording("height of one fold, and so of the stack of folds")],
    "layer_thickness": ["length", None, wording("depth that each tucked fold adds to the stack")],
    **CLOTH_TAKES,
    **LINING_TAKES,
}


def nested_layers(numbers: dict[str, float], length: float) -> float:
    """Return how many folds a length of tucked cloth makes, the last one in part."""
    return length / numbers["fold_height"]


def nested_stack(numbers: dict[str, float]) -> float:
    """Return the height of the stack: headrail, one fold, bottom rail, whatever the drop."""
    return numbers["headrail_height"] + numbers["fold_height"] + numbers["rail_height"]


def tucked_folds(fit: Fit, place: Position, bottom: float, layers: float) -> list[Piece]:
    """Return the tucked folds on the room side of the hanging cloth, the newest only part of a layer."""
    numbers = fit["numbers"]
    flat = numbers["layer_thickness"]
    back = head_middle(fit) + flat
    up = [bottom, bottom + numbers["fold_height"]]
    count = 1 if place["coarse"] else int(step_up(layers, 1.0))
    folds: list[Piece] = []
    for i in range(count):
        z0 = back + i * flat
        tucked = layers - i if i == count - 1 else 1.0
        through = layered(cloth_optics(numbers), tucked)
        folds.append(veil("fold", whole_width(fit), up, [z0, z0 + tucked * flat], through))
    return folds


def nested_fold(fit: Fit, place: Position) -> list[Piece]:
    """Return headrail, the flat cloth, the folds tucked so far and the bottom rail.

    The tucked folds travel with the bottom rail and lie on the room side of the hanging cloth.
    """
    numbers = fit["numbers"]
    rail = numbers["rail_height"]
    top = fit["size"]["y1"] - numbers["headrail_height"]
    bottom = lower_edge(fit, nested_stack(numbers), place) + rail
    tucked = bottom - rail - fit["size"]["y0"]
    out = [head_middle(fit), head_middle(fit) + numbers["layer_thickness"]]
    cloth = veil("fabric", whole_width(fit), [bottom, top], out, cloth_optics(numbers))
    cloth["pitch"] = numbers["fold_height"]
    pieces = [headrail(fit), cloth]
    if tucked > 0 or place["coarse"]:
        pieces.extend(tucked_folds(fit, place, bottom, nested_layers(numbers, tucked)))
    pieces.append(moving_rail(fit, "bottom-rail", bottom))
    return pieces


def nested_length(fit: Fit) -> Measured:
    """Return the length of the flat cloth."""
    numbers = fit["numbers"]
    drop = hanging_drop(fit) + numbers["rail_height"]
    return measured(
        drop + numbers["heading"] + numbers["hem"],
        wording("from under the headrail to the lower edge, what the headrail holds, and the pocket of the bar"),
        "{drop} + {heading} + {hem}",
        {"drop": [drop, "mm"], "heading": [numbers["heading"], "mm"], "hem": [numbers["hem"], "mm"]},
    )


def nested_cuts(fit: Fit) -> Cuts:
    """Return the cloth with its lining, and the rails."""
    return {"cloths": with_lining(fit, flat_cloth(fit, hemmed_width(fit), nested_length(fit))), "bars": rail_bars(fit)}
