"""Needs of whoever works the covering and the door."""

from configurator.kernel.numbers import clamp
from configurator.kernel.remedy.plight import BLOCKED, state_rank
from configurator.kernel.shapes import Answer, Family
from configurator.kernel.telling import figure_told

# 8 in, and the low end of the reach range of the 2010 ADA Standards, 308.2.1: 15 in.
DEPTH_MOST = 203.2
LOW_REACH = 381.0


def state_score(answer: Answer, key: str) -> float:
    """Return 1 for a verdict that clears or is not told, 0 for a blocked one, and 0.5 for what lies between."""
    if key not in answer["verdicts"]:
        return 1.0
    return 1 - state_rank(answer["verdicts"][key]["state"]) / state_rank(BLOCKED)


def handle_met(answer: Answer, family: Family) -> float:
    """Return whether it passes the handle by itself and leaves a hand its room there."""
    return min(state_score(answer, "pass_through"), state_score(answer, "handle_works"))


def depth_met(answer: Answer, family: Family) -> float:
    """Return 1 for no depth at all, down to 0 at 8 in."""
    return clamp(1 - figure_told(answer, "projection_most", DEPTH_MOST) / DEPTH_MOST, 0.0, 1.0)


def bending_met(answer: Answer, family: Family) -> float:
    """Return the lowest place of the hand against the lowest within everyone's reach; 1 where none is needed."""
    low = LOW_REACH
    for key in ["hand_open", "hand_half", "hand_closed"]:
        low = min(low, figure_told(answer, key, LOW_REACH))
    return clamp(low / LOW_REACH, 0.0, 1.0)


def children_met(answer: Answer, family: Family) -> float:
    """Return 1 where nothing is a danger to a child, 0 otherwise."""
    return 1.0 if state_score(answer, "child_safety") == 1 else 0.0
