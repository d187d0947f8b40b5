"""The first page."""

from configurator.kernel.shapes import Door, Family
from configurator.site.house import House
from configurator.site.pictures import family_window, half_svg
from configurator.site.sitepage import Given

SHOWN = 6


def first_pair(house: House) -> Door:
    """Return the door that stands for all: a pair where there is one."""
    return next((door for door in house.doors if door["layout"] == "pair"), house.doors[0])


def first_single(house: House) -> Door:
    """Return the single door on which families are shown side by side: one whose glass nothing divides."""
    singles = [door for door in house.doors if door["layout"] == "single"]
    plain = [door for door in singles if door["muntin_columns"] * door["muntin_rows"] == 1]
    return [*plain, *singles, *house.doors][0]


def fitting(house: House, door: Door) -> list[Family]:
    """Return the families that go on a door."""
    return [family for family in house.families if house.answer(door, family)["refusal"] == ""]


def tile(house: House, door: Door, family: Family) -> Given:
    """Return a family as a small drawing half way down, with its summary."""
    window = family_window(house, door, [])
    return {
        "svg": half_svg(house, door, family, window, f"{family['id']}-"),
        "name": family["name"],
        "url": f"coverings/{family['id']}.html",
        "summary": house.catalog.family_notes[family["id"]].summary,
    }


def home(house: House) -> Given:
    """Return what the first page shows."""
    pair, single = first_pair(house), first_single(house)
    hung = fitting(house, pair)[0]
    window = family_window(house, pair, [hung])
    return {
        "hero": half_svg(house, pair, hung, window, "hero-"),
        "hero_words": f"{hung['name']} on {pair['name']}",
        "families": [tile(house, single, family) for family in fitting(house, single)[:SHOWN]],
        "doors": house.doors,
    }
