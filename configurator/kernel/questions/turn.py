"""How far the active leaf turns, by itself and with its covering: worked out once for all questions."""

from configurator.kernel.fit import over_opening
from configurator.kernel.questions.swing_over import met_on_wall, turning_profile
from configurator.kernel.questions.touch import HALF_TURN, no_touch
from configurator.kernel.questions.turning import covered_turn, own_turn
from configurator.kernel.shapes import Fit, Outer, Sample, Turn


def turn_of(fit: Fit, samples: list[Sample], outline: list[Outer]) -> Turn:
    """Return what stops an in-swing leaf; ``outline`` is the covering's reach over its samples, the open one first."""
    door = fit["door"]
    if door["swing"] == "out":
        return {"own": no_touch(HALF_TURN), "covering": no_touch(HALF_TURN)}
    own = own_turn(door)
    if over_opening(fit):
        stack = met_on_wall(door, turning_profile(door), samples[0]["pieces"], HALF_TURN)
        return {"own": own, "covering": stack}
    return {"own": own, "covering": covered_turn(door, outline)}
