"""No two solid bodies in one place: random doors and coverings, and examples worked by hand."""

from copy import deepcopy
from typing import Any

import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.contact import air_between
from configurator.kernel.door.leaf import glass_box, leaf_box
from configurator.kernel.door.obstacles import leaf_obstacles, opening_obstacles
from configurator.kernel.fit import over_opening, pieces_at
from configurator.kernel.mount.hung import hung
from configurator.kernel.pieces import OPAQUE, box
from configurator.kernel.position import along, closed_position
from configurator.kernel.shapes import Door, Family, Fit, Leg, Piece, Position
from tests.cases import seeded_case
from tests.kernel.questions.question_samples import said

SEED = "solid bodies"
CASES = 300
# Bodies that share less than this only touch, mm.
TOUCH = 0.1
SHARES = [i / 23 for i in range(24)]


def places(fit: Fit) -> list[Position]:
    """Return many places of the travel in full detail, a turning part at every two degrees."""
    found: list[Position] = []
    for leg in fit["legs"]:
        found.extend(along(leg, share) for share in steps(leg))
    return found or [closed_position(fit["numbers"])]


def steps(leg: Leg) -> list[float]:
    """Return even shares of a leg, and where a part that turns reaches furthest."""
    return sorted([*SHARES, *leg["peaks"]])


def fixed_things(fit: Fit) -> list[Piece]:
    """Return all that the covering may meet, the handle apart, with the leaf itself as one body."""
    door = fit["door"]
    if over_opening(fit):
        return opening_obstacles(door)
    leaf = leaf_box(door)
    spans = [[leaf["x0"], leaf["x1"]], [leaf["y0"], leaf["y1"]], [-door["leaf_thickness"], 0.0]]
    return [*leaf_obstacles(door), box("door", "rail", spans, OPAQUE)]


def inside(fit: Fit) -> list[tuple[str, str, float]]:
    """Return which pieces stand in which fixed things, and by how much."""
    found = []
    things = fixed_things(fit)
    for place in places(fit):
        for piece in pieces_at(fit, place):
            if piece["part"] == "covering":
                found.extend(
                    (piece["kind"], thing["kind"], air_between(piece, thing))
                    for thing in things
                    if air_between(piece, thing) < -TOUCH
                )
    return found


@pytest.mark.parametrize("start", range(0, CASES, 100))
def test_no_piece_of_a_covering_that_can_be_hung_stands_in_a_fixed_thing(catalog: Catalog, start: int) -> None:
    for number in range(start, start + 100):
        case = seeded_case(catalog, SEED, number)
        fit = hung(case["door"], case["family"], case["choices"])
        if fit["size"]["refusal"]["text"] == "":
            assert inside(fit) == [], (number, case["door"]["id"], case["family"]["id"], case["choices"])


def with_measures(door: Door, **changes: Any) -> Door:
    """Return a door with some of its measurements changed."""
    return deepcopy(door) | changes


def with_numbers(family: Family, **numbers: float) -> Family:
    """Return a family with some of its numbers changed."""
    return family | {"numbers": family["numbers"] | numbers}


def kinds_at(fit: Fit, kind: str) -> list[Piece]:
    """Return the pieces of a kind where the covering is closed."""
    return [piece for piece in pieces_at(fit, closed_position(fit["numbers"])) if piece["kind"] == kind]


def test_a_shutters_frame_stands_beside_a_raised_lite_frame(catalog: Catalog) -> None:
    """Lite frame 31.75 mm wide and 12.7 mm proud, frame 19.05 mm: 50.8 mm past the glass on each side, not 44.45."""
    door = catalog.doors["lite-frame-door"]
    fit = hung(door, catalog.families["louvered-shutter"], {})
    glass = glass_box(door)
    assert fit["size"]["x0"] == pytest.approx(glass["x0"] - 50.8)
    assert fit["size"]["x1"] == pytest.approx(glass["x1"] + 50.8)
    assert inside(fit) == []


def test_a_frame_that_has_no_room_beside_the_lite_frame_is_refused_with_the_measure(catalog: Catalog) -> None:
    """A latch stile of 10 mm, 3 mm of it kept clear, leaves 7 of the frame's 19.05 mm beside the bead."""
    door = with_measures(catalog.doors["lite-frame-door"], stile_latch=10.0, handle_height=100.0)
    refusal = hung(door, catalog.families["louvered-shutter"], {})["size"]["refusal"]
    assert "the frame would stand in the glazing bead" in said(refusal, "mm").lower()
    assert refusal["terms"]["wide"][0] == pytest.approx(12.05, abs=3.2)
    assert refusal["terms"]["deep"][0] == pytest.approx(12.7)


