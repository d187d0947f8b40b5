"""Which door and which covering stand for all where only one is drawn."""

from configurator.kernel.message import is_said
from configurator.kernel.shapes import Door, Drawing, Family
from configurator.site.drawings.pictures import bare, family_window, share_position
from configurator.site.house import House

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


def room_subject(house: House) -> tuple[Door, Family]:
    """Return the door and the covering that the first page opens with; the door stays bare where none goes on it."""
    door = first_pair(house)
    return door, [*fitting(house, door), *house.families][0]


def room_drawing(house: House) -> Drawing:
    """Return the drawing that the room is painted round: the covering nearly open, so that the garden shows."""
    door, family = room_subject(house)
    return bare(house, door, family, share_position(family, NEARLY_OPEN), family_window(house, door, [family]))
