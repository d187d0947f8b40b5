"""What each mechanism has cut, worked out by hand for a covering of 600 x 1700 mm."""

import math

import pytest

from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.mechanisms.rolled import rolled
from configurator.kernel.mechanisms.soft_fold_cuts import fold_girth
from configurator.kernel.shapes import Bar, Cloth, Size
from configurator.kernel.telling import figure, length
from tests.kernel.mechanisms.mechanism_samples import at, fit_of, numbers_of, of_kind, size_of
from tests.workings import worked_out

SEWN = {"side_hem": 50.0, "heading": 75.0, "hem": 60.0}
PLEATS = {"unit_pitch": 100.0, "unit_stacked": 10.0, "fullness": 2.5, "depth_stacked": 125.0, "cloth_layer": 15.0}
RODS = {"rod_diameter": 10.0, "rod_stand_off": 14.0, "fullness": 2.0, "gather_depth": 22.0}
WIDE = size_of(2000.0, 2150.0, 80.0) | {"spacer": 80.0}
FOLDS = {"fold_drop": 200.0, "fold_thickness": 12.0, "gathered_depth": 40.0, "last_fold": 155.0}


def cut(mechanism: str, size: Size | None = None, **given: float) -> tuple[list[Cloth], dict[str, Bar]]:
    """Return the cloths and the bars, each length checked against its working."""
    fit = fit_of(mechanism, numbers_of(mechanism, **given), size or size_of())
    cuts = MECHANISMS[mechanism]["cuts"](fit)
    lengths = [bar["length"] for bar in cuts["bars"]]
    lengths.extend(cloth[side] for cloth in cuts["cloths"] for side in ("width", "length"))
    for one in lengths:
        assert worked_out(figure("a", "a", length(one["value"]), one["how"])) == pytest.approx(one["value"])
    for told in MECHANISMS[mechanism]["tells"](fit):
        assert worked_out(told) == pytest.approx(told["value"]), told["id"]
    return cuts["cloths"], {bar["key"]: bar for bar in cuts["bars"]}


def flat(cloth: Cloth) -> tuple[float, float]:
    """Return the flat width and length of a cloth."""
    return cloth["width"]["value"], cloth["length"]["value"]


def test_a_stretched_panel_has_two_rod_pockets_a_second_layer_of_its_header_and_two_rods() -> None:
    given = RODS | {"side_hem": 50.0, "pocket_ease": 16.0, "pocket_turn": 13.0, "ruffle": 30.0, "rod_holder": 3.0}
    cloths, bars = cut("stretched", **given, bolt_width=1500.0)
    assert flat(cloths[0]) == (600 * 2 + 100, 1700 + 2 * (10 + 16 + 13) + 30)
    assert cloths[0]["bolt"] == 1500
    assert (bars["rod"]["count"], bars["rod"]["length"]["value"]) == (2, 594)


def test_a_lining_is_cut_as_the_cloth_from_its_own_bolt_without_repeat() -> None:
    lined = {"lined": 1.0, "lining_bolt": 1200.0, "lining_mass": 0.1, "pattern_repeat": 300.0, "railroads": 1.0}
    cloth, lining = cut("stretched", **RODS, **lined)[0]
    assert flat(lining) == flat(cloth)
    assert (cloth["repeat"], lining["repeat"], lining["bolt"], lining["railroads"]) == (300, 0, 1200, 0)


def test_flat_folds_take_the_finished_height_and_what_turns_over_head_and_foot() -> None:
    cloths, bars = cut("soft-fold", **FOLDS, proud_depth=0.0, **SEWN)
    assert flat(cloths[0]) == pytest.approx((700, 1700 + 75 + 60))
    assert (bars["headrail"]["length"]["value"], bars["bottom_rail"]["length"]["value"]) == (600, 600)


def test_folds_that_stand_proud_take_more_cloth_than_they_hang_low() -> None:
    plain = cut("soft-fold", **FOLDS, proud_depth=0.0)[0][0]
    proud = cut("soft-fold", **FOLDS, proud_depth=50.0)[0][0]
    # 1700 less head, bar and last fold is 1500: eight folds of 187.5, and a last one of 155 mm.
    more = 8 * (fold_girth(50.0, 187.5) - 187.5) + fold_girth(50.0, 155.0) - 155
    assert proud["length"]["value"] - plain["length"]["value"] == pytest.approx(more)
    # Out and back it goes at least as far as a triangle would, at most as far as a box.
    assert 2 * math.hypot(50, 187.5 / 2) - 10 < fold_girth(50.0, 187.5) < 187.5 + 100


def test_nested_folds_take_what_hangs_under_the_headrail() -> None:
    cloths, _ = cut("nested-fold", fold_height=100.0, layer_thickness=1.2, **SEWN)
    assert flat(cloths[0]) == (700, 1670 + 75 + 60)


