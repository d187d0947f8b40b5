import pytest

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.mount.on_leaf import part_heights
from configurator.kernel.position import along, legs
from configurator.kernel.questions.passing import least_air, pass_reply
from configurator.kernel.questions.reply import Reply
from configurator.kernel.sampling import FINE_STEPS, covering_pieces, travel_samples
from configurator.kernel.shapes import Door, Size
from tests.kernel.mechanisms.mechanism_samples import numbers_of
from tests.kernel.questions.question_samples import (
    LEVER,
    assert_workings,
    door_with,
    figure_of,
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


def passing(size: Size, door: Door, numbers: dict[str, float] = NUMBERS) -> Reply:
    handle = handle_pieces(door)
    samples = travel_samples("accordion", numbers, size, part_heights(handle), FINE_STEPS)
    return pass_reply("accordion", numbers, size, samples, handle)


def with_gap(gap: float) -> Door:
    return door_with(handle=LEVER | {"gap": gap})


def test_stopping_short_of_the_lever_it_passes_beside() -> None:
    found = passing(size_with(x1=TIP - 10.0), with_gap(15.0))
    assert value_of(found, "handle_gap") == pytest.approx(10.0)
    assert verdict_of(found, "pass_through")["state"] == "clears"
    assert "beside" in verdict_of(found, "pass_through")["why"]
    assert_workings(found)


@pytest.mark.parametrize(
    ("gap", "state", "air"), [(35.0, "clears", 13.0), (28.0, "clears", 6.0), (27.0, "guide by hand", 5.0)]
)
def test_behind_the_lever_the_free_gap_decides(gap: float, state: str, air: float) -> None:
    found = passing(size_with(x1=TIP + 40.0), with_gap(gap))
    assert verdict_of(found, "pass_through")["state"] == state
    assert value_of(found, "handle_gap") == pytest.approx(air)
    assert figure_of(found, "handle_gap")["working"]["terms"]["way"][0] == "behind"


def test_a_shallow_gap_blocks_and_says_by_how_much() -> None:
    found = passing(size_with(x1=TIP + 40.0), with_gap(15.0))
    blocked = verdict_of(found, "pass_through")
    assert blocked["state"] == "blocked"
    assert value_of(found, "handle_gap") == 0
    assert value_of(found, "handle_overlap") > 5.0
    assert blocked["moves"] == "lower"


def test_the_positions_between_which_it_is_blocked_are_those_of_the_pieces() -> None:
    door = with_gap(15.0)
    size = size_with(x1=TIP + 40.0)
    blocked = verdict_of(passing(size, door), "pass_through")
    leg = legs(NUMBERS)[0]

    def air_at(share: float) -> float:
        return least_air(covering_pieces("accordion", NUMBERS, size, along(leg, share)), handle_pieces(door))

    assert 0.3 < blocked["start"] < blocked["end"]
    assert air_at(blocked["start"] - 0.002) >= 0 > air_at(blocked["start"] + 0.002)
    if blocked["end"] < 1:
        assert air_at(blocked["end"] + 0.002) >= 0 > air_at(blocked["end"] - 0.002)


def test_the_fixes_named_are_enough() -> None:
    size = size_with(x1=TIP + 40.0)
    fixes = verdict_of(passing(size, with_gap(15.0)), "pass_through")["fixes"]
    assert any("narrower" in fix for fix in fixes)
    assert any("free gap" in fix for fix in fixes)
    # 46 mm narrower leaves the 6 mm beside the lever's tip that the numbers ask for.
    assert "46 mm" in next(fix for fix in fixes if "narrower" in fix)
    assert verdict_of(passing(size_with(x1=TIP - 6.0), with_gap(15.0)), "pass_through")["state"] == "clears"


def test_spacers_are_named_in_stock_steps_and_only_as_thick_as_may_be_stacked() -> None:
    size = size_with(x1=TIP + 40.0)
    door = door_with(handle=LEVER | {"gap": 15.0, "projection": 25.0})
    # From 2 mm off the leaf to the grip's front and 6 mm of air: 29 mm, which is five spacers of 1/4 in.
    fixes = verdict_of(passing(size, door, NUMBERS | {"spacer_step": 6.35, "spacer_most": 38.1}), "pass_through")[
        "fixes"
    ]
    assert "Spacers of 1 1/4 in" in fixes[-1]
    proud = door_with(handle=LEVER | {"gap": 15.0})
    fixes = verdict_of(passing(size, proud, NUMBERS | {"spacer_most": 38.1}), "pass_through")["fixes"]
    assert not any("Spacers" in fix for fix in fixes)


def test_a_deadbolt_above_the_handle_counts_too() -> None:
    turn = {"turn_above": 140.0, "turn_width": 40.0, "turn_height": 60.0, "turn_projection": 45.0}
    bolted = door_with(handle=LEVER | turn | {"gap": 60.0, "projection": 80.0})
    axis = 36 * 25.4 - 2.75 * 25.4
    found = passing(size_with(x1=axis - 10.0), bolted)
    assert verdict_of(found, "pass_through")["state"] == "blocked"
    assert "thumb turn" in verdict_of(found, "pass_through")["why"]
