"""The first page."""

from configurator.kernel.message import is_said
from configurator.kernel.shapes import Door, Drawing, Family
from configurator.site.house import House
from configurator.site.pictures import bare, family_window, half_svg, share_position
from configurator.site.sitepage import Given

SHOWN = 6
NEARLY_OPEN = 0.15


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
    return [family for family in house.families if not is_said(house.answer(door, family)["refusal"])]


def tile(house: House, door: Door, family: Family) -> Given:
    """Return a family as a small drawing half way down, with its summary."""
    window = family_window(house, door, [])
    return {
        "svg": half_svg(house, door, family, window, f"{family['id']}-"),
        "name": family["name"],
        "url": f"coverings/{family['id']}.html",
        "summary": house.catalog.family_notes[family["id"]].summary,
    }


def room_subject(house: House) -> tuple[Door, Family]:
    """Return the door and the covering that the first page opens with; the door stays bare where none goes on it."""
    door = first_pair(house)
    return door, [*fitting(house, door), *house.families][0]


def room_drawing(house: House) -> Drawing:
    """Return the drawing that the room is painted round: the covering nearly open, so that the garden shows."""
    door, family = room_subject(house)
    return bare(house, door, family, share_position(family, NEARLY_OPEN), family_window(house, door, [family]))


def home(house: House) -> Given:
    """Return what the first page shows."""
    single = first_single(house)
    pair, hung = room_subject(house)
    window = family_window(house, pair, [hung])
    return {
        "hero": half_svg(house, pair, hung, window, "hero-"),
        "hero_words": f"{hung['name']} on {house.door_name(pair)}",
        "hero_photo": house.hero_photo,
        "families": [tile(house, single, family) for family in fitting(house, single)[:SHOWN]],
        "doors": house.doors,
    }
