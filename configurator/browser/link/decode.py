"""A link as a state, whatever has become of it on the way."""

from configurator.browser.link.check import check_of, is_link_text
from configurator.browser.link.encode import LINK_VERSION, fit_of
from configurator.browser.link.outcome import changes_of
from configurator.browser.link.read_parts import put_number, read_covering, read_door
from configurator.browser.link.shapes import Opened, Stock
from configurator.browser.link.spell import read_whole
from configurator.browser.link.state import LINKED_STEP, PAGE_STEPS, fresh_state
from configurator.kernel.answer import ask_fit
from configurator.kernel.message import message, plain
from configurator.kernel.needs.ids import NEED_IDS
from configurator.kernel.tape.table import HOUSEHOLD_LIMITS
from configurator.kernel.tongue import wording

# Some programs that pass links on write these letters as escapes.
LINK_ESCAPES = {"%2C": ",", "%2F": "/", "%3A": ":", "%3B": ";", "%3D": "=", "%40": "@"}
CONFIGURATIONS_MOST = 4
CHECK_LENGTH = 5
# Version 1 has three more letters, which are read over; see the package.
CHECK_LENGTH_THEN = 8
NOT_A_LINK = wording("This address holds no configuration that can be read; a fresh one is shown.")
NEWER = wording("This link was made by a newer version of this page; a fresh configuration is shown.")
CUT_SHORT = wording(
    "This link has been cut short or changed on its way, so its numbers are not shown; ask for it again."
)


def decode(text: str, stock: Stock) -> Opened:
    """Return what a link (with or without its ``#``) opens to; never throws, whatever the text."""
    opened = read_link(text, stock)
    state = opened["state"]
    for i in range(len(opened["noted"])):
        one = state["configurations"][i]
        if opened["noted"][i] != "":
            answer = ask_fit(fit_of(one, stock), state["household"])
            opened["changes"].extend(changes_of(opened["noted"][i], answer, i))
    return opened


def read_link(text: str, stock: Stock) -> Opened:
    """Return the same, its changes left out: for whoever has other use for the answers, which take the time."""
    link = unescaped(text[1:] if text.startswith("#") else text)
    if link == "":
        return fresh_for("", stock)
    parts = link.split("/")
    version = read_whole(parts[0])
    if not is_link_text(link) or not version["good"] or version["value"] < 1:
        return fresh_for(NOT_A_LINK, stock)
    if version["value"] > LINK_VERSION:
        return fresh_for(NEWER, stock)
    check = parts[len(parts) - 1]
    body = link[: len(link) - len(check) - 1]
    length = CHECK_LENGTH_THEN if version["value"] == 1 else CHECK_LENGTH
    if len(parts) < 4 or len(check) != length or check_of(body) != check[:CHECK_LENGTH]:
        return fresh_for(CUT_SHORT, stock)
    return read_body(parts[1 : len(parts) - 1], stock)


def fresh_for(problem: str, stock: Stock) -> Opened:
    """Return a fresh state, and why it is one; for nothing, none is given."""
    state = fresh_state(stock)
    return {"state": state, "problems": [plain(problem)] if problem != "" else [], "noted": [""], "changes": []}


def unescaped(text: str) -> str:
    """Return a link without the escapes that it may have been given on its way."""
    for escape, letter in LINK_ESCAPES.items():
        text = text.replace(escape, letter).replace(escape.lower(), letter)
    return text


def read_body(parts: list[str], stock: Stock) -> Opened:
    """Return the state of a link that has come whole."""
    opened = fresh_for("", stock)
    fresh = opened["state"]["configurations"]
    opened["state"]["configurations"] = []
    opened["state"]["step"] = LINKED_STEP
    opened["noted"] = []
    for part in parts[1:]:
        read_group(part, opened, stock)
    if len(opened["state"]["configurations"]) == 0:
        opened["state"]["configurations"] = fresh
        opened["noted"] = [""]
    read_general(parts[0], opened)
    return opened


def read_general(part: str, opened: Opened) -> None:
    """Set units, household, which configuration is worked on, and the step that is shown."""
    state = opened["state"]
    pairs = part.split(";")
    if pairs[0] == "in" or pairs[0] == "mm":
        state["units"] = pairs[0]
    else:
        opened["problems"].append(message("The units {units} are not known.", {"units": [pairs[0], "name"]}))
    for pair in pairs[1:]:
        words = pair.split("=")
        if words[0] == "active" and len(words) == 2:
            count = read_whole(words[1])
            if count["good"] and count["value"] < len(state["configurations"]):
                state["active"] = int(count["value"])
        elif words[0] == "step" and len(words) == 2:
            if words[1] in PAGE_STEPS:
                state["step"] = words[1]
        elif words[0] == "needs" and len(words) == 2:
            state["needs"] = [need for need in NEED_IDS if need in words[1].split(",")]
        else:
            put_number(state["household"], pair, HOUSEHOLD_LIMITS, opened["problems"])


def read_group(part: str, opened: Opened, stock: Stock) -> None:
    """Add the configurations of one door."""
    pieces = part.split(":")
    for covering in pieces[1:]:
        if len(opened["state"]["configurations"]) >= CONFIGURATIONS_MOST:
            told = wording("More than four configurations are in the link; the first four are shown.")
            opened["problems"].append(plain(told))
            return
        read_covering(covering, read_door(pieces[0], stock, opened["problems"]), opened, stock)
