"""A leaf's pieces: what is glass and what is not, to the millimeter."""

import pytest

from configurator.catalog import load
from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import glass_box, leaf_pieces
from configurator.kernel.shapes import Door, Piece
from configurator.places import CONTENT

PRESET = load(CONTENT).doors["divided-lite-door"]
# Glass of 600 by 900 mm between three rows and two columns, its bars 20 mm wide.
DOOR: Door = {
    **PRESET,
    "glass_width": 600.0,
    "glass_height": 900.0,
    "muntin_columns": 2,
    "muntin_rows": 3,
    "muntin_width": 20.0,
}


def placed(pieces: list[Piece], kind: str) -> list[list[float]]:
    """Return where the pieces of a kind are, mm from the glass's lower corner at the hinge, low edges first."""
    glass = glass_box(DOOR)
    spans = [
        [
            round(piece["x0"] - glass["x0"], 3),
            round(piece["x1"] - glass["x0"], 3),
            round(piece["y0"] - glass["y0"], 3),
            round(piece["y1"] - glass["y0"], 3),
        ]
        for piece in pieces
        if piece["kind"] == kind
    ]
    return sorted(spans)


def test_bars_stand_between_the_lites_as_wide_as_they_are_said_to_be() -> None:
    # Three lites of 286 2/3 mm and two bars make up the 900 mm; two of 290 mm and one bar the 600 mm.
    lite = 860 / 3
    assert placed(leaf_pieces(DOOR), "muntin") == [
        [0.0, 600.0, round(lite, 3), round(lite + 20, 3)],
        [0.0, 600.0, round(2 * lite + 20, 3), round(2 * lite + 40, 3)],
        [290.0, 310.0, 0.0, 900.0],
    ]


def test_glass_shows_between_bars_and_nowhere_else() -> None:
    lites = placed(leaf_pieces(DOOR), "glass")
    assert len(lites) == 6
    area = sum((x1 - x0) * (y1 - y0) for x0, x1, y0, y1 in lites)
    assert round(area) == (2 * 290 * 860)
    assert {tuple(lite[:2]) for lite in lites} == {(0.0, 290.0), (310.0, 600.0)}


def test_bars_stand_from_the_pane_to_as_far_out_as_they_are_said_to() -> None:
    bars = [piece for piece in leaf_pieces(DOOR) if piece["kind"] == "muntin"]
    assert {(bar["z0"], bar["z1"]) for bar in bars} == {(-DOOR["glass_recess"], DOOR["muntin_projection"])}


@pytest.mark.parametrize("swing", ["in", "out"])
def test_a_hinge_stands_at_its_height_about_its_pin_on_the_face_to_which_the_leaf_opens(swing: str) -> None:
    door: Door = {**DOOR, "swing": swing, "hinge_pin_out": 11.0, "hinge_heights": [200.0, 1500.0]}
    hinges = [piece for piece in leaf_pieces(door) if piece["kind"] == "hinge"]
    assert [(one["y0"] + one["y1"]) / 2 for one in hinges] == [200.0, 1500.0]
    for one in hinges:
        wide, high = one["x1"] - one["x0"], one["y1"] - one["y0"]
        assert one["x0"] + wide / 2 == 0
        assert high > 4 * wide > 0
        face, outer = (one["z0"], one["z1"]) if swing == "in" else (one["z1"], one["z0"])
        assert face == (0 if swing == "in" else -door["leaf_thickness"])
        # The pin lies within the knuckle, as far out as it is measured.
        assert abs(outer - face) - wide / 2 == pytest.approx(11.0)


@pytest.mark.parametrize("kind", ["lever", "knob", "pull"])
def test_a_handle_s_parts_reach_from_the_leaf_to_as_far_out_as_each_is_measured(kind: str) -> None:
    handle = {**DOOR["handle"], "kind": kind, "turn_above": 90.0, "turn_width": 30.0, "turn_height": 40.0}
    handle |= {"plate_thickness": 8.0, "gap": 40.0, "projection": 60.0, "turn_projection": 25.0}
    pieces = handle_pieces({**DOOR, "handle": handle})  # type: ignore[typeddict-item]
    assert {piece["kind"]: [piece["z0"], piece["z1"]] for piece in pieces} == {
        "plate": [0.0, 8.0],
        "neck": [8.0, 40.0],
        "grip": [40.0, 60.0],
        "thumb-turn": [0.0, 25.0],
    }
    assert sum(piece["kind"] == "neck" for piece in pieces) == (2 if kind == "pull" else 1)
