"""A measured leaf as the kernel's door: its readings over the preset, each leaf on its own."""

import pytest

from configurator.kernel.door.leaf import leaf_height, leaf_width
from configurator.kernel.tape.impossible import door_denied
from configurator.kernel.visit.leaf_doors import leaf_door, opening_household
from configurator.kernel.visit.visit_fields import leaves_of
from configurator.kernel.visit.visit_shapes import VisitStock
from tests.weir_cottage import house, leaf_of, opening_of, reading

INCH = 25.4
# The whole leaves as the tape had them, in inches: with stiles, beads and glass they must come out the same.
WHOLE = {"study": (29.8125, 79.5), "hall": (35.0, 79.75), "dining": (35.5, 95.5), "kitchen": (31.75, 79.4375)}


@pytest.mark.parametrize("ident", WHOLE)
def test_the_parts_of_a_measured_leaf_make_its_whole(ident: str, stock: VisitStock) -> None:
    door = leaf_door(opening_of(house(), ident), "active", stock)
    assert (leaf_width(door) / INCH, leaf_height(door) / INCH) == pytest.approx(WHOLE[ident])
    assert door_denied(door) == []


def test_readings_stand_over_the_preset_and_the_preset_for_what_nobody_measured(stock: VisitStock) -> None:
    door = leaf_door(opening_of(house(), "hall"), "active", stock)
    assert (door["swing"], door["hinge_side"]) == ("out", "left")
    assert (door["muntin_columns"], door["muntin_rows"]) == (3, 5)
    assert door["handle"]["id"] == "knob-with-deadbolt"
    assert door["handle"]["projection"] == pytest.approx(2.5625 * INCH)
    assert door["handle"]["gap"] == stock["handles"]["knob-with-deadbolt"]["gap"]
    assert door["floor_gap"] == stock["doors"]["divided-lite-door"]["floor_gap"]


def test_the_other_leaf_of_a_pair_is_a_door_of_its_own(stock: VisitStock) -> None:
    opening = opening_of(house(), "study")
    active, other = leaf_door(opening, "active", stock), leaf_door(opening, "other", stock)
    assert (active["hinge_side"], other["hinge_side"]) == ("right", "left")
    assert (active["glass_width"], other["glass_width"]) == (19.875 * INCH, 19.75 * INCH)
    assert (active["wall_gap"], other["wall_gap"]) == (8.75 * INCH, 21 * INCH)
    # The ceiling was measured once.
    assert other["ceiling_height"] == active["ceiling_height"] == 95.625 * INCH
    assert not active["passive_handle"]


def test_a_handle_on_the_other_leaf_is_one_on_both(stock: VisitStock) -> None:
    visit = house()
    leaf_of(visit, "study", "other")["handle"] = "slim-lever"
    opening = opening_of(visit, "study")
    assert leaf_door(opening, "active", stock)["passive_handle"]
    assert leaf_door(opening, "other", stock)["handle"]["id"] == "slim-lever"


def test_a_sidelight_is_a_leaf_with_its_glass_in_the_middle(stock: VisitStock) -> None:
    door = leaf_door(opening_of(house(), "dining"), "left-sidelight", stock)
    assert (door["layout"], door["glass_width"]) == ("single", 8.0625 * INCH)
    assert leaf_width(door) == pytest.approx(14 * INCH)
    assert door["stile_hinge"] == door["stile_latch"]


def test_unequal_sidelights_stand_with_the_larger_panel_and_the_smaller_glass(stock: VisitStock) -> None:
    visit = house()
    leaf_of(visit, "dining", "right-sidelight")["readings"] = [
        reading("sidelight_width", 360.0),
        reading("sidelight_glass_width", 200.0),
    ]
    door = leaf_door(opening_of(visit, "dining"), "active", stock)
    assert (door["sidelight_width"], door["sidelight_glass_width"]) == (360.0, 200.0)


def test_what_cannot_be_or_is_not_known_leaves_the_preset(stock: VisitStock) -> None:
    visit = house()
    leaf = leaf_of(visit, "kitchen", "active")
    leaf["words"] = {"layout": "revolving", "color": "green"}
    leaf["handle"] = "no-such-handle"
    leaf["readings"] = [reading("glass_width", 99999.0), reading("sidelight_width", 300.0), reading("mystery", 1.0)]
    opening = opening_of(visit, "kitchen")
    assert leaf_door(opening, "active", stock) == stock["doors"]["half-lite-door"]
    opening["preset"] = "no-such-door"
    assert leaf_door(opening, "active", stock)["id"] == stock["opening"][0]


def test_ids_of_former_days_are_found(stock: VisitStock) -> None:
    formerly = {"door/old-door": "tall-door", "handle/old-lever": "slim-lever"}
    renamed: VisitStock = {**stock, "formerly": formerly}
    visit = house()
    opening = opening_of(visit, "kitchen")
    opening["preset"] = "old-door"
    leaf_of(visit, "kitchen", "active")["handle"] = "old-lever"
    door = leaf_door(opening, "active", renamed)
    assert (door["id"], door["handle"]["id"]) == ("tall-door", "slim-lever")


def test_who_looks_in_is_read_at_each_door(stock: VisitStock) -> None:
    visit = house()
    study = opening_household(opening_of(visit, "study"), visit["household"])
    hall = opening_household(opening_of(visit, "hall"), visit["household"])
    assert (study["outside_distance"], hall["outside_distance"]) == (108 * INCH, 720 * INCH)
    assert study["shoulder_height"] == visit["household"]["shoulder_height"]


def test_a_layout_tells_which_leaves_are_measured() -> None:
    assert leaves_of("pair") == leaves_of("fixed-pair") == ["active", "other"]
    assert leaves_of("single") == ["active"]
    assert leaves_of("sidelights") == ["active", "left-sidelight", "right-sidelight"]
