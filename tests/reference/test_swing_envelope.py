"""The closed form of the turning leaf against shapely: envelopes turned in small steps until they meet something."""

import math
from typing import Any

import pytest
from hypothesis import assume, example, given, settings
from hypothesis import strategies as st
from shapely import MultiPolygon, Polygon, affinity, box, unary_union

from configurator.catalog import load
from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import bead_box, leaf_width
from configurator.kernel.door.opening import astragal_piece, has_passive
from configurator.kernel.mount.hung import hung
from configurator.kernel.pieces import solid
from configurator.kernel.questions.around import CASING_BACK, piece_obstacle
from configurator.kernel.questions.outline import covering_outline, leaf_outline
from configurator.kernel.questions.swing import swing_question
from configurator.kernel.questions.touch import first_touch, from_pin
from configurator.kernel.questions.turning import clear_width, latch_stop, leaf_front, meets_stop
from configurator.kernel.shapes import Door, Figure, Reply, Sample, Size, Travel
from configurator.kernel.travel import travelled
from configurator.places import CONTENT
from tests.kernel.questions.question_samples import (
    HOUSEHOLD,
    door_with,
    fit_with,
    shade_samples,
    shade_travel,
    size_with,
    travel_of,
    value_of,
)
from tests.reference.turned_shapes import TOLERANCE, farthest, turned_until

FAR = 20_000.0


def leaf_in_plan(door: Door) -> Polygon:
    """Return the leaf, its beads, its handle and its astragal as seen from above, hinges on the left."""
    bead = bead_box(door)
    boxes = [
        box(0.0, -door["leaf_thickness"], leaf_width(door), 0.0),
        box(bead["x0"], -door["leaf_thickness"], bead["x1"], door["bead_projection"]),
    ]
    pieces = handle_pieces(door)
    if has_passive(door) and door["astragal_width"] > 0:
        pieces.append(astragal_piece(door))
    boxes.extend(box(piece["x0"], piece["z0"], piece["x1"], piece["z1"]) for piece in pieces)
    return unary_union(boxes)


def covering_in_plan(samples: list[Sample]) -> Polygon:
    """Return all that the covering's pieces stand in over the travel, as seen from above."""
    pieces = [piece for sample in samples for piece in sample["pieces"]]
    return unary_union([box(piece["x0"], piece["z0"], piece["x1"], piece["z1"]) for piece in pieces])


def walls_in_plan(door: Door) -> Polygon:
    """Return what stands beside the hinges: side wall, own wall with its reveal, casing, sidelight."""
    beside = door["sidelight_width"] if door["layout"] == "sidelights" else 0.0
    edge = -beside - door["head_gap"]
    casing = edge - CASING_BACK
    boxes = [
        box(-FAR, -FAR, -door["wall_gap"], FAR),
        box(-FAR, -FAR, edge, door["reveal"]),
        box(casing - door["casing_width"], -FAR, casing, door["reveal"] + door["casing_projection"]),
    ]
    if beside > 0:
        boxes.append(box(edge, -FAR, -door["head_gap"], 0.0))
    return unary_union(boxes)


def swing(travel: Travel) -> Reply:
    return swing_question(travel, HOUSEHOLD)


def compare(travel: Travel) -> Reply:
    """Check both angles of an in-swing leaf against the polygons, and return what was found."""
    door = travel["fit"]["door"]
    pin = (0.0, door["hinge_pin_out"])
    walls = walls_in_plan(door)
    own = turned_until(leaf_in_plan(door), pin, walls)
    covering = turned_until(covering_in_plan(travel["samples"]), pin, walls)
    found = swing(travel)
    assert value_of(found, "swing_bare") == pytest.approx(own, abs=TOLERANCE)
    assert value_of(found, "swing_covered") == pytest.approx(min(own, covering), abs=TOLERANCE)
    return found


@st.composite
def doors_in_swing(draw: st.DrawFn) -> Door:
    """An in-swing door in its wall: with or without reveal, casing and sidelight, a side wall near or far."""
    layout = draw(st.sampled_from(["single", "single", "single", "sidelights", "pair"]))
    return door_with(
        layout=layout,
        hinge_side=draw(st.sampled_from(["left", "right"])),
        glass_width=draw(st.floats(350.0, 700.0)),
        bead_projection=draw(st.floats(0.0, 15.0)),
        wall_gap=draw(st.one_of(st.floats(4.0, 400.0), st.floats(1000.0, 5000.0))),
        hinge_pin_out=draw(st.floats(0.0, 25.0)),
        leaf_thickness=draw(st.floats(35.0, 60.0)),
        reveal=draw(st.one_of(st.just(0.0), st.floats(0.0, 40.0), st.floats(40.0, 400.0))),
        casing_width=draw(st.one_of(st.just(0.0), st.floats(20.0, 150.0))),
        casing_projection=draw(st.floats(0.0, 40.0)),
        head_gap=draw(st.floats(1.0, 6.0)),
        meeting_gap=draw(st.floats(2.0, 6.0)),
        astragal_width=draw(st.floats(10.0, 50.0)),
        astragal_projection=draw(st.floats(0.0, 20.0)),
        sidelight_width=draw(st.floats(150.0, 500.0)) if layout == "sidelights" else 0.0,
    )


@st.composite
def shades_on(draw: st.DrawFn) -> Travel:
    """A shade on an in-swing leaf."""
    door = draw(doors_in_swing())
    size = size_with(
        x0=draw(st.floats(5.0, 150.0)),
        x1=leaf_width(door) - draw(st.floats(30.0, 150.0)),
        z0=draw(st.floats(0.0, 40.0)),
    )
    return shade_travel(door, size, draw(st.floats(5.0, 250.0)))


