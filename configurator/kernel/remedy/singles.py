"""The single picks that may mend something."""

from configurator.kernel.remedy.change import changed_numbers, picking
from configurator.kernel.shapes import Change, Plight


def same_numbers(numbers: dict[str, float], others: dict[str, float]) -> bool:
    """Return whether two sets of numbers are the same, so that all that is told of them is the same too."""
    for name, value in numbers.items():
        if value != others[name]:
            return False
    return True


def is_new(numbers: dict[str, float], known: list[dict[str, float]]) -> bool:
    """Return whether none of the known sets of numbers is the same."""
    for others in known:
        if same_numbers(numbers, others):
            return False
    return True


def picked_changes(plight: Plight) -> list[Change]:
    """Return each other pick that is still offered and changes anything, what is alike once; none where all clears."""
    fit = plight["fit"]
    found: list[Change] = []
    if len(plight["troubles"]) == 0:
        return found
    for choice in fit["family"]["choices"]:
        known = [fit["numbers"]]
        for option in choice["options"]:
            change = picking({choice["id"]: option["id"]})
            numbers = changed_numbers(fit, change)
            if not option["retired"] and is_new(numbers, known):
                known.append(numbers)
                found.append(change)
    return found