@pytest.mark.parametrize("projection", [20.0, 45.0])
def test_upright_vanes_clear_the_casing_as_they_turn(catalog: Catalog, projection: float) -> None:
    """Edge-on a vane of 5 in reaches 63.5 mm to either side of the headrail's middle, 22.2 mm off its back."""
    door = with_measures(catalog.doors["garden-door"], casing_projection=projection)
    door["handle"] = deepcopy(catalog.handles["low-profile-pull"]) | {"projection": 10.0, "gap": 5.0}
    family = with_numbers(catalog.families["vertical-vanes"], vane_width=127.0, vane_thickness=1.0, stand_off=0.0)
    wide = {**family, "choices": [choice for choice in family["choices"] if choice["id"] != "vane"]}
    fit = hung(door, wide, {})
    back = min(piece["z0"] for place in places(fit) for piece in pieces_at(fit, place) if piece["kind"] == "vane")
    assert back >= projection + 2.0 - 1e-6
    assert back <= projection + 2.0 + fit["numbers"]["spacer_step"] + 0.1
    assert inside(fit) == []


def test_vanes_beside_a_side_wall_turn_without_touching_it(catalog: Catalog) -> None:
    door = with_measures(catalog.doors["garden-door"], wall_gap=40.0)
    fit = hung(door, catalog.families["vertical-vanes"], {})
    left = min(piece["x0"] for place in places(fit) for piece in pieces_at(fit, place))
    assert left > -40.0


def test_a_return_ends_at_a_casing_that_stands_behind_it(catalog: Catalog) -> None:
    wide = with_measures(catalog.doors["garden-door"], casing_width=400.0, casing_projection=20.0, wall_gap=2000.0)
    slim = with_measures(wide, casing_width=40.0)
    drapery = catalog.families["traversing-drapery"]
    assert {piece["z0"] for piece in kinds_at(hung(wide, drapery, {}), "return")} == {20.0}
    assert {piece["z0"] for piece in kinds_at(hung(slim, drapery, {}), "return")} == {0.0}


def test_louvers_that_turn_between_the_beads_need_not_clear_them(catalog: Catalog) -> None:
    """A louver of 2 1/2 in in a panel of 1 1/8 in sweeps 17.9 mm back; beads of 6.35 mm stand beside it."""
    fit = hung(catalog.doors["garden-door"], catalog.families["louvered-shutter"], {})
    numbers = fit["numbers"]
    sweep = (numbers["louver_width"] ** 2 + numbers["louver_thickness"] ** 2) ** 0.5
    assert fit["size"]["exact_spacer"] <= (sweep - numbers["panel_depth"]) / 2 + 1e-6
    assert fit["size"]["exact_spacer"] >= (numbers["louver_width"] - numbers["panel_depth"]) / 2


def test_a_knob_of_the_other_leaf_that_reaches_over_the_joint_is_met(catalog: Catalog) -> None:
    """A knob's rim 30 mm past the joint stands on this leaf: the covering gives way to it."""
    door = with_measures(catalog.doors["garden-pair"], passive_handle=True, backset=20.0, astragal_width=0.0)
    door["handle"] = deepcopy(catalog.handles["round-knob"]) | {"grip_length": 50.0}
    own = hung(door, catalog.families["cellular-shade"], {})["handle"]
    edge = leaf_box(door)["x1"]
    assert any(part["x1"] > edge + door["meeting_gap"] + 40.0 for part in own)
    bare = with_measures(door, passive_handle=False)
    assert not any(part["x1"] > edge + 40.0 for part in hung(bare, catalog.families["cellular-shade"], {})["handle"])


def test_every_verdict_says_its_state_in_words_of_its_own(catalog: Catalog) -> None:
    told = ask(catalog.doors["garden-pair"], catalog.families["cellular-shade"], {}, catalog.household)["verdicts"]
    assert said(told["child_safety"]["says"]) in ("Safe", "With care", "Unsafe")
    assert said(told["pair"]["says"]) in ("Matches", "Differs", "Cannot match")
    assert said(told["sight"]["says"]) in ("Hidden", "Partly seen")
    assert {verdict["state"] for verdict in told.values()} <= {"clears", "guide by hand", "caution", "blocked"}
