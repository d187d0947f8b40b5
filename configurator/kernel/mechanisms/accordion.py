"""Cells or pleats that close up between rails, with one or two moving rails."""

import math

from configurator.kernel.mechanisms.common import (
    hanging_drop,
    head_middle,
    headrail,
    lower_edge,
    moving_rail,
    whole_width,
)
from configurator.kernel.mechanisms.cuts import flat_cloth, hemmed_width, measured, rail_bars
from configurator.kernel.mechanisms.gather import CLOTH_TAKES
from configurator.kernel.numbers import about, blend, step_up
from configurator.kernel.pieces import cloth_optics, pushed, veil
from configurator.kernel.shapes import Cuts, Fit, Measured, Piece, Position
from configurator.kernel.tongue import wording

ACCORDION_TAKES: dict[str, list[str | float | None]] = {
    "pitch": ["size", None, wording("height of one cell or pleat when fully drawn out")],
    "closed_thickness": ["length", None, wording("height of one cell or pleat when stacked")],
    "cell_depth": ["length", None, wording("depth of a cell or pleat when fully drawn out")],
    "layers": ["count", 1.0, wording("layers of cloth: 1 for pleats, 2 for cells")],
    **CLOTH_TAKES,
}


def fold_count(fit: Fit) -> int:
    """Return how many cells or pleats the drop takes."""
    pitch = fit["numbers"]["pitch"]
    return int(step_up(max(hanging_drop(fit), pitch) / pitch, 1.0))


def fold_panel(numbers: dict[str, float]) -> float:
    """Return the length of cloth from a fold's crease to its edge, as it is when fully drawn out."""
    half_pitch = numbers["pitch"] / 2
    half_depth = numbers["cell_depth"] / 2
    return math.sqrt(half_pitch * half_pitch + half_depth * half_depth)


def fold_depth(numbers: dict[str, float], height: float) -> float:
    """Return a fold's depth at a height: its two panels keep their length as the fold closes."""
    panel = fold_panel(numbers)
    half_height = min(max(height, 0.0) / 2, panel)
    return 2 * math.sqrt(panel * panel - half_height * half_height)


def hung_height(fit: Fit, count: int) -> float:
    """Return the height of one fold when all of them are drawn out."""
    upper = fit["numbers"]["rail_height"] if fit["numbers"]["upper_moves"] > 0 else 0.0
    return (hanging_drop(fit) - upper) / count


def fold_run(fit: Fit, count: int, y0: float, y1: float) -> Piece:
    """Return the run of folds between two rails."""
    height = (y1 - y0) / count
    middle = head_middle(fit)
    out = about(middle, fold_depth(fit["numbers"], height))
    through = pushed(cloth_optics(fit["numbers"]), hung_height(fit, count), height)
    run = veil("cell", whole_width(fit), [y0, y1], out, through)
    run["count"] = count
    run["pitch"] = height
    run["outline"] = [[middle, y0], [out[1], y0 + height / 2], [middle, y0 + height], [out[0], y0 + height / 2]]
    return run


def accordion(fit: Fit, place: Position) -> list[Piece]:
    """Return headrail, folds, and one or two moving rails."""
    numbers = fit["numbers"]
    count = fold_count(fit)
    rail = numbers["rail_height"]
    rails = rail * 2 if numbers["upper_moves"] > 0 else rail
    closed = count * numbers["closed_thickness"]
    bottom = lower_edge(fit, numbers["headrail_height"] + rails + closed, place)
    top = fit["size"]["y1"] - numbers["headrail_height"]
    pieces = [headrail(fit)]
    if numbers["upper_moves"] > 0:
        top = blend(top, bottom + rail + closed + rail, place["upper"])
        pieces.append(moving_rail(fit, "upper-rail", top))
        top = top - rail
    pieces.append(fold_run(fit, count, bottom + rail, top))
    pieces.append(moving_rail(fit, "bottom-rail", bottom + rail))
    return pieces


def accordion_length(fit: Fit) -> Measured:
    """Return the length of flat cloth in all folds and layers."""
    numbers = fit["numbers"]
    folds = fold_count(fit)
    value = numbers["layers"] * folds * 2 * fold_panel(numbers) + numbers["heading"] + numbers["hem"]
    return measured(
        value,
        wording("two panels of cloth to each fold and layer, each from crease to edge, and what the rails hold"),
        "{layers} x {folds} x sqrt({pitch} x {pitch} + {deep} x {deep}) + {heading} + {hem}",
        {
            "layers": [numbers["layers"], "count"],
            "folds": [folds, "count"],
            "pitch": [numbers["pitch"], "mm"],
            "deep": [numbers["cell_depth"], "mm"],
            "heading": [numbers["heading"], "mm"],
            "hem": [numbers["hem"], "mm"],
        },
    )


def accordion_cuts(fit: Fit) -> Cuts:
    """Return the cloth of all folds, and the rails."""
    return {"cloths": [flat_cloth(fit, hemmed_width(fit), accordion_length(fit))], "bars": rail_bars(fit)}
