"""Needs that view and light answer."""

from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Answer, Family
from configurator.kernel.telling import figure_told

# Closed, less of the glass than this is left bare: noise of the steps of a size.
BARE_MOST = 0.02


def view_met(answer: Answer, family: Family) -> float:
    """Return the share of the view when it is open."""
    return figure_told(answer, "view_open", 0.0)


def light_met(answer: Answer, family: Family) -> float:
    """Return the share of the light when it is open."""
    return figure_told(answer, "light_open", 0.0)


def private_by_day(answer: Answer, family: Family) -> float:
    """Return the share of the view that it takes when it is closed."""
    return 1 - figure_told(answer, "view_closed", 1.0)


def darkness_met(answer: Answer, family: Family) -> float:
    """Return the share of the light that it takes when it is closed."""
    return 1 - figure_told(answer, "light_closed", 1.0)


def heat_met(answer: Answer, family: Family) -> float:
    """Return the share of the sun's heat that it takes when closed: as much as of its light, nothing else known."""
    return darkness_met(answer, family)


def warmth_met(answer: Answer, family: Family) -> float:
    """Return 1 for still air between layers over all of the glass, 0.5 for one layer over it, 0 for anything less."""
    if figure_told(answer, "visible_glass_closed", 1.0) > BARE_MOST:
        return 0.0
    return 1.0 if resolve(family, answer["choices"]).get("layers", 1.0) > 1 else 0.5
