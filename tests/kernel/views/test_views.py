"""What a reader takes from the drawings: sizes to scale, what is hidden, what can be moved, and words."""

from functools import partial
from itertools import pairwise

import pytest

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.door.obstacles import STOP_DEPTH, casing_pieces
from configurator.kernel.questions.sight import sight_crossing
from configurator.kernel.shapes import Drawing, Mark
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.layers import door_marks, elevation_marks, plan_marks, section_marks
from configurator.kernel.views.layout import WALL_DEPTH
from configurator.kernel.views.measure_elevation import measure_elevation
from configurator.kernel.views.measure_plan import measure_plan
from configurator.kernel.views.measure_section import measure_section
from configurator.kernel.views.people import measure_people
from configurator.kernel.views.walls import wall_back
from tests.drawing.drawing_doors import DOORS, HOUSEHOLD, SINGLE, door_like
from tests.drawing.drawing_samples import VIEWS, draft_of, drawn

MEASURED = {
    "glass_width glass_height stile_hinge stile_latch rail_top rail_bottom bead_width backset handle_height floor_gap"
    " hinge_heights ceiling_height casing_width muntin_columns muntin_rows": measure_elevation,
    "leaf_thickness bead_projection glass_recess reveal casing_projection head_gap": measure_section,
    "backset handle_gap handle_projection handle_grip_length hinge_pin_out wall_gap": measure_plan,
    "household_shoulder_height household_person_height household_person_distance household_outside_eye"
    " household_outside_distance household_outside_level": partial(measure_people, HOUSEHOLD),
}


def with_role(drawing: Drawing, role: str) -> list[Mark]:
    return [mark for mark in drawing["marks"] if role in mark["role"].split()]


def span(marks: list[Mark], axis: int) -> tuple[float, float]:
    values = [value for mark in marks for value in mark["points"][axis::2]]
    return min(values), max(values)


def words(drawing: Drawing) -> list[str]:
    return [mark["text"] for mark in drawing["marks"] if mark["shape"] == "text"]


@pytest.mark.parametrize("door", DOORS)
def test_the_garden_shows_through_the_glass_and_nowhere_else(door: str) -> None:
    drawing = drawn("elevation", door, "cellular", "open")
    lites = [(span([sky], 0), span([sky], 1)) for sky in with_role(drawing, "sky")]
    garden = [mark for role in ("hill", "lawn", "tree", "trunk", "path-stone") for mark in with_role(drawing, role)]
    assert garden
    for mark in garden:
        (x0, x1), (y0, y1) = span([mark], 0), span([mark], 1)
        assert any(
            a[0] - 1e-6 <= x0 and x1 <= a[1] + 1e-6 and b[0] - 1e-6 <= y0 and y1 <= b[1] + 1e-6 for a, b in lites
        )


def test_the_glass_is_drawn_in_true_millimetres_at_its_true_place() -> None:
    drawing = drawn("elevation", "single", "cellular", "open")
    glass = glass_box(SINGLE)
    sky = with_role(drawing, "sky")
    assert span(sky, 0) == pytest.approx((glass["x0"], glass["x1"]))
    assert span(sky, 1) == pytest.approx((-glass["y1"], -glass["y0"]))


def test_section_shares_heights_with_the_elevation_and_plan_shares_widths() -> None:
    part = "part-lower"
    front = drawn("elevation", "single", "cellular", "0.4")
    side = drawn("section", "single", "cellular", "0.4")
    top = drawn("plan", "single", "cellular", "closed")
    assert span(with_role(front, part), 1) == pytest.approx(span(with_role(side, part), 1))
    cloth = with_role(drawn("elevation", "single", "cellular", "closed"), "cloth")
    assert span(cloth, 0) == pytest.approx(span(with_role(top, "cloth"), 0))


def test_a_veil_dims_the_garden_and_a_blind_cloth_hides_it() -> None:
    veil = with_role(drawn("elevation", "single", "panel", "closed"), "sheer")
    assert {round(mark["fade"], 6) for mark in veil} == {0.65}
    cloth = with_role(drawn("elevation", "single", "cellular", "closed"), "cloth")
    assert {mark["fade"] for mark in cloth} == {1.0}


@pytest.mark.parametrize(
    ("covering", "role"), [("cellular", "part-lower"), ("cellular", "part-upper"), ("shutter", "part-tilt")]
)
def test_what_the_hand_moves_can_be_found_on_elevation_and_section(covering: str, role: str) -> None:
    assert with_role(drawn("elevation", "single", covering, "closed"), role)
    assert with_role(drawn("section", "single", covering, "closed"), role)


