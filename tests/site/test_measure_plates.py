"""The measuring guide's drawings: every number once and apart from its like, in the order of the sheet to fill in."""

from itertools import combinations

import pytest

from configurator.catalog import load
from configurator.kernel.shapes import Mark
from configurator.kernel.tape.field import Group
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.drawings.trim import bounds
from configurator.site.house import House
from configurator.site.kinds.measure_page import focus_of, group_plates, measure, numbered, tape_groups

HOUSE = House(load(CONTENT), CONTENT, Answers())
GROUPS = {group["id"]: group for group in tape_groups()}


def numbers_of(group: Group) -> dict[str, int]:
    """Return the numbers of a group's fields as the drawings name them."""
    start = next(one["start"] for one in measure(HOUSE)["groups"] if one["id"] == group["id"])
    return {field["id"].replace(".", "_"): start + at for at, field in enumerate(group["fields"])}


def plates_of(group: Group) -> list[list[Mark]]:
    """Return the numbers as they stand on each drawing of a group."""
    numbers = numbers_of(group)
    drawn = []
    for plate in group_plates(HOUSE, group):
        door = next(door for door in HOUSE.doors if plate.suits(door))
        marks = numbered(plate.view(door, HOUSE.words, HOUSE.units), numbers)["marks"]
        drawn.append([mark for mark in marks if mark["shape"] == "text" and focus_of(mark)])
    return drawn


def test_numbers_run_on_through_all_groups() -> None:
    page = measure(HOUSE)
    fields = [field for group in page["groups"] for field in group["fields"]]
    assert [field["number"] for field in fields] == list(range(1, page["count"] + 1))
    assert [group["start"] for group in page["groups"]] == [group["fields"][0]["number"] for group in page["groups"]]
    assert len({field["id"] for field in fields}) == len(fields)
    assert all("<svg" in field["svg"] for field in fields)


@pytest.mark.parametrize("name", GROUPS)
def test_every_number_of_a_group_stands_on_one_of_its_drawings(name: str) -> None:
    told = {mark["text"] for plate in plates_of(GROUPS[name]) for mark in plate}
    numbers = numbers_of(GROUPS[name])
    assert told == {str(number) for number in numbers.values()}


@pytest.mark.parametrize("name", GROUPS)
def test_no_number_covers_another_on_a_drawing(name: str) -> None:
    for plate in plates_of(GROUPS[name]):
        assert len({mark["text"] for mark in plate}) == len(plate)
        for one, other in combinations(plate, 2):
            (a0, b0, a1, b1), (c0, d0, c1, d1) = bounds(one), bounds(other)
            assert a1 < c0 or c1 < a0 or b1 < d0 or d1 < b0, (one["text"], other["text"])
