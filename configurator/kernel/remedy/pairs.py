"""Pairs of picks, sought only for what no single change mends."""

from configurator.kernel.remedy.change import HANDLE_GAP, picking
from configurator.kernel.remedy.plight import mends, reason_told, states_told
from configurator.kernel.shapes import Answer, Change, Message, Plight, Trial


def same_message(one: Message, other: Message) -> bool:
    """Return whether two messages say the same, each term included."""
    if one["text"] != other["text"]:
        return False
    for name, term in one["terms"].items():
        if name not in other["terms"] or term[0] != other["terms"][name][0]:
            return False
    return True


def told_alike(one: Answer, other: Answer, key: str) -> bool:
    """Return whether two answers tell the same of a verdict."""
    if states_told(one).get(key, "") != states_told(other).get(key, ""):
        return False
    return same_message(reason_told(one, key), reason_told(other, key))


def unmended(plight: Plight, trials: list[Trial]) -> list[str]:
    """Return the ids of what none of the single changes mends.

    Another handle is no choice of a covering: that it would help keeps nobody from looking on.
    """
    found: list[str] = []
    for key in plight["troubles"]:
        helped = False
        for trial in trials:
            if HANDLE_GAP not in trial["change"]["numbers"] and mends(plight, trial["answer"], key):
                helped = True
        if not helped:
            found.append(key)
    return found


def first_choice(change: Change) -> str:
    """Return the first choice that a change picks anew, or nothing."""
    for choice in change["picks"]:
        return choice
    return ""


def bearing(plight: Plight, trials: list[Trial], key: str) -> list[Trial]:
    """Return the picks that change what is told of a verdict, of those of a choice that tell the same the first."""
    found: list[Trial] = []
    for trial in trials:
        choice = first_choice(trial["change"])
        known = choice == "" or told_alike(trial["answer"], plight["answer"], key)
        for other in found:
            if first_choice(other["change"]) == choice and told_alike(trial["answer"], other["answer"], key):
                known = True
        if not known:
            found.append(trial)
    return found


def both_picks(one: Change, other: Change) -> Change:
    """Return the change that picks what either picks."""
    picks: dict[str, str] = {**one["picks"]}
    for choice, option in other["picks"].items():
        picks[choice] = option
    return picking(picks)


def pair_changes(plight: Plight, trials: list[Trial]) -> list[Change]:
    """Return the pairs of picks to be tried after all single changes: each of them bears on what none mends alone."""
    found: dict[str, Change] = {}
    for key in unmended(plight, trials):
        bearers = bearing(plight, trials, key)
        for i in range(len(bearers)):
            for j in range(i + 1, len(bearers)):
                one = bearers[i]["change"]
                other = bearers[j]["change"]
                if first_choice(one) != first_choice(other):
                    pair = both_picks(one, other)
                    name = "/".join([choice + "=" + option for choice, option in pair["picks"].items()])
                    found[name] = pair
    return list(found.values())
