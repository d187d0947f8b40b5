"""What the covering on one leaf weighs: its cloth as it lies flat, its bars by their length, its motor."""

from configurator.kernel.shapes import Bar, Cloth, Cuts, Figure, Fit
from configurator.kernel.telling import figure, mass, working
from configurator.kernel.tongue import wording

# Square millimeters in a square meter, and millimeters in a meter.
SQUARE_METER = 1000000.0
METER = 1000.0

CLOTH_WEIGHTS = {"cloth": wording("mass of the cloth"), "lining": wording("mass of the lining")}
BAR_WEIGHTS = {
    "rod": wording("mass of the rods"),
    "tube": wording("mass of the tube"),
    "cassette": wording("mass of the cassette"),
    "headrail": wording("mass of the headrail"),
    "track": wording("mass of the track"),
    "upper_rail": wording("mass of the upper rail"),
    "bottom_rail": wording("mass of the bottom rail"),
}


def cloth_weight(cloth: Cloth) -> Figure:
    """Return the mass of the cloth or the lining, hems and all."""
    each = cloth["mass"] / SQUARE_METER
    value = cloth["panels"] * cloth["width"]["value"] * cloth["length"]["value"] * each
    how = working(
        "every panel as it lies flat, times the mass of the cloth by area",
        "{panels} x {width} x {length} x {each}",
        {
            "panels": [cloth["panels"], "count"],
            "width": [cloth["width"]["value"], "mm"],
            "length": [cloth["length"]["value"], "mm"],
            "each": [each, "kg/mm2"],
        },
    )
    return figure(cloth["key"] + "_mass", CLOTH_WEIGHTS[cloth["key"]], mass(value), how)


def bar_weight(bar: Bar) -> Figure:
    """Return the mass of all bars of one kind."""
    each = bar["mass"] / METER
    how = working(
        "all of them by their length, times the mass by length",
        "{count} x {length} x {each}",
        {"count": [bar["count"], "count"], "length": [bar["length"]["value"], "mm"], "each": [each, "kg/mm"]},
    )
    value = bar["count"] * bar["length"]["value"] * each
    return figure(bar["key"] + "_mass", BAR_WEIGHTS[bar["key"]], mass(value), how)


def panel_weight(fit: Fit) -> Figure:
    """Return the mass of louvers, slats and what frames them, by their area."""
    size = fit["size"]
    width = size["x1"] - size["x0"]
    height = size["y1"] - size["y0"]
    each = fit["numbers"]["cloth_mass"] / SQUARE_METER
    how = working(
        "ordered width times ordered height, times the mass by area",
        "{width} x {height} x {each}",
        {"width": [width, "mm"], "height": [height, "mm"], "each": [each, "kg/mm2"]},
    )
    return figure("panel_mass", "mass of the louvers or slats", mass(width * height * each), how)


def weights(fit: Fit, cuts: Cuts) -> list[Figure]:
    """Return the mass of every part of which a covering on one leaf is made."""
    parts: list[Figure] = [panel_weight(fit)] if len(cuts["cloths"]) == 0 else []
    parts.extend([cloth_weight(cloth) for cloth in cuts["cloths"]])
    parts.extend([bar_weight(bar) for bar in cuts["bars"]])
    return parts


def mass_figures(fit: Fit, cuts: Cuts) -> list[Figure]:
    """Return the mass of the covering on one leaf, and that of each of its parts."""
    parts = weights(fit, cuts)
    terms: dict[str, list[float | str]] = {"motor": [fit["numbers"]["motor_mass"], "kg"]}
    total = fit["numbers"]["motor_mass"]
    sum_of = ""
    for part in parts:
        terms[part["id"]] = [part["value"], "kg"]
        sum_of = sum_of + "{" + part["id"] + "} + "
        total = total + part["value"]
    how = working("everything that is cut for a leaf, and the motor", sum_of + "{motor}", terms)
    figures = [figure("covering_mass", "mass of the covering, about", mass(total), how)]
    figures.extend(parts)
    return figures
