import math
from typing import Any

import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.door.grips import FINGER_ROOM
from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.pieces import solid
from configurator.kernel.questions.working_handle import working_handle_question
from configurator.kernel.shapes import Handle, Piece, Reply, Sample
from tests.kernel.questions.question_samples import (
    DOOR,
    HOUSEHOLD,
    LEVER,
    assert_workings,
    door_with,
    fit_with,
    said,
    travel_of,
    value_of,
    verdict_of,
)

AXIS = 36 * 25.4 - 2.75 * 25.4
HEIGHT = DOOR["handle_height"]
# Its headrail, far above the handle.
HEAD = solid("headrail", [150.0, 800.0], [1800.0, 1850.0], [0.0, 40.0])


def worked(*places: list[Piece], **handle: Any) -> Reply:
    """Return the answer for a covering that has these pieces beside its headrail, open first."""
    door = door_with(handle=LEVER | handle)
    samples: list[Sample] = [
        {"leg": 0, "at": i / max(1, len(places) - 1), "pieces": [HEAD, *places[i]]} for i in range(len(places))
    ]
    return working_handle_question(travel_of(fit_with(door), samples), HOUSEHOLD)


def grip_of(handle: Handle) -> Piece:
    """Return what a hand takes of a handle on the door."""
    return next(piece for piece in handle_pieces(door_with(handle=handle)) if piece["kind"] == "grip")


def beam(low: float, deep: float = 60.0) -> Piece:
    """Return a bar across the leaf, its lower edge so far above the lever's axis."""
    return solid("frame", [150.0, 900.0], [HEIGHT + low, HEIGHT + low + 20.0], [0.0, deep])


def test_far_from_the_handle_it_works() -> None:
    found = worked([], [beam(150.0)])
    assert verdict_of(found, "handle_works")["state"] == "clears"
    assert value_of(found, "lever_turn") == pytest.approx(45.0)
    assert value_of(found, "hand_room") == FINGER_ROOM
    assert_workings(found)


def test_a_bar_over_the_lever_stops_it_and_says_at_which_angle() -> None:
    """50 mm above the grip: asin(60 / 115.43) less asin(10 / 115.43), 26.35 degrees."""
    found = worked([], [beam(60.0)])
    told = verdict_of(found, "handle_works")
    turn = math.degrees(math.asin(60 / math.hypot(115, 10)) - math.asin(10 / math.hypot(115, 10)))
    assert told["state"] == "blocked"
    assert value_of(found, "lever_turn") == pytest.approx(turn)
    assert said(told["why"]) == "The lever turns by ≈ 26.3° before it meets the frame; it needs 45° up and down."
    assert said(told["says"]) == "Hindered"
    assert_workings(found)


def test_a_bar_that_is_shallower_than_the_gap_stops_nothing_but_takes_room_for_fingers() -> None:
    """The grip stands 35 mm off the leaf: a bar of 25 mm leaves 10 behind it."""
    found = worked([], [beam(5.0, 25.0)])
    told = verdict_of(found, "handle_works")
    assert told["state"] == "caution"
    assert value_of(found, "hand_room") == pytest.approx(10.0)
    assert value_of(found, "lever_turn") == pytest.approx(45.0)


def test_a_fixed_panel_in_front_of_the_grip_hides_it_and_what_can_be_opened_does_not() -> None:
    front = solid("fabric", [150.0, 900.0], [200.0, 1800.0], [70.0, 72.0])
    assert verdict_of(worked([front]), "handle_works")["state"] == "blocked"
    assert verdict_of(worked([], [front]), "handle_works")["state"] == "clears"


def test_a_thumb_turn_needs_room_to_be_turned() -> None:
    turn = {"turn_above": 100.0, "turn_width": 10.0, "turn_height": 40.0, "turn_projection": 30.0}
    beside = solid("frame", [200.0, AXIS - 15.0], [HEIGHT + 90.0, HEIGHT + 110.0], [0.0, 25.0])
    told = verdict_of(worked([beside], **turn), "handle_works")
    assert told["state"] == "blocked"
    assert "the thumb-turn" in said(told["why"])


def test_a_cut_out_leaves_the_lever_its_turn_and_the_hand_its_room(catalog: Catalog) -> None:
    for door in catalog.doors.values():
        told = ask(door, catalog.families["louvered-shutter"], {}, catalog.household)
        if told["size"]["cutout"]["x1"] > 0:
            assert told["verdicts"]["handle_works"]["state"] == "clears", door["id"]


@pytest.mark.parametrize("kind", ["lever", "pull", "knob"])
@pytest.mark.parametrize("side", ["left", "right", "below", "above"])
def test_what_stands_close_beside_a_grip_leaves_fingers_that_room_on_whichever_side(kind: str, side: str) -> None:
    grip = grip_of(LEVER | {"kind": kind})
    spans = {"x": (grip["x0"], grip["x1"]), "y": (grip["y0"], grip["y1"]), "z": (grip["z0"], grip["z1"])}
    axis = "x" if side in ("left", "right") else "y"
    low, high = spans[axis]
    spans[axis] = (low - 42.0, low - 12.0) if side in ("left", "below") else (high + 12.0, high + 42.0)
    block = solid("frame", [*spans["x"]], [*spans["y"]], [*spans["z"]])
    found = worked([], [block], kind=kind)
    assert value_of(found, "hand_room") == pytest.approx(12.0)
    assert verdict_of(found, "handle_works")["state"] != "clears"


@pytest.mark.parametrize("low", [-45.0, 25.0])
def test_a_lever_is_stopped_by_what_only_its_tip_comes_to(low: float) -> None:
    grip = grip_of(LEVER)
    # Further off than fingers reach, above or below the tip, and no wider than it takes.
    tip = solid("frame", [grip["x0"], grip["x0"] + 10.0], [HEIGHT + low, HEIGHT + low + 20.0], [0.0, 60.0])
    assert 0 < value_of(worked([], [tip]), "lever_turn") < 45
