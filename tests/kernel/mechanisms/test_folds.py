import pytest

from tests.kernel.mechanisms.mechanism_samples import (
    assert_bounded,
    assert_sound,
    at,
    numbers_of,
    of_kind,
    pieces_of,
    size_of,
)

SOFT = {
    "fold_drop": 180.0,
    "fold_thickness": 18.0,
    "proud_depth": 35.0,
    "gathered_depth": 60.0,
    "last_fold": 150.0,
}
NESTED = {"fold_height": 100.0, "layer_thickness": 2.0}
GIVEN = {"soft-fold": SOFT, "nested-fold": NESTED}


def folds(mechanism, lower=1.0, coarse=False, height=1700.0, **given):
    numbers = numbers_of(mechanism, **(GIVEN[mechanism] | given))
    return pieces_of(mechanism, numbers, size_of(height=height), at(lower, coarse=coarse))


def stack(mechanism, height):
    return size_of(height=height)["y1"] - min(piece["y0"] for piece in folds(mechanism, 0.0, height=height))


def depth(mechanism, lower, height=1700.0):
    return max(piece["z1"] for piece in of_kind(folds(mechanism, lower, height=height), "fold"))


@pytest.mark.parametrize("mechanism", list(GIVEN))
@pytest.mark.parametrize("lower", [0.0, 0.05, 0.4, 0.95, 1.0])
@pytest.mark.parametrize("height", [700.0, 1700.0, 2300.0])
def test_boxes_are_in_order_and_bounded_by_the_coarse_ones(mechanism, lower, height):
    assert_sound(folds(mechanism, lower, height=height))
    assert_bounded(folds(mechanism, lower, height=height), folds(mechanism, lower, coarse=True, height=height))


@pytest.mark.parametrize("mechanism", list(GIVEN))
def test_down_it_reaches_the_bottom_of_its_size_and_up_it_does_not_pass_its_top(mechanism):
    assert min(piece["y0"] for piece in folds(mechanism, 1.0)) == pytest.approx(size_of()["y0"])
    assert max(piece["y1"] for piece in folds(mechanism, 0.0)) == pytest.approx(size_of()["y1"])


def test_a_soft_stack_grows_with_the_drop_by_a_fold_thickness_for_each_fold():
    # Headrail 30, last fold 150, bottom rail 15, and for 1700: (1700 - 195) / 180 up to 9 folds of 18.
    assert stack("soft-fold", 1700.0) == pytest.approx(30 + 9 * 18 + 150 + 15)
    assert stack("soft-fold", 2300.0) > stack("soft-fold", 1700.0) > stack("soft-fold", 1000.0)


def test_gathered_soft_folds_stand_prouder_than_hanging_ones():
    assert depth("soft-fold", 0.5) > depth("soft-fold", 1.0)


def test_a_nested_stack_keeps_its_height_and_grows_in_depth_instead():
    assert stack("nested-fold", 1000.0) == stack("nested-fold", 2300.0) == 30 + 100 + 15
    assert depth("nested-fold", 0.0, 2300.0) > depth("nested-fold", 0.0, 1000.0)


def test_tucked_folds_hold_the_cloth_that_has_been_raised():
    tucked = of_kind(folds("nested-fold", 0.5), "fold")
    deep = max(fold["z1"] for fold in tucked) - min(fold["z0"] for fold in tucked)
    bottom = min(piece["y0"] for piece in folds("nested-fold", 0.5))
    raised = bottom - size_of()["y0"]
    assert deep / 2.0 * 100.0 == pytest.approx(raised)


def test_flat_folds_lie_flat_when_down():
    flat = folds("soft-fold", 1.0, proud_depth=0.0)
    assert max(piece["z1"] - piece["z0"] for piece in of_kind(flat, "fold")) == pytest.approx(1.5)
