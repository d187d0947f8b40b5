"""The search for fixes in steps so small that each leaves a frame its time, on a phone too."""

from configurator.kernel.answer import ask_next, ask_on, is_answered
from configurator.kernel.questions import QUESTIONS
from configurator.kernel.remedy.change import asking_changed
from configurator.kernel.remedy.measured import measured_changes
from configurator.kernel.remedy.pairs import pair_changes
from configurator.kernel.remedy.plight import may_mend, plight_told
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
        "questions": QUESTIONS,
        "telling": 0,
        "changes": [],
        "begun": 0,
        "trials": [],
        "found": 0,
        "done": False,
    }


def begin_plight(search: Search) -> None:
    """Note what does not clear, and put first the questions that tell of it."""
    first = search["first"]
    plight = plight_told(first)
    tellers: list[int] = [first["told_by"].get(key, len(QUESTIONS)) for key in plight["troubles"]]
    foremost = [QUESTIONS[at] for at in range(len(QUESTIONS)) if at in tellers]
    search["telling"] = len(foremost)
    foremost.extend([QUESTIONS[at] for at in range(len(QUESTIONS)) if at not in tellers])
    search["questions"] = foremost
    search["plight"].append(plight)


def is_tried(search: Search) -> bool:
    """Return whether the change that is being tried has been asked for long enough: all, or until it mends nothing."""
    asked = search["asking"]
    if is_answered(search["questions"], asked):
        return True
    return asked["asked"] == search["telling"] and not may_mend(search["plight"][0], asked["answer"])


def begin_trial(search: Search) -> None:
    """Make the next change."""
    asked = asking_changed(search["first"], search["changes"][search["begun"]])
    asked["tried"] = True
    asked["travel"] = [{**travel, "tried": True} for travel in asked["travel"]]
    search["asking"] = asked
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
    if len(search["plight"]) == 0:
        if not ask_next(search["first"]):
            begin_plight(search)
    elif search["begun"] > len(search["trials"]):
        if is_tried(search):
            end_trial(search)
        else:
            ask_on(search["questions"], search["asking"])
    elif search["begun"] < len(search["changes"]):
        begin_trial(search)
    elif search["found"] < KINDS_OF_CHANGE:
        find_more(search, search["plight"][0])
    else:
        search["done"] = True
