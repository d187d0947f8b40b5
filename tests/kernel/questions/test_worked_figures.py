"""Figures of which no other test has an example, each worked out by hand from what a tape would read."""

import math

import pytest

from configurator.kernel.answer import ask_fit
from configurator.kernel.mechanisms.draw_cuts import draw_figures
from configurator.kernel.mechanisms.louver_figures import louver_figures
from configurator.kernel.mechanisms.stretched_cuts import stretched_figures
from configurator.kernel.pieces import solid, veil
from configurator.kernel.questions.bars import bars_question
from configurator.kernel.questions.cloth import cloth_question
from configurator.kernel.questions.glass import glass_question
from configurator.kernel.questions.light_gap import light_gap_question
from configurator.kernel.questions.order import order_question
from configurator.kernel.questions.projection import projection_question
from configurator.kernel.questions.stack import stack_question
from configurator.kernel.questions.weight import mass_figures
from configurator.kernel.shapes import Figure, Piece, Travel
from tests.kernel.mechanisms.mechanism_samples import fit_of, numbers_of, size_of
from tests.kernel.mount.mount_samples import hung_with, shutter
from tests.kernel.questions.cloth_samples import bar_with, cloth_with
from tests.kernel.questions.question_samples import (
    HOUSEHOLD,
    INCH,
    LEVER,
    door_with,
    fit_with,
    shade_travel,
    size_with,
    travel_of,
    value_of,
)

# The glass of the door that the samples share, 22 x 64 in: past a stile of 6 in and a bead of 1 in, above a rail of
# 8 in, a bead and 12 mm of air over the floor.
GLASS = [7 * INCH, 29 * INCH, 9 * INCH + 12.0, 73 * INCH + 12.0]


def by_id(figures: list[Figure]) -> dict[str, float]:
    return {figure["id"]: figure["value"] for figure in figures}


def states(opened: list[Piece], closed: list[Piece]) -> Travel:
    """Return a travel that knows only two places."""
    samples = [{"leg": 0, "at": 0.0, "pieces": opened}, {"leg": 0, "at": 1.0, "pieces": closed}]
    return travel_of(fit_with(), samples)


@pytest.mark.parametrize(
    ("cut", "other", "mass"),
    [
        ("rod_cut", "rod_cut_other", "rod_mass"),
        ("tube_cut", "tube_cut_other", "tube_mass"),
        ("track_cut", "track_cut_other", "track_mass"),
        ("cassette_cut", "cassette_cut_other", "cassette_mass"),
        ("headrail_cut", "headrail_cut_other", "headrail_mass"),
        ("upper_rail_cut", "upper_rail_cut_other", "upper_rail_mass"),
        ("bottom_rail_cut", "bottom_rail_cut_other", "bottom_rail_mass"),
    ],
)
def test_bars_are_cut_to_their_length_and_weigh_by_it(cut: str, other: str, mass: str) -> None:
    key = cut.removesuffix("_cut")
    travel = shade_travel()
    travel["cuts"] = [{"cloths": [], "bars": [bar_with(key, 2.0, length, 0.5)]} for length in (580.0, 610.0)]
    assert by_id(bars_question(travel, HOUSEHOLD)["figures"]) == {cut: 580.0, other: 610.0}
    # Two of 0.58 m at half a kilogram a meter.
    assert by_id(mass_figures(travel["fit"], travel["cuts"][0]))[mass] == pytest.approx(0.58)


def test_louvers_weigh_by_the_ordered_area() -> None:
    fit = fit_of("louver-panel", numbers_of("louver-panel", cloth_mass=9.0, motor_mass=0.4), size_of(600.0, 1700.0))
    told = by_id(mass_figures(fit, {"cloths": [], "bars": []}))
    assert told["panel_mass"] == pytest.approx(0.6 * 1.7 * 9.0)
    assert told["covering_mass"] == pytest.approx(0.6 * 1.7 * 9.0 + 0.4)


@pytest.mark.parametrize(
    ("key", "flat", "cut", "widths", "seams", "seam", "apart"),
    [
        ("cloth", "cloth_flat", "cloth_cut", "cloth_widths", "cloth_seams", "cloth_seam", "cloth_seam_apart"),
        ("lining", "lining_flat", "lining_cut", "lining_widths", "lining_seams", "lining_seam", "lining_seam_apart"),
    ],
)
def test_cloth_and_lining_are_cut_alike(
    key: str, flat: str, cut: str, widths: str, seams: str, seam: str, apart: str
) -> None:
    # 60 in of 54 in cloth, 70 in long in repeats of 24: 3 in on either side of one whole width, of which the hem
    # takes 2; gathered by two, that is 1/2 in, and the seams stand 27 in apart.
    cloth = cloth_with(60 * INCH, 70 * INCH, key=key, fullness=2.0, hem=2 * INCH, repeat=24 * INCH)
    travel = shade_travel()
    travel["cuts"] = [{"cloths": [cloth], "bars": []}, {"cloths": [cloth], "bars": []}]
    told = by_id(cloth_question(travel, HOUSEHOLD)["figures"])
    found = [told[name] / INCH for name in (flat, cut, seam, apart)]
    assert found == pytest.approx([60.0, 72.0, 0.5, 27.0])
    assert [told[widths], told[seams]] == [2.0, 2.0]
    assert told[f"{key}_leaf"] == told[f"{key}_other"] == pytest.approx(2 * 72 * INCH)
    assert told[f"{key}_total"] == pytest.approx(4 * 72 * INCH)