@pytest.mark.parametrize(("hand", "hidden"), [("left", 0), ("right", 3)])
def test_a_handle_on_the_cut_away_side_is_dashed_in_the_section(hand: str, hidden: int) -> None:
    door = door_like(hinge_side=hand)
    marks = section_marks(draft_of(door, "panel", "open"), True)
    assert sum("hidden" in mark["role"].split() for mark in marks) == hidden


def test_both_leaves_of_a_pair_swing_and_a_fixed_leaf_does_not() -> None:
    assert len(with_role(drawn("plan", "pair", "cellular", "open"), "swing")) == 4
    fixed = door_like(layout="fixed-pair")
    marks = door_marks("plan", draft_of(fixed, "cellular", "open"))
    assert sum("swing" in mark["role"].split() for mark in marks) == 2


def test_a_leaf_opens_into_the_room_or_away_from_it() -> None:
    inward = span(with_role(drawn("plan", "single", "cellular", "open"), "swing"), 1)
    outward = span(with_role(drawn("plan", "narrow", "cellular", "open"), "swing"), 1)
    assert inward[1] > 700
    assert outward[0] < -700


def test_the_layers_together_are_the_drawing() -> None:
    draft = draft_of(DOORS["pair"], "vane roll", "0.4")
    for view, moving in (("elevation", elevation_marks), ("section", section_marks), ("plan", plan_marks)):
        layers = door_marks(view, draft) + moving(draft, True)
        assert layers == drawn(view, "pair", "vane roll", "0.4")["marks"]


def test_the_lower_layer_does_not_change_as_the_covering_moves() -> None:
    drafts = [draft_of(DOORS["divided"], "cellular", at) for at in ("open", "0.4", "closed")]
    for view in ("elevation", "section", "plan"):
        layers = [door_marks(view, draft) for draft in drafts]
        assert layers[0] == layers[1] == layers[2]


def test_the_window_stays_where_it_is_as_the_covering_moves() -> None:
    for view in ("elevation", "section", "plan", "sheet"):
        windows = set()
        for at in ("open", "0.4", "closed"):
            drawing = drawn(view, "pair", "soft fold", at)
            windows.add((drawing["x"], drawing["y"], drawing["width"], drawing["height"]))
        assert len(windows) == 1


def test_words_say_what_is_drawn_and_what_it_is_drawn_for() -> None:
    drawing = drawn("elevation", "pair", "cellular", "open")
    assert drawing["title"] == "Cellular shade, raised, on Garden pair: elevation from the room"
    assert "the stack is" in drawing["desc"]
    assert "of the glass stays visible" in drawing["desc"]
    assert drawn("elevation", "pair", "shutter", "closed")["title"].startswith(
        "Louvered shutter, closed, on Garden pair"
    )
    assert "40% down" in drawn("plan", "single", "roller", "0.4")["title"]


@pytest.mark.parametrize("view", VIEWS)
def test_a_description_tells_the_figures_that_its_view_shows_and_no_others(view: str) -> None:
    shows = {
        "Open, ": ("elevation", "sheet"),
        "off the leaf at most": tuple(other for other in VIEWS if other != "elevation"),
        "Behind the handle": ("plan", "detail handle", "sheet"),
    }
    told = drawn(view, "single", "cellular", "open")["desc"]
    assert {said: said in told for said in shows} == {said: view in views for said, views in shows.items()}


def test_the_stack_is_named_only_while_it_is_one() -> None:
    assert any(text.startswith("stack ") for text in words(drawn("elevation", "single", "cellular", "open")))
    assert any(text.startswith("down ") for text in words(drawn("elevation", "single", "cellular", "0.4")))
    lowered = words(drawn("elevation", "single", "cellular", "closed"))
    assert not any(text.startswith(("stack ", "down ")) for text in lowered)


@pytest.mark.parametrize(("units", "scale"), [("mm", "1:20"), ("in", "1/2 in = 1 ft (1:24)")])
def test_a_sheet_names_its_scale_and_fits_a4_and_letter_at_it(units: str, scale: str) -> None:
    drawing = drawn("sheet", "single", "cellular", "0.4", units)
    said = next(text for text in words(drawing) if "1:" in text)
    ratio = float(said.split("1:")[1].rstrip(")"))
    assert drawing["width"] / ratio < 190
    assert drawing["height"] / ratio < 259
    assert said == scale


