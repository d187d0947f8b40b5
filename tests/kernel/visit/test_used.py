"""Which of several readings is worked with, and how that is told."""

import pytest

from configurator.kernel.message import say_phrase
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.visit.used import LARGEST_USED, used_numbers
from configurator.kernel.visit.visit_fields import all_visit_fields
from configurator.kernel.visit.visit_shapes import Leaf, Reading, Used
from tests.weir_cottage import house, leaf_of, reading

INCH = 25.4


def leaf(*readings: Reading) -> Leaf:
    return {"id": "active", "words": {}, "handle": "", "note": "", "readings": list(readings)}


def used(field: str, *readings: Reading) -> Used:
    return used_numbers(leaf(*readings))[field]


def told(one: Used, units: str = "in") -> str:
    return say_phrase(one["rule"], ENGLISH, units)


def test_the_glass_goes_by_its_tightest_place_and_the_bead_by_its_widest() -> None:
    # The study's active leaf, by hand: 19 15/16, 19 7/8, 19 7/8.
    numbers = used_numbers(leaf_of(house(), "study", "active"))
    assert numbers["glass_width"]["mm"] == 19.875 * INCH
    assert told(numbers["glass_width"]) == "the smallest of 19 15/16 in, 19 7/8 in and 19 7/8 in"
    bead = used("bead_width", reading("bead_width", 12.0, "a"), reading("bead_width", 13.0, "b"))
    assert bead["mm"] == 13.0
    assert told(bead, "mm") == "the larger of 12 mm and 13 mm"


@pytest.mark.parametrize(
    ("field", "used_mm"),
    [
        ("wall_gap", 200.0),
        ("ceiling_height", 200.0),
        ("handle.gap", 200.0),
        ("handle.projection", 220.0),
        ("bead_projection", 220.0),
        ("casing_projection", 220.0),
        ("stile_latch", 200.0),
        ("leaf_thickness", 200.0),
    ],
)
def test_room_goes_by_the_smallest_and_what_is_to_be_cleared_by_the_largest(field: str, used_mm: float) -> None:
    assert used(field, reading(field, 220.0, "one"), reading(field, 200.0, "two"))["mm"] == used_mm


def test_every_field_that_goes_by_the_largest_is_one_of_the_table() -> None:
    assert set(LARGEST_USED) <= {field["id"] for field in all_visit_fields()}


def test_the_newest_reading_of_a_spot_counts_and_the_older_stay() -> None:
    kitchen = leaf_of(house(), "kitchen", "active")
    heights = [one["typed"] for one in kitchen["readings"] if one["field"] == "leaf_height"]
    assert heights == ["76 1/2", "79 1/2"]
    assert used_numbers(kitchen)["leaf_height"]["mm"] == 79.5 * INCH


def test_a_wall_that_is_measured_anew_outdoes_the_former_day_s_wherever_it_stands() -> None:
    first, again = reading("wall_gap", 533.4), reading("wall_gap", 381.0, on="2025-04-30")
    assert used("wall_gap", first, again)["mm"] == 381.0
    assert used("wall_gap", again, first)["mm"] == 381.0
    wider = used("wall_gap", reading("wall_gap", 381.0), reading("wall_gap", 533.4, on="2025-04-30"))
    assert wider["mm"] == 533.4


def test_what_was_measured_outdoes_what_was_assumed() -> None:
    assumed = reading("glass_width", 500.0, "top", how="assumed")
    both = used("glass_width", assumed, reading("glass_width", 510.0, "middle"))
    assert (both["mm"], both["how"]) == (510.0, "measured")
    alone = used("glass_width", assumed, reading("glass_width", 490.0, "middle", how="preset"))
    assert (alone["mm"], alone["how"]) == (500.0, "assumed")


def test_one_reading_and_many_are_told_as_they_are() -> None:
    assert told(used("leaf_width", reading("leaf_width", 889.0))) == "35 in, read once"
    many = [reading("glass_width", 508.0 + place, str(place)) for place in range(5)]
    assert told(used("glass_width", *many), "mm") == "the smallest of 5 readings between 508 mm and 512 mm"
