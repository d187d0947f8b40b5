"""A family's own page: on which door it is shown there, and what it says of one that goes on none."""

from dataclasses import replace

import pytest

from configurator.catalog import Catalog
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.house import House
from configurator.site.kinds.family_page import FamilyPage, family_page

FAMILY = "louvered-shutter"


def page_where(catalog: Catalog, narrow: set[str]) -> FamilyPage:
    """Return the shutter's page in a showroom of two doors, some of them too narrow for it."""
    doors = {
        name: {**catalog.doors[name], "glass_width": 110.0} if name in narrow else catalog.doors[name]
        for name in ("garden-door", "garden-pair")
    }
    return family_page(House(replace(catalog, doors=doors), CONTENT, Answers()), catalog.families[FAMILY])


@pytest.mark.parametrize(
    ("narrow", "shown", "moves"),
    [
        (set(), "garden-door", True),
        ({"garden-door"}, "garden-pair", True),
        ({"garden-door", "garden-pair"}, "garden-door", False),
    ],
)
def test_it_is_shown_on_the_first_door_on_which_it_goes(
    catalog: Catalog, narrow: set[str], shown: str, moves: bool
) -> None:
    page = page_where(catalog, narrow)
    assert page["door_name"] == catalog.doors[shown]["name"]
    assert (page["mover"] is not None) == moves
    assert shown in page["try_url"]
    assert len(page["doors"]) == 2
