"""General guidance, which pages fold into one line, told apart from what binds with one covering on one door."""

from configurator.kernel.questions.reach import reach_guidance
from configurator.kernel.shapes import Caution


def general_guidance() -> list[Caution]:
    """Return all guidance that goes for nearly every covering, whichever it is."""
    return [reach_guidance()]


def general_cautions(cautions: list[Caution]) -> list[Caution]:
    """Return those of some cautions that are general guidance."""
    return [one for one in cautions if one["general"]]


def binding_cautions(cautions: list[Caution]) -> list[Caution]:
    """Return those of some cautions that are about this very covering on this very door."""
    return [one for one in cautions if not one["general"]]
