"""What is cut for a panel stretched between two rods: cloth with its rod pockets and header, and the rods."""

from configurator.kernel.mechanisms.cuts import bars_of, flat_cloth, measured, shorter_than_order, with_lining
from configurator.kernel.shapes import Cuts, Figure, Fit, Measured
from configurator.kernel.telling import figure, length, working
from configurator.kernel.tongue import wording


def rod_pocket(numbers: dict[str, float]) -> float:
    """Return the cloth of a rod pocket beyond the finished height; the rule is that of a public workroom page."""
    return numbers["rod_diameter"] + numbers["pocket_ease"] + numbers["pocket_turn"]


def gathered_width(fit: Fit) -> Measured:
    """Return the width of the flat cloth: what is gathered, and a hem at each side."""
    numbers = fit["numbers"]
    width = fit["size"]["x1"] - fit["size"]["x0"]
    return measured(
        width * numbers["fullness"] + 2 * numbers["side_hem"],
        wording("the ordered width times its fullness, and a hem at each side"),
        "{width} x {fullness} + 2 x {side}",
        {
            "width": [width, "mm"],
            "fullness": [numbers["fullness"], "count"],
            "side": [numbers["side_hem"], "mm"],
        },
    )


def stretched_length(fit: Fit) -> Measured:
    """Return the length of the flat cloth; the finished height has the header once, and it is sewn double."""
    numbers = fit["numbers"]
    height = fit["size"]["y1"] - fit["size"]["y0"]
    return measured(
        height + 2 * rod_pocket(numbers) + numbers["ruffle"],
        wording(
            "from the top of the header to the foot of the lower rod, two rod pockets, and the header's second layer"
        ),
        "{height} + 2 x ({rod} + {ease} + {turn}) + {header}",
        {
            "height": [height, "mm"],
            "rod": [numbers["rod_diameter"], "mm"],
            "ease": [numbers["pocket_ease"], "mm"],
            "turn": [numbers["pocket_turn"], "mm"],
            "header": [numbers["ruffle"], "mm"],
        },
    )


def stretched_cuts(fit: Fit) -> Cuts:
    """Return the gathered cloth with its lining, and the two rods."""
    numbers = fit["numbers"]
    cloth = flat_cloth(fit, gathered_width(fit), stretched_length(fit))
    cloth["fullness"] = numbers["fullness"]
    rods = shorter_than_order(fit, numbers["rod_holder"], wording("the ordered width less the holders at both ends"))
    return {"cloths": with_lining(fit, cloth), "bars": [bars_of("rod", 2.0, rods, numbers["rod_mass"])]}


def stretched_figures(fit: Fit) -> list[Figure]:
    """Return the cloth that each rod pocket takes."""
    numbers = fit["numbers"]
    how = working(
        "the rod, its ease and the edge turned under; this beyond the finished height",
        "{rod} + {ease} + {turn}",
        {
            "rod": [numbers["rod_diameter"], "mm"],
            "ease": [numbers["pocket_ease"], "mm"],
            "turn": [numbers["pocket_turn"], "mm"],
        },
    )
    return [figure("rod_pocket", "cloth for each rod pocket", length(rod_pocket(numbers)), how)]
