from typing import Any

import pytest

from configurator.catalog import load
from configurator.kernel.door.leaf import glass_box
from configurator.kernel.fit import pieces_at
from configurator.kernel.mount.hung import hung
from configurator.kernel.pieces import optics, solid
from configurator.kernel.position import position
from configurator.kernel.questions.sight import sight_question
from configurator.kernel.shapes import Door, Household, Piece, Reply, Size
from configurator.kernel.travel import travelled
from configurator.places import CONTENT
from tests.kernel.questions.question_samples import (
    DOOR,
    HOUSEHOLD,
    INCH,
    assert_workings,
    door_with,
    fit_with,
    said,
    shade,
    size_with,
    travel_of,
    value_of,
    verdict_of,
)

SIZE = size_with()
RAISED = shade(SIZE, 0.0)
DOWN = shade(SIZE, 1.0)
SIDELIGHTS = door_with(layout="sidelights", sidelight_width=350.0, sidelight_glass_width=200.0)


def sight(
    raised: list[Piece], down: list[Piece], door: Door = DOOR, household: Household = HOUSEHOLD, size: Size = SIZE
) -> Reply:
    """Return what is told of a covering that goes between two states."""
    samples: list[Any] = [{"leg": 0, "at": float(at), "pieces": pieces} for at, pieces in enumerate((raised, down))]
    return sight_question(travel_of(fit_with(door, size), samples), household)


def test_the_band_runs_from_the_floor_line_to_the_head_line() -> None:
    found = sight(RAISED, DOWN)
    # Eye 1300 above the floor, 5 m outside; the person 1700 high, 1 m inside.
    assert value_of(found, "sight_high") == pytest.approx(1300 + (1700 - 1300) * 5 / 6)
    assert value_of(found, "sight_low") == pytest.approx(12 + 9 * 25.4)
    assert_workings(found)


def test_solid_cloth_hides_the_person_and_a_sheer_does_not() -> None:
    solid_cloth = sight(RAISED, DOWN)
    assert value_of(solid_cloth, "sight_view") == 0
    assert verdict_of(solid_cloth, "sight")["state"] == "clears"
    sheer = sight(
        RAISED, [piece | {"optics": optics(0.4, 0.6)} if piece["kind"] == "fabric" else piece for piece in DOWN]
    )
    assert value_of(sheer, "sight_view") == pytest.approx(0.4)
    assert verdict_of(sheer, "sight")["state"] == "caution"
    assert "night" in said(verdict_of(sheer, "sight")["why"])


def test_the_joint_of_what_draws_to_both_sides_shows_nobody() -> None:
    middle = (glass_box(DOOR)["x0"] + glass_box(DOOR)["x1"]) / 2
    spans = [[150.0, middle], [middle, 760.0]]
    halves = [solid("fabric", span, [SIZE["y0"], SIZE["y1"]], [60.0, 62.0]) for span in spans]
    found = sight(halves, halves)
    assert value_of(found, "sight_view") == 0
    assert verdict_of(found, "sight")["state"] == "clears"


def test_a_lowered_shade_covers_the_band_from_above() -> None:
    near = HOUSEHOLD | {"outside_distance": 1000.0, "outside_level": 0.0}
    found = sight(RAISED, DOWN, household=near)
    edge = shade(SIZE, value_of(found, "sight_lower"))[2]["y0"]
    assert edge == pytest.approx(value_of(found, "sight_low"))
    assert value_of(found, "sight_low") == pytest.approx(800.0)
    # The lower edge goes from 140 mm below the top, 68 in above 190 mm, down to 190 mm.
    start = 190.0 + 68 * INCH - 140.0
    assert value_of(found, "sight_lower") == pytest.approx((start - 800.0) / (start - 190.0))


def test_an_upper_rail_covers_the_band_from_below() -> None:
    catalog = load(CONTENT)
    fit = hung(catalog.doors["garden-door"], catalog.families["cellular-shade"], {"rails": "top-down"})
    found = sight_question(travelled(fit), HOUSEHOLD)
    half_way = pieces_at(fit, position(1.0, value_of(found, "sight_upper"), 0.0))
    rail = next(piece for piece in half_way if piece["kind"] == "upper-rail")
    assert rail["y1"] == pytest.approx(value_of(found, "sight_high"))
    low, high = (
        next(piece for piece in pieces_at(fit, position(1.0, upper, 0.0)) if piece["kind"] == "upper-rail")["y1"]
        for upper in (1.0, 0.0)
    )
    assert value_of(found, "sight_upper") == pytest.approx((high - rail["y1"]) / (high - low))


def test_someone_far_below_sees_nothing_through_a_high_window() -> None:
    below = HOUSEHOLD | {"outside_level": -4000.0, "person_distance": 6000.0}
    door = DOOR | {"rail_bottom": 1100.0, "glass_height": 700.0}
    found = sight(RAISED, DOWN, door, below)
    assert value_of(found, "sight_low") == value_of(found, "sight_high")
    assert verdict_of(found, "sight")["state"] == "clears"
    assert len(found["figures"]) == 2


def test_a_person_and_an_observer_both_at_the_glass_see_each_other_eye_to_eye() -> None:
    both = HOUSEHOLD | {"outside_distance": 0.0, "person_distance": 0.0}
    found = sight(RAISED, DOWN, household=both)
    assert value_of(found, "sight_low") == value_of(found, "sight_high") == 1300.0


def test_bare_sidelights_show_the_person_beside_a_covering_that_hides_the_leaf() -> None:
    on_leaf = verdict_of(sight(RAISED, DOWN, SIDELIGHTS), "sight")
    assert on_leaf["state"] == "caution"
    assert "sidelights, which stay bare" in said(on_leaf["why"])
    thin = [piece | {"optics": optics(0.4, 0.6)} for piece in DOWN]
    seen = said(verdict_of(sight(RAISED, thin, SIDELIGHTS), "sight")["why"])
    assert "night" in seen
    assert "sidelights stay bare" in seen


def test_a_covering_above_the_opening_hides_the_sidelights_too() -> None:
    over = size_with("over-opening", x0=-400.0, x1=1400.0, y0=20.0, y1=2150.0)
    found = verdict_of(sight(shade(over, 0.0), shade(over, 1.0), SIDELIGHTS, size=over), "sight")
    assert found["state"] == "clears"
    assert "sidelights" not in said(found["why"])
