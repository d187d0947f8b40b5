import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask_fit
from configurator.kernel.contact import air_between
from configurator.kernel.fit import pieces_at
from configurator.kernel.mount.hold_down import catch_hold
from configurator.kernel.mount.hung import hung
from configurator.kernel.position import closed_position, open_position
from configurator.kernel.shapes import Family, Fit, Piece
from tests.kernel.mechanisms.mechanism_samples import of_kind
from tests.kernel.mount.mount_samples import cellular, family_of, hung_with, shutter, stretched
from tests.kernel.questions.question_samples import DOOR, HOUSEHOLD, INCH, door_with, said

ROLLER = {"tube": 32.0, "cloth_thickness": 0.5, "headrail_depth": 70.0, "rail_height": 25.0, "rail_depth": 8.0}


def roller(**given: float) -> Family:
    """Return a roller without a cassette, its cloth 15 mm narrower than its brackets on either side."""
    return family_of("rolled", **(ROLLER | {"overlap_bottom": 40.0, "hold_down": 1.0} | given))


def catches(fit: Fit) -> list[Piece]:
    """Return the hold-downs as they stand."""
    return of_kind(pieces_at(fit, closed_position(fit["numbers"])), "hold-down")


def rail(fit: Fit) -> Piece:
    """Return the bottom rail where it comes when down."""
    return of_kind(pieces_at(fit, closed_position(fit["numbers"])), "bottom-rail")[0]


def test_they_stand_within_the_bar_of_a_rolled_cloth_which_is_narrower_than_its_headrail() -> None:
    fit = hung_with(DOOR, roller())
    bar = rail(fit)
    assert bar["x0"] == pytest.approx(fit["size"]["x0"] + 15.0)
    for one in catches(fit):
        assert bar["x0"] - 1e-9 <= one["x0"]
        assert one["x1"] <= bar["x1"] + 1e-9


def test_one_worked_by_hand() -> None:
    # 1 in headrail and 3/4 in rail on a flat bead: the rail's middle hangs 12.7 mm out, so a 3/8 in catch needs a
    # spacer for 3.2 mm: one of 1/4 in. Its front then lies 15.9 mm out, within the rail's 3.2 to 22.2 mm.
    fit = hung_with(DOOR, cellular(hold_down=1.0, hold_down_depth=0.375 * INCH, hold_down_height=INCH))
    low = fit["size"]["y0"]
    for one in catches(fit):
        assert one["z1"] == pytest.approx(0.25 * INCH + 0.375 * INCH)
        assert [one["y0"], one["y1"]] == pytest.approx([low - INCH, low])
    answer = ask_fit(fit, HOUSEHOLD)
    values = {key: figure["value"] for key, figure in answer["figures"].items()}
    assert values["hold_down_spacer"] == pytest.approx(0.25 * INCH)
    assert values["hold_down_height"] == pytest.approx(low - INCH / 2)
    assert values["hold_down_hinge"] == values["hold_down_latch"] == pytest.approx(7.5)
    assert values["hold_down_screw"] == pytest.approx(2.0 + 0.25 * INCH + INCH)


def test_they_touch_the_rail_when_down_and_stay_behind_when_it_rises() -> None:
    fit = hung_with(DOOR, cellular(hold_down=1.0))
    for one in catches(fit):
        assert air_between(one, rail(fit)) == pytest.approx(0.0)
    raised = pieces_at(fit, open_position(fit["numbers"]))
    assert of_kind(raised, "hold-down") == catches(fit)


def test_every_hold_down_of_every_starter_family_touches_its_bar_and_stands_on_the_leaf(catalog: Catalog) -> None:
    met = 0
    for door in catalog.doors.values():
        for family in catalog.families.values():
            wanted = [choice for choice in family["choices"] if choice["id"] == "hold-down"]
            for option in [option["id"] for choice in wanted for option in choice["options"][1:]]:
                fit = hung(door, family, {"hold-down": option})
                if said(fit["size"]["refusal"]):
                    continue
                met += 1
                bar = rail(fit)
                for one in catches(fit):
                    assert air_between(one, bar) == pytest.approx(0.0, abs=1e-6), (door["id"], family["id"], option)
                    # It reaches under the bar's middle, on whole stock spacers.
                    assert one["z1"] >= (bar["z0"] + bar["z1"]) / 2 - 1e-6
                    stack = (one["z1"] - fit["numbers"]["hold_down_depth"]) / fit["numbers"]["spacer_step"]
                    assert stack == pytest.approx(round(stack))
    assert met > 200


def test_over_the_opening_there_is_nothing_to_hold_it_to() -> None:
    fit = hung_with(door_with(wall_gap=900.0), cellular(hold_down=1.0, over_opening=1.0))
    assert "Over the opening there is nothing" in said(fit["size"]["refusal"])


@pytest.mark.parametrize("family", [stretched(hold_down=1.0), shutter(hold_down=1.0)])
def test_what_has_no_bottom_rail_is_refused_them(family: Family) -> None:
    assert "need a bottom rail" in said(hung_with(DOOR, family)["size"]["refusal"])


def test_a_bar_that_hangs_too_far_out_is_refused_with_the_measure() -> None:
    # Under a headrail of 120 mm the rail's middle hangs 60 mm out: 45 mm past the catch, and two spacers give 12.7.
    fit = hung_with(DOOR, cellular(hold_down=1.0, headrail_depth=120.0, spacer_most=0.5 * INCH))
    words = said(fit["size"]["refusal"])
    assert words.startswith("The bottom rail hangs too far out for hold-downs")
    assert "against 1/2 in" in words


def test_no_wood_under_the_rail_is_the_reason() -> None:
    # The foot of the covering lies 3 mm above the leaf's lower edge.
    low = door_with(rail_bottom=0.5 * INCH, bead_width=0.5 * INCH)
    words = said(hung_with(low, cellular(hold_down=1.0, overlap_bottom=60.0))["size"]["refusal"])
    assert words.startswith("There is no wood for the hold-downs")


@pytest.mark.parametrize("wide", [300.0, 800.0])
def test_a_catch_is_slid_within_its_own_quarter_of_the_rail(wide: float) -> None:
    fit = hung_with(DOOR, cellular(hold_down=1.0))
    half = fit["numbers"]["hold_down_width"] / 2
    bar: Piece = {**rail(fit), "x0": 100.0, "x1": 100.0 + wide}
    hinge, latch = (catch_hold(fit, bar, side) for side in (False, True))
    assert hinge["across"] == pytest.approx([100.0 + half, 100.0 + wide / 4])
    assert latch["across"] == pytest.approx([100.0 + wide - wide / 4, 100.0 + wide - half])
    assert (hinge["x"], latch["x"]) == (hinge["across"][0], latch["across"][1])
