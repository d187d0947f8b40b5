"""The parts of a link: a door with its corrections, a covering with its picks and position."""

import math
from typing import Any, TypedDict

from configurator.browser.link.renamed import choice_now, door_now, family_now, handle_now, option_now
from configurator.browser.link.shapes import Opened, Stock
from configurator.browser.link.spell import read_number
from configurator.browser.link.state import fresh_configuration, preset_door
from configurator.kernel.message import message
from configurator.kernel.mount.wishes import WISH_LIMITS
from configurator.kernel.numbers import clamp
from configurator.kernel.position import position
from configurator.kernel.resolve import find_option
from configurator.kernel.shapes import Choice, Door, Family, Message, Position
from configurator.kernel.tape.leaf_fields import HINGE_LIMITS, HINGES_MOST
from configurator.kernel.tape.table import DOOR_COUNTS, DOOR_LIMITS, DOOR_WORDS, HANDLE_LIMITS
from configurator.kernel.tongue import wording

TILT_MOST = 180.0


class MeasuredDoor(TypedDict):
    """A door with what a link says was measured on it, and the names of that."""

    door: Door
    names: list[str]


def put_number(shape: Any, pair: str, limits: dict[str, list[float]], notes: list[Message]) -> bool:
    """Set a shape's number from ``name=number`` and return true, or note why it is left as it is."""
    words = pair.split("=")
    name = words[0]
    if len(words) != 2 or name not in limits:
        told = wording("The measurement {name} is not known and is left out.")
        notes.append(message(told, {"name": [name, "name"]}))
        return False
    reading = read_number(words[1])
    whole = name not in DOOR_COUNTS or reading["value"] == math.floor(reading["value"])
    if not reading["good"] or not whole or not within(reading["value"], limits[name]):
        told = wording("The value {value} of {name} cannot be; the preset's is shown.")
        notes.append(message(told, {"value": [words[1], "name"], "name": [name, "name"]}))
        return False
    shape[name] = int(reading["value"]) if name in DOOR_COUNTS else reading["value"]
    return True


def within(value: float, limits: list[float]) -> bool:
    """Return whether a value lies between two limits, themselves included."""
    return limits[0] <= value and value <= limits[1]


def read_door(part: str, stock: Stock, notes: list[Message]) -> MeasuredDoor:
    """Return a door with its measurements; for an unknown one, noted, the one that the page opens with stands in."""
    pairs = part.split(";")
    ident = door_now(pairs[0], stock)
    if ident not in stock["doors"]:
        told = wording("The door {door} is not in this showroom's list; another stands in for it.")
        notes.append(message(told, {"door": [ident, "name"]}))
        ident = stock["opening"][0]
    read: MeasuredDoor = {"door": preset_door(stock, ident), "names": []}
    for pair in pairs[1:]:
        if pair.startswith("handle="):
            put_handle(read["door"], handle_now(pair[7:], stock), stock, notes)
    for pair in pairs[1:]:
        if put_pair(read["door"], pair, notes):
            read["names"].append(pair.split("=")[0])
    return read


def put_handle(door: Door, ident: str, stock: Stock, notes: list[Message]) -> None:
    """Set another handle on a door."""
    if ident in stock["handles"]:
        door["handle"] = stock["handles"][ident].copy()
    else:
        told = wording("The handle {handle} is not in this showroom's list; the preset's is shown.")
        notes.append(message(told, {"handle": [ident, "name"]}))


def put_pair(door: Door, pair: str, notes: list[Message]) -> bool:
    """Set one measurement on a door and return whether that could be done; its handle is set before."""
    words = pair.split("=")
    name = words[0]
    if len(words) == 2 and name in DOOR_WORDS:
        return put_word(door, name, words[1], notes)
    if len(words) == 2 and name == "passive_handle":
        door["passive_handle"] = words[1] == "yes"
        return True
    if len(words) == 2 and name == "hinge_heights":
        return put_hinges(door, words[1], notes)
    if name.startswith("handle."):
        return put_number(door["handle"], pair[7:], HANDLE_LIMITS, notes)
    return name == "handle" or put_number(door, pair, DOOR_LIMITS, notes)


