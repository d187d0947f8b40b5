"""Needs that no figure answers: what the family's file says."""

from configurator.kernel.shapes import Answer, Family

PRICE_LEVELS = 4.0
ANIMAL_SCORES: dict[str, float] = {"stands up": 1.0, "gives way": 0.5}
CLEANING_SCORES: dict[str, float] = {"wiped": 1.0, "dusted": 0.75, "washed": 0.5}


def animals_met(answer: Answer, family: Family) -> float:
    """Return how it stands up to an animal; 0 where its file does not say."""
    return ANIMAL_SCORES.get(family["animals"], 0.0)


def cleaning_met(answer: Answer, family: Family) -> float:
    """Return how easily it is cleaned; 0 where its file does not say."""
    return CLEANING_SCORES.get(family["cleaning"], 0.0)


def price_met(answer: Answer, family: Family) -> float:
    """Return 1 for the lowest price level and 0 for the highest, or where its file does not say."""
    level = family["price_level"]
    return 0.0 if level == 0 else (PRICE_LEVELS - level) / (PRICE_LEVELS - 1)