def test_a_linings_run_is_told_for_both_leaves() -> None:
    travel = shade_travel()
    lining = [cloth_with(width * INCH, 70 * INCH, key="lining", bolt=54 * INCH) for width in (50, 58)]
    travel["cuts"] = [{"cloths": [one], "bars": []} for one in lining]
    told = by_id(cloth_question(travel, HOUSEHOLD)["figures"])
    assert told["lining_leaf"] == pytest.approx(70 * INCH)
    assert told["lining_other"] == pytest.approx(140 * INCH)
    assert told["lining_total"] == pytest.approx(210 * INCH)


def test_top_edge_above_and_below_that_of_the_glass() -> None:
    numbers = numbers_of("accordion")
    above = order_question(shade_travel(size=size_with(y1=GLASS[3] + 60.0), **numbers), HOUSEHOLD)
    assert value_of(above, "overlap_top") == pytest.approx(60.0)
    below = order_question(shade_travel(size=size_with(y1=GLASS[3] - 200.0), **numbers), HOUSEHOLD)
    assert value_of(below, "bare_top") == pytest.approx(200.0)


def test_cloth_narrower_than_its_headrail_leaves_strips_of_glass() -> None:
    # Ordered 560 mm wide over 558.8 mm of glass; 15 mm of brackets on either side.
    size = size_with(x0=177.0, x1=737.0)
    cloth = veil("fabric", [192.0, 722.0], [190.0, 1900.0], [10.0, 11.0], {"view": 0.0, "light": 0.0, "solar": 0.0})
    travel = shade_travel(size=size)
    travel["down"] = [cloth]
    told = light_gap_question(travel, HOUSEHOLD)
    assert value_of(told, "cloth_width") == pytest.approx(530.0)
    assert value_of(told, "light_gap_hinge") == pytest.approx(192.0 - 177.8)
    assert value_of(told, "light_gap_latch") == pytest.approx(736.6 - 722.0)


def test_glass_shares_are_those_of_its_area() -> None:
    # Open, a stack hides the upper eighth of 64 in; closed, one cloth covers all of it, a second its lower half.
    stack = solid("fabric", [0.0, 900.0], [65 * INCH + 12.0, 80 * INCH], [10.0, 60.0])
    through = {"view": 0.3, "light": 0.5, "solar": 0.5}
    one = veil("fabric", [0.0, 900.0], [0.0, 80 * INCH], [10.0, 11.0], through)
    two = veil("fabric", [0.0, 900.0], [0.0, 41 * INCH + 12.0], [12.0, 13.0], through)
    told = glass_question(states([stack], [one, two]), HOUSEHOLD)
    assert value_of(told, "visible_glass_open") == pytest.approx(7 / 8)
    assert value_of(told, "view_open") == pytest.approx(7 / 8)
    assert value_of(told, "light_open") == pytest.approx(7 / 8)
    assert value_of(told, "visible_glass_closed") == pytest.approx(0.0)
    assert value_of(told, "view_closed") == pytest.approx((0.3 + 0.3 * 0.3) / 2)
    assert value_of(told, "light_closed") == pytest.approx((0.5 + 0.5 * 0.5) / 2)


def test_projection_is_to_the_front_of_what_stands_out_furthest() -> None:
    def at(*fronts: float) -> list[Piece]:
        return [solid("fabric", [200.0, 700.0], [300.0, 400.0], [5.0, front]) for front in fronts]

    travel = states(at(40.0, 62.0, 50.0), at(48.0, 31.0))
    travel["samples"].insert(1, {"leg": 0, "at": 0.5, "pieces": at(71.0)})
    told = projection_question(travel, HOUSEHOLD)
    assert value_of(told, "projection_open") == 62.0
    assert value_of(told, "projection_closed") == 48.0
    assert value_of(told, "projection_most") == 71.0


def test_a_stack_hides_the_glass_from_its_lower_edge_up() -> None:
    # The covering ends 68 in above 190 mm, its raised stack is 140 mm high: headrail 40, cloth and rail 100.
    told = stack_question(shade_travel(), HOUSEHOLD)
    assert value_of(told, "stack_height") == pytest.approx(140.0)
    assert value_of(told, "stack_over_glass") == pytest.approx(max(0.0, GLASS[3] - (190.0 + 68 * INCH - 140.0)))


