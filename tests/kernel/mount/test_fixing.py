import random
from itertools import pairwise
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.catalog import Catalog, load
from configurator.kernel.answer import ask_fit
from configurator.kernel.door.hardware import handle_axis
from configurator.kernel.door.leaf import bead_box, frame_pieces, glass_box, leaf_box
from configurator.kernel.door.opening import opening_box
from configurator.kernel.mount.fixing_spots import screw_spots
from configurator.kernel.mount.ground import lock_box
from configurator.kernel.mount.hung import hung
from configurator.kernel.shapes import Box, Door, Fit, Fixing
from configurator.places import CONTENT
from tests.cases import random_choices, random_door
from tests.kernel.mount.mount_samples import cellular, hung_with, shutter, stretched
from tests.kernel.questions.question_samples import DOOR, HOUSEHOLD, INCH, LEVER, door_with, said

# Not the fixture: hypothesis prints every argument of a failing test.
CATALOG = load(CONTENT)
OVER = {"over_opening": 1.0, "over_side": 100.0, "stand_off": 20.0}
HIGH = {"ceiling_height": 2900.0, "wall_gap": 5000.0}


def values(fit: Fit) -> dict[str, float]:
    """Return the figures of a fit as plain numbers."""
    return {key: figure["value"] for key, figure in ask_fit(fit, HOUSEHOLD)["figures"].items()}


def spots(fit: Fit) -> list[list[float]]:
    """Return every screw's place."""
    return [spot for fixing in fit["fixings"] for spot in fixing["spots"]]


def is_in(area: Box, x: float, y: float, by: float) -> bool:
    """Return whether a point lies within a box by at least so much."""
    across = area["x0"] + by <= x <= area["x1"] - by
    return across and area["y0"] + by <= y <= area["y1"] - by


def assert_on_wood(fit: Fit, fixing: Fixing) -> None:
    """Check that every screw stands in a stile or rail, off bead, glass and leaf's edge, and short of the far face."""
    door = fit["door"]
    numbers = fit["numbers"]
    slack = 0.02
    for x, y in fixing["spots"]:
        wood = [piece for piece in frame_pieces(door) if piece["x0"] <= x <= piece["x1"]]
        assert any(piece["y0"] <= y <= piece["y1"] for piece in wood)
        assert is_in(leaf_box(door), x, y, numbers["screw_edge"] - slack)
        assert not is_in(bead_box(door), x, y, -numbers["bead_clear"] + slack)
        assert not is_in(glass_box(door), x, y, -numbers["glass_clear"] + slack)
    into = fixing["screw"] - numbers["fixing_plate"] - fixing["spacer"]
    assert into == pytest.approx(fixing["thread"])
    assert into <= door["leaf_thickness"] - 6.0 + 1e-9


def assert_on_wall(fit: Fit, fixing: Fixing) -> None:
    """Check that no screw stands in the opening, above the ceiling or below the floor."""
    door = fit["door"]
    hole = opening_box(door)
    for x, y in fixing["spots"]:
        assert 0 < y < door["ceiling_height"]
        assert y > hole["y1"] or x < hole["x0"] or x > hole["x1"]
        outer: Box = {**hole, "x0": hole["x0"] - door["casing_width"], "x1": hole["x1"] + door["casing_width"]}
        outer["y1"] = hole["y1"] + door["casing_width"]
        # Just at the casing's edge a screw may be in either.
        assert is_in(outer, x, y, -0.02 if fixing["plane"] == "casing" else 0.02) == (fixing["plane"] == "casing")


@given(st.integers(0, 999_999))
def test_every_fixing_stands_on_wood_or_wall(number: int) -> None:
    rng = random.Random(number)
    door = random_door(rng, CATALOG)
    family = rng.choice(list(CATALOG.families.values()))
    fit = hung(door, family, random_choices(rng, family))
    if said(fit["size"]["refusal"]):
        return
    assert len(fit["fixings"]) >= 2
    for fixing in fit["fixings"]:
        if fixing["plane"] == "leaf":
            assert_on_wood(fit, fixing)
        elif fixing["plane"] != "ceiling":
            assert_on_wall(fit, fixing)


