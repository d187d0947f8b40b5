"""The looks that a showroom's coverings may have, for what a site holds of each once."""

from collections.abc import Iterator

from configurator.kernel.looks import look_of
from configurator.kernel.shapes import Family, Look
from configurator.kernel.views.paint import paint_name
from configurator.site.house import House


def every_look(house: House) -> Iterator[Look]:
    """Return every look that a family may have, retired ones among them: old links show them."""
    for family in house.catalog.families.values():
        yield from family_looks(family)


def family_looks(family: Family) -> list[Look]:
    """Return the looks that a family has with any of its picks, two that are painted alike once."""
    found = {paint_name(family["look"]): family["look"]}
    for choice in family["choices"]:
        for look in list(found.values()):
            undecided: Family = {**family, "look": look, "choices": [choice]}
            worn = [look_of(undecided, {choice["id"]: option["id"]}) for option in choice["options"]]
            found |= {paint_name(one): one for one in worn}
    return list(found.values())
