"""Coverings that the tests of the mounts hang on doors."""

from configurator.kernel.looks import no_look
from configurator.kernel.mount.hung import hung
from configurator.kernel.shapes import Door, Family, Fit
from tests.kernel.mechanisms.mechanism_samples import numbers_of
from tests.kernel.questions.question_samples import INCH


def family_of(mechanism: str, **given: float) -> Family:
    """Return a family of a mechanism with the given numbers over the tables' presets, and no choices."""
    return {
        "id": mechanism,
        "name": mechanism,
        "mechanism": mechanism,
        "retired": False,
        "price_level": 0.0,
        "cleaning": "",
        "animals": "",
        "numbers": numbers_of(mechanism, **given),
        "look": no_look(),
        "cassettes": [],
        "choices": [],
    }


def cellular(**given: float) -> Family:
    """Return cells under a headrail of an inch either way, over a rail of 1/2 by 3/4 in."""
    rails = {"headrail_height": INCH, "headrail_depth": INCH, "rail_height": INCH / 2, "rail_depth": 0.75 * INCH}
    folds = {"pitch": 20.0, "closed_thickness": 0.4, "cell_depth": 10.0, "rise": 2.5 * INCH}
    return family_of("accordion", **(rails | folds | given))


def stretched(**given: float) -> Family:
    """Return cloth on two rods of 3/8 in, whose middles lie 5/8 in out."""
    rods = {"rod_diameter": 0.375 * INCH, "rod_stand_off": 0.625 * INCH, "gather_depth": 0.75 * INCH, "fullness": 2.0}
    head = {"headrail_height": 0.375 * INCH, "headrail_depth": INCH, "rail_height": 0.0, "lower_moves": 0.0}
    return family_of(
        "stretched", **(rods | head | {"overlap_side": 38.1, "overlap_bottom": 38.1, "rise": 38.1} | given)
    )


def shutter(**given: float) -> Family:
    """Return a louvered panel in a mounting frame of 3/4 in, 1 3/4 in past the glass and 4 in below it."""
    louvers = {"louver_width": 63.5, "louver_pitch": 54.0, "louver_thickness": 11.0}
    panel = {"panel_depth": 28.6, "panel_stile": 44.45, "frame_width": 19.05, "headrail_height": 88.9}
    rails = {"rail_height": 101.6, "headrail_depth": 28.6, "rail_depth": 28.6, "spacer_most": 57.15}
    sides = {"overlap_side": 44.45, "overlap_bottom": 101.6, "tilt_closed": 80.0, "tilt_far": -80.0, "lower_moves": 0.0}
    return family_of("louver-panel", **(louvers | panel | rails | sides | given))


def hung_with(door: Door, family: Family) -> Fit:
    """Return a family hung on a door as it comes."""
    return hung(door, family, {})
