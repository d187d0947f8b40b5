from configurator.kernel.door.leaf import glass_box
from configurator.kernel.questions.order import order_question
from configurator.kernel.shapes import Reply
from tests.kernel.mechanisms.mechanism_samples import numbers_of
from tests.kernel.questions.question_samples import (
    DOOR,
    HOUSEHOLD,
    assert_workings,
    figure_of,
    shade_travel,
    size_with,
    value_of,
)


def ordered(mount: str = "on-leaf", **changes: float) -> Reply:
    return order_question(shade_travel(size=size_with(mount, **changes), **numbers_of("accordion")), HOUSEHOLD)


def ids(found: Reply) -> set[str]:
    return {figure["id"] for figure in found["figures"]}


def test_each_edge_says_how_far_it_reaches_past_the_glass() -> None:
    found = ordered()
    glass = glass_box(DOOR)
    assert value_of(found, "overlap_hinge") == glass["x0"] - 150.0
    assert value_of(found, "overlap_bottom") == glass["y0"] - 190.0
    assert_workings(found)


def test_an_edge_short_of_the_glass_is_no_overlap_but_glass_left_bare() -> None:
    found = ordered(x1=glass_box(DOOR)["x1"] - 5.0)
    assert "overlap_latch" not in ids(found)
    assert abs(value_of(found, "bare_latch") - 5.0) < 1e-9
    assert "bare" in figure_of(found, "bare_latch")["name"]
    assert_workings(found)


def test_over_the_opening_it_says_how_high_above_the_floor_it_ends() -> None:
    found = ordered("over-opening", y0=14.0)
    assert value_of(found, "floor_air") == 14.0
    assert "overlap_bottom" not in ids(found)
    assert_workings(found)
