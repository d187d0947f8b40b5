"""The closed form of the turning leaf against shapely: envelopes turned in small steps until they meet something."""

import math

import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st
from shapely import MultiPolygon, Point, Polygon, affinity, box

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import leaf_pieces, leaf_width
from configurator.kernel.pieces import solid
from configurator.kernel.questions.outline import covering_outline
from configurator.kernel.questions.swing import swing_answers
from configurator.kernel.questions.turning import (
    clear_width,
    latch_stop,
    leaf_front,
    meets_stop,
    turn_to_piece,
)
from configurator.kernel.sampling import Sample
from configurator.kernel.shapes import Door, Piece, Size
from tests.kernel.questions.question_samples import door_with, shade_samples, size_with, value_of

FAR = 20_000.0
COARSE_STEP = 0.5
FINE_STEP = 0.02
TOLERANCE = 0.1


def plan_of(pieces: list[Piece]) -> MultiPolygon:
    """Return the pieces in plan: x along the leaf, z out of its face."""
    return MultiPolygon([box(p["x0"], p["z0"], p["x1"], p["z1"]) for p in pieces]).convex_hull


def turned_until(shape: Polygon, pin: tuple[float, float], obstacle: Polygon, last: float = 180.0) -> float:
    """Return the angle at which a shape that turns about the pin first meets the obstacle, or ``last``."""

    def meets(angle: float) -> bool:
        return bool(affinity.rotate(shape, angle, origin=pin).intersects(obstacle))

    steps = int(last / COARSE_STEP)
    for step in range(steps + 1):
        if meets(step * COARSE_STEP):
            angle = max(0.0, (step - 1) * COARSE_STEP)
            while not meets(angle):
                angle += FINE_STEP
            return angle
    return last


@st.composite
def hung_covering(draw: st.DrawFn) -> tuple[Door, Size, list[Sample]]:
    """An in-swing door near a side wall, with a shade on its leaf."""
    door = door_with(
        glass_width=draw(st.floats(350.0, 700.0)),
        wall_gap=draw(st.floats(1.0, 400.0)),
        hinge_pin_out=draw(st.floats(0.0, 25.0)),
        leaf_thickness=draw(st.floats(35.0, 60.0)),
    )
    width = leaf_width(door)
    size = size_with(
        x0=draw(st.floats(15.0, 150.0)), x1=width - draw(st.floats(5.0, 150.0)), z0=draw(st.floats(0.0, 40.0))
    )
    return door, size, shade_samples(size, draw(st.floats(10.0, 250.0)))


@settings(max_examples=40)
@given(hung_covering())
def test_swing_against_the_turned_envelope(hung: tuple[Door, Size, list[Sample]]) -> None:
    door, size, samples = hung
    pin = (0.0, door["hinge_pin_out"])
    wall = box(-FAR, -FAR, -door["wall_gap"], FAR)
    leaf = [piece for piece in leaf_pieces(door) if piece["kind"] != "hinge"]
    leaf.extend(handle_pieces(door))
    own = plan_of(leaf)
    both = plan_of([*leaf, *(piece for sample in samples for piece in sample["pieces"])])
    found = swing_answers(door, size, samples)
    assert value_of(found, "swing_bare") == pytest.approx(turned_until(own, pin, wall), abs=TOLERANCE)
    assert value_of(found, "swing_covered") == pytest.approx(turned_until(both, pin, wall), abs=TOLERANCE)


@settings(max_examples=80)
@given(
    st.floats(600.0, 1000.0),
    st.floats(0.0, 25.0),
    st.floats(-500.0, 1200.0),
    st.floats(10.0, 800.0),
    st.floats(30.0, 400.0),
    st.floats(10.0, 300.0),
)
# The leaf's far corner meets a side of the stack, not a corner.
@example(600.0, 0.0, -494.0, 10.0, 55.0, 300.0)
def test_a_stack_on_the_wall_against_the_turned_leaf(
    width: float, pin: float, x0: float, across: float, z0: float, deep: float
) -> None:
    stack = solid("fabric", x0, x0 + across, 0.0, 2000.0, z0, z0 + deep)
    obstacle = box(x0, z0, x0 + across, z0 + deep)
    # Where the leaf's far corner only grazes it, the steps of the turn pass over it.
    assume(not -5.0 < obstacle.distance(Point(0.0, pin)) - math.hypot(width, pin) <= 0.0)
    expected = turned_until(box(0.0, -0.001, width, 0.0), (0.0, pin), obstacle)
    assert turn_to_piece(stack, pin, width) == pytest.approx(expected, abs=TOLERANCE)


@given(st.floats(1.0, 90.0), st.floats(600.0, 1200.0), st.floats(0.0, 25.0))
def test_clear_width_in_swing_against_the_turned_leaf(angle: float, glass: float, pin: float) -> None:
    door = door_with(glass_width=glass, hinge_pin_out=pin)
    width = leaf_width(door)
    leaf = affinity.rotate(box(0.0, -door["leaf_thickness"], width, 0.0), angle, origin=(0.0, pin))
    doorway = box(0.0, -FAR, width - latch_stop(door), FAR)
    left = doorway.bounds[2] - leaf.bounds[2]
    assert clear_width(door, angle, leaf_front(door)) == pytest.approx(max(0.0, left), abs=1e-6)


@given(st.floats(0.0, 300.0), st.floats(0.0, 25.0), st.floats(0.0, 30.0))
def test_clear_width_out_swing_against_the_turned_leaf(depth: float, pin: float, stop: float) -> None:
    door = door_with(swing="out", hinge_pin_out=pin, stop_lap=stop)
    size = size_with()
    found = swing_answers(door, size, shade_samples(size, depth))
    hung = MultiPolygon(
        [
            box(0.0, -door["leaf_thickness"], leaf_width(door), 0.0),
            box(size["x0"], 0.0, size["x1"], max(depth, 0.001)),
        ]
    )
    turned = affinity.rotate(hung, -90.0, origin=(0.0, -leaf_front(door)))
    left = leaf_width(door) - stop - turned.bounds[2]
    assert value_of(found, "clear_width_covered") == pytest.approx(left, abs=0.01)


@settings(max_examples=60)
@given(st.floats(700.0, 899.0), st.floats(5.0, 300.0), st.floats(0.0, 20.0))
def test_the_corner_at_the_stop_against_the_turned_covering(latch: float, depth: float, pin: float) -> None:
    door = door_with(swing="out", hinge_pin_out=pin, stop_lap=14.0)
    size = size_with(x1=latch)
    line = leaf_width(door) - 14.0
    centre = (0.0, -leaf_front(door))
    reach = math.hypot(latch, depth + leaf_front(door))
    stop = box(line, 0.0, line + 500.0, 1000.0)
    covering = box(size["x0"], 0.001, latch, depth)
    strikes = any(
        affinity.rotate(covering, -step / 10, origin=centre).intersection(stop).area > 1e-9 for step in range(900)
    )
    # Within a twentieth of a millimetre the steps are too coarse to tell.
    if abs(reach - math.hypot(line, leaf_front(door))) > 0.05:
        assert meets_stop(door, covering_outline(shade_samples(size, depth))) == strikes
