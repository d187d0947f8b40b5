import math
from typing import Any

import pytest

from configurator.kernel.answer import ask_fit
from configurator.kernel.door.hardware import handle_axis, handle_pieces
from configurator.kernel.door.leaf import glass_box
from configurator.kernel.mount.cutout_box import HAND_ROOM, cutout_box
from configurator.kernel.mount.hung import hung
from configurator.kernel.shapes import Box, Door, Fit
from tests.kernel.mount.mount_samples import hung_with, shutter
from tests.kernel.questions.question_samples import (
    HOUSEHOLD,
    INCH,
    LEVER,
    cautions_of,
    door_with,
    fit_with,
    said,
    size_with,
)

CLEAR = 20.0
AXIS_HEIGHT = 36 * INCH
KNOB = LEVER | {"kind": "knob", "grip_length": 27.0, "grip_height": 54.0, "plate_width": 50.0, "plate_height": 50.0}
# A stile so narrow that the panel reaches past the knob's axis.
NARROW = {"stile_latch": 3.5 * INCH, "handle": KNOB}


def hole(door: Door, x1: float, **changes: Any) -> Box:
    """Return the cut-out in a panel that ends at ``x1``."""
    return cutout_box(fit_with(door, size_with(x1=x1, **changes), cutout_clear=CLEAR))


def notched(door: Door, **given: float) -> Fit:
    """Return a louvered panel hung on a door with a cut-out round its handle."""
    return hung_with(door, shutter(cutout_clear=CLEAR, **given))


def test_the_whole_handle_and_its_clearance_lie_in_it() -> None:
    door = door_with()
    found = hole(door, handle_axis(door))
    for part in handle_pieces(door):
        assert found["x0"] <= part["x0"] - CLEAR
        assert found["y0"] <= part["y0"] - CLEAR
        assert found["y1"] >= part["y1"] + CLEAR


def test_a_lever_turns_in_it_with_room_for_the_hand() -> None:
    door = door_with()
    axis = handle_axis(door)
    for x1 in (axis - 60.0, axis - 10.0, axis + 30.0):
        found = hole(door, x1)
        for degrees in range(-45, 46, 5):
            turn = math.radians(degrees)
            tip = axis - LEVER["grip_length"] * math.cos(turn)
            if tip < x1 + CLEAR:
                up = AXIS_HEIGHT + LEVER["grip_length"] * math.sin(turn)
                assert found["y0"] + HAND_ROOM <= up <= found["y1"] - HAND_ROOM, (x1, degrees)


def test_a_knob_has_a_hands_room_all_round() -> None:
    door = door_with(handle=KNOB)
    axis = handle_axis(door)
    found = hole(door, axis)
    assert found["y1"] - found["y0"] == pytest.approx(54.0 + 2 * 40.0)
    assert axis - found["x0"] == pytest.approx(27.0 + 40.0)


def test_a_panel_that_stops_short_of_the_handle_needs_none() -> None:
    door = door_with()
    assert hole(door, handle_axis(door) - LEVER["grip_length"] - CLEAR - 1.0)["x1"] == 0


def test_a_panel_that_ends_above_or_below_the_handle_needs_none() -> None:
    door = door_with(handle=KNOB)
    axis = handle_axis(door)
    assert hole(door, axis, y0=AXIS_HEIGHT + 27.0 + CLEAR)["x1"] == 0
    assert hole(door, axis, y0=200.0, y1=AXIS_HEIGHT - 27.0 - CLEAR)["x1"] == 0


def test_a_cut_out_clear_of_the_rails_goes_without_a_word() -> None:
    fit = notched(door_with(**NARROW))
    assert fit["size"]["cutout"]["x1"] == fit["size"]["x1"]
    answer = ask_fit(fit, HOUSEHOLD)
    assert "cutout_rail" not in [caution["id"] for caution in answer["cautions"]]
    # A knob of 54 mm with 40 mm of room above and below.
    assert answer["figures"]["cutout_height"]["value"] == pytest.approx(134.0)


def test_a_cut_out_through_the_panels_corner_is_refused_with_the_measures() -> None:
    # The handle stands as high as the panel's bottom rail.
    door = door_with(**NARROW, handle_height=glass_box(door_with())["y0"] - 60.0)
    words = said(notched(door)["size"]["refusal"])
    assert words.startswith("The cut-out round the handle would run through a corner of the panel")


def test_a_cut_out_that_runs_a_little_into_a_rail_is_told() -> None:
    # The panel ends 101.6 mm below the glass, in a frame of 19 mm and a rail of 101.6: the rail's top lies 19 mm above
    # the foot of the glass. The cut-out reaches down 67 mm, to 9 mm above the foot.
    door = door_with(**NARROW, handle_height=glass_box(door_with())["y0"] + 76.0)
    fit = notched(door)
    assert said(fit["size"]["refusal"]) == ""
    answer = ask_fit(fit, HOUSEHOLD)
    words = cautions_of({"figures": [], "verdicts": [], "cautions": answer["cautions"]})
    assert "runs into a rail of the panel" in words["cutout_rail"]


def test_a_divider_that_the_cut_out_meets_is_told() -> None:
    fit = notched(door_with(**NARROW))
    middle = (fit["size"]["y0"] + fit["size"]["y1"]) / 2
    answer = ask_fit(notched(door_with(**NARROW, handle_height=middle), divider_height=76.0), HOUSEHOLD)
    assert "cutout_rail" in [caution["id"] for caution in answer["cautions"]]


def test_a_cut_out_that_leaves_no_stile_is_refused() -> None:
    # A lever as long as the glass is wide.
    door = door_with(glass_width=250.0, stile_latch=4 * INCH, handle=LEVER | {"grip_length": 330.0})
    words = said(notched(door)["size"]["refusal"])
    assert words.startswith("The cut-out round the handle would leave no stile on the hinge side")


def test_the_second_leaf_without_a_handle_is_not_cut() -> None:
    door = door_with(layout="pair", **NARROW)
    family = shutter(cutout_clear=CLEAR)
    assert hung(door, family, {})["size"]["cutout"]["x1"] > 0
    bare: Fit = {**fit_with(door, cutout_clear=CLEAR), "handle": []}
    assert cutout_box(bare)["x1"] == 0
