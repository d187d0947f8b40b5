"""Which picks of a family answer what is wanted best: its first ones, each other one, then the best of each together.

What answers alike is asked once, nothing is asked but what is wanted, and nothing more once no other picks could answer
it better. The search goes in steps so small that each leaves a frame its time.
"""

from collections.abc import Callable
from typing import TypedDict

from configurator.kernel.answer import ask_on, asking, is_answered, with_option
from configurator.kernel.message import is_said
from configurator.kernel.mount.hung import hung
from configurator.kernel.needs import is_met, need_score, questions_for, takes_asking
from configurator.kernel.remedy.change import asking_changed, picking
from configurator.kernel.resolve import full_choices, is_new, resolve, same_build
from configurator.kernel.shapes import Answer, Asking, Door, Family, Household, Reply, Travel

# A need that is met weighs more than any score can make up.
MET_WEIGHT = 100.0
# Another pick must be worth changing it.
PICK_COST = 0.02


class Match(TypedDict):
    """Picks of a family with their answer to what is wanted: the scores by need, which are met, and what all weigh."""

    family: str
    choices: dict[str, str]
    answer: Answer
    scores: dict[str, float]
    met: list[str]
    weight: float


class Matching(TypedDict):
    """A search among a family's picks: what waits to be asked, what was, and the best so far, none before the first.

    ``first`` is what its first picks were asked, for others that travel alike; none before.
    """

    door: Door
    family: Family
    household: Household
    wanted: list[str]
    questions: list[Callable[[Travel, Household], Reply]]
    first: list[Asking]
    waiting: list[dict[str, str]]
    asked: list[Match]
    asking: list[Asking]
    best: list[Match]
    combined: bool
    done: bool


def matching_for(door: Door, family: Family, household: Household, wanted: list[str]) -> Matching:
    """Return the search before its first step."""
    return {
        "door": door,
        "family": family,
        "household": household,
        "wanted": wanted,
        "questions": questions_for(wanted),
        "first": [],
        "waiting": [full_choices(family, {})],
        "asked": [],
        "asking": [],
        "best": [],
        "combined": False,
        "done": False,
    }


def weighed(matching: Matching, answer: Answer) -> Match:
    """Return an answer with what it weighs against what is wanted."""
    scores: dict[str, float] = {}
    met: list[str] = []
    weight = 0.0
    for key in matching["wanted"]:
        score = need_score(key, answer, matching["family"])
        scores[key] = score
        weight += score
        if is_met(key, score):
            met.append(key)
            weight += MET_WEIGHT
    for choice, option in full_choices(matching["family"], {}).items():
        if answer["choices"][choice] != option:
            weight -= PICK_COST
    return {
        "family": matching["family"]["id"],
        "choices": answer["choices"],
        "answer": answer,
        "scores": scores,
        "met": met,
        "weight": weight,
    }


def most_possible(matching: Matching) -> float:
    """Return the most that other picks than the first can weigh: what no question answers is alike for all of them."""
    first = matching["asked"][0]
    most = 0.0
    for key in matching["wanted"]:
        open_to_all = takes_asking(key) or is_said(first["answer"]["refusal"])
        most += 1.0 if open_to_all else first["scores"][key]
        if open_to_all or key in first["met"]:
            most += MET_WEIGHT
    return most - PICK_COST


def single_picks(matching: Matching) -> list[dict[str, str]]:
    """Return the first picks with each other option that is offered, where that makes any difference.

    What is built as the first comes before what has to be hung anew.
    """
    family = matching["family"]
    first = full_choices(family, {})
    own = resolve(family, first)
    alike: list[dict[str, str]] = []
    found: list[dict[str, str]] = []
    for choice in family["choices"]:
        builds = [own]
        for option in choice["options"]:
            picked = with_option(first, choice["id"], option["id"])
            numbers = resolve(family, picked)
            if not option["retired"] and is_new(numbers, builds):
                builds.append(numbers)
                if same_build(own, numbers):
                    alike.append(picked)
                else:
                    found.append(picked)
    alike.extend(found)
    return alike


def best_together(matching: Matching) -> list[dict[str, str]]:
    """Return the best option of each choice, all together, where more than one of them differs from the first picks."""
    first = matching["asked"][0]
    picks = first["choices"]
    changes = 0
    for choice in matching["family"]["choices"]:
        best = first
        for match in matching["asked"]:
            differs = match["choices"][choice["id"]] != first["choices"][choice["id"]]
            if differs and match["weight"] > best["weight"]:
                best = match
        if best["choices"][choice["id"]] != picks[choice["id"]]:
            picks = with_option(picks, choice["id"], best["choices"][choice["id"]])
            changes += 1
    return [picks] if changes > 1 else []


def end_asking(matching: Matching) -> None:
    """Weigh what has been asked, and keep it where it is better than the best so far."""
    match = weighed(matching, matching["asking"][0]["answer"])
    matching["asking"] = []
    matching["asked"].append(match)
    if len(matching["best"]) == 0:
        matching["best"] = [match]
        matching["waiting"] = single_picks(matching)
    elif match["weight"] > matching["best"][0]["weight"]:
        matching["best"] = [match]
    # What could gain less than a pick costs is not looked for.
    if matching["best"][0]["weight"] >= most_possible(matching) - PICK_COST:
        matching["done"] = True


def begin_asking(matching: Matching) -> None:
    """Hang what waits."""
    picks = matching["waiting"][0]
    matching["waiting"] = matching["waiting"][1:]
    if len(matching["first"]) == 0:
        fit = hung(matching["door"], matching["family"], picks)
        matching["first"] = [asking(fit, matching["household"])]
        matching["asking"] = matching["first"]
    else:
        matching["asking"] = [asking_changed(matching["first"][0], picking(picks))]


def match_on(matching: Matching) -> None:
    """Take a search that is not done one step further: hang what waits, ask a question of it, weigh it, or look on."""
    if len(matching["asking"]) > 0:
        if is_answered(matching["questions"], matching["asking"][0]):
            end_asking(matching)
        else:
            ask_on(matching["questions"], matching["asking"][0])
    elif len(matching["waiting"]) > 0:
        begin_asking(matching)
    elif not matching["combined"]:
        matching["combined"] = True
        matching["waiting"] = best_together(matching)
    else:
        matching["done"] = True


def best_match(door: Door, family: Family, household: Household, wanted: list[str]) -> Match:
    """Return the best that is found, all in one call."""
    matching = matching_for(door, family, household, wanted)
    while not matching["done"]:
        match_on(matching)
    return matching["best"][0]


def costliest_wish(matches: list[Match], wanted: list[str]) -> str:
    """Return the wish without which most coverings meet all others; empty where one meets them all, or none helps."""
    worst = ""
    most = 0
    for match in matches:
        if len(match["met"]) == len(wanted):
            return ""
    for key in wanted:
        count = 0
        for match in matches:
            if len([other for other in wanted if other == key or other in match["met"]]) == len(wanted):
                count += 1
        if count > most:
            most = count
            worst = key
    return worst
