"""How far the active leaf turns, by itself and with its covering: worked out once for all questions."""

from configurator.kernel.fit import over_opening
from configurator.kernel.questions.swing_over import met_on_wall, turning_profile
from configurator.kernel.questions.touch import HALF_TURN, no_touch
from configurator.kernel.questions.turning import covered_turn, own_turn
from configurator.kernel.shapes import Door, Fit, Outer, Sample, Touch, Turn


def bare_turn(door: Door) -> Touch:
    """Return what stops a leaf without any covering, which is not looked for where it swings out."""
    return no_touch(HALF_TURN) if door["swing"] == "out" else own_turn(door)


def turn_of(fit: Fit, own: Touch, samples: list[Sample], outline: list[Outer]) -> Turn:
    """Return what stops a leaf that is stopped by itself as told; ``outline`` is the covering's reach over its samples,
    the open one first."""
    door = fit["door"]
    if door["swing"] == "out":
        return {"own": own, "covering": no_touch(HALF_TURN)}
    if over_opening(fit):
        stack = met_on_wall(door, turning_profile(door), samples[0]["pieces"], HALF_TURN)
        return {"own": own, "covering": stack}
    return {"own": own, "covering": covered_turn(door, outline)}
