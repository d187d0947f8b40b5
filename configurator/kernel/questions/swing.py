"""How far does the leaf open, and what width does it leave?

The room side alone is asked: what stands outside an out-swing door is not measured.
"""

from configurator.kernel.fit import over_opening
from configurator.kernel.message import message, plain
from configurator.kernel.questions.outline import deepest
from configurator.kernel.questions.swing_figures import in_swing_figures, width_figure
from configurator.kernel.questions.swing_over import over_in_swing, over_out_swing
from configurator.kernel.questions.touch import HALF_TURN, earlier
from configurator.kernel.questions.turning import (
    LEAST_TURN,
    RIGHT_ANGLE,
    leaf_front,
    meets_stop,
    over_head,
)
from configurator.kernel.shapes import Door, Household, Outer, Reply, Touch, Travel, Verdict
from configurator.kernel.telling import reply, verdict
from configurator.kernel.tongue import wording

SWING_NAME = wording("opening the leaf")
SAME_TURN = 0.05


def swing_verdict(own: Touch, both: Touch) -> Verdict:
    """Return what a covering costs of an in-swing leaf's turn.

    ``clears`` when it costs nothing, or leaves a right angle; ``blocked`` when less than half of a
    right angle is left; ``guide by hand`` between: the leaf is stopped by hand, or by a door stop.
    """
    terms: dict[str, list[float | str]] = {"piece": [both["kind"], "kind"], "obstacle": [both["met"], "kind"]}
    if both["angle"] >= own["angle"] - SAME_TURN:
        if own["angle"] >= HALF_TURN:
            return verdict("swing", SWING_NAME, "clears", plain("The covering takes nothing from the leaf's turn."))
        why = wording("The covering takes nothing from the leaf's turn: as without it, {piece} meets {obstacle} first.")
        terms = {"piece": [own["kind"], "kind"], "obstacle": [own["met"], "kind"]}
        return verdict("swing", SWING_NAME, "clears", message(why, terms))
    if both["way"] == "closed":
        why = wording("The leaf cannot open: closed already, {piece} stands in {obstacle}.")
        return verdict("swing", SWING_NAME, "blocked", message(why, terms))
    if both["angle"] >= RIGHT_ANGLE:
        why = wording("The leaf opens to a right angle and past it, until {piece} meets {obstacle}.")
        return verdict("swing", SWING_NAME, "clears", message(why, terms))
    state = "blocked" if both["angle"] < LEAST_TURN else "guide by hand"
    why = wording("Before the leaf stands at a right angle, {piece} meets {obstacle}.")
    return verdict("swing", SWING_NAME, state, message(why, terms))


def leaf_in_swing(travel: Travel) -> Reply:
    """Answer for a covering on an in-swing leaf: it turns with the leaf, out of the reveal and towards the walls."""
    own = travel["turn"]["own"]
    both = earlier(own, travel["turn"]["covering"])
    return reply(in_swing_figures(travel["fit"]["door"], own, both), [swing_verdict(own, both)], [])


def out_swing_verdict(door: Door, outers: list[Outer]) -> Verdict:
    """Return whether a covering on an out-swing leaf passes the stops at the latch and at the head."""
    over = over_head(door, outers)
    if over != "":
        why = wording("As the leaf turns outwards, {piece} strikes the stop at the head.")
        return verdict("swing", SWING_NAME, "blocked", message(why, {"piece": [over, "kind"]}))
    if meets_stop(door, outers):
        why = wording("As the leaf turns outwards, the covering's outer corner strikes the stop at the latch.")
        return verdict("swing", SWING_NAME, "blocked", plain(why))
    why = wording("The leaf opens outwards and takes the covering along; nothing in the room is in its way.")
    return verdict("swing", SWING_NAME, "clears", plain(why))


def leaf_out_swing(travel: Travel) -> Reply:
    """Answer for a covering on an out-swing leaf: at 90 degrees it stands in the doorway, in front of the leaf."""
    door = travel["fit"]["door"]
    outers = travel["outline"]
    front = leaf_front(door)
    covered = front + deepest(outers)
    figures = [
        width_figure(door, ["clear_width_bare", wording("clear width without the covering")], RIGHT_ANGLE, front),
        width_figure(door, ["clear_width_covered", wording("clear width with the covering")], RIGHT_ANGLE, covered),
    ]
    return reply(figures, [out_swing_verdict(door, outers)], [])


def swing_question(travel: Travel, household: Household) -> Reply:
    """Answer how far the leaf opens and what width it leaves, for a leaf hung on the left.

    Angles are given for an in-swing leaf only, both clear widths always. A covering over the opening stays on the
    wall while the leaf turns.
    """
    fit = travel["fit"]
    door = fit["door"]
    if over_opening(fit):
        return over_in_swing(travel) if door["swing"] == "in" else over_out_swing(travel)
    return leaf_in_swing(travel) if door["swing"] == "in" else leaf_out_swing(travel)
