"""What the covering asks of the house around it: its weight, the heat at the glass, wiring, weather."""

from configurator.kernel.fit import over_opening
from configurator.kernel.questions.weight import mass_figures
from configurator.kernel.shapes import Caution, Fit, Household, Reply, Travel
from configurator.kernel.telling import caution, figure_value, reply
from configurator.kernel.tongue import wording

# Cloth that lets less light through than this is spoken of as dark or room-darkening; no source.
DARK_LIGHT = 0.1
# From this mass in kg a covering on a leaf is spoken of as a load on its hinges; no source.
HEAVY_LEAF = 5.0


def care_cautions(fit: Fit, weight: float) -> list[Caution]:
    """Return what to see to before fixing a covering of a ``weight`` in kg."""
    door = fit["door"]
    numbers = fit["numbers"]
    practice = wording("common practice")
    cautions: list[Caution] = []
    over = over_opening(fit)
    if over:
        text = wording(
            "It hangs over a doorway: fix it into framing that carries its mass and the pull of a hand. "
            "Have a licensed tradesperson judge the wall."
        )
        cautions.append(caution("weight", text, practice))
    if not over and weight >= HEAVY_LEAF:
        text = wording(
            "It hangs on the leaf and pulls at its hinges. Have whoever hangs doors judge the hinges and their screws."
        )
        cautions.append(caution("weight_leaf", text, practice))
    if not over and numbers["cloth_light"] <= DARK_LIGHT:
        text = wording(
            "A dark or light-tight covering close to the glass lets the sun heat the pane, which can crack it. "
            "Ask the glazier about this glass before ordering."
        )
        cautions.append(caution("hot_glass", text, practice))
    if not over and numbers["wired"] > 0:
        text = wording(
            "The motor's lead crosses the hinge and moves with the leaf: it must be made to flex. "
            "A licensed electrician connects it, to local code."
        )
        cautions.append(caution("wired_leaf", text, practice))
    if not over and door["swing"] == "out":
        text = wording("The leaf carries the covering out into sun, rain and wind whenever it stands open.")
        cautions.append(caution("weather", text, practice))
    return cautions


def care_question(travel: Travel, household: Household) -> Reply:
    """Answer what the covering weighs and what to see to around it; all cautions defer to the trades concerned."""
    figures = mass_figures(travel["fit"], travel["cuts"][0])
    return reply(figures, [], care_cautions(travel["fit"], figure_value(figures, "covering_mass")))
