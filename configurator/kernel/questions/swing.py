"""How far does the leaf open, and what width does it leave?

The room side alone is asked: what stands outside an out-swing door is not measured.
"""

from configurator.kernel.fit import over_opening
from configurator.kernel.message import message, plain
from configurator.kernel.questions.outline import covering_outline, deepest, own_outline
from configurator.kernel.questions.swing_figures import in_swing_figures, width_figure
from configurator.kernel.questions.swing_over import over_in_swing, over_out_swing
from configurator.kernel.questions.turning import (
    HALF_TURN,
    LEAST_TURN,
    RIGHT_ANGLE,
    Touch,
    earlier,
    first_touch,
    leaf_front,
    meets_stop,
)
from configurator.kernel.shapes import Door, Household, Reply, Sample, Travel, Verdict
from configurator.kernel.telling import reply, verdict

SWING_NAME = "opening the leaf"
SAME_TURN = 0.05


def swing_verdict(own: Touch, both: Touch) -> Verdict:
    """Return what a covering costs of an in-swing leaf's turn.

    ``clears`` when it costs nothing, or leaves a right angle; ``blocked`` when less than half of a
    right angle is left; ``guide by hand`` between: the leaf is stopped by hand, or by a door stop.
    """
    terms: dict[str, list[float | str]] = {"piece": [both["kind"], "kind"]}
    if both["angle"] >= own["angle"] - SAME_TURN:
        why = "The covering takes nothing from the leaf's turn."
        if own["angle"] < HALF_TURN:
            why = why + " First to meet the side wall, as without it, is {piece}."
        return verdict("swing", SWING_NAME, "clears", message(why, terms))
    if both["angle"] >= RIGHT_ANGLE:
        why = "The leaf opens to a right angle and past it, until {piece} meets the side wall."
        return verdict("swing", SWING_NAME, "clears", message(why, terms))
    state = "blocked" if both["angle"] < LEAST_TURN else "guide by hand"
    why = "Before the leaf stands at a right angle, {piece} meets the side wall."
    return verdict("swing", SWING_NAME, state, message(why, terms))


def leaf_in_swing(door: Door, samples: list[Sample]) -> Reply:
    """Answer for a covering on an in-swing leaf: it turns towards the side wall with the leaf."""
    pin = door["hinge_pin_out"]
    own = first_touch(own_outline(door), pin, door["wall_gap"])
    both = earlier(own, first_touch(covering_outline(samples), pin, door["wall_gap"]))
    return reply(in_swing_figures(door, own, both), [swing_verdict(own, both)], [])


def leaf_out_swing(door: Door, samples: list[Sample]) -> Reply:
    """Answer for a covering on an out-swing leaf: at 90 degrees it stands in the doorway, in front of the leaf."""
    outers = covering_outline(samples)
    front = leaf_front(door)
    covered = front + deepest(outers)
    figures = [
        width_figure(door, "clear_width_bare", "clear width without the covering", RIGHT_ANGLE, front),
        width_figure(door, "clear_width_covered", "clear width with the covering", RIGHT_ANGLE, covered),
    ]
    if meets_stop(door, outers):
        why = "As the leaf turns outwards, the covering's outer corner strikes the stop at the latch."
        return reply(figures, [verdict("swing", SWING_NAME, "blocked", plain(why))], [])
    why = "The leaf opens outwards and takes the covering along; nothing in the room is in its way."
    return reply(figures, [verdict("swing", SWING_NAME, "clears", plain(why))], [])


def swing_question(travel: Travel, household: Household) -> Reply:
    """Answer how far the leaf opens and what width it leaves, for a leaf hung on the left.

    Angles are given for an in-swing leaf only, both clear widths always. A covering over the opening stays on the
    wall while the leaf turns.
    """
    fit = travel["fit"]
    door = fit["door"]
    samples = travel["samples"]
    if over_opening(fit):
        return over_in_swing(travel) if door["swing"] == "in" else over_out_swing(door, samples)
    return leaf_in_swing(door, samples) if door["swing"] == "in" else leaf_out_swing(door, samples)
