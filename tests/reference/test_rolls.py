"""The rolled diameter against scipy's numerical length of an Archimedean spiral."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad
from scipy.optimize import brentq

from configurator.kernel.mechanisms.roll import roll_diameter


def spiral_length(tube: float, thickness: float, turns: float) -> float:
    """Return the length of the middle of a cloth wound on a tube in so many turns."""
    growth = thickness / (2 * math.pi)

    def speed(angle: float) -> float:
        radius = tube / 2 + thickness / 2 + growth * angle
        return math.hypot(radius, growth)

    return quad(speed, 0.0, 2 * math.pi * turns, limit=200)[0]


def spiral_diameter(tube: float, thickness: float, length: float) -> float:
    """Return the diameter over the last half turn of a cloth of the given length."""
    most = length / (math.pi * tube) + 1
    turns = brentq(lambda count: spiral_length(tube, thickness, count) - length, 0.0, most)
    # Across the roll one side has half a turn less cloth than the other.
    return tube + 2 * thickness * turns + thickness / 2


@given(st.floats(20.0, 60.0), st.floats(0.2, 2.0), st.floats(500.0, 4000.0))
def test_rolled_diameter_against_the_spiral(tube: float, thickness: float, length: float) -> None:
    # The formula spreads the cloth evenly round the tube; a spiral steps by a thickness each turn.
    assert roll_diameter(tube, thickness, length) == pytest.approx(
        spiral_diameter(tube, thickness, length), abs=thickness
    )


def test_a_worked_roll() -> None:
    # 2 m of cloth 0.5 mm thick on a 32 mm tube: an edge area of 1000 mm2 round one of 804 mm2.
    assert roll_diameter(32.0, 0.5, 2000.0) == pytest.approx(math.sqrt((1000 + math.pi * 16**2) * 4 / math.pi))


@given(st.floats(20.0, 60.0), st.floats(0.2, 2.0), st.floats(0.0, 4000.0))
def test_cloth_is_conserved_as_it_rolls(tube: float, thickness: float, length: float) -> None:
    ring = math.pi / 4 * (roll_diameter(tube, thickness, length) ** 2 - tube**2)
    assert ring == pytest.approx(thickness * length, abs=1e-6)
