"""What is cut for a covering that draws to the side: gathered cloth, vanes or flat panels, and the track."""

from configurator.kernel.mechanisms.cuts import bars_of, flat_cloth, measured, order_width, with_lining
from configurator.kernel.mechanisms.draw import draw_count, flat_width, pleat_stack, stack_layer
from configurator.kernel.shapes import Bar, Cloth, Cuts, Figure, Fit, Measured
from configurator.kernel.telling import count, figure, length, working
from configurator.kernel.tongue import wording


def draw_parts(numbers: dict[str, float]) -> float:
    """Return to how many sides it draws."""
    return 2.0 if numbers["split"] > 0 else 1.0


def part_width(fit: Fit) -> float:
    """Return the width that what draws to one side covers."""
    return (fit["size"]["x1"] - fit["size"]["x0"]) / draw_parts(fit["numbers"])


def return_depth(fit: Fit) -> float:
    """Return how far the cloth turns back at its outer edge: from the middle of the track to the wall."""
    if fit["numbers"]["returns"] == 0:
        return 0.0
    return fit["size"]["spacer"] + fit["numbers"]["headrail_depth"] / 2


def drapery_width(fit: Fit) -> Measured:
    """Return the width of one panel's flat cloth: what is gathered, a hem at each side, and the return."""
    numbers = fit["numbers"]
    lap = numbers["meeting_lap"] / 2 if numbers["split"] > 0 else 0.0
    return measured(
        (part_width(fit) + lap) * numbers["fullness"] + 2 * numbers["side_hem"] + return_depth(fit),
        wording(
            "what it covers and its share of the lap, times its fullness, a hem at each "
            "side, and the return to the wall"
        ),
        "({width} + {lap}) x {fullness} + 2 x {side} + {back}",
        {
            "width": [part_width(fit), "mm"],
            "lap": [lap, "mm"],
            "fullness": [numbers["fullness"], "count"],
            "side": [numbers["side_hem"], "mm"],
            "back": [return_depth(fit), "mm"],
        },
    )


def panel_width(fit: Fit) -> Measured:
    """Return the width of one flat panel's cloth."""
    numbers = fit["numbers"]
    terms: dict[str, list[float | str]] = {
        "width": [part_width(fit), "mm"],
        "panels": [numbers["panel_count"], "count"],
        "lap": [numbers["panel_overlap"], "mm"],
        "side": [numbers["side_hem"], "mm"],
    }
    return measured(
        flat_width(numbers, part_width(fit)) + 2 * numbers["side_hem"],
        wording("the width that they cover and their laps, shared out, and a hem at each side"),
        "({width} + ({panels} - 1) x {lap}) / {panels} + 2 x {side}",
        terms,
    )


def vane_strip(fit: Fit) -> Measured:
    """Return the width of a vane."""
    wide = fit["numbers"]["vane_width"]
    return measured(wide, wording("as wide as a vane"), "{vane}", {"vane": [wide, "mm"]})


def draw_length(fit: Fit) -> Measured:
    """Return the length of the flat cloth: what hangs under the track, its heading and its hem."""
    numbers = fit["numbers"]
    height = fit["size"]["y1"] - numbers["headrail_height"] - fit["size"]["y0"]
    return measured(
        height + numbers["heading"] + numbers["hem"],
        wording("what hangs under the track, its heading and its hem"),
        "{height} + {heading} + {hem}",
        {"height": [height, "mm"], "heading": [numbers["heading"], "mm"], "hem": [numbers["hem"], "mm"]},
    )


def drapery_cloth(fit: Fit) -> Cloth:
    """Return the gathered cloth, one panel to each side to which it draws."""
    cloth = flat_cloth(fit, drapery_width(fit), draw_length(fit))
    cloth["panels"] = draw_parts(fit["numbers"])
    cloth["fullness"] = max(1.0, fit["numbers"]["fullness"])
    cloth["leads"] = 1.0
    return cloth


def vane_cloth(fit: Fit) -> Cloth:
    """Return the vanes, cut from strips of their own width."""
    cloth = flat_cloth(fit, vane_strip(fit), draw_length(fit))
    cloth["panels"] = draw_parts(fit["numbers"]) * draw_count(fit["numbers"], part_width(fit))
    cloth["bolt"] = fit["numbers"]["vane_width"]
    cloth["railroads"] = 0.0
    return cloth


def draw_cuts(fit: Fit) -> Cuts:
    """Return the cloth with its lining, or the vanes or panels, and the track and bars."""
    numbers = fit["numbers"]
    bars: list[Bar] = [bars_of("track", 1.0, order_width(fit), numbers["headrail_mass"])]
    if numbers["panel_count"] >= 1:
        cloth = flat_cloth(fit, panel_width(fit), draw_length(fit))
        cloth["panels"] = numbers["panel_count"] * draw_parts(numbers)
        if numbers["rail_height"] > 0:
            wide = flat_width(numbers, part_width(fit))
            bar = measured(wide, wording("as wide as a panel"), "{wide}", {"wide": [wide, "mm"]})
            bars.append(bars_of("bottom_rail", cloth["panels"], bar, numbers["rail_mass"]))
        return {"cloths": with_lining(fit, cloth), "bars": bars}
    if numbers["vane_width"] > 0:
        return {"cloths": [vane_cloth(fit)], "bars": bars}
    if numbers["fullness"] == 0:
        return {"cloths": [], "bars": bars}
    return {"cloths": with_lining(fit, drapery_cloth(fit)), "bars": bars}


def draw_figures(fit: Fit) -> list[Figure]:
    """Return how many pleats draw to each side and how wide each stands in the stack; nothing for vanes or panels."""
    numbers = fit["numbers"]
    if numbers["panel_count"] >= 1 or numbers["vane_width"] > 0:
        return []
    width = part_width(fit)
    pleats = draw_count(numbers, width)
    terms: dict[str, list[float | str]] = {
        "carrier": [numbers["unit_stacked"], "mm"],
        "width": [width, "mm"],
        "most": [numbers["unit_pitch"], "mm"],
        "pleats": [pleats, "count"],
        "fullness": [numbers["fullness"], "count"],
        "deep": [numbers["depth_stacked"], "mm"],
        "layer": [stack_layer(numbers), "mm"],
    }
    many = working("the fewest no wider than the heading makes them", "max(1, ceil({width} / {most}))", terms)
    stacked = working(
        "its carrier, and its cloth in layers as deep as the stack, each with its lining and its air",
        "{carrier} + {width} / {pleats} x {fullness} / {deep} x {layer}",
        terms,
    )
    return [
        figure("pleats", "pleats to each side it draws to", count(pleats), many),
        figure("pleat_stack", "width of a pleat in the stack", length(pleat_stack(numbers, width / pleats)), stacked),
    ]
