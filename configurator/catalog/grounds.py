"""The grounds on which a site's words stand: the showroom's paper, and two that are mixed from it."""

from configurator.catalog.contrast import BLACK, STEPS, WHITE, Color, contrast, mixed


def is_day(paper: Color) -> bool:
    """Return whether a paper is light, so that what stands on it is dark."""
    return contrast(paper, BLACK) >= contrast(paper, WHITE)


def grounds(paper: Color) -> dict[str, Color]:
    """Return ``paper``, ``ground`` (under drawings and in fields) and ``well`` (under what is set off).

    They follow from the paper alone, so that a color which can be read on them stays so whatever the others are.
    """
    day = is_day(paper)
    # The ground lies closer to the reader than the paper: lighter by day and by night.
    ground = mixed(paper, WHITE, STEPS * 60 // 100 if day else STEPS * 4 // 100)
    return {"paper": paper, "ground": ground, "well": mixed(paper, BLACK, STEPS * (5 if day else 25) // 100)}
