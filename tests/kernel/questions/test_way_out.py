from typing import Any

from configurator.kernel.pieces import solid
from configurator.kernel.questions.way_out import way_out_question
from configurator.kernel.shapes import Door, Piece, Reply, Size
from tests.kernel.questions.question_samples import (
    HOUSEHOLD,
    INCH,
    assert_workings,
    cautions_of,
    door_with,
    fit_with,
    shade_travel,
    size_with,
    travel_of,
    value_of,
)

# Without a covering it leaves 848 mm clear: 36 in less the stop, the leaf's thickness and its pin.
OUT = door_with(swing="out", stop_lap=14.0)
BARE = 36 * INCH - 14.0 - 44.45 - 8


def way_out(door: Door, size: Size, depth: float) -> Reply:
    return way_out_question(shade_travel(door, size, depth), HOUSEHOLD)


def standing(pieces: list[list[Piece]], door: Door = OUT) -> Reply:
    """Answer for the pieces of each place of the travel, open first."""
    samples = [{"leg": 0, "at": float(i), "pieces": pieces[i]} for i in range(len(pieces))]
    return way_out_question(travel_of(fit_with(door, size_with()), samples), HOUSEHOLD)  # type: ignore[arg-type]


def between(low: float, high: float, deep: float) -> Piece:
    """Return a piece between two heights in inches that stands so far out of the leaf."""
    return solid("fabric", [150.0, 750.0], [low * INCH, high * INCH], [0.0, deep])


def over(**changes: Any) -> Size:
    return size_with("over-opening", **({"x0": -100.0, "x1": 1015.0, "y0": 12.0, "y1": 2250.0, "z0": 80.0} | changes))


def test_a_wide_in_swing_door_says_nothing() -> None:
    found = way_out(door_with(wall_gap=5000.0), size_with(), 50.0)
    assert found == {"figures": [], "verdicts": [], "cautions": []}


def test_each_band_of_height_has_what_stands_in_it_and_what_it_leaves() -> None:
    found = way_out(OUT, size_with(), 60.0)
    assert value_of(found, "projection_mid") == 60.0
    # Below 34 in only the cloth comes down, half as deep as the headrail.
    assert value_of(found, "projection_low") == 30.0
    assert value_of(found, "clear_mid") == BARE - 60.0
    assert value_of(found, "clear_low") == BARE - 30.0
    # 788 mm are left beside the headrail, 818 mm near the floor: a head less than 4 in deep is allowed.
    assert found["cautions"] == []
    assert_workings(found)


def test_a_cassette_above_80_in_takes_no_width() -> None:
    found = standing([[between(80.5, 86, 200.0), between(40, 80, 20.0)]])
    assert value_of(found, "projection_high") == 200.0
    assert value_of(found, "clear_mid") == BARE - 20.0
    assert found["cautions"] == []


def test_a_stack_below_34_in_is_held_against_32_in() -> None:
    found = cautions_of(standing([[between(20, 30, 60.0)]]))
    assert set(found) == {"way_out_low"}
    assert "Below 34 in above the floor" in found["way_out_low"]
    assert "32 in that must stay clear" in found["way_out_low"]
    assert "while it is open" not in found["way_out_low"]
    assert "Local code decides" in found["way_out_low"]


def test_what_leaves_the_low_band_when_it_is_open_is_said_to() -> None:
    found = cautions_of(standing([[between(60, 70, 60.0)], [between(20, 70, 60.0)]]))
    assert "takes none of it while it is open" in found["way_out_low"]


def test_up_to_4_in_may_stand_between_34_and_80_in() -> None:
    assert standing([[between(40, 70, 4 * INCH)]])["cautions"] == []
    deeper = cautions_of(standing([[between(40, 70, 4.25 * INCH)]]))
    assert set(deeper) == {"way_out_mid"}
    assert "no more than 4 in may stand in the doorway" in deeper["way_out_mid"]
    assert "stands 4 1/4 in into it" in deeper["way_out_mid"]


def test_what_stands_beside_32_in_of_free_doorway_is_not_held_against_it() -> None:
    wide = door_with(swing="out", stop_lap=14.0, glass_width=40 * INCH)
    assert standing([[between(20, 70, 5 * INCH)]], wide)["cautions"] == []


def test_a_door_too_narrow_by_itself_is_not_blamed_on_the_covering() -> None:
    found = way_out(door_with(glass_width=14 * INCH, wall_gap=5000.0), size_with(), 50.0)
    assert "Even without a covering" in cautions_of(found)["clear_width"]


def test_a_covering_that_stops_an_in_swing_leaf_too_soon_is_cautioned_with_what_it_leaves() -> None:
    found = cautions_of(way_out(door_with(reveal=150.0, wall_gap=4000.0), size_with(), 75.0))
    assert "With this covering only" in found["clear_width"]
    assert "less than 32 in" in found["clear_width"]


def test_a_covering_over_the_opening_hangs_across_the_doorway() -> None:
    inwards = cautions_of(way_out(door_with(wall_gap=5000.0), over(), 60.0))
    outwards = cautions_of(way_out(OUT, over(), 60.0))
    assert "cannot be opened" in inwards["way_out_covered"]
    assert "cannot be opened" not in outwards["way_out_covered"]
    assert "clear_height" not in inwards


def test_an_open_stack_lower_than_78_in_is_cautioned_and_its_headroom_told() -> None:
    found = way_out(OUT, over(y1=2100.0), 60.0)
    assert value_of(found, "headroom_open") == 1960.0
    assert "lower than 78 in" in cautions_of(found)["clear_height"]
    assert_workings(found)
