"""The legs of a travel: what a hand moves, in which order, and the words for it.

A mechanism states its legs as a function of its numbers; most are built from these.
"""

import math

from configurator.kernel.position import position
from configurator.kernel.shapes import Leg, LegWords
from configurator.kernel.tongue import wording

RAISED_WORDS: LegWords = {
    "part": wording("bottom rail"),
    "start": wording("raised"),
    "end": wording("lowered"),
    "between": wording("{share} down"),
    "level": "",
}
UPPER_WORDS: LegWords = {
    "part": wording("upper rail"),
    "start": wording("top up"),
    "end": wording("top down on the bottom rail"),
    "between": wording("top {share} down"),
    "level": "",
}
DRAWN_WORDS: LegWords = {
    "part": wording("leading edge"),
    "start": wording("drawn back"),
    "end": wording("drawn across"),
    "between": wording("{share} drawn across"),
    "level": "",
}


def turning_words(part: str) -> LegWords:
    """Return the words for parts that turn; ``part`` names them, such as ``louvers``."""
    return {
        "part": part,
        "start": wording("closed"),
        "end": wording("closed the other way"),
        "between": wording("tilted {tilt}"),
        "level": wording("level"),
    }


def lower_leg(numbers: dict[str, float], words: LegWords, held: list[str]) -> Leg:
    """Return the leg on which the covering is let down."""
    tilt = numbers["tilt_moving"]
    return {
        "moves": "lower",
        "way": "down",
        "start": position(0.0, 0.0, tilt),
        "end": position(1.0, 0.0, tilt),
        "words": words,
        "held": held,
        "halves": 1,
        "alone": False,
        "peaks": [],
    }


def raised_legs(numbers: dict[str, float]) -> list[Leg]:
    """Return the legs of what a bottom rail lets down and, where it travels too, of an upper rail."""
    legs: list[Leg] = []
    if numbers["lower_moves"] > 0:
        legs.append(lower_leg(numbers, RAISED_WORDS, ["bottom-rail"]))
    if numbers["upper_moves"] > 0:
        upper = lower_leg(numbers, UPPER_WORDS, ["upper-rail"])
        upper["moves"] = "upper"
        upper["start"] = position(1.0, 0.0, numbers["tilt_moving"])
        upper["end"] = position(1.0, 1.0, numbers["tilt_moving"])
        legs.append(upper)
    return legs


def turning_leg(numbers: dict[str, float], part: str, held: list[str], peaks: list[float]) -> list[Leg]:
    """Return the leg of parts that turn, if these numbers let them; ``peaks`` are tilts in degrees."""
    start = numbers["tilt_closed"]
    end = numbers["tilt_far"]
    if start == end:
        return []
    shares = [(tilt - start) / (end - start) for tilt in peaks]
    return [
        {
            "moves": "tilt",
            "way": "turn",
            "start": position(1.0, 0.0, start),
            "end": position(1.0, 0.0, end),
            "words": turning_words(part),
            "held": held,
            "halves": 1,
            "alone": False,
            "peaks": [share for share in shares if share > 0 and share < 1],
        }
    ]


def blade_peaks(width: float, thickness: float) -> list[float]:
    """Return the tilts at which a flat blade reaches furthest out: its diagonal square to the view; and level."""
    turn = math.atan2(thickness, width) * 180 / math.pi
    return [-turn, 0.0, turn]


def no_legs(numbers: dict[str, float]) -> list[Leg]:
    """Return the legs of what does not move."""
    return []
