import pytest

from configurator.kernel.questions.care import care_question
from configurator.kernel.shapes import Cuts, Reply, Travel
from tests.kernel.questions.cloth_samples import bar_with, cloth_with
from tests.kernel.questions.question_samples import (
    DOOR,
    HOUSEHOLD,
    INCH,
    assert_workings,
    cautions_of,
    door_with,
    figure_of,
    shade_travel,
    size_with,
    value_of,
)
from tests.workings import worked_out


def care(travel: Travel) -> Reply:
    return care_question(travel, HOUSEHOLD)


def care_of(cuts: Cuts, **numbers: float) -> Reply:
    travel = shade_travel(**numbers)
    travel["cuts"] = [cuts]
    return care(travel)


def test_what_has_no_cloth_weighs_its_area() -> None:
    found = care(shade_travel(cloth_mass=0.5))
    assert value_of(found, "covering_mass") == pytest.approx(24 * INCH * 68 * INCH * 1e-6 * 0.5)
    assert found["cautions"] == []
    assert_workings(found)


def test_cloth_lining_rods_and_motor_are_weighed_by_what_is_cut() -> None:
    # Two panels of 2 m x 2.5 m at 0.3 kg/m2 are 3 kg, their lining at 0.2 kg/m2 is 2 kg, two rods of 1 m at
    # 0.25 kg/m are 0.5 kg, and the motor is 0.8 kg.
    panels = {"panels": 2.0, "width": 2000.0, "length": 2500.0}
    cuts: Cuts = {
        "cloths": [cloth_with(**panels, mass=0.3), cloth_with(**panels, mass=0.2, key="lining")],
        "bars": [bar_with("rod", 2.0, 1000.0, 0.25)],
    }
    found = care_of(cuts, motor_mass=0.8)
    assert value_of(found, "cloth_mass") == pytest.approx(3.0)
    assert value_of(found, "lining_mass") == pytest.approx(2.0)
    assert value_of(found, "rod_mass") == pytest.approx(0.5)
    assert value_of(found, "covering_mass") == pytest.approx(6.3)
    for key in ("cloth_mass", "lining_mass", "rod_mass", "covering_mass"):
        assert worked_out(figure_of(found, key)) == pytest.approx(value_of(found, key))
    assert "hinges" in cautions_of(found)["weight_leaf"]


def test_tube_cassette_and_bar_weigh_beside_the_cloth() -> None:
    bars = [bar_with("tube", 1.0, 600.0, 0.5), bar_with("cassette", 1.0, 640.0, 0.9)]
    bars.append(bar_with("bottom_rail", 1.0, 600.0, 0.4))
    cuts: Cuts = {"cloths": [cloth_with(width=600.0, length=2000.0, mass=0.4)], "bars": bars}
    # 0.48 + 0.3 + 0.576 + 0.24
    assert value_of(care_of(cuts), "covering_mass") == pytest.approx(1.596)


def test_weight_over_a_doorway_is_left_to_a_licensed_trade() -> None:
    assert "licensed" in cautions_of(care(shade_travel(size=size_with("over-opening"))))["weight"]


def test_a_heavy_covering_on_the_leaf_is_a_load_on_its_hinges() -> None:
    over = shade_travel(size=size_with("over-opening"), cloth_mass=9.0)
    assert "hinges" in cautions_of(care(shade_travel(cloth_mass=9.0)))["weight_leaf"]
    assert "weight_leaf" not in cautions_of(care(shade_travel()))
    assert "weight_leaf" not in cautions_of(care(over))


def test_dark_cloth_on_the_leaf_warns_of_hot_glass() -> None:
    over = shade_travel(size=size_with("over-opening"), cloth_light=0.0)
    assert "glazier" in cautions_of(care(shade_travel(cloth_light=0.0)))["hot_glass"]
    assert "hot_glass" not in cautions_of(care(over))


def test_a_wired_motor_on_the_leaf_warns_of_the_hinge() -> None:
    assert "hinge" in cautions_of(care(shade_travel(wired=1.0)))["wired_leaf"]


def test_an_out_swing_leaf_takes_the_covering_into_the_weather() -> None:
    assert "rain" in cautions_of(care(shade_travel(door_with(swing="out"))))["weather"]
    assert "weather" not in cautions_of(care(shade_travel(DOOR)))
