"""The rule that each figure of a covering follows: told once, on the covering's own page, for all its doors."""

from typing import TypedDict

from configurator.kernel.message import say_rule
from configurator.kernel.shapes import Family, Figure
from configurator.site.house import House


class FigureRules(TypedDict):
    """A figure's plain name and the rules that it follows, in words: more than one where doors differ in kind."""

    name: str
    rules: list[str]


def tells_a_door(figure: Figure) -> bool:
    """Return whether a figure's rule names what is met on one door, such as the piece that meets the wall."""
    return "{" in figure["working"]["rule"]


def figure_rules(house: House, family: Family) -> list[FigureRules]:
    """Return the figures of a family on all doors, in their order, each with the rules that hold on more than one."""
    # A rule that names nothing of a door is the same on all of them, and is put into words once.
    found: dict[str, dict[str, Figure]] = {}
    for door in house.doors:
        for figure in house.answer(door, family)["figures"].values():
            if not tells_a_door(figure):
                found.setdefault(figure["name"], {}).setdefault(figure["working"]["rule"], figure)
    return [
        {"name": house.named(name), "rules": said_rules(house, list(alike.values()))} for name, alike in found.items()
    ]


def said_rules(house: House, figures: list[Figure]) -> list[str]:
    """Return the rules of figures in words, each once."""
    return list(dict.fromkeys(say_rule(figure, house.words, house.units) for figure in figures))