@settings(max_examples=250, deadline=None)
@given(shades_on())
def test_swing_against_the_turned_envelope(travel: Travel) -> None:
    compare(travel)


CATALOG = load(CONTENT)


def on_starter(door_id: str, family_id: str, **changes: Any) -> Travel:
    """Return a starter family on a starter door with some of its measurements changed."""
    door: Door = CATALOG.doors[door_id] | changes  # type: ignore[assignment]
    return travelled(hung(door, CATALOG.families[family_id], {}))


def met(found: Reply) -> str:
    """Return the kind of what stops the covered leaf."""
    figures: dict[str, Figure] = {figure["id"]: figure for figure in found["figures"]}
    return str(figures["swing_covered"]["working"]["terms"]["obstacle"][0])


def test_a_cassette_in_a_deep_reveal_meets_the_reveal_before_a_right_angle() -> None:
    found = compare(on_starter("garden-door", "roller-shade", reveal=150.0, wall_gap=4000.0))
    assert 60 < value_of(found, "swing_covered") < 70
    assert met(found) == "reveal"
    assert value_of(found, "clear_width_covered") < value_of(found, "clear_width_bare")


def test_far_from_a_side_wall_a_cassette_meets_the_wall_beside_its_door() -> None:
    found = compare(on_starter("garden-door", "roller-shade", wall_gap=4000.0))
    assert value_of(found, "swing_covered") == pytest.approx(156.05, abs=TOLERANCE)
    assert met(found) == "own-wall"


@pytest.mark.parametrize("family", ["roller-shade", "louvered-shutter", "flat-fold-shade", "stretched-panel"])
@pytest.mark.parametrize("door", [door for door in CATALOG.doors if CATALOG.doors[door]["swing"] == "in"])
def test_starter_coverings_in_a_reveal_against_the_turned_envelope(door: str, family: str) -> None:
    travel = on_starter(door, family, reveal=120.0, wall_gap=3000.0)
    assert value_of(compare(travel), "swing_covered") > 0


@settings(max_examples=120, deadline=None)
@given(
    doors_in_swing(),
    st.floats(-500.0, 1200.0),
    st.floats(10.0, 800.0),
    st.floats(30.0, 400.0),
    st.floats(10.0, 300.0),
)
# The leaf's far corner meets a side of the stack, not a corner.
@example(door_with(hinge_pin_out=0.0), -494.0, 10.0, 55.0, 300.0)
def test_a_stack_on_the_wall_against_the_turned_leaf(
    door: Door, x0: float, across: float, z0: float, deep: float
) -> None:
    stack = solid("fabric", [x0, x0 + across], [0.0, 2000.0], [z0, z0 + deep])
    pin = door["hinge_pin_out"]
    bead = bead_box(door)
    leaf = unary_union(
        [
            box(0.0, -door["leaf_thickness"], leaf_width(door), 0.0),
            box(bead["x0"], -door["leaf_thickness"], bead["x1"], door["bead_projection"]),
        ]
    )
    outers = [outer for outer in leaf_outline(door) if outer["kind"] != "astragal"]
    expected = turned_until(leaf, (0.0, pin), box(x0, z0, x0 + across, z0 + deep))
    found = first_touch(from_pin(outers, pin), [piece_obstacle(stack, pin)], 180.0)
    # What is only grazed by the leaf's far corner the steps of the turn pass over.
    assume(not (expected == 180.0 and abs(farthest(leaf, pin) - nearest(stack, pin)) < 0.5))
    assert found["angle"] == pytest.approx(expected, abs=TOLERANCE)


def nearest(piece: Any, pin: float) -> float:
    """Return the distance of a piece from the pin, as seen from above."""
    beside = max(piece["x0"], -piece["x1"], 0.0)
    before = max(piece["z0"] - pin, pin - piece["z1"], 0.0)
    return math.hypot(beside, before)


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
    found = swing(travel_of(fit_with(door, size), shade_samples(size, depth)))
    hung_on = MultiPolygon(
        [
            box(0.0, -door["leaf_thickness"], leaf_width(door), 0.0),
            box(size["x0"], 0.0, size["x1"], max(depth, 0.001)),
        ]
    )
    turned = affinity.rotate(hung_on, -90.0, origin=(0.0, -leaf_front(door)))
    left = leaf_width(door) - stop - turned.bounds[2]
    assert value_of(found, "clear_width_covered") == pytest.approx(left, abs=0.01)


@settings(max_examples=60)
@given(st.floats(700.0, 899.0), st.floats(5.0, 300.0), st.floats(0.0, 20.0))
def test_the_corner_at_the_stop_against_the_turned_covering(latch: float, depth: float, pin: float) -> None:
    door = door_with(swing="out", hinge_pin_out=pin, stop_lap=14.0)
    size: Size = size_with(x1=latch)
    line = leaf_width(door) - 14.0
    center = (0.0, -leaf_front(door))
    reach = math.hypot(latch, depth + leaf_front(door))
    stop = box(line, 0.0, line + 500.0, 1000.0)
    covering = box(size["x0"], 0.001, latch, depth)
    strikes = any(
        affinity.rotate(covering, -step / 10, origin=center).intersection(stop).area > 1e-9 for step in range(900)
    )
    # Within a twentieth of a millimeter the steps are too coarse to tell.
    if abs(reach - math.hypot(line, leaf_front(door))) > 0.05:
        assert meets_stop(door, covering_outline(shade_samples(size, depth))) == strikes
