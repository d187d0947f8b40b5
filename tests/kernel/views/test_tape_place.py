"""The small drawing of where the tape goes: the same place as on the drawings, with both its ends in view."""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.shapes import Door, Drawing
from configurator.kernel.tape.field import Field
from configurator.kernel.tape.table import asked_groups, deciding_fields
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.dimensions import blank_notes
from configurator.kernel.views.focus import own_dimension
from configurator.kernel.views.tape_place import tape_draft, tape_place
from configurator.site.kinds.measure_page import measured_on

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
