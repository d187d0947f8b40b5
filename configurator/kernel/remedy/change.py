"""A change, as data, and the same covering with it made."""

from configurator.kernel.mount.hung import hung_with
from configurator.kernel.mount.wishes import WISHES, wishes_of
from configurator.kernel.resolve import full_choices, resolve, same_build
from configurator.kernel.shapes import Change, Door, Fit

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


def changed_choices(fit: Fit, change: Change) -> dict[str, str]:
    """Return all picks, those of the change among them."""
    picks: dict[str, str] = {**fit["choices"]}
    for choice, option in change["picks"].items():
        picks[choice] = option
    return full_choices(fit["family"], picks)


def changed_wishes(fit: Fit, change: Change) -> dict[str, float]:
    """Return the numbers set by hand, those of the change among them."""
    wishes = wishes_of(fit)
    for name in WISHES:
        if name in change["numbers"]:
            wishes[name] = change["numbers"][name]
    return wishes


def changed_numbers(fit: Fit, change: Change) -> dict[str, float]:
    """Return the family's numbers with the picks of a change, and all that is set by hand."""
    numbers = resolve(fit["family"], changed_choices(fit, change))
    for name, value in changed_wishes(fit, change).items():
        numbers[name] = value
    return numbers


def changed(fit: Fit, change: Change) -> Fit:
    """Return the same covering on the same door with a change made."""
    choices = changed_choices(fit, change)
    door = fit["door"]
    if HANDLE_GAP in change["numbers"]:
        door = with_handle_gap(door, change["numbers"][HANDLE_GAP])
    else:
        numbers = changed_numbers(fit, change)
        # What is built alike hangs alike, and hanging it is the most of the work.
        if same_build(fit["numbers"], numbers):
            return {**fit, "choices": choices, "numbers": numbers}
    return hung_with(door, fit["family"], choices, changed_wishes(fit, change))
