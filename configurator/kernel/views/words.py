"""Titles and descriptions in plain words, for those who read a drawing and those who have it read to them."""

from configurator.kernel.message import is_said, message, plain, say, say_phrase
from configurator.kernel.shapes import Answer, Message
from configurator.kernel.tongue import Words, wording

VIEW_WORDS = {
    "elevation": wording("elevation from the room"),
    "section": wording("vertical section through the glass"),
    "plan": wording("plan at the height of the handle"),
    "sheet": wording("elevation, section and plan"),
    "detail-head": wording("section of the head, enlarged"),
    "detail-handle": wording("plan at the handle, enlarged"),
    "detail-upright": wording("section at the handle, enlarged"),
}
PASSING_WORDS = {
    "clears": wording("It clears the handle."),
    "caution": wording("It passes the handle with little room."),
    "blocked": wording("The handle blocks it."),
    "guide by hand": wording("It is guided past the handle by hand."),
}


def name_terms(names: dict[str, str]) -> dict[str, list[float | str]]:
    """Return the terms of a sentence that names what is drawn."""
    return {
        "covering": [names["family"], "name"],
        "place": [names["place"], "name"],
        "door": [names["door"], "name"],
    }


def covering_words(names: dict[str, str]) -> Message:
    """Return what is drawn: the covering, where it stands, and on which door."""
    if names["place"] == "":
        return message("{covering} on {door}", name_terms(names))
    return message("{covering}, {place}, on {door}", name_terms(names))


def title_words(view: str, names: dict[str, str], words: Words) -> str:
    """Return a drawing's title, which ends in the words for its view."""
    terms: dict[str, list[float | str]] = {
        "drawn": [say_phrase(covering_words(names), words, "mm"), "name"],
        "view": [view, "text"],
    }
    return say_phrase(message("{drawn}: {view}", terms), words, "mm")


def figure_term(answer: Answer, key: str) -> dict[str, list[float | str]]:
    """Return the term ``value`` for a figure, which the answer has."""
    found = answer["figures"][key]
    return {"value": [found["value"], found["unit"]]}


def stack_words(answer: Answer) -> list[Message]:
    """Return how high the raised stack is and what it hides; nothing where there is none."""
    figures = answer["figures"]
    if "stack_height" not in figures or answer["open"]["lower"] > 0 or figures["stack_height"]["value"] <= 0:
        return []
    terms: dict[str, list[float | str]] = {"height": [figures["stack_height"]["value"], "mm"]}
    if "stack_over_glass" not in figures:
        return [message("Raised, the stack is {height} high.", terms)]
    over = figures["stack_over_glass"]["value"]
    if over <= 0:
        return [message("Raised, the stack is {height} high and leaves the glass clear.", terms)]
    terms["over"] = [over, "mm"]
    return [message("Raised, the stack is {height} high and hides {over} of the glass.", terms)]


def glass_words(answer: Answer) -> list[Message]:
    """Return how much of the glass stays visible."""
    told: list[Message] = []
    if "visible_glass_open" in answer["figures"]:
        told.append(message("Open, {value} of the glass stays visible.", figure_term(answer, "visible_glass_open")))
    if "visible_glass_closed" in answer["figures"]:
        told.append(message("Closed, {value} does.", figure_term(answer, "visible_glass_closed")))
    return told


def depth_words(answer: Answer) -> list[Message]:
    """Return how far the covering stands off the leaf."""
    if "projection_most" not in answer["figures"]:
        return []
    return [message("It stands {value} off the leaf at most.", figure_term(answer, "projection_most"))]


def handle_words(answer: Answer) -> list[Message]:
    """Return what is free behind the handle, and whether the covering passes it."""
    told: list[Message] = []
    if "handle_gap" in answer["figures"]:
        told.append(message("Behind the handle {value} is free.", figure_term(answer, "handle_gap")))
    if "pass_through" in answer["verdicts"]:
        told.append(plain(PASSING_WORDS[answer["verdicts"]["pass_through"]["state"]]))
    return told


def refused_words(names: dict[str, str], answer: Answer, words: Words, units: str) -> str:
    """Return what a drawing of a door shows on which a covering cannot go."""
    alone = say(message("{door} alone: {covering} cannot go on it.", name_terms(names)), words, units)
    return alone + " " + say(answer["refusal"], words, units)


def drawn_words(view: str, names: dict[str, str], answer: Answer) -> list[Message]:
    """Return the sentences of a drawing's description: what it shows, and the figures that it is drawn for."""
    told: list[Message] = []
    if names["place"] == "":
        told.append(message("{covering} on {door}.", name_terms(names)))
    else:
        told.append(message("{covering}, {place}, on {door}.", name_terms(names)))
    told.extend(stack_words(answer))
    if view == "elevation" or view == "sheet":
        told.extend(glass_words(answer))
    if view != "elevation":
        told.extend(depth_words(answer))
    if view == "plan" or view == "detail-handle" or view == "sheet":
        told.extend(handle_words(answer))
    return told


def desc_words(view: str, names: dict[str, str], answer: Answer, words: Words, units: str) -> str:
    """Return a drawing's description in words."""
    if is_said(answer["refusal"]):
        return refused_words(names, answer, words, units)
    return " ".join([say(told, words, units) for told in drawn_words(view, names, answer)])
