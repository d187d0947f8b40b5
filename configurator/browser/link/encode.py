"""A state as a link."""

from collections.abc import Mapping

from configurator.browser.link.check import check_of, short_check
from configurator.browser.link.checked import CHECKED_DOOR, CHECKED_HANDLE
from configurator.browser.link.shapes import Configuration, State, Stock
from configurator.browser.link.spell import spell_number
from configurator.kernel.resolve import full_choices, resolve
from configurator.kernel.shapes import Door, Family, Position
from configurator.kernel.tape.table import DOOR_LIMITS, DOOR_WORDS, HANDLE_LIMITS, HOUSEHOLD_LIMITS

LINK_VERSION = 1


def encode(state: State, stock: Stock) -> str:
    """Return the link of a state, without the ``#`` before it."""
    units = state["units"]
    parts = [str(LINK_VERSION), general_part(state, stock)]
    door_before = ""
    for configuration in state["configurations"]:
        door = door_part(configuration["door"], stock, units)
        covering = covering_part(configuration, stock)
        if door == door_before:
            parts[len(parts) - 1] = parts[len(parts) - 1] + ":" + covering
        else:
            parts.append(door + ":" + covering)
        door_before = door
    text = "/".join(parts)
    return text + "/" + check_of(text) + stock_check(state["configurations"], stock)


def general_part(state: State, stock: Stock) -> str:
    """Return units, which configuration is worked on, and where the household differs."""
    pairs = [state["units"]]
    if state["active"] > 0:
        pairs.append("active=" + str(int(state["active"])))
    pairs.extend(differing(state["household"], stock["household"], HOUSEHOLD_LIMITS, "", state["units"]))
    return ";".join(pairs)


def differing(
    mine: Mapping[str, object], preset: Mapping[str, object], limits: dict[str, list[float]], prefix: str, units: str
) -> list[str]:
    """Return ``name=number`` for each number that differs from its preset."""
    pairs: list[str] = []
    for name in limits:
        value = number_in(mine, name)
        if value != number_in(preset, name):
            pairs.append(prefix + name + "=" + spell_number(value, units))
    return pairs


def number_in(shape: Mapping[str, object], name: str) -> float:
    """Return a number of a shape by its name."""
    value: float = shape[name]  # type: ignore[assignment]
    return value


def door_part(door: Door, stock: Stock, units: str) -> str:
    """Return a door's id and what differs from its preset."""
    preset = stock["doors"][door["id"]]
    pairs = [door["id"]]
    pairs.extend(differing_words(door, preset))
    pairs.extend(differing(door, preset, DOOR_LIMITS, "", units))
    heights = hinges_text(door, units)
    if heights != hinges_text(preset, units):
        pairs.append("hinge_heights=" + heights)
    if door["passive_handle"] != preset["passive_handle"]:
        pairs.append("passive_handle=" + ("yes" if door["passive_handle"] else "no"))
    if door["handle"]["id"] != preset["handle"]["id"]:
        pairs.append("handle=" + door["handle"]["id"])
        preset_handle = stock["handles"][door["handle"]["id"]]
    else:
        preset_handle = preset["handle"]
    pairs.extend(differing(door["handle"], preset_handle, HANDLE_LIMITS, "handle.", units))
    return ";".join(pairs)


def differing_words(door: Mapping[str, object], preset: Mapping[str, object]) -> list[str]:
    """Return ``name=word`` for each of a door's words that differs from its preset."""
    pairs: list[str] = []
    for name in DOOR_WORDS:
        word: str = door[name]  # type: ignore[assignment]
        if word != preset[name]:
            pairs.append(name + "=" + word)
    return pairs


def hinges_text(door: Door, units: str) -> str:
    """Return the hinges' heights, commas between them."""
    return ",".join([spell_number(height, units) for height in door["hinge_heights"]])


def covering_part(configuration: Configuration, stock: Stock) -> str:
    """Return a family's id, the picks that differ from the presets, and the position."""
    family = stock["families"][configuration["family"]]
    picks = full_choices(family, configuration["choices"])
    pairs = [configuration["family"]]
    for choice in family["choices"]:
        pick = picks[choice["id"]]
        if pick != choice["options"][0]["id"]:
            pairs.append(choice["id"] + "=" + pick)
    return ";".join(pairs) + place_part(configuration["place"])


def place_part(place: Position) -> str:
    """Return ``@lower,upper,tilt`` without what is as in a covering let down: 1, 0 and 0."""
    numbers = [place["lower"], place["upper"], place["tilt"]]
    presets = [1.0, 0.0, 0.0]
    last = 3
    while last > 0 and numbers[last - 1] == presets[last - 1]:
        last -= 1
    if last == 0:
        return ""
    return "@" + ",".join([spell_number(numbers[i], "mm") for i in range(last)])


def stock_check(configurations: list[Configuration], stock: Stock) -> str:
    """Return three letters that change when the showroom changes a number behind the link."""
    texts: list[str] = []
    for configuration in configurations:
        door = configuration["door"]
        texts.append(door_text(stock["doors"][door["id"]]))
        texts.append(numbers_text(stock["handles"][door["handle"]["id"]], CHECKED_HANDLE))
        texts.append(family_text(stock["families"][configuration["family"]], configuration["choices"]))
    return short_check(" ".join(texts))


def door_text(door: Door) -> str:
    """Return a preset door's words and numbers."""
    words = [door["id"], door["layout"], door["swing"], door["hinge_side"], door["handle"]["id"]]
    words.extend([numbers_text(door, CHECKED_DOOR), hinges_text(door, "mm"), "yes" if door["passive_handle"] else "no"])
    return " ".join(words)


def numbers_text(shape: Mapping[str, object], names: list[str]) -> str:
    """Return the named numbers of a shape."""
    return " ".join([spell_number(number_in(shape, name), "mm") for name in names])


def family_text(family: Family, choices: dict[str, str]) -> str:
    """Return all of a family's numbers under the picks."""
    numbers = resolve(family, choices)
    words = [family["id"], family["mechanism"]]
    for name in sorted(numbers):
        words.append(name + spell_number(numbers[name], "mm"))
    for size in family["cassettes"]:
        words.extend([spell_number(size["roll"], "mm"), spell_number(size["height"], "mm")])
        words.append(spell_number(size["depth"], "mm"))
    return " ".join(words)
