"""The table of what a tape takes: whole, and what measurements deny each other alike for content and forms."""

from copy import deepcopy
from typing import Any

import pytest

from configurator.catalog import Catalog
from configurator.kernel.message import is_said, say
from configurator.kernel.shapes import Door, Handle, Household
from configurator.kernel.tape.impossible import door_denied, first_denied, out_of_limits
from configurator.kernel.tape.new_parts import with_new_parts
from configurator.kernel.tape.table import TAPE_GROUPS, asked_groups, field_called, field_key, fields_of
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.focus import landmarks

WORDS = {"id", "name", "kind", "layout", "swing", "hinge_side", "hinge_heights", "passive_handle", "handle"}
LIT = {"layout": "sidelights"}


@pytest.mark.parametrize(("shape", "kind"), [("door", Door), ("handle", Handle), ("household", Household)])
def test_the_table_has_every_number_of_a_shape(shape: str, kind: type) -> None:
    assert {field_key(field["id"]) for field in fields_of(shape)} == set(kind.__annotations__) - WORDS


def test_what_is_usual_is_possible_and_every_landmark_is_known(catalog: Catalog) -> None:
    known = landmarks(catalog.doors["garden-pair"])
    for field in [field for group in TAPE_GROUPS for field in group["fields"]]:
        low, high = field["limits"]
        assert all(low <= one <= high for one in field.get("usual", []) + field.get("assumed", [])), field["id"]
        assert set(field.get("drawn", [])[2:]) <= set(known), field["id"]


def test_a_form_asks_for_what_the_door_has(catalog: Catalog) -> None:
    for door, wanted in (("garden-pair", "astragal_width"), ("sidelight-door", "sidelight_width")):
        asked = [field["id"] for group in asked_groups(catalog.doors[door]) for field in group["fields"]]
        assert wanted in asked
        assert "glass_u" not in asked
    plain = [field["id"] for group in asked_groups(catalog.doors["garden-door"]) for field in group["fields"]]
    assert not {"astragal_width", "sidelight_width", "muntin_width", "stop_lap"} & set(plain)


def test_no_door_of_the_showroom_denies_itself(catalog: Catalog) -> None:
    assert [name for name, door in catalog.doors.items() if is_said(first_denied(door))] == []


@pytest.mark.parametrize(
    ("changes", "field", "told"),
    [
        ({"ceiling_height": 1900.0}, "ceiling_height", "higher than the ceiling"),
        ({"backset": 460.0}, "backset", "past the middle"),
        ({"glass_recess": 42.0}, "glass_recess", "other face"),
        ({"muntin_columns": 3}, "muntin_width", "have a width"),
        ({"muntin_columns": 9, "muntin_width": 60.0}, "muntin_width", "hardly any glass"),
        ({"handle_height": 2010.0}, "handle_height", "above the leaf"),
        ({**LIT, "sidelight_width": 150.0, "sidelight_glass_width": 150.0}, "sidelight_glass_width", "wider"),
        ({**LIT, "sidelight_width": 300.0}, "wall_gap", "within the side panel, 300 mm"),
    ],
)  # fmt: skip
def test_a_contradiction_names_its_field(catalog: Catalog, changes: dict[str, Any], field: str, told: str) -> None:
    door: Any = {**deepcopy(catalog.doors["garden-door"]), **changes}
    assert [(one["field"], told in say(one["why"], ENGLISH, "mm")) for one in door_denied(door)] == [(field, True)]


def test_limits_are_told_in_the_reader_s_units() -> None:
    said = [say(out_of_limits(field_called("glass_width"), 50.0, units), ENGLISH, units) for units in ("in", "mm")]
    assert said == [
        "Glass width must lie between 4 in and 59 in.",
        "Glass width must lie between 100 mm and 1500 mm.",
    ]


def test_a_part_that_comes_new_gets_a_usual_size_and_room(catalog: Catalog) -> None:
    before = catalog.doors["garden-door"]
    for layout in ("pair", "fixed-pair", "sidelights"):
        after = with_new_parts(before, {**before, "layout": layout, "swing": "out", "muntin_rows": 4})
        assert not is_said(first_denied(after)), layout
        assert (after["stop_lap"], after["muntin_width"]) == (12, 22)
    again = with_new_parts(after, {**after, "swing": "in"})
    assert again["stop_lap"] == 0
    assert again["sidelight_width"] == 356
