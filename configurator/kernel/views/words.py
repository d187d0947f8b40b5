"""Titles and descriptions in plain words, for those who read a drawing and those who have it read to them."""

from configurator.kernel.message import is_said, say
from configurator.kernel.say import say_length, say_value
from configurator.kernel.shapes import Answer
from configurator.kernel.tongue import Words

VIEW_WORDS = {
    "elevation": "elevation from the room",
    "section": "vertical section through the glass",
    "plan": "plan at the height of the handle",
    "sheet": "elevation, section and plan",
    "detail-head": "section of the head, enlarged",
    "detail-handle": "plan at the handle, enlarged",
}


def covering_words(names: dict[str, str]) -> str:
    """Return what is drawn: the covering, where it stands, and on which door."""
    if names["place"] == "":
        return names["family"] + " on " + names["door"]
    return names["family"] + ", " + names["place"] + ", on " + names["door"]


def title_words(view: str, names: dict[str, str]) -> str:
    """Return a drawing's title."""
    return covering_words(names) + ": " + VIEW_WORDS[view]


def figure_words(answer: Answer, name: str, before: str, after: str, words: Words, units: str) -> str:
    """Return one sentence about a figure; nothing where the answer has no such figure."""
    if name not in answer["figures"]:
        return ""
    found = answer["figures"][name]
    return " " + before + say_value(found["value"], found["unit"], words, units) + after


def stack_words(answer: Answer, words: Words, units: str) -> str:
    """Return how high the stack is and what it hides."""
    if "stack_height" not in answer["figures"]:
        return ""
    height = answer["figures"]["stack_height"]["value"]
    if height <= 0:
        return ""
    told = "the stack is " + say_length(height, words, units) + " high"
    if "stack_over_glass" in answer["figures"]:
        over = answer["figures"]["stack_over_glass"]["value"]
        if over > 0:
            return told + " and hides " + say_length(over, words, units) + " of the glass"
        return told + " and leaves the glass clear"
    return told


def verdict_words(answer: Answer) -> str:
    """Return whether it passes the handle."""
    if "pass_through" not in answer["verdicts"]:
        return ""
    state = answer["verdicts"]["pass_through"]["state"]
    if state == "clears":
        return " It clears the handle."
    if state == "blocked":
        return " The handle blocks it."
    return " It is guided past the handle by hand."


def desc_words(view: str, names: dict[str, str], answer: Answer, words: Words, units: str) -> str:
    """Return a drawing's description: what it shows, and the figures that it is drawn for."""
    if is_said(answer["refusal"]):
        refusal = say(answer["refusal"], words, units)
        return names["door"] + " alone: " + names["family"] + " cannot go on it. " + refusal
    told = covering_words(names)
    stack = stack_words(answer, words, units)
    if stack != "" and answer["open"]["lower"] <= 0:
        raised = names["place"] == "raised"
        told = told + ": " + (stack if raised else "when raised, " + stack) + "."
    else:
        told = told + "."
    if view == "elevation" or view == "sheet":
        told = told + figure_words(answer, "visible_glass_open", "Open, ", " of the glass stays visible.", words, units)
        told = told + figure_words(answer, "visible_glass_closed", "Closed, ", " does.", words, units)
    if view != "elevation":
        told = told + figure_words(answer, "projection_most", "It stands ", " off the leaf at most.", words, units)
    if view == "plan" or view == "detail-handle" or view == "sheet":
        told = told + figure_words(answer, "handle_gap", "Behind the handle ", " is free.", words, units)
        told = told + verdict_words(answer)
    return told
