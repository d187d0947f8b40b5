"""Rounded folds that stand proud and gather from the bottom, stacking at the top."""

import math
from typing import TypedDict

from configurator.kernel.mechanisms.common import (
    hanging_drop,
    head_middle,
    headrail,
    lower_edge,
    moving_rail,
    whole_width,
)
from configurator.kernel.mechanisms.gather import CLOTH_TAKES, LINING_TAKES
from configurator.kernel.numbers import step_up
from configurator.kernel.pieces import cloth_optics, pushed, veil
from configurator.kernel.shapes import Fit, Piece, Position
from configurator.kernel.tongue import wording

SOFT_FOLD_TAKES: dict[str, list[str | float | None]] = {
    "fold_drop": ["size", None, wording("height of one fold when down")],
    "fold_thickness": ["length", None, wording("height of one fold when stacked")],
    "proud_depth": [
        "length",
        None,
        wording("how far a fold stands proud of the flat cloth when down (0 for flat folds)"),
    ],
    "gathered_depth": ["length", None, wording("how far a stacked fold stands proud of the flat cloth")],
    "cloth_thickness": ["length", 1.5, wording("thickness of the flat cloth")],
    "last_fold": ["length", None, wording("height of the lowest fold, which hangs below the stack")],
    **CLOTH_TAKES,
    **LINING_TAKES,
}


class Gathering(TypedDict):
    """How a soft-fold stands: the heights of its lower edge, of the shelf that its last fold hangs from, of the
    stack gathered on that shelf and of the headrail's underside; how many folds are gathered, and how many hang;
    and the height of a fold that hangs.
    """

    bottom: float
    shelf: float
    stack: float
    top: float
    gathered: float
    hanging: float
    fold: float


def soft_count(fit: Fit) -> int:
    """Return how many folds hang above the last one when the covering is down."""
    fold = fit["numbers"]["fold_drop"]
    drop = hanging_drop(fit) - fit["numbers"]["last_fold"]
    return int(step_up(max(drop, fold) / fold, 1.0))


def soft_stack(fit: Fit) -> float:
    """Return the height when raised: headrail, the stacked folds, the last fold, bottom rail."""
    numbers = fit["numbers"]
    folds = soft_count(fit) * numbers["fold_thickness"]
    return numbers["headrail_height"] + folds + numbers["last_fold"] + numbers["rail_height"]


def gathering(fit: Fit, place: Position) -> Gathering:
    """Return how far the folds are gathered at a position."""
    numbers = fit["numbers"]
    top = fit["size"]["y1"] - numbers["headrail_height"]
    bottom = lower_edge(fit, soft_stack(fit), place) + numbers["rail_height"]
    shelf = bottom + numbers["last_fold"]
    full = hanging_drop(fit) - numbers["last_fold"]
    pitch = full / soft_count(fit)
    # Each gathered fold takes fold_thickness instead of its hanging pitch; the rest of the drop hangs.
    gathered = (full - (top - shelf)) / max(pitch - numbers["fold_thickness"], 1e-6)
    stack = min(gathered * numbers["fold_thickness"], top - shelf)
    hanging = (top - shelf - stack) / pitch
    return {
        "bottom": bottom,
        "shelf": shelf,
        "stack": shelf + stack,
        "top": top,
        "gathered": gathered,
        "hanging": hanging,
        "fold": pitch,
    }


def fold_outline(z0: float, z1: float, y0: float, height: float) -> list[list[float]]:
    """Return one fold's cut: flat at the back, slanting to the room and rounded under, fullest low down."""
    points: list[list[float]] = []
    for i in range(9):
        turn = math.pi * i / 16
        points.append([z0 + (z1 - z0) * math.sin(turn * 2), y0 + height * (1 - math.sin(turn))])
    return points


def soft_run(fit: Fit, place: Position, count: float, up: list[float], proud: float) -> Piece:
    """Return a run of ``count`` equal folds, the last perhaps in part, standing ``proud`` of the flat cloth."""
    numbers = fit["numbers"]
    z0 = head_middle(fit)
    z1 = z0 + max(proud, numbers["cloth_thickness"])
    run = veil("fold", whole_width(fit), up, [z0, z1], cloth_optics(numbers))
    run["count"] = max(1, int(step_up(count, 1.0)))
    run["pitch"] = (up[1] - up[0]) / run["count"]
    if not place["coarse"]:
        run["outline"] = fold_outline(z0, z1, up[0], run["pitch"])
    return run


def soft_fold(fit: Fit, place: Position) -> list[Piece]:
    """Return headrail, the folds still hanging, those gathered, the last fold and the bottom rail."""
    numbers = fit["numbers"]
    state = gathering(fit, place)
    shelf = state["shelf"]
    pieces = [headrail(fit)]
    # Coarse, each run is there even where it has no height, so that the same run is found at every place.
    if state["top"] - state["stack"] > 1e-6 or place["coarse"]:
        up = [state["stack"], state["top"]]
        pieces.append(soft_run(fit, place, state["hanging"], up, numbers["proud_depth"]))
    if state["stack"] - shelf > 1e-6 or place["coarse"]:
        up = [shelf, state["stack"]]
        stack = soft_run(fit, place, state["gathered"], up, numbers["gathered_depth"])
        stack["optics"] = pushed(stack["optics"], state["fold"], numbers["fold_thickness"])
        pieces.append(stack)
    pieces.append(soft_run(fit, place, 1.0, [state["bottom"], shelf], numbers["proud_depth"]))
    pieces.append(moving_rail(fit, "bottom-rail", state["bottom"]))
    return pieces
