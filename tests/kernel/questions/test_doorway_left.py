"""What is left of the doorway where the leaf opens outwards, away from what hangs on the wall, or with it."""

import pytest

from configurator.kernel.pieces import solid
from configurator.kernel.questions.swing import swing_question
from configurator.kernel.shapes import Piece
from tests.kernel.questions.question_samples import (
    HOUSEHOLD,
    INCH,
    door_with,
    fit_with,
    said,
    shade_travel,
    size_with,
    travel_of,
    value_of,
    verdict_of,
)

STOP = 14.0
OUT = door_with(swing="out", stop_lap=STOP)
LEAF, FRONT = 36 * INCH, 44.45 + 8.0
MIDDLE = 12 + 40 * INCH


def stack(x0: float, x1: float, low: float = 12.0) -> Piece:
    """Return what stands drawn back from one edge to another, down to a height."""
    return solid("fabric", [x0, x1], [low, 2100.0], [80.0, 180.0])


def left(*pieces: Piece) -> float:
    """Return the clear width beside stacks over the opening."""
    size = size_with("over-opening", x0=-100.0, x1=1015.0, y0=12.0, y1=2150.0, z0=80.0)
    travel = travel_of(fit_with(OUT, size), [{"leg": 0, "at": 0.0, "pieces": [*pieces]}])
    return value_of(swing_question(travel, HOUSEHOLD), "clear_width_covered")


HINGES, LATCH = stack(-100.0, 150.0), stack(700.0, 1015.0)


@pytest.mark.parametrize(
    ("pieces", "span"),
    [
        ([HINGES], (150.0, LEAF - STOP)),
        ([LATCH], (FRONT, 700.0)),
        ([HINGES, LATCH], (150.0, 700.0)),
        # Of several at a side, the one that reaches furthest in counts, in whichever order they are told.
        ([stack(-100.0, 200.0), HINGES, stack(650.0, 1015.0), LATCH], (200.0, 650.0)),
        ([HINGES, stack(-100.0, 200.0), LATCH, stack(650.0, 1015.0)], (200.0, 650.0)),
        # What stands more to one side is passed on the other.
        ([stack(300.0, 500.0)], (500.0, LEAF - STOP)),
        ([stack(450.0, 600.0)], (FRONT, 450.0)),
        # Beside the doorway, behind the open leaf and behind the stop, nothing is taken.
        ([stack(-100.0, FRONT - 1.0), stack(LEAF - STOP + 1.0, 1015.0)], (FRONT, LEAF - STOP)),
        # What only hangs from above is a matter of headroom.
        ([stack(-100.0, 150.0, MIDDLE + 1.0), LATCH], (FRONT, 700.0)),
        ([stack(-100.0, 150.0, MIDDLE - 1.0), LATCH], (150.0, 700.0)),
    ],
)
def test_stacks_on_the_wall_leave_what_is_between_them(pieces: list[Piece], span: tuple[float, float]) -> None:
    assert left(*pieces) == pytest.approx(span[1] - span[0])


def test_stacks_that_meet_leave_nothing() -> None:
    assert left(stack(-100.0, 460.0), stack(440.0, 1015.0)) == 0


def test_of_a_single_leaf_an_astragal_takes_nothing() -> None:
    # A door that was a pair may keep the measurement.
    single = door_with(swing="out", stop_lap=STOP, astragal_width=60.0, meeting_gap=3.0)
    for key in ("clear_width_bare", "clear_width_covered"):
        told = value_of(swing_question(shade_travel(OUT), HOUSEHOLD), key)
        assert value_of(swing_question(shade_travel(single), HOUSEHOLD), key) == pytest.approx(told)


def test_the_opened_leaf_is_told_to_be_clear_of_the_covering() -> None:
    travel = shade_travel(OUT, size_with("over-opening", y1=2250.0, z0=80.0))
    assert said(verdict_of(swing_question(travel, HOUSEHOLD), "swing")["why"]) == (
        "The leaf opens outwards, away from the covering."
    )
