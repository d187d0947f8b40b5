"""What is cut for a covering, as its mechanism states it: cloth from the bolt, bars to their length.

A length comes with its working, whose template is arithmetic alone: the questions put it into workings of their own.
"""

from configurator.kernel.shapes import Bar, Cloth, Cuts, Fit, Measured
from configurator.kernel.telling import working
from configurator.kernel.tongue import wording


def measured(value: float, rule: str, template: str, terms: dict[str, list[float | str]]) -> Measured:
    """Return a length with its working."""
    return {"value": value, "how": working(rule, template, terms)}


def no_cuts(fit: Fit) -> Cuts:
    """Return the cuts of a covering that comes made up."""
    return {"cloths": [], "bars": []}


def order_width(fit: Fit) -> Measured:
    """Return the whole ordered width."""
    width = fit["size"]["x1"] - fit["size"]["x0"]
    return measured(width, wording("as wide as ordered"), "{width}", {"width": [width, "mm"]})


def shorter_than_order(fit: Fit, less: float, rule: str) -> Measured:
    """Return the ordered width ``less`` something at each end."""
    width = fit["size"]["x1"] - fit["size"]["x0"]
    terms: dict[str, list[float | str]] = {"width": [width, "mm"], "less": [less, "mm"]}
    return measured(width - 2 * less, rule, "{width} - 2 x {less}", terms)


def hemmed_width(fit: Fit) -> Measured:
    """Return the width of flat cloth across the whole ordered width, with its side hems."""
    width = fit["size"]["x1"] - fit["size"]["x0"]
    hem = fit["numbers"]["side_hem"]
    terms: dict[str, list[float | str]] = {"width": [width, "mm"], "side": [hem, "mm"]}
    return measured(width + 2 * hem, wording("the ordered width and a hem at each side"), "{width} + 2 x {side}", terms)


def flat_cloth(fit: Fit, width: Measured, length: Measured) -> Cloth:
    """Return one panel of cloth that hangs flat."""
    numbers = fit["numbers"]
    return {
        "key": "cloth",
        "panels": 1.0,
        "width": width,
        "length": length,
        "fullness": 1.0,
        "hem": numbers["side_hem"],
        "leads": 0.0,
        "bolt": numbers["bolt_width"],
        "repeat": numbers["pattern_repeat"],
        "railroads": numbers["railroads"],
        "mass": numbers["cloth_mass"],
    }


def with_lining(fit: Fit, cloth: Cloth) -> list[Cloth]:
    """Return the cloth, and where it is lined its lining: cut as the cloth is, from its own bolt, without repeat."""
    numbers = fit["numbers"]
    if numbers["lined"] == 0:
        return [cloth]
    lining: Cloth = {
        **cloth,
        "key": "lining",
        "bolt": numbers["lining_bolt"],
        "repeat": 0.0,
        "railroads": 0.0,
        "mass": numbers["lining_mass"],
    }
    return [cloth, lining]


def bars_of(key: str, count: float, length: Measured, mass: float) -> Bar:
    """Return ``count`` bars of one length; ``mass`` is in kg/m."""
    return {"key": key, "count": count, "length": length, "mass": mass}


def rail_bars(fit: Fit) -> list[Bar]:
    """Return the headrail and the moving rails of what is raised, each as wide as ordered."""
    numbers = fit["numbers"]
    width = order_width(fit)
    bars = [bars_of("headrail", 1.0, width, numbers["headrail_mass"])]
    if numbers["upper_moves"] > 0:
        bars.append(bars_of("upper_rail", 1.0, width, numbers["rail_mass"]))
    bars.append(bars_of("bottom_rail", 1.0, width, numbers["rail_mass"]))
    return bars


def rail_cuts(fit: Fit) -> Cuts:
    """Return the cuts of what has rails and no cloth."""
    return {"cloths": [], "bars": rail_bars(fit)}