def test_a_headrail_has_a_bracket_near_each_end_worked_by_hand() -> None:
    # A leaf with 2 in more than the glass either way: brackets 2 in from either end, half-way up a 1 in headrail.
    fit = hung_with(DOOR, cellular(overlap_side=50.0))
    found = values(fit)
    assert found["fixing_count"] == 2
    assert [found["fixing_first"], found["fixing_last"]] == pytest.approx([2 * INCH, 2 * INCH])
    assert found["fixing_height"] == pytest.approx(fit["size"]["y1"] - INCH / 2)
    # A plate of 2 mm, no spacer over flush beads, and an inch of thread.
    assert found["screw_length"] == pytest.approx(2.0 + INCH)
    assert [fixing["plane"] for fixing in fit["fixings"]] == ["leaf", "leaf"]


def test_a_wide_headrail_has_more_between() -> None:
    # 1100 mm of glass and 40 mm either way: 1180 less 2 x 50.8 is 1078.4, more than one spacing of 914.4.
    fit = hung_with(door_with(glass_width=1100.0), cellular())
    assert values(fit)["fixing_count"] == 3


def test_a_spacer_makes_the_screw_longer_by_as_much() -> None:
    fit = hung_with(door_with(bead_projection=9.0), cellular())
    assert fit["size"]["spacer"] > 0
    assert values(fit)["screw_length"] == pytest.approx(2.0 + fit["size"]["spacer"] + INCH)


def test_a_thin_leaf_takes_less_thread_and_says_so() -> None:
    # 25 mm of leaf less 6 kept off its far face.
    fit = hung_with(door_with(leaf_thickness=25.0), cellular())
    assert fit["fixings"][0]["thread"] == pytest.approx(19.0)
    assert "fixing_thread" in [caution["id"] for caution in ask_fit(fit, HOUSEHOLD)["cautions"]]


def test_a_leaf_too_thin_for_any_screw_is_the_reason() -> None:
    words = said(hung_with(door_with(leaf_thickness=16.0), cellular())["size"]["refusal"])
    assert words.startswith("The leaf is too thin for its screws")


def test_a_bracket_is_slid_up_to_wood_within_its_headrail() -> None:
    # The rail starts 25.4 mm above the glass, so a screw stands 31.75 above it; an 80 mm headrail whose middle lies
    # over the bead is held there, 13.75 mm above its middle.
    door = door_with(rail_top=40.0)
    fit = hung_with(door, cellular(headrail_height=80.0, rise=0.0, edge_clear=7.4))
    assert fit["size"]["y1"] == pytest.approx(glass_box(door)["y1"] + 58.0)
    assert values(fit)["fixing_height"] == pytest.approx(glass_box(door)["y1"] + 31.75)


def test_where_the_top_rail_is_too_low_the_brackets_are_slid_out_to_the_stiles() -> None:
    door = door_with(rail_top=5.0)
    fit = hung_with(door, cellular(overlap_side=60.0))
    glass = glass_box(door)
    assert all(x <= glass["x0"] - 31.74 or x >= glass["x1"] + 31.74 for x, _ in spots(fit))
    assert values(fit)["fixing_first"] < 2 * INCH


def test_a_headrail_with_no_wood_behind_it_is_refused() -> None:
    door = door_with(rail_top=5.0, stile_hinge=10.0, stile_latch=10.0, handle_height=200.0)
    words = said(hung_with(door, cellular(overlap_side=10.0))["size"]["refusal"])
    assert words.startswith("There is no wood")


