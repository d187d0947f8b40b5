import pytest

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import leaf_box
from configurator.kernel.door.opening import opening_box
from configurator.kernel.fit import lowest_edge, pieces_at
from configurator.kernel.position import closed_position, open_position
from configurator.kernel.shapes import Door, Fit, Size
from tests.kernel.mount.mount_samples import family_of, hung_with
from tests.kernel.questions.question_samples import door_with

PRESET = {"pitch": 20.0, "closed_thickness": 3.0, "cell_depth": 10.0, "headrail_depth": 24.0, "over_opening": 1.0}
HIGH = {"ceiling_height": 2900.0, "wall_gap": 5000.0}


def hung_over(door: Door, **given: float) -> Fit:
    """Return a shade of cells hung over an opening."""
    return hung_with(door, family_of("accordion", **(PRESET | given)))


def hangs(door: Door, **given: float) -> Size:
    """Return how a shade of cells hangs over an opening."""
    return hung_over(door, **given)["size"]


def test_the_raised_stack_clears_the_leafs_top_where_the_ceiling_allows() -> None:
    door = door_with(**HIGH)
    fit = hung_over(door)
    raised = pieces_at(fit, open_position(fit["numbers"]))
    assert lowest_edge(raised) > leaf_box(door)["y1"]


def test_a_low_ceiling_holds_it_down_and_is_named() -> None:
    door = door_with(ceiling_height=2100.0, wall_gap=5000.0)
    size = hangs(door)
    assert size["y1"] <= 2100.0
    assert {limit["side"]: limit["by"] for limit in size["limits"]}["top"] == "ceiling"


def test_fixed_to_the_ceiling_it_starts_there() -> None:
    assert hangs(door_with(**HIGH), ceiling_fixed=1.0)["y1"] == 2900.0


def test_the_cloth_hangs_clear_of_the_handle() -> None:
    door = door_with(**HIGH)
    fit = hung_over(door)
    down = pieces_at(fit, closed_position(fit["numbers"]))
    front = max(part["z1"] for part in handle_pieces(door))
    cloth = [piece for piece in down if piece["kind"] != "headrail"]
    assert min(piece["z0"] for piece in cloth) >= front + fit["numbers"]["handle_clear"] - 1e-9


def test_it_covers_the_whole_opening_and_its_overlaps() -> None:
    for layout in ("single", "pair", "sidelights"):
        door = door_with(layout=layout, sidelight_width=300.0, sidelight_glass_width=180.0, **HIGH)
        size = hangs(door, over_side=100.0)
        opening = opening_box(door)
        assert opening["x0"] - size["x0"] == pytest.approx(100.0)
        assert size["x1"] - opening["x1"] == pytest.approx(100.0, abs=3.2)


def test_a_side_wall_cuts_the_overlap() -> None:
    near = door_with(ceiling_height=2900.0, wall_gap=40.0)
    size = hangs(near, over_side=100.0)
    assert size["x0"] >= -40.0
    assert {limit["side"]: limit["by"] for limit in size["limits"]}["hinge"] == "wall"
