"""What the configurator's page is given: the patterns of whatever may be picked."""

from collections.abc import Iterator
from typing import TypedDict

from configurator.drawing.page_patterns import patterns
from configurator.kernel.looks import is_dyed, look_of
from configurator.kernel.shapes import Look
from configurator.site.house import House


class TryPage(TypedDict):
    """The markup of the patterns, which the page's script only names."""

    patterns: str


def every_look(house: House) -> Iterator[Look]:
    """Return every look that a family may have, retired ones among them: old links show them."""
    for family in house.catalog.families.values():
        yield family["look"]
        for choice in family["choices"]:
            for option in choice["options"]:
                yield look_of(family, {choice["id"]: option["id"]})


def try_page(house: House) -> TryPage:
    """Return what the configurator's page is given."""
    return {"patterns": patterns(look for look in every_look(house) if is_dyed(look))}
