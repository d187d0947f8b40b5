import math

from configurator.kernel.door.hardware import handle_axis, handle_pieces
from configurator.kernel.mount.cutout import cutout_box
from configurator.kernel.shapes import Box, Door
from tests.kernel.mechanisms.mechanism_samples import numbers_of
from tests.kernel.questions.question_samples import LEVER, door_with, size_with

CLEAR = 20.0
AXIS_HEIGHT = 36 * 25.4


def hole(door: Door, x1: float) -> Box:
    """Return the cut-out in a panel that ends at ``x1``."""
    numbers = numbers_of("louver-panel", cutout_clear=CLEAR)
    return cutout_box(door, numbers, size_with(x1=x1), handle_pieces(door))


def test_the_whole_handle_and_its_clearance_lie_in_it() -> None:
    door = door_with()
    found = hole(door, handle_axis(door))
    for part in handle_pieces(door):
        assert found["x0"] <= part["x0"] - CLEAR
        assert found["y0"] <= part["y0"] - CLEAR
        assert found["y1"] >= part["y1"] + CLEAR


def test_a_lever_turns_in_it_without_touching_the_panel() -> None:
    door = door_with()
    axis = handle_axis(door)
    for x1 in (axis - 100.0, axis - 60.0, axis - 10.0, axis + 30.0):
        found = hole(door, x1)
        for degrees in range(-45, 46, 5):
            turn = math.radians(degrees)
            tip = axis - LEVER["grip_length"] * math.cos(turn)
            if tip < x1 + CLEAR:
                up = AXIS_HEIGHT + LEVER["grip_length"] * math.sin(turn)
                assert found["y0"] + CLEAR <= up <= found["y1"] - CLEAR, (x1, degrees)


def test_a_knob_needs_no_more_than_its_own_boxes() -> None:
    knob = LEVER | {"kind": "knob", "grip_length": 27.0, "grip_height": 54.0, "plate_width": 50.0, "plate_height": 50.0}
    door = door_with(handle=knob)
    found = hole(door, handle_axis(door))
    assert found["y1"] - found["y0"] == 54.0 + 2 * CLEAR


def test_a_panel_that_stops_short_of_the_handle_needs_none() -> None:
    door = door_with()
    assert hole(door, handle_axis(door) - LEVER["grip_length"] - CLEAR - 1.0)["x1"] == 0
