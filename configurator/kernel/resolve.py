"""Choices folded into plain numbers, so that mechanisms and questions never see a choice."""

from configurator.kernel.shapes import Choice, Family, Option

# Numbers that say how a covering looks or is worked; none of them moves it or changes its size.
LOOKS_AND_WORKING = [
    "cloth_view",
    "cloth_light",
    "cloth_mass",
    "band_view",
    "band_light",
    "sheer_view",
    "sheer_light",
    "hand_follows",
    "hand_drop",
    "hand_away",
    "cord_length",
    "loop_length",
    "loop_retained",
    "wired",
    "bolt_width",
    "pattern_repeat",
    "railroads",
    "side_hem",
    "heading",
    "hem",
    "lining_bolt",
    "lining_mass",
    "headrail_mass",
    "rail_mass",
    "tube_mass",
    "rod_mass",
    "motor_mass",
]


def find_option(choice: Choice, picked: str) -> Option:
    """Return the picked option of a choice, or its first when the pick is unknown or absent."""
    for option in choice["options"]:
        if option["id"] == picked:
            return option
    return choice["options"][0]


def full_choices(family: Family, choices: dict[str, str]) -> dict[str, str]:
    """Return a pick for every choice of the family: the given one or the preset."""
    full: dict[str, str] = {}
    for choice in family["choices"]:
        full[choice["id"]] = find_option(choice, choices.get(choice["id"], ""))["id"]
    return full


def resolve(family: Family, choices: dict[str, str]) -> dict[str, float]:
    """Return the family's numbers with those of the chosen options set over them, in order."""
    numbers: dict[str, float] = family["numbers"].copy()
    for choice in family["choices"]:
        option = find_option(choice, choices.get(choice["id"], ""))
        for name, value in option["numbers"].items():
            numbers[name] = value
    return numbers


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


def same_build(numbers: dict[str, float], others: dict[str, float]) -> bool:
    """Return whether two sets of numbers differ at most in looks and working, and so sit alike on any door."""
    for name, value in numbers.items():
        if value != others[name] and name not in LOOKS_AND_WORKING:
            return False
    return True
