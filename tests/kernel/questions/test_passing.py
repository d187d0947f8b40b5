from typing import Any

import pytest

from configurator.kernel.contact import air_between
from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.fit import pieces_at
from configurator.kernel.mechanisms.legs import raised_legs
from configurator.kernel.position import along
from configurator.kernel.questions.passing import passing_question
from configurator.kernel.shapes import Door, Fit, Piece, Reply, Size
from configurator.kernel.travel import travelled
from tests.kernel.mechanisms.mechanism_samples import numbers_of
from tests.kernel.questions.question_samples import (
    FAMILY,
    HOUSEHOLD,
    LEVER,
    assert_workings,
    door_with,
    figure_of,
    said,
    size_with,
    value_of,
    verdict_of,
)

# A cellular shade whose bottom rail, 20 mm deep, hangs in the middle of a headrail of 24 mm: 2 to 22 mm off the leaf.
NUMBERS = numbers_of(
    "accordion",
    headrail_depth=24.0,
    rail_height=15.0,
    rail_depth=20.0,
    pitch=20.0,
    closed_thickness=3.0,
    cell_depth=10.0,
    handle_clear=6.0,
)
# The lever's tip stands at the leaf's width less backset and length: 729.55 mm from the hinge edge.
TIP = 36 * 25.4 - 2.75 * 25.4 - 115.0


def shade_fit(size: Size, door: Door, **numbers: float) -> Fit:
    """Return the shade hung on a door as the size says; with ``lower_moves`` 0 nothing of it moves."""
    given = NUMBERS | numbers
    return {
        "door": door,
        "family": FAMILY,
        "choices": {},
        "numbers": given,
        "handle": handle_pieces(door),
        "fixings": [],
        "size": size,
        "standing": size,
        "legs": raised_legs(given),
    }


def passing(size: Size, door: Door, **numbers: float) -> Reply:
    return passing_question(travelled(shade_fit(size, door, **numbers)), HOUSEHOLD)


def with_gap(gap: float, **handle: Any) -> Door:
    return door_with(handle=LEVER | {"gap": gap} | handle)


def least_air(pieces: list[Piece], parts: list[Piece]) -> float:
    return min(air_between(piece, part) for piece in pieces for part in parts)


def test_stopping_short_of_the_lever_it_passes_beside() -> None:
    found = passing(size_with(x1=TIP - 10.0), with_gap(15.0))
    assert value_of(found, "handle_gap") == pytest.approx(10.0)
    assert verdict_of(found, "pass_through")["state"] == "clears"
    assert "beside" in said(verdict_of(found, "pass_through")["why"])
    assert_workings(found)


@pytest.mark.parametrize(
    ("gap", "state", "air"), [(35.0, "clears", 13.0), (28.0, "clears", 6.0), (27.0, "guide by hand", 5.0)]
)
def test_behind_the_lever_the_free_gap_decides(gap: float, state: str, air: float) -> None:
    found = passing(size_with(x1=TIP + 40.0), with_gap(gap))
    assert verdict_of(found, "pass_through")["state"] == state
    assert value_of(found, "handle_gap") == pytest.approx(air)
    assert figure_of(found, "handle_gap")["working"]["terms"]["way"][0] == "behind"


@pytest.mark.parametrize(("gap", "away"), [(27.0, 1.0), (22.0, 0.0)])
def test_what_a_motor_drives_or_what_has_no_air_is_not_guided_by_hand(gap: float, away: float) -> None:
    found = passing(size_with(x1=TIP + 40.0), with_gap(gap), hand_away=away)
    assert verdict_of(found, "pass_through")["state"] == "blocked"


def test_a_shallow_gap_blocks_and_says_by_how_much() -> None:
    found = passing(size_with(x1=TIP + 40.0), with_gap(15.0))
    blocked = verdict_of(found, "pass_through")
    assert blocked["state"] == "blocked"
    assert value_of(found, "handle_gap") == 0
    assert value_of(found, "handle_overlap") > 5.0
    assert blocked["moves"] == "lower"


def test_the_positions_between_which_it_is_blocked_are_those_of_the_pieces() -> None:
    door = with_gap(15.0)
    fit = shade_fit(size_with(x1=TIP + 40.0), door)
    blocked = verdict_of(passing_question(travelled(fit), HOUSEHOLD), "pass_through")

    def air_at(share: float) -> float:
        return least_air(pieces_at(fit, along(fit["legs"][0], share)), handle_pieces(door))

    assert 0.3 < blocked["start"] < blocked["end"]
    assert air_at(blocked["start"] - 0.002) >= 0 > air_at(blocked["start"] + 0.002)
    if blocked["end"] < 1:
        assert air_at(blocked["end"] + 0.002) >= 0 > air_at(blocked["end"] - 0.002)


def test_a_deadbolt_above_the_handle_counts_too() -> None:
    turn = {"turn_above": 140.0, "turn_width": 40.0, "turn_height": 60.0, "turn_projection": 45.0}
    axis = 36 * 25.4 - 2.75 * 25.4
    found = passing(size_with(x1=axis - 10.0), with_gap(60.0, projection=80.0, **turn))
    assert verdict_of(found, "pass_through")["state"] == "blocked"
    assert "thumb-turn" in said(verdict_of(found, "pass_through")["why"])


@pytest.mark.parametrize(("air", "state", "words"), [(3.0, "caution", "Little room"), (25.0, "clears", "Clears")])
def test_a_fixed_panel_does_not_clear_a_lever_that_it_leaves_no_room_for_a_hand(
    air: float, state: str, words: str
) -> None:
    found = verdict_of(passing(size_with(x1=TIP - air), with_gap(15.0), lower_moves=0.0), "pass_through")
    assert found["state"] == state
    assert said(found["says"]) == words
    assert said(found["why"]).startswith("It is fixed;")
    assert found["moves"] == ""
