"""Choices folded into plain numbers, so that mechanisms and questions never see a choice."""

from configurator.kernel.shapes import Choice, Family, Option


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
    numbers: dict[str, float] = {}
    for name, value in family["numbers"].items():
        numbers[name] = value
    for choice in family["choices"]:
        option = find_option(choice, choices.get(choice["id"], ""))
        for name, value in option["numbers"].items():
            numbers[name] = value
    return numbers
