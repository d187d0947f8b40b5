"""What a client wants of a covering, in her words, and how well each answers: published rules, never a taste.

A need is one function and one line in :data:`NEEDS`. Its score runs from 0 (not at all) to 1 (wholly), from the
kernel's figures and verdicts or from what the family's file says; from ``enough`` on it is met. A covering that cannot
go on the door meets none.
"""

from collections.abc import Callable
from typing import TypedDict

from configurator.kernel.message import is_said, message
from configurator.kernel.needs.fact_rules import animals_met, cleaning_met, price_met
from configurator.kernel.needs.light_rules import (
    darkness_met,
    heat_met,
    light_met,
    private_by_day,
    view_met,
    warmth_met,
)
from configurator.kernel.needs.use_rules import DEPTH_MOST, LOW_REACH, bending_met, children_met, depth_met, handle_met
from configurator.kernel.questions.child import child_question
from configurator.kernel.questions.glass import glass_question
from configurator.kernel.questions.passing import passing_question
from configurator.kernel.questions.projection import projection_question
from configurator.kernel.questions.reach import reach_question
from configurator.kernel.questions.working_handle import working_handle_question
from configurator.kernel.shapes import Answer, Family, Household, Message, Reply, Travel
from configurator.kernel.tongue import wording


class Need(TypedDict):
    """A need: its name, its rule in words, the score from which it is met, the rule at work, and what answers it."""

    name: str
    rule: Message
    enough: float
    score: Callable[[Answer, Family], float]
    asks: list[Callable[[Travel, Household], Reply]]


def need(
    name: str,
    rule: str,
    enough: float,
    score: Callable[[Answer, Family], float],
    asks: list[Callable[[Travel, Household], Reply]],
) -> Need:
    """Return a need whose rule may name the score from which it is met, as a share, and the lengths it goes by."""
    terms: dict[str, list[float | str]] = {
        "enough": [enough, "percent"],
        "deepest": [DEPTH_MOST, "mm"],
        "deep": [DEPTH_MOST * (1 - enough), "mm"],
        "low": [LOW_REACH, "mm"],
    }
    return {"name": name, "rule": message(rule, terms), "enough": enough, "score": score, "asks": asks}


NEEDS: dict[str, Need] = {
    "view": need(
        wording("the view"),
        wording("the share of the view that is left when it is open; met from {enough}"),
        0.85,
        view_met,
        [glass_question],
    ),
    "light": need(
        wording("light"),
        wording("the share of the light that comes in when it is open; met from {enough}"),
        0.85,
        light_met,
        [glass_question],
    ),
    "day": need(
        wording("privacy by day"),
        wording("the share of the view that it takes when it is closed; met from {enough}"),
        0.9,
        private_by_day,
        [glass_question],
    ),
    "night": need(
        wording("privacy by night"),
        wording("the same with the light on inside, when much less of a view shows somebody; met from {enough}"),
        0.98,
        private_by_day,
        [glass_question],
    ),
    "dark": need(
        wording("darkness"),
        wording("the share of the light that it takes when it is closed; met from {enough}"),
        0.95,
        darkness_met,
        [glass_question],
    ),
    "cool": need(
        wording("heat kept out"),
        wording("the share of the sun's heat that it takes when it is closed, as of its light; met from {enough}"),
        0.6,
        heat_met,
        [glass_question],
    ),
    "warm": need(
        wording("heat kept in"),
        wording("still air between two layers of cloth counts whole, one layer over all of the glass half"),
        1.0,
        warmth_met,
        [glass_question],
    ),
    "handle": need(
        wording("nothing in the way of the handle"),
        wording("it passes the handle by itself, and a hand has room there; guided by hand counts half"),
        1.0,
        handle_met,
        [passing_question, working_handle_question],
    ),
    "flat": need(
        wording("little depth"),
        wording("how far it stands into the room at most, against {deepest}; met to {deep}"),
        0.75,
        depth_met,
        [projection_question],
    ),
    "bending": need(
        wording("no bending"),
        wording("the lowest that a hand goes, against {low} above the floor; met from there"),
        1.0,
        bending_met,
        [reach_question],
    ),
    "children": need(
        wording("small children"),
        wording("the verdict on child safety: no cord and no loop within reach"),
        1.0,
        children_met,
        [child_question],
    ),
    "animals": need(
        wording("pets that push through"),
        wording("what its file says of animals: stands up, or gives way, which counts half"),
        0.5,
        animals_met,
        [],
    ),
    "cleaning": need(
        wording("easy to clean"),
        wording("what its file says of cleaning: wiped counts whole, dusted three quarters, washed half"),
        0.75,
        cleaning_met,
        [],
    ),
    "price": need(
        wording("a low price"),
        wording("the price level in its file, 1 to 4; met to 2"),
        0.66,
        price_met,
        [],
    ),
}


def needs() -> dict[str, Need]:
    """Return all needs by their ids, in the order in which they are asked for."""
    return NEEDS


def need_score(key: str, answer: Answer, family: Family) -> float:
    """Return how well a covering answers a need, 0 to 1."""
    return 0.0 if is_said(answer["refusal"]) else NEEDS[key]["score"](answer, family)


def questions_for(wanted: list[str]) -> list[Callable[[Travel, Household], Reply]]:
    """Return the questions that answer some needs, each once."""
    found: list[Callable[[Travel, Household], Reply]] = []
    for key in wanted:
        for question in NEEDS[key]["asks"]:
            if question not in found:
                found.append(question)
    return found


def takes_asking(key: str) -> bool:
    """Return whether a need is answered by questions, not by the family's file alone."""
    return len(NEEDS[key]["asks"]) > 0


def is_met(key: str, score: float) -> bool:
    """Return whether a score meets a need."""
    return score >= NEEDS[key]["enough"]