def test_the_rods_of_a_stretched_panel_have_a_holder_at_each_end() -> None:
    fit = hung_with(DOOR, stretched())
    assert [fixing["piece"]["kind"] for fixing in fit["fixings"]] == ["rod-holder"] * 4
    rod = 0.1875 * INCH
    glass = glass_box(DOOR)
    found = values(fit)
    # Both rods lie 33.3 mm past the glass, over a bead of 25.4; two screws 12.7 mm apart need the lower at 31.75.
    assert found["fixing_height"] == pytest.approx(max(fit["size"]["y1"] - rod, glass["y1"] + 31.75 + 6.35))
    assert found["fixing_low"] == pytest.approx(min(fit["size"]["y0"] + rod, glass["y0"] - 31.75 - 6.35))


def test_a_frame_is_screwed_along_every_side_at_most_400_mm_apart() -> None:
    fit = hung_with(DOOR, shutter())
    size = fit["size"]
    hinge = sorted(y for x, y in spots(fit) if x < size["x0"] + 19.05)
    latch = sorted(y for x, y in spots(fit) if x > size["x1"] - 19.05)
    head = sorted(x for x, y in spots(fit) if y > size["y1"] - 19.05)
    foot = sorted(x for x, y in spots(fit) if y < size["y0"] + 19.05)
    for line in (hinge, latch, head, foot):
        assert len(line) >= 2
        assert max(b - a for a, b in pairwise(line)) <= 400.0


def test_no_screw_of_a_frame_stands_in_its_cut_out_or_in_the_lock() -> None:
    door = door_with(stile_latch=4 * INCH, handle=LEVER)
    fit = hung_with(door, shutter(cutout_clear=19.05))
    hole = fit["size"]["cutout"]
    assert hole["x1"] > hole["x0"]
    height = door["handle_height"]
    for x, y in spots(fit):
        assert not is_in(hole, x, y, 0.0)
        assert x < handle_axis(door) - 27.0 or abs(y - height) > 95.0


def test_a_frame_over_bare_glass_is_refused_with_the_measures(catalog: Catalog) -> None:
    # Without a cut-out the frame stops short of the lever, at the edge of the glass.
    flush: Door = catalog.doors["garden-door"] | {"bead_projection": 0.0}
    fit = hung(flush, catalog.families["louvered-shutter"], {"handle": "whole"})
    words = said(fit["size"]["refusal"])
    assert words.startswith("There is no wood behind the frame for its screws: they must stand 3/4 in past the glass")


def test_on_bare_glass_there_is_nothing_for_a_rod_holder() -> None:
    door: Door = door_with(bead_width=60.0)
    assert "no wood behind the rod" in said(hung_with(door, stretched())["size"]["refusal"])


def test_over_the_opening_brackets_are_in_the_wall_or_the_casing() -> None:
    fit = hung_with(door_with(**HIGH), cellular(**OVER))
    assert {fixing["plane"] for fixing in fit["fixings"]} <= {"wall", "casing"}
    for fixing in fit["fixings"]:
        assert_on_wall(fit, fixing)
        # It reaches from what it is fixed to as far as the headrail's back.
        assert fixing["piece"]["z1"] == pytest.approx(fit["size"]["z0"])
    assert "fixing_wall" in [caution["id"] for caution in ask_fit(fit, HOUSEHOLD)["cautions"]]


def test_a_headrail_across_the_casings_upper_edge_is_fixed_above_or_below_it() -> None:
    # The headrail's middle lies just at that edge, whatever the stack takes: its screws go beside it.
    for wide in range(40, 240, 5):
        fit = hung_with(door_with(**HIGH, casing_width=float(wide)), cellular(**OVER))
        assert said(fit["size"]["refusal"]) == ""
        for fixing in fit["fixings"]:
            assert_on_wall(fit, fixing)


def test_a_headrail_that_hangs_before_the_opening_is_refused_where_nothing_is_beside_it() -> None:
    low = door_with(ceiling_height=leaf_box(DOOR)["y1"] + 5.0, wall_gap=5000.0)
    words = said(hung_with(low, cellular(**(OVER | {"over_side": 0.0})))["size"]["refusal"])
    assert words.startswith("There is neither casing nor wall behind the headrail")


