from configurator.kernel.questions.reply import Reply
from configurator.kernel.questions.swing import swing_answers
from configurator.kernel.questions.way_out import way_out_answers
from configurator.kernel.shapes import Door, Size
from tests.kernel.questions.question_samples import (
    INCH,
    assert_workings,
    cautions_of,
    door_with,
    shade_samples,
    size_with,
    value_of,
)


def way_out(door: Door, size: Size, depth: float) -> Reply:
    samples = shade_samples(size, depth)
    swing = swing_answers(door, size, samples)
    bare = value_of(swing, "clear_width_bare")
    return way_out_answers(door, size, samples, bare, value_of(swing, "clear_width_covered"))


def test_a_wide_in_swing_door_says_nothing() -> None:
    found = way_out(door_with(wall_gap=5000.0), size_with(), 50.0)
    assert found == {"figures": [], "verdicts": [], "cautions": []}


def test_an_out_swing_covering_that_leaves_32_in_shows_its_depths_without_a_caution() -> None:
    found = way_out(door_with(swing="out", stop_lap=14.0), size_with(), 30.0)
    assert value_of(found, "projection_mid") == 30.0
    # Below 34 in only the cloth comes down, half as deep as the headrail.
    assert value_of(found, "projection_low") == 15.0
    assert found["cautions"] == []
    assert_workings(found)


def test_an_out_swing_covering_that_leaves_less_than_32_in_is_cautioned() -> None:
    found = cautions_of(way_out(door_with(swing="out", stop_lap=14.0), size_with(), 60.0))
    assert "32 in" in found["clear_width"]
    assert "34 in" in found["way_out_projection"]
    assert "raised, this covering keeps that" in found["way_out_projection"]
    assert "4 in" not in found["way_out_projection"].replace("34 in", "")
    assert all("Local code decides" in text for text in found.values())


def test_more_than_4_in_between_34_and_80_in_is_named() -> None:
    found = cautions_of(way_out(door_with(swing="out", stop_lap=14.0), size_with(), 4.5 * INCH))
    assert "no more than 4 in" in found["way_out_projection"]


def test_a_door_too_narrow_by_itself_is_not_blamed_on_the_covering() -> None:
    found = way_out(door_with(glass_width=14 * INCH, wall_gap=5000.0), size_with(), 50.0)
    assert "Even without a covering" in cautions_of(found)["clear_width"]


def test_a_covering_over_the_opening_hangs_across_the_doorway() -> None:
    size = size_with("over-opening", x0=-100.0, x1=1015.0, y0=12.0, y1=2250.0, z0=80.0)
    inwards = cautions_of(way_out(door_with(wall_gap=5000.0), size, 60.0))
    outwards = cautions_of(way_out(door_with(swing="out", stop_lap=14.0), size, 60.0))
    assert "cannot be opened" in inwards["way_out_covered"]
    assert "cannot be opened" not in outwards["way_out_covered"]
    assert "clear_height" not in inwards


def test_an_open_stack_lower_than_78_in_is_cautioned() -> None:
    size = size_with("over-opening", x0=-100.0, x1=1015.0, y0=12.0, y1=2100.0, z0=80.0)
    found = cautions_of(way_out(door_with(swing="out", stop_lap=14.0), size, 60.0))
    assert "78 in" in found["clear_height"]
