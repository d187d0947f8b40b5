import pytest

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.pieces import solid
from configurator.kernel.questions.sight import sight_answers
from configurator.kernel.shapes import Piece
from tests.kernel.questions.question_samples import (
    DOOR,
    HOUSEHOLD,
    assert_workings,
    shade,
    size_with,
    value_of,
    verdict_of,
)

SIZE = size_with()
RAISED = shade(SIZE, 0.0)
DOWN = shade(SIZE, 1.0)


def rail_at(top: float) -> list[Piece]:
    return [solid("upper-rail", 150.0, 700.0, top - 20.0, top, 0.0, 20.0), *DOWN]


def test_the_band_runs_from_the_floor_line_to_the_head_line() -> None:
    found = sight_answers(DOOR, HOUSEHOLD, RAISED, DOWN, DOWN)
    # Eye 1300 above the floor, 5 m outside; the person 1700 high, 1 m inside.
    assert value_of(found, "sight_high") == pytest.approx(1300 + (1700 - 1300) * 5 / 6)
    assert value_of(found, "sight_low") == pytest.approx(12 + 9 * 25.4)
    assert_workings(found)


def test_solid_cloth_hides_the_person_and_a_sheer_does_not() -> None:
    solid_cloth = sight_answers(DOOR, HOUSEHOLD, RAISED, DOWN, DOWN)
    assert value_of(solid_cloth, "sight_view") == 0
    assert verdict_of(solid_cloth, "sight")["state"] == "clears"
    thin = [piece | {"view": 0.4} if piece["kind"] == "fabric" else piece for piece in DOWN]
    sheer = sight_answers(DOOR, HOUSEHOLD, RAISED, thin, thin)
    assert value_of(sheer, "sight_view") == pytest.approx(0.4)
    assert verdict_of(sheer, "sight")["state"] == "caution"
    assert "night" in verdict_of(sheer, "sight")["why"]


def test_the_joint_of_what_draws_to_both_sides_shows_nobody() -> None:
    middle = (glass_box(DOOR)["x0"] + glass_box(DOOR)["x1"]) / 2
    halves = [
        solid("fabric", x0, x1, SIZE["y0"], SIZE["y1"], 60.0, 62.0) for x0, x1 in ((150.0, middle), (middle, 760.0))
    ]
    found = sight_answers(DOOR, HOUSEHOLD, halves, halves, halves)
    assert value_of(found, "sight_view") == 0
    assert verdict_of(found, "sight")["state"] == "clears"


def test_a_lowered_shade_covers_the_band_from_above() -> None:
    near = HOUSEHOLD | {"outside_distance": 1000.0, "outside_level": 0.0}
    found = sight_answers(DOOR, near, RAISED, DOWN, DOWN)
    edge = shade(SIZE, value_of(found, "sight_lower"))[2]["y0"]
    assert edge == pytest.approx(value_of(found, "sight_low"))
    assert value_of(found, "sight_low") == pytest.approx(800.0)


def test_an_upper_rail_covers_the_band_from_below() -> None:
    found = sight_answers(DOOR, HOUSEHOLD, RAISED, rail_at(1880.0), rail_at(240.0))
    rail = 1880.0 + (240.0 - 1880.0) * value_of(found, "sight_upper")
    assert rail == pytest.approx(value_of(found, "sight_high"))


def test_someone_far_below_sees_nothing_through_a_high_window() -> None:
    below = HOUSEHOLD | {"outside_level": -4000.0, "person_distance": 6000.0}
    door = DOOR | {"rail_bottom": 1100.0, "glass_height": 700.0}
    found = sight_answers(door, below, RAISED, DOWN, DOWN)
    assert value_of(found, "sight_low") == value_of(found, "sight_high")
    assert verdict_of(found, "sight")["state"] == "clears"
    assert len(found["figures"]) == 2


def test_a_person_and_an_observer_both_at_the_glass_see_each_other_eye_to_eye() -> None:
    both = HOUSEHOLD | {"outside_distance": 0.0, "person_distance": 0.0}
    found = sight_answers(DOOR, both, RAISED, DOWN, DOWN)
    assert value_of(found, "sight_low") == value_of(found, "sight_high") == 1300.0
