"""Cloth, worked out by hand in inches."""

import pytest

from configurator.kernel.questions.bars import bars_question
from configurator.kernel.questions.cloth import cloth_question
from configurator.kernel.shapes import Cloth, Cuts, Reply
from tests.kernel.questions.cloth_samples import bar_with, cloth_with
from tests.kernel.questions.question_samples import HOUSEHOLD, INCH, assert_workings, shade_travel
from tests.workings import worked_out


def asked(*leaves: Cuts) -> Reply:
    travel = shade_travel()
    travel["cuts"] = list(leaves)
    reply = cloth_question(travel, HOUSEHOLD)
    assert_workings(reply)
    for figure in reply["figures"]:
        assert worked_out(figure) == pytest.approx(figure["value"]), figure["id"]
    return reply


def inches(*cloths: Cloth) -> dict[str, float]:
    """Return what is told of cloths on one leaf, lengths in inches."""
    reply = asked({"cloths": list(cloths), "bars": []})
    lengths = ("mm", "run")
    return {f["id"]: f["value"] / INCH if f["unit"] in lengths else f["value"] for f in reply["figures"]}


def cloth_in(width: float, length: float, **changes: float | str) -> Cloth:
    """Return cloth of a flat size in inches."""
    return cloth_with(width * INCH, length * INCH, **changes)


def test_nothing_is_told_where_no_cloth_is_cut() -> None:
    assert asked({"cloths": [], "bars": []})["figures"] == []


def test_one_width_has_no_seam() -> None:
    told = inches(cloth_in(51, 70))
    assert (told["cloth_widths"], told["cloth_cut"], told["cloth_total"]) == pytest.approx((1, 70, 70))
    assert "cloth_seams" not in told


def test_a_second_width_is_halved_to_both_sides_so_that_no_seam_stands_in_the_middle() -> None:
    # 60 in of 54 in cloth: 3 in on either side of one whole width, of which the hem takes 2; gathered by two, the
    # seams stand 1/2 in from the edges and 27 in from each other: 28 in of finished panel, of 60 - 4 in over two.
    told = inches(cloth_in(60, 70, fullness=2.0, hem=2 * INCH))
    assert told["cloth_widths"] == 2
    assert told["cloth_seams"] == 2
    assert told["cloth_seam"] == pytest.approx(0.5)
    assert told["cloth_seam_apart"] == pytest.approx(27)
    assert 2 * told["cloth_seam"] + told["cloth_seam_apart"] == pytest.approx(28)
    assert told["cloth_total"] == pytest.approx(140)


def test_drapery_has_its_whole_widths_at_the_leading_edge() -> None:
    # 120 in of 54 in cloth: seams after 54 and 108 in; the hem takes 3, and two and a half go into one.
    told = inches(cloth_in(120, 96, leads=1.0, fullness=2.5, hem=3 * INCH))
    assert told["cloth_widths"] == 3
    assert told["cloth_seams"] == 2
    assert told["cloth_seam"] == pytest.approx(20.4)
    assert told["cloth_seam_apart"] == pytest.approx(21.6)


def test_two_panels_share_a_width_between_them() -> None:
    # 2 x 75 in: one whole width each, and 21 in, of which one width gives both.
    told = inches(cloth_in(75, 96, panels=2.0, leads=1.0))
    assert told["cloth_widths"] == 3
    assert told["cloth_total"] == pytest.approx(288)


@pytest.mark.parametrize(("width", "panels", "widths"), [(27, 4, 2), (28, 4, 4), (18, 7, 3), (60, 3, 6)])
def test_many_panels_are_cut_side_by_side_or_each_from_widths_of_its_own(width: int, panels: int, widths: int) -> None:
    assert inches(cloth_in(width, 84, panels=float(panels)))["cloth_widths"] == widths


def test_a_pattern_is_cut_in_whole_repeats() -> None:
    told = inches(cloth_in(100, 70, repeat=24 * INCH))
    assert told["cloth_cut"] == pytest.approx(72)
    assert told["cloth_total"] == pytest.approx(144)


def test_cloth_run_sideways_has_no_seam_and_takes_its_flat_width() -> None:
    told = inches(cloth_in(140, 98, panels=2.0, bolt=118 * INCH, railroads=1.0))
    assert told["cloth_cut"] == pytest.approx(140)
    assert told["cloth_total"] == pytest.approx(280)
    assert "cloth_widths" not in told
    assert "cloth_seams" not in told


def test_a_panel_higher_than_the_bolt_is_wide_is_not_run_sideways() -> None:
    told = inches(cloth_in(140, 119, bolt=118 * INCH, railroads=1.0))
    assert told["cloth_widths"] == 2
    assert told["cloth_total"] == pytest.approx(238)


def test_a_lining_is_a_line_of_its_own() -> None:
    told = inches(cloth_in(100, 70, repeat=24 * INCH), cloth_in(100, 70, key="lining", bolt=48 * INCH))
    assert told["cloth_total"] == pytest.approx(144)
    assert told["lining_widths"] == 3
    assert told["lining_total"] == pytest.approx(210)


def test_both_leaves_are_cut_each_by_its_own_size() -> None:
    reply = asked(
        {"cloths": [cloth_in(50, 70)], "bars": []},
        {"cloths": [cloth_in(58, 70)], "bars": []},
    )
    told = {figure["id"]: figure for figure in reply["figures"]}
    assert told["cloth_leaf"]["value"] == pytest.approx(70 * INCH)
    assert told["cloth_other"]["value"] == pytest.approx(140 * INCH)
    assert told["cloth_total"]["value"] == pytest.approx(210 * INCH)
    assert told["cloth_total"]["unit"] == "run"


def test_bars_of_the_other_leaf_are_told_where_they_differ() -> None:
    def bars(tube: float) -> Cuts:
        return {"cloths": [], "bars": [bar_with("tube", 1.0, tube, 0.5), bar_with("bottom_rail", 1.0, 600.0, 0.3)]}

    travel = shade_travel()
    travel["cuts"] = [bars(580.0), bars(610.0)]
    told = {figure["id"]: figure["value"] for figure in bars_question(travel, HOUSEHOLD)["figures"]}
    assert told == {"tube_cut": 580.0, "tube_cut_other": 610.0, "bottom_rail_cut": 600.0}
