"""What does not clear, and what a change that is tried makes of it."""

from configurator.kernel.message import is_said
from configurator.kernel.shapes import Answer, Asking, Message, Plight

REFUSAL = "refusal"
CLEARS = "clears"
BLOCKED = "blocked"
# What is neither clear nor blocked stands between them, whatever words a question has for it.
STATE_RANKS: dict[str, float] = {CLEARS: 0.0, BLOCKED: 2.0}
BETWEEN_RANK = 1.0


def state_rank(state: str) -> float:
    """Return how bad a state is: 0 for what clears, 2 for what is blocked."""
    return STATE_RANKS.get(state, BETWEEN_RANK)


def states_told(answer: Answer) -> dict[str, str]:
    """Return the state of each verdict, and as one more whether it can go on the door at all."""
    states: dict[str, str] = {REFUSAL: BLOCKED if is_said(answer["refusal"]) else CLEARS}
    for key, verdict in answer["verdicts"].items():
        states[key] = verdict["state"]
    return states


def rank_told(answer: Answer, key: str) -> float:
    """Return how bad a verdict is; one that is not told clears, or is blocked where nothing can be told."""
    if is_said(answer["refusal"]):
        return state_rank(BLOCKED)
    return state_rank(answer["verdicts"][key]["state"]) if key in answer["verdicts"] else state_rank(CLEARS)


def reason_told(answer: Answer, key: str) -> Message:
    """Return why a verdict is what it is; the refusal where there is none."""
    if key in answer["verdicts"]:
        return answer["verdicts"][key]["why"]
    return answer["refusal"]


def plight_told(asked: Asking) -> Plight:
    """Return what was told of a fit, and what of it does not clear."""
    answer = asked["answer"]
    troubles: list[str] = []
    for key, state in states_told(answer).items():
        if state_rank(state) > 0:
            troubles.append(key)
    return {
        "fit": asked["fit"],
        "household": asked["household"],
        "travel": asked["travel"],
        "answer": answer,
        "troubles": troubles,
    }


def worst_state(answer: Answer) -> str:
    """Return the worst state of all verdicts."""
    worst = CLEARS
    for state in states_told(answer).values():
        if state_rank(state) > state_rank(worst):
            worst = state
    return worst


def state_reached(answer: Answer, key: str) -> str:
    """Return the state of a verdict after a change, for a refusal that of the worst; blocked where it is not told."""
    if key == REFUSAL:
        return worst_state(answer)
    return states_told(answer).get(key, BLOCKED)


def nothing_worse(plight: Plight, answer: Answer) -> bool:
    """Return whether no verdict is worse after a change than before; one that was not told before must clear."""
    for key in states_told(answer):
        if rank_told(answer, key) > rank_told(plight["answer"], key):
            return False
    return True


def mends(plight: Plight, answer: Answer, key: str) -> bool:
    """Return whether a change makes a verdict better, can be hung, and makes no other verdict worse."""
    before = rank_told(plight["answer"], key)
    return state_rank(state_reached(answer, key)) < before and nothing_worse(plight, answer)


def may_mend(plight: Plight, answer: Answer) -> bool:
    """Return whether a change mends anything, by what is told of it so far; each trouble must have been asked about."""
    for key in plight["troubles"]:
        if mends(plight, answer, key):
            return True
    return False
