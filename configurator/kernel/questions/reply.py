"""What a question gives back: figures, verdicts and cautions."""

from typing import TypedDict

from configurator.kernel.questions.figure import verdict
from configurator.kernel.shapes import Caution, Figure, Verdict


class Reply(TypedDict):
    """The figures, verdicts and cautions of one question, in the order in which they are read."""

    figures: list[Figure]
    verdicts: list[Verdict]
    cautions: list[Caution]


def reply(figures: list[Figure], verdicts: list[Verdict], cautions: list[Caution]) -> Reply:
    """Return a question's answer."""
    return {"figures": figures, "verdicts": verdicts, "cautions": cautions}


def standing_verdict(key: str, name: str, state: str, why: str, fixes: list[str]) -> Verdict:
    """Return a verdict that holds wherever the covering stands."""
    return verdict(key, name, state, "", 0.0, 0.0, why, fixes)
