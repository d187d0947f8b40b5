"""Visible glass, view and light against shapely's unions of the pieces over the glass."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import MultiPolygon, Polygon, box, union_all

from configurator.kernel.door.opening import opening_box, opening_pieces
from configurator.kernel.glass_shares import glass_shares
from configurator.kernel.pieces import box as piece_box
from configurator.kernel.pieces import optics
from configurator.kernel.shapes import Door, Piece
from tests.kernel.questions.question_samples import door_with, fit_with, size_with


def glass_of(door: Door, whole: bool) -> MultiPolygon:
    """Return the glass of the active leaf, or of the whole opening, as the door's own pieces show it."""
    panes = [p for p in opening_pieces(door) if p["kind"] == "glass"]
    width = sum(door[part] for part in ("stile_hinge", "stile_latch", "glass_width")) + 2 * door["bead_width"]
    own = [p for p in panes if whole or (p["x0"] > 0 and p["x1"] < width)]
    return MultiPolygon([box(p["x0"], p["y0"], p["x1"], p["y1"]) for p in own])


def face(piece: Piece) -> Polygon:
    """Return a piece as it is seen from the room."""
    return box(piece["x0"], piece["y0"], piece["x1"], piece["y1"])


def mean_through(glass: MultiPolygon, pieces: list[Piece], what: str) -> float:
    """Return the mean of what comes through, by cutting the glass along every piece."""
    parts = [(glass, 1.0)]
    for piece in pieces:
        cut = []
        for shape, through in parts:
            cut.append((shape.difference(face(piece)), through))
            cut.append((shape.intersection(face(piece)), through * piece["optics"][what]))
        parts = [(shape, through) for shape, through in cut if not shape.is_empty]
    return sum(shape.area * through for shape, through in parts) / glass.area


@st.composite
def dressed_doors(draw: st.DrawFn) -> tuple[Door, bool, list[Piece]]:
    """A door of any layout, with random pieces before it."""
    door = door_with(
        layout=draw(st.sampled_from(["single", "pair", "fixed-pair", "sidelights"])),
        muntin_columns=draw(st.integers(1, 3)),
        muntin_rows=draw(st.integers(1, 5)),
        muntin_width=22.0,
        sidelight_width=300.0,
        sidelight_glass_width=180.0,
    )
    bounds = opening_box(door)
    pieces = []
    for _ in range(draw(st.integers(0, 7))):
        # Whole eighths of a millimeter: shapely's overlays stumble over edges that all but meet.
        x0 = draw(st.integers(int(bounds["x0"]) * 8 - 800, int(bounds["x1"]) * 8)) / 8
        y0 = draw(st.integers(-800, int(bounds["y1"]) * 8)) / 8
        x1 = x0 + draw(st.integers(8, 7200)) / 8
        y1 = y0 + draw(st.integers(8, 15_200)) / 8
        through = draw(st.sampled_from([0.0, 0.2, 0.5, 1.0]))
        pieces.append(piece_box("covering", "fabric", [[x0, x1], [y0, y1], [0.0, 20.0]], optics(through, through / 2)))
    return door, draw(st.booleans()), pieces


@settings(max_examples=80)
@given(dressed_doors())
def test_shares_of_the_glass_against_polygons(dressed: tuple[Door, bool, list[Piece]]) -> None:
    door, whole, pieces = dressed
    glass = glass_of(door, whole)
    shares = glass_shares(fit_with(door, size_with("over-opening" if whole else "on-leaf")), pieces)
    assert shares["area"] == pytest.approx(glass.area)
    uncovered = glass.difference(union_all([face(piece) for piece in pieces])) if len(pieces) > 0 else glass
    assert shares["visible"] == pytest.approx(uncovered.area / glass.area, abs=1e-9)
    assert shares["view"] == pytest.approx(mean_through(glass, pieces, "view"), abs=1e-9)
    assert shares["light"] == pytest.approx(mean_through(glass, pieces, "light"), abs=1e-9)
