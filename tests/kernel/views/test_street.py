"""What the view from the street tells: what it takes for granted, and what an observer makes out."""

import pytest

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.door.opening import opening_pieces
from configurator.kernel.mount.hung import hung
from configurator.kernel.questions.sight import sight_crossing
from configurator.kernel.shapes import Household
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.draft import Draft, drafted
from configurator.kernel.views.glow import glass_areas
from configurator.kernel.views.lit_room import outer_edges, person_bounds
from configurator.kernel.views.street import person_seen, street_of
from configurator.kernel.views.subject import subject
from tests.drawing.drawing_coverings import family
from tests.drawing.drawing_doors import DOORS, HOUSEHOLD, SINGLE, door_like
from tests.drawing.drawing_samples import COVERINGS, PLACES, draft_of, place_of
from tests.drawing.paper_marks import clashes, outside

GRANTED = (
    "At night: someone 240 in outside looks straight at the glass, the eye 57 in above the room’s floor; the room is "
    "evenly lit, and a person stands 72 in behind the glass."
)
SHADOW = "A lamp right behind the person would throw a shadow on cloth that lets light through."
NEAR: Household = {
    **HOUSEHOLD,
    "outside_distance": 6096.0,
    "outside_eye": 1600.2,
    "outside_level": -152.4,
    "person_distance": 1828.8,
    "person_height": 1676.4,
}


def lined(view: float, light: float, at: str) -> Draft:
    """Return a roller of such a cloth on the single door."""
    given = family("open roll")
    cloth = {**given, "numbers": {**given["numbers"], "cloth_view": view, "cloth_light": light}}
    drawn = subject(hung(SINGLE, cloth, {}), place_of("open roll", at), NEAR, ENGLISH)
    return drafted(SINGLE, drawn, ENGLISH, "in")


@pytest.mark.parametrize(
    ("through", "at", "told"),
    [
        ((0.0, 0.0), "closed", f"Of the person behind the covering nothing is made out. {GRANTED}"),
        ((0.0, 0.4), "closed", f"Of the person behind the covering nothing is made out. {GRANTED} {SHADOW}"),
        ((0.25, 0.25), "closed", f"The person shows through the covering, 25% as plain as without it. {GRANTED}"),
        ((0.1, 0.3), "open", f"Nothing hangs in the way: the person is seen as without a covering. {GRANTED}"),
    ],
)
def test_it_says_what_is_made_out_and_what_it_takes_for_granted(
    through: tuple[float, float], at: str, told: str
) -> None:
    drawing = street_of(lined(*through, at), NEAR)
    assert drawing["desc"].endswith(f", on Garden single. {told}")
    assert drawing["title"].endswith("seen from the street at night")


def test_what_is_clear_of_the_covering_is_told_apart_from_what_comes_through() -> None:
    # Worked by hand: the person's outline on the glass runs from 14 3/8 in up to 63 15/16 in above the floor.
    draft = lined(0.5, 0.5, "0.4")
    edge = min(piece["y0"] for piece in draft["scene"]["covering"])
    low, high = sight_crossing(NEAR, 0.0), sight_crossing(NEAR, NEAR["person_height"])
    assert (low, high) == pytest.approx((334.1077, 1623.6462), abs=1e-3)
    low = max(low, -min(-draft["frame"]["glass"]["y0"], 0.0))
    seen = person_seen(draft, NEAR)
    assert seen["visible"] == pytest.approx((edge - low) / (high - low), abs=1e-6)
    told = street_of(draft, NEAR)["desc"]
    assert "of the person, as far as the glass shows it, is clear of the covering; with what comes through" in told


def test_lines_of_sight_that_miss_the_glass_show_nobody() -> None:
    high: Household = {**NEAR, "outside_level": 20000.0}
    draft = lined(0.5, 0.5, "open")
    assert person_seen(draft, high)["area"] == 0
    assert "the lines of sight miss the glass" in street_of(draft, high)["desc"]


def test_the_person_stands_where_the_question_of_sight_has_them() -> None:
    x0, y0, x1, y1 = person_bounds(NEAR, 100.0)
    assert (-y1, -y0) == pytest.approx((sight_crossing(NEAR, 0.0), sight_crossing(NEAR, NEAR["person_height"])))
    assert (x0 + x1) / 2 == pytest.approx(100.0)


def test_left_and_right_are_exchanged_and_the_drawing_keeps_its_window() -> None:
    draft = draft_of(DOORS["pair"], "cellular", "closed")
    drawing = street_of(draft, HOUSEHOLD)
    person = [x for mark in drawing["marks"] if mark["role"] == "person" for x in mark["points"][::2]]
    glass = draft["frame"]["glass"]
    across = draft["frame"]["out0"] + draft["frame"]["out1"]
    assert (min(person) + max(person)) / 2 == pytest.approx(across - (glass["x0"] + glass["x1"]) / 2, abs=1)


@pytest.mark.parametrize("door", DOORS)
def test_nothing_leaves_the_paper(door: str) -> None:
    for covering in COVERINGS:
        for at in PLACES:
            drawing = street_of(draft_of(DOORS[door], covering, at), HOUSEHOLD)
            assert outside(drawing) == [], (covering, at)
            assert clashes(drawing) == [], (covering, at)


def test_the_edges_of_an_outline_are_those_of_its_outermost_points() -> None:
    assert outer_edges([4.0, 10.0, 9.0, 20.0, 2.0, 15.0, 5.0, 30.0]) == [2.0, 10.0, 9.0, 30.0]
    assert outer_edges([4.0, -10.0, 9.0, -20.0, 2.0, -15.0]) == [2.0, -20.0, 9.0, -10.0]


@pytest.mark.parametrize(("layout", "fields"), [("single", 1), ("pair", 2)])
def test_the_lites_of_a_leaf_are_each_an_area_or_make_up_one(layout: str, fields: int) -> None:
    door = door_like(layout=layout, muntin_columns=3, muntin_rows=5)
    glass = glass_box(door)
    assert len(glass_areas(opening_pieces(door), False)) == 15 * fields
    whole = glass_areas(opening_pieces(door), True)
    assert len(whole) == fields
    assert whole[0] == pytest.approx([glass["x0"], -glass["y1"], glass["x1"], -glass["y0"]])
