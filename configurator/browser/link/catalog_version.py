"""The version of a catalog: a check over all that figures come of."""

from configurator.browser.link.check import check_of
from configurator.browser.link.shapes import Stock
from configurator.browser.link.spell import spell_number
from configurator.kernel.shapes import Family
from configurator.kernel.tape.table import DOOR_LIMITS, HANDLE_LIMITS


def numbers_text(numbers: dict[str, float]) -> str:
    """Return numbers with their names as a text."""
    return ";".join([name + "=" + spell_number(value, "mm") for name, value in numbers.items()])


def family_text(family: Family) -> str:
    """Return a family with its choices as a text."""
    parts = [family["id"], family["mechanism"], numbers_text(family["numbers"])]
    for cassette in family["cassettes"]:
        sizes = {"roll": cassette["roll"], "height": cassette["height"], "depth": cassette["depth"]}
        parts.append(numbers_text(sizes))
    for choice in family["choices"]:
        for option in choice["options"]:
            parts.append(choice["id"] + "=" + option["id"] + ":" + numbers_text(option["numbers"]))
    return "/".join(parts)


def picked_numbers(shape: dict[str, float], names: dict[str, list[float]]) -> dict[str, float]:
    """Return the numbers of a door or a handle."""
    numbers: dict[str, float] = {}
    for name in names:
        numbers[name] = shape[name]
    return numbers


def catalog_version(stock: Stock) -> str:
    """Return five letters that change with any number of a door, a handle or a family."""
    parts = [family_text(family) for family in stock["families"].values()]
    for door in stock["doors"].values():
        own: dict[str, float] = door  # type: ignore[assignment]
        parts.append(door["id"] + "/" + door["handle"]["id"] + "/" + numbers_text(picked_numbers(own, DOOR_LIMITS)))
    for handle in stock["handles"].values():
        held: dict[str, float] = handle  # type: ignore[assignment]
        parts.append(handle["id"] + "/" + numbers_text(picked_numbers(held, HANDLE_LIMITS)))
    return check_of("/".join(parts))
