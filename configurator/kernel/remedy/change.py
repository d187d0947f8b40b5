"""A change, as data, and the same covering with it made."""

from configurator.kernel.answer import asking
from configurator.kernel.mount.hung import hung_with
from configurator.kernel.mount.wishes import WISHES, wishes_of
from configurator.kernel.resolve import full_choices, resolve, same_build
from configurator.kernel.shapes import Asking, Change, Door, Family, Fit
from configurator.kernel.travel import travelled_alike

HANDLE_GAP = "handle_gap"


def picking(picks: dict[str, str]) -> Change:
    """Return the change that picks options anew."""
    return {"picks": picks, "numbers": {}}


def setting(name: str, value: float) -> Change:
    """Return the change that sets one number by hand; see :class:`configurator.kernel.shapes.Change`."""
    return {"picks": {}, "numbers": {name: value}}


def with_handle_gap(door: Door, gap: float) -> Door:
    """Return the door with a handle that leaves another free depth behind its grip; the grip is as thick as before."""
    handle = door["handle"]
    front = handle["projection"] + gap - handle["gap"]
    return {**door, "handle": {**handle, "gap": gap, "projection": front}}


def changed_door(door: Door, change: Change) -> Door:
    """Return the door, with another handle where the change wants one."""
    if HANDLE_GAP in change["numbers"]:
        return with_handle_gap(door, change["numbers"][HANDLE_GAP])
    return door


def changed_measures(change: Change) -> list[str]:
    """Return the names of the door's measures that a change sets."""
    return ["handle.gap", "handle.projection"] if HANDLE_GAP in change["numbers"] else []


def changed_picks(choices: dict[str, str], change: Change) -> dict[str, str]:
    """Return the picks with those of the change among them."""
    picks: dict[str, str] = {**choices}
    for choice, option in change["picks"].items():
        picks[choice] = option
    return picks


def changed_wishes(wishes: dict[str, float], change: Change) -> dict[str, float]:
    """Return the numbers set by hand with those of the change among them."""
    changed_to: dict[str, float] = {**wishes}
    for name in WISHES:
        if name in change["numbers"]:
            changed_to[name] = change["numbers"][name]
    return changed_to


def numbers_with(family: Family, choices: dict[str, str], wishes: dict[str, float]) -> dict[str, float]:
    """Return the family's numbers with some picks, and all that is set by hand."""
    numbers = resolve(family, choices)
    for name, value in wishes.items():
        numbers[name] = value
    return numbers


def changed_numbers(fit: Fit, change: Change) -> dict[str, float]:
    """Return the family's numbers with the picks of a change, and all that is set by hand."""
    wishes = changed_wishes(wishes_of(fit), change)
    return numbers_with(fit["family"], changed_picks(fit["choices"], change), wishes)


def changed(fit: Fit, change: Change) -> Fit:
    """Return the same covering on the same door with a change made."""
    choices = full_choices(fit["family"], changed_picks(fit["choices"], change))
    wishes = changed_wishes(wishes_of(fit), change)
    if HANDLE_GAP not in change["numbers"]:
        numbers = numbers_with(fit["family"], choices, wishes)
        # What is built alike hangs alike, and hanging it is the most of the work.
        if same_build(fit["numbers"], numbers):
            return {**fit, "choices": choices, "numbers": numbers}
    return hung_with(changed_door(fit["door"], change), fit["family"], choices, wishes)


def asking_changed(asked: Asking, change: Change) -> Asking:
    """Return the answer of a covering with a change made, before anything has been asked of it.

    What is built and hung alike travels alike, and is not followed over its travel again; on the same door the leaf
    turns alike by itself.
    """
    fit = asked["fit"]
    other = changed(fit, change)
    begun = asking(other, asked["household"])
    if HANDLE_GAP not in change["numbers"]:
        for travel in asked["travel"]:
            begun["bare"].append(travel["turn"]["own"])
            if same_build(fit["numbers"], other["numbers"]):
                begun["travel"].append(travelled_alike(travel, other))
    return begun