def put_word(shape: Any, name: str, word: str, notes: list[Message]) -> bool:
    """Set one of a door's words and return true, or note why it is left as it is."""
    if word not in DOOR_WORDS[name]["options"]:
        told = wording("The word {word} of {name} is not known; the preset's is shown.")
        notes.append(message(told, {"word": [word, "name"], "name": [name, "name"]}))
        return False
    shape[name] = word
    return True


def put_hinges(door: Door, text: str, notes: list[Message]) -> bool:
    """Set the hinges' heights and return true, or note why they are left as they are."""
    heights: list[float] = []
    for word in text.split(","):
        reading = read_number(word)
        if reading["good"] and within(reading["value"], HINGE_LIMITS):
            heights.append(reading["value"])
    if len(heights) != len(text.split(",")) or len(heights) > HINGES_MOST:
        told = wording("The hinge heights {heights} cannot be; the preset's are shown.")
        notes.append(message(told, {"heights": [text, "name"]}))
        return False
    door["hinge_heights"] = heights
    return True


def read_covering(part: str, measured: MeasuredDoor, opened: Opened, stock: Stock) -> None:
    """Add a covering on a door; for an unknown one, noted, the one that the page opens with stands in, as it comes."""
    halves = part.split("@")
    pairs = halves[0].split(";")
    notes = opened["problems"]
    ident = family_now(pairs[0], stock)
    known = ident in stock["families"]
    read = fresh_configuration(stock, measured["door"]["id"], ident if known else stock["opening"][1])
    read["door"] = measured["door"]
    read["measured"] = measured["names"]
    opened["state"]["configurations"].append(read)
    opened["noted"].append(halves[2] if known and len(halves) > 2 else "")
    if not known:
        told = wording(
            "The covering {covering} is not in this showroom's list; {other} stands in for it on the same door."
        )
        other = stock["families"][stock["opening"][1]]["name"]
        notes.append(message(told, {"covering": [ident, "name"], "other": [other, "name"]}))
        return
    family = stock["families"][ident]
    if family["retired"]:
        told = wording("{covering} is no longer offered; it is shown as it was.")
        notes.append(message(told, {"covering": [family["name"], "name"]}))
    for pair in pairs[1:]:
        if pair.split("=")[0] in WISH_LIMITS:
            put_number(read["wishes"], pair, WISH_LIMITS, notes)
        else:
            put_pick(read["choices"], family, pair, opened, stock)
    if len(halves) > 1:
        read["place"] = read_place(halves[1], notes)


def put_pick(picks: dict[str, str], family: Family, pair: str, opened: Opened, stock: Stock) -> None:
    """Set one pick, or note that it is not known or no longer offered."""
    words = pair.split("=")
    ident = choice_now(words[0], family, stock)
    for choice in family["choices"]:
        if choice["id"] == ident and len(words) == 2:
            put_option(picks, choice, option_now(words[1], choice, family, stock), opened["problems"])
            return
    told = wording("The choice {choice} is not known and is left out.")
    opened["problems"].append(message(told, {"choice": [pair, "name"]}))


def put_option(picks: dict[str, str], choice: Choice, ident: str, notes: list[Message]) -> None:
    """Set a pick of a choice that is there."""
    option = find_option(choice, ident)
    picks[choice["id"]] = option["id"]
    if option["id"] != ident:
        told = wording("The option {option} of {choice} is not known; the preset is shown.")
        notes.append(message(told, {"option": [ident, "name"], "choice": [choice["name"], "name"]}))
    elif option["retired"]:
        told = wording("{option} is no longer offered; it is shown as it was.")
        notes.append(message(told, {"option": [option["name"], "name"]}))


def read_place(text: str, notes: list[Message]) -> Position:
    """Return the position from ``lower,upper,tilt``, later ones left out as they come."""
    place = [1.0, 0.0, 0.0]
    words = text.split(",")
    for i in range(min(len(words), 3)):
        reading = read_number(words[i])
        if reading["good"]:
            place[i] = reading["value"]
        else:
            told = wording("The position {place} cannot be read and is left out.")
            notes.append(message(told, {"place": [words[i], "name"]}))
    return position(clamp(place[0], 0.0, 1.0), clamp(place[1], 0.0, 1.0), clamp(place[2], -TILT_MOST, TILT_MOST))
