"""A link as a state, whatever has become of it on the way."""

from configurator.browser.link.check import check_of, is_link_text
from configurator.browser.link.encode import LINK_VERSION, stock_check
from configurator.browser.link.read_parts import put_number, read_covering, read_door
from configurator.browser.link.shapes import Opened, State, Stock
from configurator.browser.link.spell import read_whole
from configurator.browser.link.state import fresh_state
from configurator.kernel.tape.table import HOUSEHOLD_LIMITS

# Some programs that pass links on write these letters as escapes.
LINK_ESCAPES = {"%2C": ",", "%2F": "/", "%3A": ":", "%3B": ";", "%3D": "=", "%40": "@"}
CONFIGURATIONS_MOST = 4
CHECK_LENGTH = 8
NOT_A_LINK = "This address holds no configuration that can be read; a fresh one is shown."
NEWER = "This link was made by a newer version of this page; a fresh configuration is shown."
CUT_SHORT = "This link has been cut short or changed on its way, so its numbers are not shown; ask for it again."
NUMBERS_CHANGED = (
    "The showroom has changed numbers of this door or covering since the link was made; figures may differ."
)


def decode(text: str, stock: Stock) -> Opened:
    """Return what a link (with or without its ``#``) opens to; never throws, whatever the text."""
    link = unescaped(text[1:] if text.startswith("#") else text)
    if link == "":
        return {"state": fresh_state(stock), "problem": ""}
    parts = link.split("/")
    version = read_whole(parts[0])
    if not is_link_text(link) or not version["good"] or version["value"] < 1:
        return {"state": fresh_state(stock), "problem": NOT_A_LINK}
    if version["value"] > LINK_VERSION:
        return {"state": fresh_state(stock), "problem": NEWER}
    check = parts[len(parts) - 1]
    body = link[: len(link) - len(check) - 1]
    if len(parts) < 4 or len(check) != CHECK_LENGTH or check_of(body) != check[:5]:
        return {"state": fresh_state(stock), "problem": CUT_SHORT}
    return read_body(parts[1 : len(parts) - 1], check[5:], stock)


def unescaped(text: str) -> str:
    """Return a link without the escapes that it may have been given on its way."""
    for escape, letter in LINK_ESCAPES.items():
        text = text.replace(escape, letter).replace(escape.lower(), letter)
    return text


def read_body(parts: list[str], numbers_check: str, stock: Stock) -> Opened:
    """Return the state of a link that has come whole."""
    state = fresh_state(stock)
    fresh = state["configurations"]
    state["configurations"] = []
    notes: list[str] = []
    for part in parts[1:]:
        read_group(part, state, stock, notes)
    if len(state["configurations"]) == 0:
        state["configurations"] = fresh
    elif len(notes) == 0 and stock_check(state["configurations"], stock) != numbers_check:
        notes.append(NUMBERS_CHANGED)
    read_general(parts[0], state, notes)
    return {"state": state, "problem": " ".join(notes)}


def read_general(part: str, state: State, notes: list[str]) -> None:
    """Set units, household and which configuration is worked on."""
    pairs = part.split(";")
    if pairs[0] == "in" or pairs[0] == "mm":
        state["units"] = pairs[0]
    else:
        notes.append("The units " + pairs[0] + " are not known.")
    for pair in pairs[1:]:
        words = pair.split("=")
        if words[0] == "active" and len(words) == 2:
            count = read_whole(words[1])
            if count["good"] and count["value"] < len(state["configurations"]):
                state["active"] = int(count["value"])
        else:
            put_number(state["household"], pair, HOUSEHOLD_LIMITS, notes)


def read_group(part: str, state: State, stock: Stock, notes: list[str]) -> None:
    """Add the configurations of one door."""
    pieces = part.split(":")
    for covering in pieces[1:]:
        if len(state["configurations"]) >= CONFIGURATIONS_MOST:
            notes.append("More than four configurations are in the link; the first four are shown.")
            return
        family = covering.split("@")[0].split(";")[0]
        if family not in stock["families"]:
            notes.append("The covering " + family + " is not in this showroom's list and is left out.")
        else:
            door = read_door(pieces[0], stock, notes)
            state["configurations"].append(read_covering(covering, door, stock, notes))
