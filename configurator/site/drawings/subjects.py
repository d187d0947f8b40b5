"""Which door and which covering stand for all where only one is drawn."""

from configurator.kernel.message import is_said
from configurator.kernel.position import main_position
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Door, Family, Position
from configurator.site.house import House

A_THIRD = 0.35


def first_pair(house: House) -> Door:
    """Return the door that stands for all: a pair where there is one."""
    return next((door for door in house.doors if door["layout"] == "pair"), house.doors[0])


def first_single(house: House) -> Door:
    """Return the single door on which families are shown side by side: one whose glass nothing divides."""
    singles = [door for door in house.doors if door["layout"] == "single"]
    plain = [door for door in singles if door["muntin_columns"] * door["muntin_rows"] == 1]
    return [*plain, *singles, *house.doors][0]


def goes_on(house: House, door: Door, family: Family) -> bool:
    """Return whether a family goes on a door."""
    # Asked of all pairings at each build: whole answers take a while to be read.
    return house.once(lambda: not is_said(house.answer(door, family)["refusal"]), "goes", door, family)


def fitting(house: House, door: Door) -> list[Family]:
    """Return the families that go on a door."""
    return [family for family in house.families if goes_on(house, door, family)]


def own_door(house: House, family: Family) -> Door | None:
    """Return the door on which a family's own page shows it; none where it goes on no door.

    It is the single one that stands for all, or else the first on which the family goes."""
    single = first_single(house)
    others = [door for door in house.doors if door is not single]
    return next((door for door in [single, *others] if goes_on(house, door, family)), None)


def clears_all(house: House, door: Door, family: Family) -> bool:
    """Return whether a family goes on a door and nothing there needs a second thought."""
    verdicts = house.answer(door, family)["verdicts"].values()
    return goes_on(house, door, family) and all(verdict["state"] == "clears" for verdict in verdicts)


def appeal(house: House, door: Door, family: Family) -> list[float] | None:
    """Return what puts a covering before others: how dear it is, then how much glass it leaves clear when open; None
    where not all of it clears."""

    def made() -> list[float] | None:
        figures = house.answer(door, family)["figures"]
        clear = figures["visible_glass_open"]["value"] if "visible_glass_open" in figures else 0.0
        return [family["price_level"], clear] if clears_all(house, door, family) else None

    return house.once(made, "appeal", door, family)


def room_subject(house: House) -> tuple[Door, Family]:
    """Return the door and the covering that the first page opens with: of what clears everything, the most appealing.

    Pairs come first. Where nothing clears all, it is the first pair with what goes on it.
    """
    pairs = [door for door in house.doors if door["layout"] == "pair"]
    for doors in (pairs, house.doors):
        asked = [(appeal(house, door, family), door, family) for door in doors for family in house.families]
        sound = [(found, door, family) for found, door, family in asked if found]
        if sound:
            return max(sound, key=lambda one: one[0])[1:]
    door = first_pair(house)
    return door, [*fitting(house, door), *house.families][0]


def a_third_closed(family: Family) -> Position:
    """Return the position at which a covering is seen, and the garden as well."""
    return main_position(resolve(family, {}), A_THIRD)
