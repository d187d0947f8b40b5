"""The search for fixes in steps so small that each leaves a frame its time, on a phone too."""

from configurator.kernel.answer import ask_next, is_answered
from configurator.kernel.questions import QUESTIONS
from configurator.kernel.remedy.change import asking_changed
from configurator.kernel.remedy.measured import measured_changes
from configurator.kernel.remedy.pairs import pair_changes
from configurator.kernel.remedy.plight import plight_told
from configurator.kernel.remedy.singles import picked_changes
from configurator.kernel.shapes import Asking, Plight, Search

# Picks, numbers set by hand, pairs.
KINDS_OF_CHANGE = 3


def search_for(asked: Asking) -> Search:
    """Return the search for what mends a fit, before its first step; what is not asked of the fit yet, it asks."""
    return {
        "first": asked,
        "asking": asked,
        "plight": [],
        "changes": [],
        "begun": 0,
        "trials": [],
        "found": 0,
        "done": False,
    }


def begin_trial(search: Search) -> None:
    """Make the next change."""
    search["asking"] = asking_changed(search["first"], search["changes"][search["begun"]])
    search["begun"] += 1


def end_trial(search: Search) -> None:
    """Note what was told of the change that is being tried."""
    change = search["changes"][search["begun"] - 1]
    search["trials"].append({"change": change, "answer": search["asking"]["answer"]})


def find_more(search: Search, plight: Plight) -> None:
    """Find more changes to be tried: other picks, then numbers set by hand, then pairs for what none of these mends."""
    if search["found"] == 0:
        search["changes"].extend(picked_changes(plight))
    elif search["found"] == 1:
        search["changes"].extend(measured_changes(plight))
    else:
        search["changes"].extend(pair_changes(plight, search["trials"]))
    search["found"] += 1


def search_on(search: Search) -> None:
    """Take a search that is not done one step further: hang it, work out its travel, ask one question, or look on."""
    if not is_answered(QUESTIONS, search["asking"]):
        ask_next(search["asking"])
    elif len(search["plight"]) == 0:
        search["plight"].append(plight_told(search["asking"]))
    elif search["begun"] > len(search["trials"]):
        end_trial(search)
    elif search["begun"] < len(search["changes"]):
        begin_trial(search)
    elif search["found"] < KINDS_OF_CHANGE:
        find_more(search, search["plight"][0])
    else:
        search["done"] = True
