"""A state as a link."""

from collections.abc import Mapping
from typing import TypedDict

from configurator.browser.link.check import check_of
from configurator.browser.link.outcome import outcome_text
from configurator.browser.link.shapes import Configuration, State, Stock
from configurator.browser.link.spell import spell_number
from configurator.browser.link.state import LINKED_STEP
from configurator.kernel.answer import ask_fit
from configurator.kernel.mount.hung import hung_with
from configurator.kernel.mount.wishes import WISHES
from configurator.kernel.resolve import full_choices
from configurator.kernel.shapes import Answer, Door, Fit, Position
from configurator.kernel.tape.table import DOOR_LIMITS, DOOR_WORDS, HANDLE_LIMITS, HOUSEHOLD_LIMITS

LINK_VERSION = 2


class Spelling(TypedDict):
    """In which units numbers are spelled, and the names of those that are spelled even where they are the preset's."""

    units: str
    always: list[str]


def encode(state: State, stock: Stock) -> str:
    """Return the link of a state, without the ``#`` before it."""
    answers = [ask_fit(fit_of(one, stock), state["household"]) for one in state["configurations"]]
    return encode_answered(state, answers, stock)


def fit_of(one: Configuration, stock: Stock) -> Fit:
    """Return a configuration hung on its door."""
    return hung_with(one["door"], stock["families"][one["family"]], one["choices"], one["wishes"])


def encode_answered(state: State, answers: list[Answer], stock: Stock) -> str:
    """Return the link of a state for each of whose configurations the answer is at hand."""
    units = state["units"]
    parts = [str(LINK_VERSION), general_part(state, stock)]
    door_before = ""
    for i in range(len(answers)):
        configuration = state["configurations"][i]
        door = door_part(configuration["door"], stock, {"units": units, "always": configuration["measured"]})
        covering = covering_part(configuration, stock, units) + "@" + outcome_text(answers[i], units)
        if door == door_before:
            parts[len(parts) - 1] = parts[len(parts) - 1] + ":" + covering
        else:
            parts.append(door + ":" + covering)
        door_before = door
    text = "/".join(parts)
    return text + "/" + check_of(text)


def general_part(state: State, stock: Stock) -> str:
    """Return units, which configuration is worked on, which step is shown, what is wanted, and a household's own."""
    pairs = [state["units"]]
    if state["active"] > 0:
        pairs.append("active=" + str(int(state["active"])))
    if state["step"] != LINKED_STEP:
        pairs.append("step=" + state["step"])
    if len(state["needs"]) > 0:
        pairs.append("needs=" + ",".join(state["needs"]))
    how: Spelling = {"units": state["units"], "always": []}
    pairs.extend(spelled_numbers(state["household"], stock["household"], HOUSEHOLD_LIMITS, "", how))
    return ";".join(pairs)


def spelled_numbers(
    mine: Mapping[str, object], preset: Mapping[str, object], limits: dict[str, list[float]], prefix: str, how: Spelling
) -> list[str]:
    """Return ``name=number`` for each number that differs from its preset or is always spelled."""
    pairs: list[str] = []
    for name in limits:
        value = number_in(mine, name)
        if value != number_in(preset, name) or prefix + name in how["always"]:
            pairs.append(prefix + name + "=" + spell_number(value, how["units"]))
    return pairs


def number_in(shape: Mapping[str, object], name: str) -> float:
    """Return a number of a shape by its name."""
    value: float = shape[name]  # type: ignore[assignment]
    return value


def door_part(door: Door, stock: Stock, how: Spelling) -> str:
    """Return a door's id and what was measured on it."""
    preset = stock["doors"][door["id"]]
    always = how["always"]
    pairs = [door["id"]]
    pairs.extend(spelled_words(door, preset, always))
    pairs.extend(spelled_numbers(door, preset, DOOR_LIMITS, "", how))
    heights = hinges_text(door, how["units"])
    if heights != hinges_text(preset, how["units"]) or "hinge_heights" in always:
        pairs.append("hinge_heights=" + heights)
    if door["passive_handle"] != preset["passive_handle"] or "passive_handle" in always:
        pairs.append("passive_handle=" + ("yes" if door["passive_handle"] else "no"))
    handle = door["handle"]
    if handle["id"] != preset["handle"]["id"] or "handle" in always:
        pairs.append("handle=" + handle["id"])
    pairs.extend(spelled_numbers(handle, stock["handles"][handle["id"]], HANDLE_LIMITS, "handle.", how))
    return ";".join(pairs)


def spelled_words(door: Mapping[str, object], preset: Mapping[str, object], always: list[str]) -> list[str]:
    """Return ``name=word`` for each of a door's words that differs from its preset or is always spelled."""
    pairs: list[str] = []
    for name in DOOR_WORDS:
        word: str = door[name]  # type: ignore[assignment]
        if word != preset[name] or name in always:
            pairs.append(name + "=" + word)
    return pairs


def hinges_text(door: Door, units: str) -> str:
    """Return the hinges' heights, commas between them."""
    return ",".join([spell_number(height, units) for height in door["hinge_heights"]])


def covering_part(configuration: Configuration, stock: Stock, units: str) -> str:
    """Return a family's id, all picks, what is set by hand, and the position."""
    family = stock["families"][configuration["family"]]
    picks = full_choices(family, configuration["choices"])
    pairs = [configuration["family"]]
    for choice in family["choices"]:
        pairs.append(choice["id"] + "=" + picks[choice["id"]])
    for name in WISHES:
        if name in configuration["wishes"]:
            pairs.append(name + "=" + spell_number(configuration["wishes"][name], units))
    return ";".join(pairs) + "@" + place_text(configuration["place"])


def place_text(place: Position) -> str:
    """Return ``lower,upper,tilt`` without what is 0 at its end; ``lower`` stays."""
    numbers = [place["lower"], place["upper"], place["tilt"]]
    last = 3
    while last > 1 and numbers[last - 1] == 0:
        last -= 1
    return ",".join([spell_number(numbers[i], "mm") for i in range(last)])
