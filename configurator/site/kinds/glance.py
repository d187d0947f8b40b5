"""The few answers that a door's comparison comes down to, to be read from a meter away."""

from collections.abc import Sequence
from typing import TypedDict

from configurator.kernel.message import message, several
from configurator.kernel.say import say_length
from configurator.kernel.tongue import wording
from configurator.site.face.template_words import percent
from configurator.site.house import House, Terms
from configurator.site.kinds.compare import NamedLine, light_when_closed

NAMED = 3


class Glance(TypedDict):
    """One answer: its name, the answer itself, and of whom it is told."""

    name: str
    text: str
    who: str


def named(lines: Sequence[NamedLine], house: House) -> str:
    """Return the names of some families: as many as stand in a line, and how many more."""
    names = [line["name"] for line in lines]
    if len(names) <= NAMED:
        return ", ".join(names)
    terms: Terms = {"names": [", ".join(names[: NAMED - 1]), "text"], "count": [len(names) - NAMED + 1, "count"]}
    return house.phrase(several("{names} and {count} more", "{names} and {count} more", terms))


def value(line: NamedLine, figure: str) -> float:
    """Return one of a line's figures."""
    return line["figures"][figure]["value"]


def handle_words(lines: Sequence[NamedLine], house: House) -> str:
    """Return how many more pass the handle when guided, and how many do not."""
    guided = sum(line["state"] == "guide by hand" for line in lines)
    cramped = sum(line["state"] == "caution" for line in lines)
    blocked = sum(line["state"] == "blocked" for line in lines)
    told = [
        (guided, several("{count} guided by hand", "{count} guided by hand", {"count": [guided, "count"]})),
        (
            cramped,
            several(
                "{count} with little room for a hand",
                "{count} with little room for a hand",
                {"count": [cramped, "count"]},
            ),
        ),
        (blocked, several("{count} blocked", "{count} blocked", {"count": [blocked, "count"]})),
    ]
    return ", ".join(house.phrase(words) for count, words in told if count)


def share_of(some: Sequence[NamedLine], lines: Sequence[NamedLine], house: House) -> str:
    """Return how many of the lines are among some."""
    return house.phrase(message("{some} of {all}", {"some": [len(some), "count"], "all": [len(lines), "count"]}))


def at_a_glance(lines: Sequence[NamedLine], house: House) -> list[Glance]:
    """Return what clears the handle, what leaves the glass clear, what stands out least and lets in least light."""
    fitting = [line for line in lines if not line["refusal"]]
    if not fitting:
        return []
    words = house.words
    passing = [line for line in fitting if line["state"] == "clears"]
    clear = [line for line in fitting if percent(value(line, "visible_glass_open"), words) == percent(1.0, words)]
    flat = say_length(min(value(line, "projection_most") for line in fitting), words, house.units)
    flattest = [line for line in fitting if say_length(value(line, "projection_most"), words, house.units) == flat]
    dark = percent(min(light_when_closed(line) for line in fitting), words)
    darkest = [line for line in fitting if percent(light_when_closed(line), words) == dark]
    return [
        {
            "name": house.named(wording("Clear the handle")),
            "text": share_of(passing, lines, house),
            "who": handle_words(lines, house),
        },
        {
            "name": house.named(wording("Leave all glass clear")),
            "text": share_of(clear, lines, house),
            "who": named(clear, house),
        },
        {"name": house.named(wording("Stands out least")), "text": flat, "who": named(flattest, house)},
        {"name": house.named(wording("Least light when closed")), "text": dark, "who": named(darkest, house)},
    ]
