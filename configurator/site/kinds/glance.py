"""The few answers that a door's comparison comes down to, to be read from a meter away."""

from collections.abc import Sequence
from typing import TypedDict

from configurator.kernel.say import say_length
from configurator.kernel.tongue import ENGLISH
from configurator.site.face.template_words import percent
from configurator.site.kinds.compare import NamedLine, light_when_closed

NAMED = 3
ALL_CLEAR = percent(1.0)


class Glance(TypedDict):
    """One answer: its name, the answer itself, and of whom it is told."""

    name: str
    text: str
    who: str


def named(lines: Sequence[NamedLine]) -> str:
    """Return the names of some families: as many as stand in a line, and how many more."""
    names = [line["name"] for line in lines]
    if len(names) <= NAMED:
        return ", ".join(names)
    return ", ".join(names[: NAMED - 1]) + f" and {len(names) - NAMED + 1} more"


def value(line: NamedLine, figure: str) -> float:
    """Return one of a line's figures."""
    return line["figures"][figure]["value"]


def handle_words(lines: Sequence[NamedLine]) -> str:
    """Return how many more pass the handle when guided, and how many do not."""
    guided = sum(line["state"] == "guide by hand" for line in lines)
    cramped = sum(line["state"] == "caution" for line in lines)
    blocked = sum(line["state"] == "blocked" for line in lines)
    told = [(guided, "guided by hand"), (cramped, "with little room for a hand"), (blocked, "blocked")]
    return ", ".join(f"{count} {words}" for count, words in told if count)


def at_a_glance(lines: Sequence[NamedLine], units: str) -> list[Glance]:
    """Return what clears the handle, what leaves the glass clear, what stands out least and lets in least light."""
    fitting = [line for line in lines if not line["refusal"]]
    if not fitting:
        return []
    passing = [line for line in fitting if line["state"] == "clears"]
    clear = [line for line in fitting if percent(value(line, "visible_glass_open")) == ALL_CLEAR]
    flat = say_length(min(value(line, "projection_most") for line in fitting), ENGLISH, units)
    flattest = [line for line in fitting if say_length(value(line, "projection_most"), ENGLISH, units) == flat]
    dark = percent(min(light_when_closed(line) for line in fitting))
    darkest = [line for line in fitting if percent(light_when_closed(line)) == dark]
    return [
        {"name": "Clear the handle", "text": f"{len(passing)} of {len(lines)}", "who": handle_words(lines)},
        {"name": "Leave all glass clear", "text": f"{len(clear)} of {len(lines)}", "who": named(clear)},
        {"name": "Stands out least", "text": flat, "who": named(flattest)},
        {"name": "Least light when closed", "text": dark, "who": named(darkest)},
    ]
