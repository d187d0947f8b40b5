"""Everything the kernel tells of one family with its choices on one door."""

from collections.abc import Callable
from typing import TypedDict

from configurator.kernel.message import is_said
from configurator.kernel.mount.hung import hung
from configurator.kernel.position import closed_position, open_position
from configurator.kernel.questions import QUESTIONS
from configurator.kernel.questions.drawn import DRAWN_QUESTIONS
from configurator.kernel.questions.turn import bare_turn
from configurator.kernel.resolve import resolve, same_build
from configurator.kernel.shapes import (
    Answer,
    Asking,
    Door,
    Family,
    Fit,
    Household,
    Message,
    Reply,
    Travel,
)
from configurator.kernel.travel import travelled_beside


class Build(TypedDict):
    """The numbers of which a covering is built, and why that cannot go on its door."""

    numbers: dict[str, float]
    refusal: Message


def ask(door: Door, family: Family, choices: dict[str, str], household: Household) -> Answer:
    """Return the answer: size, figures, verdicts and cautions, or the plain reason why it cannot be."""
    return ask_fit(hung(door, family, choices), household)


def ask_fit(fit: Fit, household: Household) -> Answer:
    """Return the answer of a covering that is hung."""
    return answer_to(QUESTIONS, fit, household)


def ask_next(begun: Asking) -> bool:
    """Take a whole answer a step further, and return whether there is more to be asked."""
    if not is_answered(QUESTIONS, begun):
        ask_on(QUESTIONS, begun)
    return not is_answered(QUESTIONS, begun)


def ask_drawn(fit: Fit, household: Household) -> Answer:
    """Return as much of the answer as drawings show: what stands on them is no different from the whole answer's."""
    return answer_to(DRAWN_QUESTIONS, fit, household)


def asking(fit: Fit, household: Household) -> Asking:
    """Return the answer of a covering that is hung before anything has been asked."""
    return {
        "fit": fit,
        "household": household,
        "bare": [],
        "tried": False,
        "travel": [],
        "asked": 0,
        "told_by": {},
        "answer": {
            "door": fit["door"]["id"],
            "family": fit["family"]["id"],
            "choices": fit["choices"],
            "refusal": fit["size"]["refusal"],
            "size": fit["size"],
            "figures": {},
            "verdicts": {},
            "cautions": [],
            "legs": fit["legs"],
            "open": open_position(fit["numbers"]),
            "closed": closed_position(fit["numbers"]),
        },
    }


def is_answered(questions: list[Callable[[Travel, Household], Reply]], begun: Asking) -> bool:
    """Return whether all the questions have been asked, or there is nothing to ask as the covering cannot go there."""
    return is_said(begun["fit"]["size"]["refusal"]) or begun["asked"] == len(questions)


def ask_on(questions: list[Callable[[Travel, Household], Reply]], begun: Asking) -> None:
    """Take an answer a step further: work out the travel, or ask the next question."""
    if len(begun["travel"]) == 0:
        own = begun["bare"][0] if len(begun["bare"]) > 0 else bare_turn(begun["fit"]["door"])
        begun["travel"].append({**travelled_beside(begun["fit"], own), "tried": begun["tried"]})
        return
    part = questions[begun["asked"]](begun["travel"][0], begun["household"])
    answer = begun["answer"]
    for figure in part["figures"]:
        answer["figures"][figure["id"]] = figure
    for verdict in part["verdicts"]:
        answer["verdicts"][verdict["id"]] = verdict
        begun["told_by"][verdict["id"]] = begun["asked"]
    answer["cautions"].extend(part["cautions"])
    begun["asked"] += 1


def answer_to(questions: list[Callable[[Travel, Household], Reply]], fit: Fit, household: Household) -> Answer:
    """Return the answer of a covering that is hung to some of the questions."""
    return asked_to(questions, fit, household)["answer"]


def asked_to(questions: list[Callable[[Travel, Household], Reply]], fit: Fit, household: Household) -> Asking:
    """Return the answer to some of the questions with the travel of which they were asked."""
    begun = asking(fit, household)
    while not is_answered(questions, begun):
        ask_on(questions, begun)
    return begun


def with_option(choices: dict[str, str], choice: str, option: str) -> dict[str, str]:
    """Return the choices with one of them picked anew."""
    picked: dict[str, str] = {}
    for name, value in choices.items():
        picked[name] = value
    picked[choice] = option
    return picked


def ruled_out(door: Door, family: Family, choices: dict[str, str]) -> dict[str, dict[str, Message]]:
    """Return, by choice and option, the plain reason why the door rules an option out; the others are absent."""
    return ruled_out_beside(hung(door, family, choices), [])


def ruled_out_beside(fit: Fit, told: list[Answer]) -> dict[str, dict[str, Message]]:
    """Return the same of a covering with nothing set by hand; what has been ``told`` of it with other picks on its door
    is not hung again."""
    family = fit["family"]
    known: list[Build] = [{"numbers": fit["numbers"], "refusal": fit["size"]["refusal"]}]
    known.extend([{"numbers": resolve(family, answer["choices"]), "refusal": answer["refusal"]} for answer in told])
    reasons: dict[str, dict[str, Message]] = {}
    for choice in family["choices"]:
        found: dict[str, Message] = {}
        for option in choice["options"]:
            reason = refusal_of(fit, with_option(fit["choices"], choice["id"], option["id"]), known)
            if is_said(reason):
                found[option["id"]] = reason
        reasons[choice["id"]] = found
    return reasons


def refusal_of(fit: Fit, picked: dict[str, str], known: list[Build]) -> Message:
    """Return why a covering with other picks cannot go on the door, silent where it can, as of what is built alike."""
    numbers = resolve(fit["family"], picked)
    for build in known:
        if same_build(build["numbers"], numbers):
            return build["refusal"]
    return hung(fit["door"], fit["family"], picked)["size"]["refusal"]
