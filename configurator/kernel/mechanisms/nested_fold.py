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


def hanging_cloth(fit: Fit, place: Position, up: list[float], tucked: float) -> list[Piece]:
    """Return the flat cloth: the folds that hang, creased where they will tuck, and what is left of the next one.

    Creases stay where they are while the bottom rail rises past them, counted from its lowest place.
    """
    numbers = fit["numbers"]
    z = head_middle(fit)
    out = [z, z + numbers["layer_thickness"]]
    fold = numbers["fold_height"]
    crease = up[0] - tucked + step_up(tucked, fold) if tucked > 0 and not place["coarse"] else up[0]
    cloth: list[Piece] = []
    if crease - up[0] > 1e-6:
        cloth.append(veil("fabric", whole_width(fit), [up[0], min(crease, up[1])], out, cloth_optics(numbers)))
    if up[1] - crease > 1e-6 or place["coarse"]:
        run = veil("fabric", whole_width(fit), [crease, up[1]], out, cloth_optics(numbers))
        run["count"] = max(1, int(step_up((up[1] - crease) / fold, 1.0)))
        run["pitch"] = fold
        cloth.append(run)
    return cloth


def nested_fold(fit: Fit, place: Position) -> list[Piece]:
    """Return headrail, the flat cloth, the folds tucked so far and the bottom rail.

    The tucked folds travel with the bottom rail and lie on the room side of the hanging cloth.
    """
    numbers = fit["numbers"]
    rail = numbers["rail_height"]
    top = fit["size"]["y1"] - numbers["headrail_height"]
    bottom = lower_edge(fit, nested_stack(numbers), place) + rail
    tucked = bottom - rail - fit["size"]["y0"]
    pieces = [headrail(fit)]
    pieces.extend(hanging_cloth(fit, place, [bottom, top], tucked))
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