def test_a_rolled_cloth_keeps_its_wraps_on_the_tube() -> None:
    given = {"tube": 30.0, "cloth_thickness": 0.5, "bracket_gap": 15.0, "wraps_spare": 200.0, "hem": 50.0}
    numbers = numbers_of("rolled", **given)
    cloths, bars = cut("rolled", **given)
    hung = of_kind(rolled(fit_of("rolled", numbers, size_of()), at(1.0)), "fabric")[0]
    assert flat(cloths[0]) == pytest.approx((570, hung["y1"] - hung["y0"] + 250))
    assert bars["tube"]["length"]["value"] == 570
    assert bars["bottom_rail"]["length"]["value"] == 570
    assert "cassette" not in bars


def test_a_cassette_is_shorter_than_ordered_by_its_end_caps() -> None:
    boxed = size_of() | {"cassette": {"name": "c", "roll": 60.0, "height": 70.0, "depth": 70.0}}
    given = {"tube": 30.0, "cloth_thickness": 0.5, "cassette": 1.0, "end_cap": 4.0}
    assert cut("rolled", boxed, **given)[1]["cassette"]["length"]["value"] == 592


def test_a_banded_cloth_hangs_twice() -> None:
    bands = {"band_clear": 50.0, "band_solid": 70.0, "band_view": 0.0, "band_light": 0.0, "layer_gap": 8.0}
    roll = {"tube": 30.0, "cloth_thickness": 0.8, "wraps_spare": 200.0, "heading": 25.0}
    boxed = size_of() | {"cassette": {"name": "c", "roll": 60.0, "height": 70.0, "depth": 70.0}}
    # From the middle of the cassette, 35 mm below the top, down to the foot and up again.
    assert cut("banded-roll", boxed, **bands, **roll)[0][0]["length"]["value"] == 2 * 1665 + 200 + 25


def test_cells_take_their_panels_in_every_layer() -> None:
    # Folds of 30 x 40 mm have panels of 25 mm; 1655 mm hang, so there are 56.
    cells = {"pitch": 30.0, "cell_depth": 40.0, "closed_thickness": 1.0, "layers": 2.0}
    cloths, bars = cut("accordion", **cells, upper_moves=1.0)
    assert flat(cloths[0]) == (600, 2 * 56 * 50)
    assert list(bars) == ["headrail", "upper_rail", "bottom_rail"]


def test_drapery_has_hems_and_a_return_as_deep_as_its_track_stands_off() -> None:
    sewn = SEWN | {"returns": 1.0, "headrail_depth": 40.0, "split": 1.0, "meeting_lap": 100.0}
    cloths, bars = cut("draw", WIDE, **PLEATS, **sewn)
    assert cloths[0]["panels"] == 2
    # (1000 + half the lap) x 2.5, two hems, and 80 + 20 mm back to the wall; under a headrail of 30 mm.
    assert flat(cloths[0]) == (1050 * 2.5 + 100 + 100, 2120 + 75 + 60)
    assert bars["track"]["length"]["value"] == 2000


def test_vanes_are_strips_and_panels_are_flat() -> None:
    vanes = cut("draw", WIDE, vane_width=89.0, unit_pitch=76.0, heading=50.0, hem=50.0)[0][0]
    assert (vanes["panels"], flat(vanes)) == (27, (89, 2220))
    panels, bars = cut("draw", WIDE, panel_count=4.0, panel_overlap=50.0, side_hem=25.0, heading=0.0, hem=75.0)
    assert (panels[0]["panels"], flat(panels[0])) == (4, (2150 / 4 + 50, 2195))
    assert (bars["bottom_rail"]["count"], bars["bottom_rail"]["length"]["value"]) == (4, 2150 / 4)


def stack(**given: float) -> float:
    """Return how wide pleats stand in a one-way stack of 2000 mm."""
    numbers = numbers_of("draw", **(PLEATS | given))
    pleats = of_kind(MECHANISMS["draw"]["pieces"](fit_of("draw", numbers, WIDE), at(0.0)), "pleat")
    return pleats[0]["x1"] - pleats[0]["x0"]


def test_a_side_stack_follows_cloth_lining_and_fullness() -> None:
    # Twenty pleats, each of a carrier of 10 mm and 100 x 2.5 / 125 = 2 layers of 15 mm.
    assert stack() == pytest.approx(20 * (10 + 2 * 15))
    assert stack(fullness=2.0) == pytest.approx(20 * (10 + 1.6 * 15))
    assert stack(cloth_layer=10.0) == pytest.approx(20 * (10 + 2 * 10))
    assert stack(lined=1.0, lining_layer=6.0) == pytest.approx(20 * (10 + 2 * 21))
    assert stack(lined=0.0, lining_layer=6.0) == stack()
