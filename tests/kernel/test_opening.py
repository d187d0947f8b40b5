"""An opening's pieces fill it: no gap between wood and glass, nothing twice, and both halves alike."""

import pytest
from shapely import Polygon, box, unary_union

from configurator.catalog import load
from configurator.kernel.door.leaf import leaf_box, leaf_width
from configurator.kernel.door.obstacles import behind_opening, stands_out_most
from configurator.kernel.door.opening import covered_rows, covered_spans, opening_box, opening_hardware, opening_pieces
from configurator.kernel.shapes import Door, Piece
from configurator.places import CONTENT
from tests.drawing.drawing_doors import DOORS

BARRED: Door = {**DOORS["pair"], "muntin_columns": 2, "muntin_rows": 3}
BESIDE: Door = {**DOORS["sidelights"], "muntin_columns": 2, "muntin_rows": 3, "muntin_projection": 4.0}
OPENINGS = load(CONTENT).doors | DOORS | {"barred pair": BARRED, "barred sidelights": BESIDE}
FLAT = ("stile", "rail", "bead", "glass", "muntin")


def faces(door: Door, *kinds: str) -> list[Polygon]:
    """Return the pieces of some kinds as they are seen from the room."""
    return [
        box(one["x0"], one["y0"], one["x1"], one["y1"])
        for one in opening_pieces(door)
        if one["kind"] in kinds or not kinds
    ]


def outline(piece: Piece) -> tuple[float, ...]:
    """Return a piece's box, to a millionth of a millimeter."""
    return tuple(round(piece[edge], 6) for edge in ("x0", "x1", "y0", "y1", "z0", "z1"))  # type: ignore[literal-required]


@pytest.mark.parametrize("name", OPENINGS)
def test_wood_and_glass_fill_the_opening_and_nothing_stands_there_twice(name: str) -> None:
    door = OPENINGS[name]
    leaf, opening = leaf_box(door), opening_box(door)
    filled = unary_union(faces(door, *FLAT))
    joint = door["meeting_gap"] if door["layout"] in ("pair", "fixed-pair") else 0.0
    assert filled.bounds == pytest.approx((opening["x0"], leaf["y0"], opening["x1"], leaf["y1"]))
    assert filled.area == pytest.approx((opening["x1"] - opening["x0"] - joint) * (leaf["y1"] - leaf["y0"]))
    # Bars cross each other, and nothing else does.
    alone = [*faces(door, "stile", "rail", "bead", "glass"), unary_union(faces(door, "muntin"))]
    assert sum(face.area for face in alone) == pytest.approx(filled.area)
    assert opening["y1"] == pytest.approx(leaf["y1"] + door["head_gap"])


@pytest.mark.parametrize("name", OPENINGS)
def test_glass_is_counted_where_it_stands(name: str) -> None:
    door = OPENINGS[name]
    counted = [box(x0, y0, x1, y1) for x0, x1 in covered_spans(door, True) for y0, y1 in covered_rows(door)]
    glass = unary_union(faces(door, "glass"))
    # Sidelights have no upright bars of their own.
    assert unary_union(counted).symmetric_difference(glass).area == pytest.approx(0.0, abs=1e-3)
    own = [span for span in covered_spans(door, True) if span[0] >= 0 and span[1] <= leaf_width(door)]
    assert covered_spans(door, False) == own


@pytest.mark.parametrize("name", [name for name in OPENINGS if OPENINGS[name]["layout"] == "pair"])
def test_both_leaves_of_a_pair_are_one_another_s_mirror(name: str) -> None:
    door: Door = {**OPENINGS[name], "passive_handle": True}
    across = 2 * leaf_width(door) + door["meeting_gap"]
    pieces = [*opening_pieces(door), *opening_hardware(door)]
    other = [{**piece, "x0": across - piece["x1"], "x1": across - piece["x0"]} for piece in pieces]
    assert sorted(map(outline, pieces)) == sorted(map(outline, other))  # type: ignore[arg-type]


@pytest.mark.parametrize("name", OPENINGS)
def test_nothing_behind_a_covering_over_the_opening_stands_out_further_than_is_told(name: str) -> None:
    door = OPENINGS[name]
    most = max(piece["z1"] for piece in behind_opening(door))
    # Hinges and a stop that this door has not are reckoned with too.
    assert most <= stands_out_most(door) + 1e-9
    for bare in ("bead_projection", "muntin_projection", "astragal_projection"):
        assert stands_out_most({**door, bare: 300.0}) == 300.0  # type: ignore[typeddict-unknown-key]
