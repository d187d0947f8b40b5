"""Cloth in a stack: as many layers lie behind each other as its length goes into the room that it takes."""

import pytest

from configurator.kernel.pieces import layered, optics, pushed
from tests.kernel.mechanisms.mechanism_samples import at, numbers_of, of_kind, pieces_of, size_of

SHEER = {"cloth_view": 0.3, "cloth_light": 0.6}
CLOTHS = {
    "accordion": ("cell", {"pitch": 20.0, "closed_thickness": 1.0, "cell_depth": 25.0}),
    "soft-fold": (
        "fold",
        {"fold_drop": 180.0, "fold_thickness": 18.0, "proud_depth": 35.0, "gathered_depth": 60.0, "last_fold": 150.0},
    ),
    "draw": ("pleat", {"unit_pitch": 100.0, "unit_stacked": 20.0}),
}
NESTED = numbers_of("nested-fold", fold_height=100.0, layer_thickness=2.0, **SHEER)


def runs(mechanism, lower):
    kind, given = CLOTHS[mechanism]
    return of_kind(pieces_of(mechanism, numbers_of(mechanism, **(given | SHEER)), size_of(), at(lower)), kind)


@pytest.mark.parametrize("mechanism", list(CLOTHS))
def test_cloth_that_hangs_is_one_layer(mechanism):
    for run in runs(mechanism, 1.0):
        assert run["optics"]["view"] == pytest.approx(0.3)
        assert run["optics"]["light"] == pytest.approx(0.6)


@pytest.mark.parametrize(
    ("mechanism", "layers"),
    [
        # 1655 hang between the rails in 83 folds, each 1 when closed.
        ("accordion", (1700.0 - 30.0 - 15.0) / 83),
        # (1700 - 30 - 15 - 150) in 9 folds, each of which lies in 18.
        ("soft-fold", 1505.0 / 9 / 18),
        # 6 pleats of 100 stand in 20 each.
        ("draw", 5.0),
    ],
)
def test_a_stack_lets_through_what_its_layers_leave_of_each_other(mechanism, layers):
    stack = runs(mechanism, 0.0)[0]
    assert stack["optics"]["view"] == pytest.approx(0.3**layers)
    assert stack["optics"]["light"] == pytest.approx(0.6**layers)
    assert stack["optics"]["solar"] == pytest.approx(0.6**layers)


def test_folds_tucked_behind_each_other_are_a_layer_each_beside_the_hanging_one():
    tucked = 0.4 * (1700.0 - 30.0 - 100.0 - 15.0)
    pieces = pieces_of("nested-fold", NESTED, size_of(), at(0.6))
    view = 1.0
    for piece in pieces:
        if piece["kind"] in ("fold", "fabric"):
            view *= piece["optics"]["view"]
    assert view == pytest.approx(0.3 ** (1 + tucked / 100.0))


def test_piled_slats_are_looked_through_along_their_width():
    numbers = numbers_of("slatted", slat_width=50.0, slat_pitch=42.0, slat_thickness=5.0, **SHEER)
    pile = of_kind(pieces_of("slatted", numbers, size_of(), at(0.0)), "slat")[-1]
    assert pile["count"] > 1
    assert pile["optics"]["view"] == pytest.approx(0.3**10)


def test_part_of_a_layer_counts_in_part_and_cloth_with_room_to_spare_as_one():
    thin = optics(0.25, 0.49)
    assert layered(thin, 0.5) == pytest.approx({"view": 0.5, "light": 0.7, "solar": 0.7})
    assert layered(thin, 0.0) == {"view": 1.0, "light": 1.0, "solar": 1.0}
    assert pushed(thin, 100.0, 200.0) == pytest.approx(dict(thin))
    assert pushed(thin, 200.0, 100.0)["view"] == pytest.approx(0.25**2)
    assert pushed(optics(0.0, 0.0), 200.0, 0.0)["view"] == 0.0
