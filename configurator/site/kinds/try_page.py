"""What the configurator's page is given: the patterns of whatever may be picked."""

from typing import TypedDict

from configurator.drawing.page_patterns import patterns
from configurator.kernel.looks import is_dyed
from configurator.site.drawings.every_look import every_look
from configurator.site.house import House


class TryPage(TypedDict):
    """The markup of the patterns, which the page's script only names."""

    patterns: str


def try_page(house: House) -> TryPage:
    """Return what the configurator's page is given."""
    return {"patterns": patterns(look for look in every_look(house) if is_dyed(look))}
