"""The single picks that may mend something."""

from configurator.kernel.remedy.change import changed_numbers, picking
from configurator.kernel.resolve import is_new
from configurator.kernel.shapes import Change, Plight


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
