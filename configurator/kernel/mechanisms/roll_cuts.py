"""What is cut for a covering that rolls: its cloth with the wraps on the tube, tube, cassette and bar."""

from configurator.kernel.mechanisms.cuts import bars_of, flat_cloth, measured, shorter_than_order
from configurator.kernel.mechanisms.roll import roll_hang
from configurator.kernel.shapes import Bar, Cuts, Fit, Measured
from configurator.kernel.tongue import wording


def single_length(fit: Fit) -> Measured:
    """Return the length of a cloth that hangs once from the roll to the bottom bar."""
    numbers = fit["numbers"]
    drop = roll_hang(fit, 0.0)["y"] - fit["size"]["y0"] - numbers["rail_height"]
    return measured(
        drop + numbers["wraps_spare"] + numbers["heading"] + numbers["hem"],
        wording(
            "from the middle of the roll down to the bar, the wraps that stay on the tube, and what tube and bar hold"
        ),
        "{drop} + {wraps} + {heading} + {hem}",
        {
            "drop": [drop, "mm"],
            "wraps": [numbers["wraps_spare"], "mm"],
            "heading": [numbers["heading"], "mm"],
            "hem": [numbers["hem"], "mm"],
        },
    )


def loop_length(fit: Fit) -> Measured:
    """Return the length of a cloth that hangs twice, down from the head and round the bottom bar to the roll."""
    numbers = fit["numbers"]
    drop = roll_hang(fit, 0.0)["y"] - fit["size"]["y0"]
    return measured(
        2 * drop + numbers["wraps_spare"] + numbers["heading"] + numbers["hem"],
        wording(
            "down from the head, round the bar and up to the roll, the wraps that stay on the tube, and what is held"
        ),
        "2 x {drop} + {wraps} + {heading} + {hem}",
        {
            "drop": [drop, "mm"],
            "wraps": [numbers["wraps_spare"], "mm"],
            "heading": [numbers["heading"], "mm"],
            "hem": [numbers["hem"], "mm"],
        },
    )


def roll_width(fit: Fit) -> Measured:
    """Return the width of the flat cloth between the brackets, with its side hems."""
    numbers = fit["numbers"]
    width = fit["size"]["x1"] - fit["size"]["x0"]
    return measured(
        width - 2 * numbers["bracket_gap"] + 2 * numbers["side_hem"],
        wording("the ordered width less the brackets at both ends, and a hem at each side"),
        "{width} - 2 x {gap} + 2 x {side}",
        {"width": [width, "mm"], "gap": [numbers["bracket_gap"], "mm"], "side": [numbers["side_hem"], "mm"]},
    )


def roll_bars(fit: Fit) -> list[Bar]:
    """Return the tube and the bottom bar, as wide as the finished cloth, and the cassette where there is one."""
    numbers = fit["numbers"]
    cloth = shorter_than_order(
        fit, numbers["bracket_gap"], wording("as wide as the cloth: less the brackets at both ends")
    )
    bars = [bars_of("tube", 1.0, cloth, numbers["tube_mass"])]
    if fit["size"]["cassette"]["roll"] > 0:
        inner = shorter_than_order(fit, numbers["end_cap"], wording("the ordered width less both end caps"))
        bars.append(bars_of("cassette", 1.0, inner, numbers["headrail_mass"]))
    bars.append(bars_of("bottom_rail", 1.0, cloth, numbers["rail_mass"]))
    return bars


def roll_cuts(fit: Fit, cut: Measured) -> Cuts:
    """Return a cloth of a cut length, the tube, the cassette and the bottom bar."""
    return {"cloths": [flat_cloth(fit, roll_width(fit), cut)], "bars": roll_bars(fit)}
