"""The plan's leaf stands, and its arc ends, where the figure says."""

import math

import pytest

from configurator.kernel.answer import ask
from configurator.kernel.shapes import Mark
from configurator.kernel.views.plan import plan_of
from tests.drawing.drawing_coverings import family
from tests.drawing.drawing_doors import HOUSEHOLD, door_like
from tests.drawing.drawing_samples import draft_of

FAR_WALL = 4000.0


def swing_marks(shape: str, **changes: float) -> tuple[float, list[Mark]]:
    """Return the angle told for a door, and the plan's marks of the leaf's swing of one shape."""
    door = door_like(**changes)
    answer = ask(door, family("open roll"), {}, HOUSEHOLD)
    view = plan_of(draft_of(door, "open roll", "open", "mm"))
    marks = [mark for mark in view["marks"] if mark["role"] == "swing" and mark["shape"] == shape]
    return answer["figures"]["swing_covered"]["value"], marks


def turned(pin: float, start: list[float], end: list[float]) -> float:
    """Return the angle about the pin from one point to another."""
    first = math.atan2(start[1] - pin, start[0])
    last = math.atan2(end[1] - pin, end[0])
    return math.degrees(last - first)


@pytest.mark.parametrize("changes", [{"wall_gap": 40.0}, {"wall_gap": FAR_WALL, "reveal": 200.0}])
def test_a_leaf_stopped_early_stands_and_its_arc_ends_at_the_angle_told(changes: dict[str, float]) -> None:
    told, arcs = swing_marks("polyline", **changes)
    assert told < 90
    pin = door_like(**changes)["hinge_pin_out"]
    points = arcs[0]["points"]
    assert turned(pin, points[:2], points[-2:]) == pytest.approx(told)
    _, leaves = swing_marks("polygon", **changes)
    corners = leaves[0]["points"]
    face = math.degrees(math.atan2(corners[3] - corners[1], corners[2] - corners[0]))
    assert face == pytest.approx(told)


def test_past_a_right_angle_the_arc_goes_on_as_far_as_the_drawing_does() -> None:
    told, arcs = swing_marks("polyline", wall_gap=FAR_WALL, reveal=0.0)
    pin = door_like()["hinge_pin_out"]
    points = arcs[0]["points"]
    assert 90 < turned(pin, points[:2], points[-2:]) <= told
