"""The fixes that are told: of all that was tried, what mends, the best of it first."""

from configurator.kernel.answer import asking
from configurator.kernel.remedy.change import HANDLE_GAP
from configurator.kernel.remedy.fix_words import cost_messages, fix_message
from configurator.kernel.remedy.plight import REFUSAL, mends, state_rank, state_reached
from configurator.kernel.remedy.search import search_for, search_on
from configurator.kernel.shapes import Answer, Fit, Fix, Household, Plight, Search, Trial
from configurator.kernel.telling import figure_told

FIXES_TOLD = 3
# A better state outweighs any cost, and so does a handle that may stay.
STATE_WEIGHT = 1e6
HANDLE_WEIGHT = 1e5


def looks_told(answer: Answer) -> list[float]:
    """Return visible glass when open, height of the stack and greatest projection; those of the bare door without."""
    return [
        figure_told(answer, "visible_glass_open", 1.0),
        figure_told(answer, "stack_height", 0.0),
        figure_told(answer, "projection_most", 0.0),
    ]


def fix_of(plight: Plight, trial: Trial, key: str) -> Fix:
    """Return a change that mends a verdict as it is told."""
    before = looks_told(plight["answer"])
    after = looks_told(trial["answer"])
    state = state_reached(trial["answer"], key)
    return {
        "verdict": key,
        "change": trial["change"],
        "says": fix_message(plight["fit"]["family"], trial["change"], state),
        "state": state,
        "glass": after[0] - before[0],
        "stack": after[1] - before[1],
        "projection": after[2] - before[2],
        "costs": [] if key == REFUSAL else cost_messages(before, after),
    }


def fix_weight(fix: Fix, glass_height: float) -> float:
    """Return what a fix weighs: its state, another handle, then mm of glass, stack and projection that it costs."""
    handle = HANDLE_WEIGHT if HANDLE_GAP in fix["change"]["numbers"] else 0.0
    cost = fix["stack"] + fix["projection"] - fix["glass"] * glass_height
    return state_rank(fix["state"]) * STATE_WEIGHT + handle + cost


def fixes_for(plight: Plight, trials: list[Trial], key: str) -> list[Fix]:
    """Return what mends one verdict among what was tried: single changes, or pairs where none of those helps."""
    singles: list[Fix] = []
    pairs: list[Fix] = []
    for trial in trials:
        if mends(plight, trial["answer"], key):
            found = fix_of(plight, trial, key)
            picks = list(found["change"]["picks"])
            if len(picks) > 1:
                pairs.append(found)
            else:
                singles.append(found)
    return singles if len(singles) > 0 else pairs


def best_fixes(plight: Plight, trials: list[Trial]) -> list[Fix]:
    """Return, verdict by verdict, the best three fixes among what was tried so far."""
    height = plight["fit"]["door"]["glass_height"]
    told: list[Fix] = []
    for key in plight["troubles"]:
        found = sorted(fixes_for(plight, trials, key), key=lambda fix: fix_weight(fix, height))
        told.extend(found[:FIXES_TOLD])
    return told


def fixes_found(search: Search) -> list[Fix]:
    """Return, verdict by verdict, the best three fixes that a search has found so far."""
    found: list[Fix] = []
    for plight in search["plight"]:
        found.extend(best_fixes(plight, search["trials"]))
    return found


def searched(fit: Fit, household: Household) -> Search:
    """Return the search for what mends what does not clear, done."""
    search = search_for(asking(fit, household))
    while not search["done"]:
        search_on(search)
    return search


def fixes(fit: Fit, household: Household) -> list[Fix]:
    """Return what mends what does not clear: at most three fixes a verdict, each made and asked again; none perhaps."""
    return fixes_found(searched(fit, household))


def picks_told(search: Search) -> list[Answer]:
    """Return what was told of the same covering with other picks, nothing set by hand."""
    return [trial["answer"] for trial in search["trials"] if len(list(trial["change"]["numbers"])) == 0]
