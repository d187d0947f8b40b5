"""The measuring guide: the same numbers under the same names as in the configurator, drawn, and a sheet to fill in."""

from collections.abc import Callable, Collection, Mapping
from functools import partial
from typing import NamedTuple, TypedDict, cast

from configurator.drawing.page_svg import screen_svg
from configurator.kernel.shapes import Door, Drawing, Household, Mark
from configurator.kernel.tape.field import Field, Group
from configurator.kernel.tape.table import TAPE_GROUPS, is_asked, is_there, parts_of_door
from configurator.kernel.tongue import Words
from configurator.kernel.views.measure_elevation import measure_elevation
from configurator.kernel.views.measure_plan import measure_plan
from configurator.kernel.views.measure_section import measure_section
from configurator.kernel.views.people import measure_people
from configurator.kernel.views.tape_place import tape_draft, tape_place
from configurator.site.drawings.trim import trimmed
from configurator.site.house import House


def divided(door: Door) -> bool:
    """Return whether muntins divide the glass."""
    return door["muntin_columns"] * door["muntin_rows"] > 1


def plain_single(door: Door) -> bool:
    """Return whether a door is one leaf with one lite."""
    return door["layout"] == "single" and not divided(door)


def outward_pair(door: Door) -> bool:
    """Return whether a door is a pair that opens outwards."""
    return door["layout"] == "pair" and door["swing"] == "out"


def with_sidelights(door: Door) -> bool:
    """Return whether a door has sidelights."""
    return door["layout"] == "sidelights"


LARGER = 1.35


class Plate(NamedTuple):
    """A drawing of a group: which view, by name and function, of the first door that is so."""

    name: str
    view: Callable[[Door, Words, str], Drawing]
    suits: Callable[[Door], bool]


class MeasureField(TypedDict):
    """A measurement: its number on the sheet, its name, the trade's word for it or nothing, how to take it, and where.

    ``svg`` is the small drawing of where the tape goes.
    """

    id: str
    number: int
    name: str
    trade: str
    how: str
    svg: str


class MeasureGroup(TypedDict):
    """The measurements that are taken in one place, numbered on from ``start``, and the drawings that show where."""

    id: str
    name: str
    start: int
    fields: list[MeasureField]
    plates: list[str]


class MeasurePage(TypedDict):
    """What the measuring guide shows."""

    groups: list[MeasureGroup]
    count: int
    unit: str


PLATES = {
    "glass": [Plate("elevation", measure_elevation, divided), Plate("section", measure_section, divided)],
    "leaf": [Plate("elevation", measure_elevation, plain_single), Plate("section", measure_section, plain_single)],
    "handle": [Plate("elevation", measure_elevation, plain_single), Plate("plan", measure_plan, plain_single)],
    "around": [
        Plate("elevation", measure_elevation, with_sidelights),
        Plate("section", measure_section, outward_pair),
        Plate("plan", measure_plan, outward_pair),
    ],
}


def tape_groups() -> list[Group]:
    """Return the groups with all that is taken with a tape and asked for; lites are counted."""
    return [
        {**group, "fields": [field for field in group["fields"] if is_asked(field) and field["unit"] == "length"]}
        for group in TAPE_GROUPS
    ]


def group_plates(house: House, group: Group) -> list[Plate]:
    """Return the drawings of a group; who lives there and who looks in are the showroom's own."""
    if group["id"] == "household":
        return [Plate("people", partial(measure_people, house.catalog.household), plain_single)]
    return PLATES[group["id"]]


def focus_of(mark: Mark) -> str:
    """Return the field that a dimension belongs to, or nothing for what is drawn anyway."""
    return next((role.removeprefix("focus-") for role in mark["role"].split() if role.startswith("focus-")), "")


def dimensioned(drawing: Drawing, fields: Collection[str]) -> Drawing:
    """Return a drawing with only the dimensions of some fields."""
    marks = [mark for mark in drawing["marks"] if focus_of(mark) in ("", *fields)]
    return {**drawing, "marks": marks}


def with_number(mark: Mark, number: int) -> Mark:
    """Return a dimension's words with a number in their place, a little larger."""
    x, y, size = mark["points"]
    return {**mark, "text": str(number), "points": [x, y, size * LARGER]}


def numbered(drawing: Drawing, numbers: dict[str, int]) -> Drawing:
    """Return a drawing with only the dimensions of the numbered fields, their numbers in place of readings."""
    shown = dimensioned(drawing, numbers)
    marks = [
        with_number(mark, numbers[focus_of(mark)]) if mark["shape"] == "text" and focus_of(mark) else mark
        for mark in shown["marks"]
    ]
    return {**shown, "marks": marks}


def plate_svg(
    house: House, view: Callable[[Door, Words, str], Drawing], door: Door, numbers: dict[str, int], prefix: str
) -> str:
    """Return one numbered drawing for the page."""
    return screen_svg(trimmed(numbered(view(door, house.words, house.units), numbers)), prefix)


def plates(house: House, group: Group, numbers: dict[str, int]) -> list[str]:
    """Return the drawings that show where a group's tape goes."""
    drawn: list[str] = []
    household = house.catalog.household
    for at, plate in enumerate(group_plates(house, group)):
        door = next((door for door in house.doors if plate.suits(door)), house.doors[0])
        made = partial(plate_svg, house, plate.view, door, numbers, f"{group['id']}-{at}-")
        drawn.append(house.once(made, plate.name, door, household, house.units, numbers, at))
    return drawn


def place_svg(house: House, field: Field) -> str:
    """Return where the tape goes for a field, on the plainest door that has it."""
    plainest = sorted(house.doors, key=lambda door: not plain_single(door))
    door = next((door for door in plainest if is_there(field, parts_of_door(door))), house.doors[0])
    household = house.catalog.household

    def drawn() -> str:
        draft = tape_draft(door, house.words, house.units)
        return screen_svg(tape_place(draft, household, field, measured_on(door, household, field)), f"{field['id']}-")

    return house.once(drawn, "tape-place", field["id"], door, household)


def measured_on(door: Door, household: Household, field: Field) -> float:
    """Return what a field measures on a door, in mm."""
    own, _, key = field["id"].rpartition(".")
    shape: Mapping[str, object] = {"": door, "handle": door["handle"], "household": household}[own]
    return float(cast(float, shape[key]))


def group_lines(house: House, group: Group, start: int) -> MeasureGroup:
    """Return a group with its fields numbered on from ``start``."""
    numbers = {field["id"].replace(".", "_"): start + at for at, field in enumerate(group["fields"])}
    return {
        "id": group["id"],
        "name": group["name"],
        "start": start,
        "fields": [
            {
                "id": field["id"].replace(".", "-").replace("_", "-"),
                "number": start + at,
                "name": field["name"],
                "trade": field.get("trade", ""),
                "how": field["how"],
                "svg": place_svg(house, field),
            }
            for at, field in enumerate(group["fields"])
        ],
        "plates": plates(house, group, numbers),
    }


def measure(house: House) -> MeasurePage:
    """Return what the measuring guide shows."""
    groups: list[MeasureGroup] = []
    start = 1
    for group in tape_groups():
        groups.append(group_lines(house, group, start))
        start += len(group["fields"])
    return {"groups": groups, "count": start - 1, "unit": house.units}
