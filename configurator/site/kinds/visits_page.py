"""What the page of visits is given: the showroom's examples."""

from typing import TypedDict

from configurator.site.house import House


class VisitsPage(TypedDict):
    """The names of the examples' files, of which each is a script of its own."""

    examples: list[str]


def visits_page(house: House) -> VisitsPage:
    """Return what the page of visits is given."""
    return {"examples": list(house.catalog.visits)}