def test_from_the_ceiling_the_screws_are_told_from_the_wall() -> None:
    fit = hung_with(door_with(**HIGH), cellular(**OVER, ceiling_fixed=1.0))
    assert {fixing["plane"] for fixing in fit["fixings"]} == {"ceiling"}
    assert values(fit)["fixing_out"] == pytest.approx(fit["size"]["z0"] + INCH / 2)


def test_fixings_hide_no_glass_and_touch_no_clearance(catalog: Catalog) -> None:
    for door in catalog.doors.values():
        fit = hung(door, catalog.families["cellular-shade"], {})
        bare: Fit = {**fit, "fixings": []}
        with_them, without = (ask_fit(one, catalog.household) for one in (fit, bare))
        for key in without["figures"]:
            assert with_them["figures"][key]["value"] == without["figures"][key]["value"], key


@pytest.mark.parametrize("door", ["garden-door", "metric-pair-rebated", "half-lite-door"])
def test_the_outermost_fixings_are_told_from_the_covering_s_own_ends(catalog: Catalog, door: str) -> None:
    for family in catalog.families.values():
        fit = hung(catalog.doors[door], family, {})
        told = values(fit)
        if "fixing_first" not in told:
            continue
        own = [fixing["piece"] for fixing in fit["fixings"] if fixing["piece"]["kind"] != "hold-down"]
        middles = [(piece["x0"] + piece["x1"]) / 2 for piece in own]
        assert told["fixing_first"] == pytest.approx(min(middles) - fit["size"]["x0"]), family["id"]
        assert told["fixing_last"] == pytest.approx(fit["size"]["x1"] - max(middles)), family["id"]
        assert told["fixing_count"] == len(own), family["id"]


def test_a_leaf_without_a_handle_has_no_lock_that_keeps_screws_off() -> None:
    fit = hung_with(door_with(handle=LEVER), shutter())
    assert lock_box(fit)["x1"] == leaf_box(fit["door"])["x1"]
    bare: Fit = {**fit, "handle": []}
    assert set(lock_box(bare).values()) == {0.0}


def test_the_screws_of_a_bracket_stand_half_its_width_apart_in_its_middle(catalog: Catalog) -> None:
    seen = 0
    for family in catalog.families.values():
        fit = hung(catalog.doors["garden-door"], family, {})
        for fixing in fit["fixings"]:
            if fixing["piece"]["kind"] == "bracket" and len(fixing["spots"]) == 2:
                seen += 1
                (one, _), (other, _) = fixing["spots"]
                assert other - one == pytest.approx(fit["numbers"]["bracket_width"] / 2), family["id"]
                middle = (fixing["piece"]["x0"] + fixing["piece"]["x1"]) / 2
                assert (one + other) / 2 == pytest.approx(middle), family["id"]
    assert seen > 5


def test_only_rods_are_told_to_have_one_at_each_end_whatever_their_length() -> None:
    rules = [
        ask_fit(hung_with(DOOR, family), HOUSEHOLD)["figures"]["fixing_count"]["working"]["rule"]
        for family in (stretched(), cellular())
    ]
    assert [rule.startswith("one at each end of every rod") for rule in rules] == [True, False]


@pytest.mark.parametrize("spread", [[30.0, 0.0], [0.0, 50.0], [30.0, 50.0]])
def test_a_foothold_s_screws_stand_about_its_middle_as_far_apart_as_it_says(spread: list[float]) -> None:
    hold: Any = {"screws": 3, "spread": spread}
    first, middle, last = screw_spots(hold, 100.0, 2000.0)
    assert middle == [100.0, 2000.0]
    assert first == [100.0 - spread[0] / 2, 2000.0 - spread[1] / 2]
    assert last == [100.0 + spread[0] / 2, 2000.0 + spread[1] / 2]
    assert screw_spots({**hold, "screws": 1}, 100.0, 2000.0) == [[100.0, 2000.0]]
