"""How far out what hangs on a leaf must stand to be in front of what is raised on it."""

import pytest

from configurator.kernel.mount.spacer import MOVING_AIR, most_push
from configurator.kernel.pieces import solid, veil
from configurator.kernel.shapes import Piece

# Of a raised bead 20 mm wide and 12 mm proud, in front of which a cloth hangs that stands 5 mm out.
PROUD, OUT, WIDE = 12.0, 5.0, 20.0


def bead() -> Piece:
    """Return the bead, from 100 to 120 mm across and the whole height of the glass."""
    return solid("bead", [100.0, 100.0 + WIDE], [0.0, 1000.0], [0.0, PROUD])


def cloth(left: float, right: float) -> Piece:
    """Return a cloth that moves, between two places across."""
    return veil("cloth", [left, right], [200.0, 800.0], [OUT, OUT + 1.0], {"view": 0.0, "light": 0.2})


@pytest.mark.parametrize(
    ("left", "right", "push"),
    [
        (0.0, 110.0, PROUD + MOVING_AIR - OUT),
        # Nearer than its air beside the bead it comes before it in moving.
        (0.0, 100.0 - MOVING_AIR + 0.5, PROUD + MOVING_AIR - OUT),
        # With just its air it stays beside.
        (0.0, 100.0 - MOVING_AIR, 0.0),
        (120.0 + MOVING_AIR, 300.0, 0.0),
    ],
)
def test_a_moving_cloth_keeps_its_air_before_a_bead_or_beside_it(left: float, right: float, push: float) -> None:
    assert most_push(cloth(left, right), [bead()]) == pytest.approx(push)


def test_a_cloth_that_ends_just_its_air_above_a_part_is_not_pushed_out() -> None:
    muntin = solid("muntin", [0.0, 600.0], [150.0, 200.0 - MOVING_AIR], [0.0, PROUD])
    assert most_push(cloth(0.0, 500.0), [muntin]) == 0.0
