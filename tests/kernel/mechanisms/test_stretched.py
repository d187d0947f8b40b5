import pytest

from tests.kernel.mechanisms.mechanism_samples import (
    assert_bounded,
    assert_sound,
    at,
    bounds,
    covered,
    numbers_of,
    of_kind,
    pieces_of,
    size_of,
)

RODS = {"rod_diameter": 12.0, "rod_stand_off": 14.0, "fullness": 2.0, "gather_depth": 22.0}


def panel(lower=1.0, coarse=False, **given):
    return pieces_of("stretched", numbers_of("stretched", **(RODS | given)), size_of(), at(lower, coarse=coarse))


@pytest.mark.parametrize("ruffle", [0.0, 40.0])
def test_boxes_are_in_order_and_bounded_by_the_coarse_ones(ruffle):
    assert_sound(panel(ruffle=ruffle))
    assert_bounded(panel(ruffle=ruffle), panel(coarse=True, ruffle=ruffle))


def test_nothing_moves():
    assert panel(0.0) == panel(1.0)


def test_a_rod_holds_the_cloth_at_the_top_and_at_the_bottom():
    rods = of_kind(panel(), "rod")
    cloth = of_kind(panel(), "fabric")[0]
    assert len(rods) == 2
    assert bounds(rods, "y") == (size_of()["y0"], size_of()["y1"])
    middles = sorted((rod["y0"] + rod["y1"]) / 2 for rod in rods)
    assert [cloth["y0"], cloth["y1"]] == pytest.approx(middles)


def test_a_ruffle_stands_above_the_top_rod_and_hides_as_the_cloth_does():
    ruffled = panel(ruffle=40.0, cloth_view=0.3)
    top = max(rod["y1"] for rod in of_kind(ruffled, "rod"))
    assert top == size_of()["y1"] - 40.0
    assert covered(ruffled, size_of()["y1"] - 5.0)[0]["optics"]["view"] == 0.3


def test_gathered_cloth_stands_about_its_rods():
    cloth = of_kind(panel(), "fabric")[0]
    assert (cloth["z0"] + cloth["z1"]) / 2 == pytest.approx(size_of()["z0"] + 14.0)
    assert cloth["z1"] - cloth["z0"] == pytest.approx(22.0)
