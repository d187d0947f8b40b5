"""The small drawing of where the tape goes: the same place as on the drawings, with both its ends in view."""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.shapes import Door, Drawing, Mark
from configurator.kernel.tape.field import Field
from configurator.kernel.tape.table import asked_groups, deciding_fields
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.dimensions import blank_notes
from configurator.kernel.views.focus import own_dimension
from configurator.kernel.views.measure_elevation import measure_elevation
from configurator.kernel.views.measure_plan import measure_plan
from configurator.kernel.views.measure_section import measure_section
from configurator.kernel.views.people import measure_people
from configurator.kernel.views.tape_place import tape_draft, tape_place
from configurator.site.kinds.measure_page import measured_on

# What the small drawing takes on another side, or further in.
ELSEWHERE = {"casing_width", "ceiling_height", "muntin_width", "stop_lap", "sidelight_width", "sidelight_glass_width"}
DOORS = ["garden-door", "garden-pair", "sidelight-door", "divided-lite-door", "veranda-pair"]


def lengths(door: Door) -> list[Field]:
    """Return what a tape takes of a door."""
    return [field for group in asked_groups(door) for field in group["fields"] if field["unit"] == "length"]


def place(catalog: Catalog, door: Door, field: Field) -> Drawing:
    """Return a field's small drawing."""
    length = measured_on(door, catalog.household, field)
    return tape_place(tape_draft(door, ENGLISH, "in"), catalog.household, field, length)


def middles(drawing: list[list[float]]) -> list[list[float]]:
    """Return the middles of ticks, to a hundredth of a millimeter."""
    return sorted([round((x0 + x1) / 2, 2), round((y0 + y1) / 2, 2)] for x0, y0, x1, y1 in drawing)


@pytest.mark.parametrize("ident", DOORS)
def test_every_length_has_one_with_both_ends_in_view_and_no_words(catalog: Catalog, ident: str) -> None:
    door = catalog.doors[ident]
    for field in lengths(door):
        small = place(catalog, door, field)
        assert all(mark["shape"] != "text" for mark in small["marks"]), field["id"]
        ticks = [mark["points"] for mark in small["marks"] if "tick" in mark["role"]]
        assert len(ticks) == 2, field["id"]
        for x, y in middles(ticks):
            assert small["x"] < x < small["x"] + small["width"], field["id"]
            assert small["y"] < y < small["y"] + small["height"], field["id"]


@pytest.mark.parametrize("ident", DOORS)
def test_it_stands_where_the_drawings_own_dimension_stands(catalog: Catalog, ident: str) -> None:
    door = catalog.doors[ident]
    for field in lengths(door):
        if "drawn" not in field:
            continue
        length = measured_on(door, catalog.household, field)
        full = own_dimension(blank_notes(56.0, ENGLISH, "in"), door, field, length)
        ends = middles([mark["points"] for mark in full if mark["role"] == "tick"])
        small = place(catalog, door, field)
        assert middles([mark["points"] for mark in small["marks"] if mark["role"] == "tick"]) == ends, field["id"]


def ends_along(marks: list[Mark]) -> list[float]:
    """Return where a dimension's two ticks are along its line: across, up or out."""
    first, last = middles([mark["points"] for mark in marks])
    return sorted([first[1], last[1]] if abs(first[0] - last[0]) < abs(first[1] - last[1]) else [first[0], last[0]])


@pytest.mark.parametrize("ident", DOORS)
def test_every_length_has_its_dimension_to_measure_with_the_same_ends(catalog: Catalog, ident: str) -> None:
    door = catalog.doors[ident]
    drawings = [view(door, ENGLISH, "mm") for view in (measure_elevation, measure_section, measure_plan)]
    drawings.append(measure_people(catalog.household, door, ENGLISH, "mm"))
    marks = [mark for drawing in drawings for mark in drawing["marks"] if "tick" in mark["role"].split()]
    for field in lengths(door):
        focus = "focus-" + field["id"].replace(".", "_")
        measured = [mark for mark in marks if focus in mark["role"].split()]
        assert measured, field["id"]
        length = measured_on(door, catalog.household, field)
        if length > 0 and len(measured) == 2 and "drawn" in field and field["id"] not in ELSEWHERE:
            own = own_dimension(blank_notes(56.0, ENGLISH, "mm"), door, field, length)
            ends = ends_along([mark for mark in own if mark["role"] == "tick"])
            assert ends == pytest.approx(ends_along(measured), abs=0.02), field["id"]


def test_a_few_decide_most_on_any_door_and_all_others_wait(catalog: Catalog) -> None:
    for door in catalog.doors.values():
        first = [field["id"] for field in deciding_fields(door)]
        assert 4 <= len(first) <= 7
        assert {"glass_width", "glass_height", "handle_height", "handle.gap"} <= set(first)
        assert len(first) < len(lengths(door)) / 3


def test_a_word_of_the_trade_stands_beside_a_plain_one(catalog: Catalog) -> None:
    trade = {field["id"]: field["trade"] for field in lengths(catalog.doors["garden-pair"]) if "trade" in field}
    assert trade["stile_latch"] == "Latch stile"
    assert trade["backset"] == "Backset"
    for field in lengths(catalog.doors["garden-pair"]):
        assert field.get("trade", "").lower() != field["name"].lower()