def test_folds_that_lie_close_are_cut_in_the_finest_line_and_make_no_black_lump() -> None:
    folds = [mark["role"] for mark in with_role(drawn("section", "single", "nested fold", "open"), "cloth")]
    # Those that are tucked away, behind the one that still hangs.
    assert folds.count("cloth crease") == 3
    assert folds.count("cloth seen") == 1


def test_the_marks_of_the_section_stand_clear_of_the_elevation_and_look_to_its_right() -> None:
    drawing = drawn("sheet", "single", "cellular", "0.4", "mm")
    upper, lower = (mark["points"] for mark in drawing["marks"] if mark["role"] == "cut" and mark["shape"] == "line")
    # Of the three views the elevation is drawn first, and its casing before all that is within.
    casing = span(with_role(drawing, "wall")[:1], 1)[0]
    assert upper[0] == upper[2] == lower[0] == lower[2]
    assert upper[1] < upper[3] < casing
    assert 0 < lower[1] < lower[3]
    arrows = [mark["points"] for mark in with_role(drawing, "seen") if mark["points"][0] == upper[0]]
    assert [arrow[1] for arrow in arrows] == [upper[1], lower[3]]
    assert all(arrow[3] == arrow[1] and arrow[2] > arrow[0] for arrow in arrows)


def test_a_sheet_says_what_on_which_door_and_where_it_stands() -> None:
    said = words(drawn("sheet", "pair", "cellular", "0.4"))
    assert {"Cellular shade", "Garden pair", "40% down"} <= set(said)


def test_the_lines_of_sight_meet_the_glass_where_the_figures_say() -> None:
    lines = with_role(measure_people(HOUSEHOLD, DOORS["single"], ENGLISH, "mm"), "axis-line")
    heights = []
    for line in lines:
        x0, y0, x1, y1 = line["points"]
        heights.append(-(y0 + (y1 - y0) * (0 - x0) / (x1 - x0)))
    told = [sight_crossing(HOUSEHOLD, HOUSEHOLD["person_height"]), sight_crossing(HOUSEHOLD, 0.0)]
    assert heights == pytest.approx(told)


@pytest.mark.parametrize("fields", MEASURED)
def test_every_field_to_measure_has_its_dimension(fields: str) -> None:
    drawing = MEASURED[fields](door_like(muntin_columns=2), ENGLISH, "in")
    missing = [field for field in fields.split() if not with_role(drawing, f"focus-{field}")]
    assert missing == []


def test_a_run_too_tight_to_draw_line_by_line_is_told_by_fewer_lines() -> None:
    raised = with_role(drawn("elevation", "single", "cellular", "open"), "hair")
    heights = sorted({mark["points"][1] for mark in raised if mark["shape"] == "line"})
    assert all(after - before > 5 for before, after in pairwise(heights))


@pytest.mark.parametrize("reveal", [0.0, 100.0, 300.0])
def test_the_wall_is_as_deep_as_a_wall_and_holds_the_leaf_and_its_stop(reveal: float) -> None:
    back = wall_back(door_like(reveal=reveal, leaf_thickness=60.0))
    assert back <= -60.0 - STOP_DEPTH
    assert reveal - back >= WALL_DEPTH
    assert back in (-60.0 - STOP_DEPTH, reveal - WALL_DEPTH)


@pytest.mark.parametrize("name", ["single", "out-swing pair"])
def test_the_casing_is_drawn_where_a_turning_leaf_meets_it(name: str) -> None:
    # Drawings and the question of the swing have one casing: set back from the frame, which keeps off the leaf.
    upright = casing_pieces(DOORS[name])[:2]
    drawn_at = {tuple(mark["points"][:2]) for mark in with_role(drawn("plan", name, "cellular", "open"), "leaf")}
    for piece in upright:
        assert any(x == pytest.approx(piece["x0"]) and y == pytest.approx(piece["z0"]) for x, y in drawn_at)


def test_an_enlarged_plan_of_a_pair_shows_where_the_second_covering_begins() -> None:
    # The active leaf has its latch at 0 here, the second leaf lies to the left of it.
    draft = draft_of(DOORS["pair"], "cellular", "closed")
    begins = max(piece["x1"] for piece in draft["scene"]["covering"] if piece["x1"] < 0)
    detail = drawn("detail handle", "pair", "cellular", "closed")
    edges = [x for mark in with_role(detail, "cloth") for x in mark["points"][::2]]
    assert max(x for x in edges if x < 0) == pytest.approx(begins)
    # It goes on beyond the break.
    assert min(edges) < begins - 20
