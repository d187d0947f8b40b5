"""What is cut for a shade of folds, and how its folds are spaced."""

import math

from configurator.kernel.mechanisms.common import hanging_drop
from configurator.kernel.mechanisms.cuts import flat_cloth, hemmed_width, measured, rail_bars, with_lining
from configurator.kernel.mechanisms.soft_fold import fold_outline, soft_count
from configurator.kernel.shapes import Cuts, Figure, Fit, Measured
from configurator.kernel.telling import count, figure, length, working
from configurator.kernel.tongue import wording


def fold_spacing(fit: Fit) -> float:
    """Return the height of each fold but the last when the covering is down."""
    return (hanging_drop(fit) - fit["numbers"]["last_fold"]) / soft_count(fit)


def fold_girth(proud: float, height: float) -> float:
    """Return the length of cloth round one fold that stands ``proud`` of the flat cloth."""
    points = fold_outline(0.0, proud, 0.0, height)
    total = 0.0
    for i in range(len(points) - 1):
        dz = points[i + 1][0] - points[i][0]
        dy = points[i + 1][1] - points[i][1]
        total = total + math.sqrt(dz * dz + dy * dy)
    return total


def soft_fold_length(fit: Fit) -> Measured:
    """Return the length of the flat cloth: over the face of the head, round every fold and the bar."""
    numbers = fit["numbers"]
    folds = soft_count(fit)
    each = fold_girth(numbers["proud_depth"], fold_spacing(fit))
    last = fold_girth(numbers["proud_depth"], numbers["last_fold"])
    rails = numbers["headrail_height"] + numbers["rail_height"]
    return measured(
        folds * each + last + rails + numbers["heading"] + numbers["hem"],
        wording("round every fold and the last one, the faces of head and bar, what turns over the head, and the hem"),
        "{folds} x {each} + {last} + {head} + {bar} + {heading} + {hem}",
        {
            "folds": [folds, "count"],
            "each": [each, "mm"],
            "last": [last, "mm"],
            "head": [numbers["headrail_height"], "mm"],
            "bar": [numbers["rail_height"], "mm"],
            "heading": [numbers["heading"], "mm"],
            "hem": [numbers["hem"], "mm"],
        },
    )


def soft_fold_cuts(fit: Fit) -> Cuts:
    """Return the cloth with its lining, and the rails."""
    cloth = flat_cloth(fit, hemmed_width(fit), soft_fold_length(fit))
    return {"cloths": with_lining(fit, cloth), "bars": rail_bars(fit)}


def soft_fold_figures(fit: Fit) -> list[Figure]:
    """Return how many folds hang above the last one, and their spacing."""
    numbers = fit["numbers"]
    hanging = hanging_drop(fit)
    terms: dict[str, list[float | str]] = {
        "drop": [hanging, "mm"],
        "last": [numbers["last_fold"], "mm"],
        "most": [numbers["fold_drop"], "mm"],
        "folds": [soft_count(fit), "count"],
    }
    folds = working(
        "the fewest no higher than the workroom makes them, above the last one",
        "max(1, ceil(({drop} - {last}) / {most}))",
        terms,
    )
    spaced = working("the drop above the last fold, shared out evenly", "({drop} - {last}) / {folds}", terms)
    return [
        figure("folds", "folds above the last one", count(soft_count(fit)), folds),
        figure("fold_spacing", "spacing of the folds", length(fold_spacing(fit)), spaced),
    ]
