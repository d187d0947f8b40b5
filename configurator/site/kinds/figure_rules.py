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
    told: dict[str, FigureRules] = {}
    for door in house.doors:
        for figure in house.answer(door, family)["figures"].values():
            if tells_a_door(figure):
                continue
            line = told.setdefault(figure["name"], {"name": house.named(figure["name"]), "rules": []})
            rule = say_rule(figure, house.words, house.units)
            if rule not in line["rules"]:
                line["rules"].append(rule)
    return list(told.values())
