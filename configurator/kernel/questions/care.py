"""What the covering asks of the house around it: its weight, the heat at the glass, wiring, weather."""

from configurator.kernel.fit import over_opening
from configurator.kernel.shapes import Caution, Figure, Fit, Household, Reply, Size, Travel
from configurator.kernel.telling import caution, figure, mass, reply, working

# Cloth that lets less light through than this is spoken of as dark or room-darkening; no source.
DARK_LIGHT = 0.1
# From this mass in kg a covering on a leaf is spoken of as a load on its hinges; no source.
HEAVY_LEAF = 5.0


def covering_mass(numbers: dict[str, float], size: Size) -> float:
    """Return the covering's mass in kg from its area."""
    return (size["x1"] - size["x0"]) * (size["y1"] - size["y0"]) / 1000000 * numbers["cloth_mass"]


def mass_figure(numbers: dict[str, float], size: Size) -> Figure:
    """Return the covering's mass from its area."""
    width = size["x1"] - size["x0"]
    height = size["y1"] - size["y0"]
    return figure(
        "covering_mass",
        "mass of the covering, about",
        mass(covering_mass(numbers, size)),
        working(
            "ordered width times ordered height times the mass of a square metre",
            "{width} x {height} x {per} kg/m2",
            {"width": [width, "mm"], "height": [height, "mm"], "per": [numbers["cloth_mass"], "count"]},
        ),
    )


def care_cautions(fit: Fit) -> list[Caution]:
    """Return what to see to before fixing the covering."""
    door = fit["door"]
    numbers = fit["numbers"]
    size = fit["size"]
    practice = "common practice"
    cautions: list[Caution] = []
    over = over_opening(fit)
    if over:
        text = "It hangs over a doorway: fix it into framing that carries its mass and the pull of a hand. "
        cautions.append(caution("weight", text + "Have a licensed tradesperson judge the wall.", practice))
    if not over and covering_mass(numbers, size) >= HEAVY_LEAF:
        text = (
            "It hangs on the leaf and pulls at its hinges. Have whoever hangs doors judge the hinges and their screws."
        )
        cautions.append(caution("weight_leaf", text, practice))
    if not over and numbers["cloth_light"] <= DARK_LIGHT:
        text = "A dark or light-tight covering close to the glass lets the sun heat the pane, which can crack it. "
        cautions.append(caution("hot_glass", text + "Ask the glazier about this glass before ordering.", practice))
    if not over and numbers["wired"] > 0:
        text = "The motor's lead crosses the hinge and moves with the leaf: it must be made to flex. "
        cautions.append(caution("wired_leaf", text + "A licensed electrician connects it, to local code.", practice))
    if not over and door["swing"] == "out":
        text = "The leaf carries the covering out into sun, rain and wind whenever it stands open."
        cautions.append(caution("weather", text, practice))
    return cautions


def care_question(travel: Travel, household: Household) -> Reply:
    """Answer what the covering weighs and what to see to around it; all cautions defer to the trades concerned."""
    fit = travel["fit"]
    return reply([mass_figure(fit["numbers"], fit["size"])], [], care_cautions(fit))
