from typing import Any

import pytest

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import glass_box, leaf_box
from configurator.kernel.shapes import Door, Size
from tests.kernel.mount.mount_samples import family_of, hung_with
from tests.kernel.questions.question_samples import INCH, LEVER, door_with, said

EIGHTH = INCH / 8


def sits(door: Door, **given: float) -> Size:
    """Return how a shade of cells sits on a door."""
    preset = {"pitch": 20.0, "closed_thickness": 3.0, "cell_depth": 10.0, "headrail_depth": 24.0}
    return hung_with(door, family_of("accordion", **(preset | given)))["size"]


def limits(size: Size) -> dict[str, str]:
    return {limit["side"]: limit["by"] for limit in size["limits"]}


def test_wide_stiles_give_the_wanted_overlap_on_whole_eighths() -> None:
    door = door_with(stile_hinge=200.0, stile_latch=250.0)
    size = sits(door, overlap_side=1.5 * INCH)
    width = size["x1"] - size["x0"]
    assert width == pytest.approx(25 * INCH)
    assert width / EIGHTH == pytest.approx(round(width / EIGHTH))
    assert limits(size)["hinge"] == limits(size)["latch"] == "wanted"
    glass = glass_box(door)
    assert glass["x0"] - size["x0"] == pytest.approx(1.5 * INCH)


def test_a_shallow_handle_holds_the_covering_back_and_is_named() -> None:
    # The lever's tip stands 31 mm past the glass.
    near = door_with(handle=LEVER | {"gap": 12.0}, stile_latch=7.5 * INCH)
    size = sits(near, overlap_side=1.5 * INCH)
    tip = min(part["x0"] for part in handle_pieces(near))
    assert limits(size)["latch"] == "handle"
    glass_end = glass_box(near)["x1"]
    assert size["x1"] <= max(tip - 6.0, glass_end) + EIGHTH
    assert size["x1"] >= glass_end


def test_what_holds_it_back_at_the_leafs_edge_is_named() -> None:
    slim: dict[str, Any] = {"stile_hinge": 20.0, "stile_latch": 20.0, "backset": 15.0}
    # Handles far below the glass are in nobody's way.
    slim |= {"handle_height": 100.0, "handle": LEVER | {"grip_length": 20.0, "plate_width": 20.0}}
    assert limits(sits(door_with(**slim), overlap_side=60.0))["latch"] == "stile"
    assert limits(sits(door_with(**slim), overlap_side=60.0))["hinge"] == "hinge"
    assert (
        limits(sits(door_with(layout="pair", astragal_width=44.0, **slim), overlap_side=60.0))["latch"] == "other leaf"
    )
    out = limits(sits(door_with(swing="out", stop_lap=12.7, **slim), overlap_side=60.0))
    assert out["latch"] == out["hinge"] == "stop"


def test_a_deep_gap_lets_it_pass_behind() -> None:
    deep = door_with(handle=LEVER | {"gap": 60.0, "projection": 80.0}, stile_latch=7.5 * INCH)
    assert limits(sits(deep, overlap_side=1.5 * INCH))["latch"] == "wanted"
    shallow = deep | {"handle": LEVER | {"gap": 12.0}}
    assert limits(sits(shallow, overlap_side=1.5 * INCH))["latch"] == "handle"


def test_overlap_that_would_not_let_it_pass_is_kept() -> None:
    # The lever's tip stands 45 mm before the glass: no overlap given up clears it.
    near = door_with(handle=LEVER | {"gap": 12.0}, stile_latch=4.5 * INCH)
    assert limits(sits(near, overlap_side=INCH))["latch"] == "wanted"


def test_raised_beads_are_met_with_spacers_in_stock_steps() -> None:
    raised = sits(door_with(bead_projection=5.0), spacer_step=6.35)
    assert raised["spacer"] > 0
    assert raised["spacer"] / 6.35 == pytest.approx(round(raised["spacer"] / 6.35))
    assert raised["z0"] == raised["spacer"]
    assert sits(door_with(bead_projection=0.0))["spacer"] == 0


def test_more_spacers_than_may_be_stacked_are_refused_in_words() -> None:
    size = sits(door_with(bead_projection=30.0), spacer_most=12.7)
    assert "spacers" in said(size["refusal"])


def test_the_headrail_sits_above_the_glass_where_the_top_rail_has_the_height() -> None:
    door = door_with()
    size = sits(door, headrail_height=40.0)
    assert size["y1"] - 40.0 >= glass_box(door)["y1"] - EIGHTH


def test_a_low_top_rail_pushes_the_headrail_over_the_glass_short_of_the_leafs_edge() -> None:
    door = door_with(rail_top=20.0)
    size = sits(door, headrail_height=80.0)
    assert size["y1"] <= leaf_box(door)["y1"] - 3.0
    assert size["y1"] - 80.0 < glass_box(door)["y1"]


def test_too_narrow_and_too_wide_glass_are_refused_in_words() -> None:
    assert "narrow" in said(sits(door_with(glass_width=120.0), width_least=300.0)["refusal"])
    assert "wide" in said(sits(door_with(glass_width=1400.0), width_most=1000.0)["refusal"])
    assert "high" in said(sits(door_with(glass_height=2800.0), height_most=2500.0)["refusal"])


def test_the_foot_of_the_glass_stays_covered_after_rounding() -> None:
    for extra in range(12):
        door = door_with(glass_height=1600.0 + extra * 0.7)
        assert sits(door, overlap_bottom=0.0)["y0"] <= glass_box(door)["y0"] + 1e-9