def test_a_height_is_ordered_down_to_the_step() -> None:
    # 1650 mm from top to foot, in steps of an eighth of an inch: 519 of 3.175.
    size = size_with(y0=200.0, y1=200.0 + 519 * 3.175) | {"exact_height": 1650.0}
    told = order_question(shade_travel(size=size, **numbers_of("accordion", order_step=3.175)), HOUSEHOLD)
    assert value_of(told, "order_height") == pytest.approx(1647.825)


def test_a_rod_pocket_takes_the_rod_its_ease_and_the_edge_turned_under() -> None:
    given = numbers_of("stretched", rod_diameter=9.5, pocket_ease=6.0, pocket_turn=12.5)
    assert by_id(stretched_figures(fit_of("stretched", given, size_of())))["rod_pocket"] == pytest.approx(28.0)


def test_louvers_fill_each_bay_with_the_fewest_at_their_greatest_pitch() -> None:
    # 1700 mm less a frame of 20 all round, a top rail of 90, a bottom rail of 100 and a divider of 70: two bays of 700.
    # A louver of 60 x 11 turns in 61 mm, so 639 mm are left for spaces of 50 at the most: 13 of 49.15, and 14 louvers.
    given = {"louver_width": 60.0, "louver_thickness": 11.0, "louver_pitch": 50.0, "panel_depth": 27.0}
    panel = {"frame_width": 20.0, "headrail_height": 90.0, "rail_height": 100.0, "divider_height": 70.0}
    told = by_id(louver_figures(fit_of("louver-panel", numbers_of("louver-panel", **given, **panel), size_of())))
    assert told["louver_count"] == 28
    assert told["louver_pitch"] == pytest.approx((700 - 61) / 13)
    assert told["louver_sweep"] == pytest.approx((61 - 27) / 2)


def test_pleats_stack_as_thick_as_their_folded_cloth() -> None:
    # 600 mm in pleats of 110 at the most: 6 of 100. Gathered by 2.5 and folded 125 deep, each lies in two layers of
    # 4 + 2 mm with its lining, beside a carrier of 16.
    given = {"unit_pitch": 110.0, "unit_stacked": 16.0, "fullness": 2.5, "depth_stacked": 125.0, "headrail_depth": 50.0}
    layers = {"cloth_layer": 4.0, "lining_layer": 2.0, "lined": 1.0}
    told = by_id(draw_figures(fit_of("draw", numbers_of("draw", **given, **layers), size_of())))
    assert told["pleats"] == 6
    assert told["pleat_stack"] == pytest.approx(16 + 2 * 6)


def test_a_cut_out_costs_the_view_behind_its_frame_and_bares_glass_when_closed() -> None:
    # A stile of 3 1/2 in puts a knob's axis, 2 3/4 in from the edge, within the panel's reach; knob 54, room 40.
    knob = LEVER | {"kind": "knob", "grip_length": 27.0, "grip_height": 54.0, "plate_width": 50.0, "plate_height": 50.0}
    door = door_with(stile_latch=3.5 * INCH, handle=knob)
    fit = hung_with(door, shutter(cutout_clear=20.0))
    told = {key: figure["value"] for key, figure in ask_fit(fit, HOUSEHOLD)["figures"].items()}
    left, low, high = 30.75 * INCH - 67.0, 36 * INCH - 67.0, 36 * INCH + 67.0
    area = 22 * INCH * 64 * INCH
    assert told["cutout_width"] == pytest.approx(fit["size"]["x1"] - left)
    assert told["cutout_height"] == pytest.approx(134.0)

    # Its frame of 19 mm stands round it, up to the panel's stile, and reaches up and down to the circle in which the
    # next whole louver turns; of the stile, 19.05 mm lie before the glass.
    foot, top = fit["size"]["y0"] + 19.05 + 101.6, fit["size"]["y1"] - 19.05 - 88.9
    sweep = math.hypot(63.5, 11.0)
    spaces = math.ceil((top - foot - sweep) / 54.0)
    centers = [foot + sweep / 2 + i * (top - foot - sweep) / spaces for i in range(spaces + 1)]
    short = [y for y in centers if low - 19.0 - sweep / 2 < y < high + 19.0 + sweep / 2]
    under = max(y for y in centers if y < short[0]) + sweep / 2
    over = min(y for y in centers if y > short[-1]) - sweep / 2
    stile = fit["size"]["x1"] - 19.05 - 44.45
    wide = stile - (left - 19.0)
    hidden = wide * (low - under + over - high) + 19.0 * 134.0
    bared = len(short) * wide * 11.0 + (GLASS[1] - stile) * 134.0
    assert told["cutout_glass"] == pytest.approx((hidden - bared) / area)
    # Closed at 80 degrees, a louver reaches less far than its circle, and leaves a sliver at the frame above and below.
    slivers = 2 * wide * (sweep / 2 - 31.75 * math.sin(math.radians(80.0)))
    assert told["cutout_privacy"] == pytest.approx(((GLASS[1] - left) * 134.0 + slivers) / area)
