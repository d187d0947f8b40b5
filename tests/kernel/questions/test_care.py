import pytest

from configurator.kernel.questions.care import care_answers
from tests.kernel.questions.question_samples import (
    INCH,
    assert_workings,
    cautions_of,
    door_with,
    numbers_with,
    size_with,
    value_of,
)


def test_mass_is_area_times_the_mass_of_a_square_metre() -> None:
    found = care_answers(door_with(), numbers_with(cloth_mass=0.5), size_with())
    assert value_of(found, "covering_mass") == pytest.approx(24 * INCH * 68 * INCH * 1e-6 * 0.5)
    assert found["cautions"] == []
    assert_workings(found)


def test_weight_over_a_doorway_is_left_to_a_licensed_trade() -> None:
    found = care_answers(door_with(), numbers_with(), size_with("over-opening"))
    assert "licensed" in cautions_of(found)["weight"]


def test_a_heavy_covering_on_the_leaf_is_a_load_on_its_hinges() -> None:
    shutter = numbers_with(cloth_mass=9.0)
    assert "hinges" in cautions_of(care_answers(door_with(), shutter, size_with()))["weight_leaf"]
    assert "weight_leaf" not in cautions_of(care_answers(door_with(), numbers_with(), size_with()))
    assert "weight_leaf" not in cautions_of(care_answers(door_with(), shutter, size_with("over-opening")))


def test_dark_cloth_on_the_leaf_warns_of_hot_glass() -> None:
    dark = numbers_with(cloth_light=0.0)
    assert "glazier" in cautions_of(care_answers(door_with(), dark, size_with()))["hot_glass"]
    assert "hot_glass" not in cautions_of(care_answers(door_with(), dark, size_with("over-opening")))


def test_a_wired_motor_on_the_leaf_warns_of_the_hinge() -> None:
    assert "hinge" in cautions_of(care_answers(door_with(), numbers_with(wired=1.0), size_with()))["wired_leaf"]


def test_an_out_swing_leaf_takes_the_covering_into_the_weather() -> None:
    assert "rain" in cautions_of(care_answers(door_with(swing="out"), numbers_with(), size_with()))["weather"]
