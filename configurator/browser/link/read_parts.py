"""The parts of a link: a door with its corrections, a covering with its picks and position."""

import math
from typing import Any

from configurator.browser.link.shapes import Configuration, Stock
from configurator.browser.link.spell import read_number
from configurator.browser.link.state import fresh_configuration, preset_door
from configurator.kernel.numbers import clamp
from configurator.kernel.position import position
from configurator.kernel.resolve import find_option
from configurator.kernel.shapes import Choice, Door, Family
from configurator.kernel.tape.leaf_fields import HINGE_LIMITS, HINGES_MOST
from configurator.kernel.tape.table import DOOR_COUNTS, DOOR_LIMITS, DOOR_WORDS, HANDLE_LIMITS

TILT_MOST = 180.0


def put_number(shape: Any, pair: str, limits: dict[str, list[float]], notes: list[str]) -> None:
    """Set a shape's number from ``name=number``, or note why it is left as it is."""
    words = pair.split("=")
    name = words[0]
    if len(words) != 2 or name not in limits:
        notes.append("The measurement " + name + " is not known and is left out.")
        return
    reading = read_number(words[1])
    whole = name not in DOOR_COUNTS or reading["value"] == math.floor(reading["value"])
    if not reading["good"] or not whole or not within(reading["value"], limits[name]):
        notes.append("The value " + words[1] + " of " + name + " cannot be; the preset's is shown.")
    elif name in DOOR_COUNTS:
        shape[name] = int(reading["value"])
    else:
        shape[name] = reading["value"]


def within(value: float, limits: list[float]) -> bool:
    """Return whether a value lies between two limits, themselves included."""
    return limits[0] <= value and value <= limits[1]


def read_door(part: str, stock: Stock, notes: list[str]) -> Door:
    """Return a door with its corrections; an unknown one is noted and the one that the page opens with stands in."""
    pairs = part.split(";")
    if pairs[0] not in stock["doors"]:
        notes.append("The door " + pairs[0] + " is not in this showroom's list; another stands in for it.")
        return preset_door(stock, stock["opening"][0])
    door = preset_door(stock, pairs[0])
    for pair in pairs[1:]:
        if pair.startswith("handle="):
            put_handle(door, pair[7:], stock, notes)
    for pair in pairs[1:]:
        put_pair(door, pair, notes)
    return door


def put_handle(door: Door, ident: str, stock: Stock, notes: list[str]) -> None:
    """Set another handle on a door."""
    if ident in stock["handles"]:
        door["handle"] = stock["handles"][ident].copy()
    else:
        notes.append("The handle " + ident + " is not in this showroom's list; the preset's is shown.")


def put_pair(door: Door, pair: str, notes: list[str]) -> None:
    """Set one correction on a door; its handle is set before."""
    words = pair.split("=")
    name = words[0]
    if len(words) == 2 and name in DOOR_WORDS:
        put_word(door, name, words[1], notes)
    elif len(words) == 2 and name == "passive_handle":
        door["passive_handle"] = words[1] == "yes"
    elif len(words) == 2 and name == "hinge_heights":
        put_hinges(door, words[1], notes)
    elif name.startswith("handle."):
        put_number(door["handle"], pair[7:], HANDLE_LIMITS, notes)
    elif name != "handle":
        put_number(door, pair, DOOR_LIMITS, notes)


def put_word(shape: Any, name: str, word: str, notes: list[str]) -> None:
    """Set one of a door's words."""
    if word in DOOR_WORDS[name]["options"]:
        shape[name] = word
    else:
        notes.append("The word " + word + " of " + name + " is not known; the preset's is shown.")


def put_hinges(door: Door, text: str, notes: list[str]) -> None:
    """Set the hinges' heights."""
    heights: list[float] = []
    for word in text.split(","):
        reading = read_number(word)
        if reading["good"] and within(reading["value"], HINGE_LIMITS):
            heights.append(reading["value"])
    if len(heights) == len(text.split(",")) and len(heights) <= HINGES_MOST:
        door["hinge_heights"] = heights
    else:
        notes.append("The hinge heights " + text + " cannot be; the preset's are shown.")


def read_covering(part: str, door: Door, stock: Stock, notes: list[str]) -> Configuration:
    """Return a configuration of a family that the stock has."""
    halves = part.split("@")
    pairs = halves[0].split(";")
    family = stock["families"][pairs[0]]
    read = fresh_configuration(stock, door["id"], pairs[0])
    read["door"] = door
    if family["retired"]:
        notes.append(family["name"] + " is no longer offered; it is shown as it was.")
    for pair in pairs[1:]:
        put_pick(read["choices"], family, pair, notes)
    if len(halves) > 1:
        put_place(read, halves[1], notes)
    return read


def put_pick(picks: dict[str, str], family: Family, pair: str, notes: list[str]) -> None:
    """Set one pick, or note that it is not known or no longer offered."""
    words = pair.split("=")
    for choice in family["choices"]:
        if choice["id"] == words[0] and len(words) == 2:
            put_option(picks, choice, words[1], notes)
            return
    notes.append("The choice " + pair + " is not known and is left out.")


def put_option(picks: dict[str, str], choice: Choice, ident: str, notes: list[str]) -> None:
    """Set a pick of a choice that is there."""
    option = find_option(choice, ident)
    picks[choice["id"]] = option["id"]
    if option["id"] != ident:
        notes.append("The option " + ident + " of " + choice["name"] + " is not known; the preset is shown.")
    elif option["retired"]:
        notes.append(option["name"] + " is no longer offered; it is shown as it was.")


def put_place(read: Configuration, text: str, notes: list[str]) -> None:
    """Set the position from ``lower,upper,tilt``, later ones left out as they come."""
    place = [1.0, 0.0, 0.0]
    words = text.split(",")
    for i in range(min(len(words), 3)):
        reading = read_number(words[i])
        if reading["good"]:
            place[i] = reading["value"]
        else:
            notes.append("The position " + words[i] + " cannot be read and is left out.")
    read["place"] = position(
        clamp(place[0], 0.0, 1.0), clamp(place[1], 0.0, 1.0), clamp(place[2], -TILT_MOST, TILT_MOST)
    )
