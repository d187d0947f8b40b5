"""Louvers against rectangles built and turned by shapely."""

import itertools
import math

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from shapely import affinity, box
from shapely.geometry import Polygon

from configurator.kernel.mechanisms.blades import LENS_BLADE
from configurator.kernel.mechanisms.louver_figures import louver_figures
from configurator.kernel.mechanisms.louver_panel import panel_light
from configurator.kernel.shapes import Piece
from tests.kernel.mechanisms.mechanism_samples import at, fit_of, numbers_of, of_kind, pieces_of, size_of

WIDTHS = st.sampled_from([47.6, 63.5, 76.2, 88.9])


def panel_numbers(width: float, thickness: float = 11.0, depth: float = 28.0) -> dict[str, float]:
    """Return the numbers of a louvered panel."""
    return numbers_of(
        "louver-panel",
        louver_width=width,
        louver_pitch=width * 0.87,
        louver_thickness=thickness,
        panel_depth=depth,
        panel_stile=50.0,
        frame_width=20.0,
        headrail_height=90.0,
        rail_height=100.0,
        notch_frame=19.0,
    )


def turned(louver: Piece, width: float, thickness: float, tilt: float) -> Polygon:
    """Return a louver's lens in section (z, y), built flat about its center and turned."""
    z = (louver["z0"] + louver["z1"]) / 2
    y = (louver["y0"] + louver["y1"]) / 2
    flat = Polygon([(z + u * width / 2, y + v * thickness / 2) for u, v in LENS_BLADE])
    return affinity.rotate(flat, -tilt, origin=(z, y))


@settings(max_examples=40)
@given(WIDTHS, st.floats(6.0, 14.0), st.floats(-88.0, 88.0), st.floats(600.0, 2200.0))
def test_louver_boxes_bound_the_turned_lenses(width: float, thickness: float, tilt: float, height: float) -> None:
    pieces = pieces_of("louver-panel", panel_numbers(width, thickness), size_of(height=height), at(1.0, tilt))
    for louver in of_kind(pieces, "louver"):
        z0, y0, z1, y1 = turned(louver, width, thickness, tilt).bounds
        assert (louver["z0"], louver["z1"]) == pytest.approx((z0, z1), abs=1e-6)
        assert (louver["y0"], louver["y1"]) == pytest.approx((y0, y1), abs=1e-6)
        assert Polygon(louver["outline"]).within(turned(louver, width, thickness, tilt).buffer(1e-6))


@settings(max_examples=30)
@given(WIDTHS, st.floats(600.0, 2200.0))
def test_louvers_turn_past_each_other_and_the_rails(width: float, height: float) -> None:
    numbers = panel_numbers(width)
    size = size_of(height=height)
    bay = panel_light(fit_of("louver-panel", numbers, size))
    for tilt in range(-80, 81, 20):
        shapes = [
            turned(louver, width, 11.0, tilt)
            for louver in of_kind(pieces_of("louver-panel", numbers, size, at(1.0, tilt)), "louver")
        ]
        assert all(one.intersection(other).area < 1.0 for one, other in itertools.pairwise(shapes)) or abs(tilt) > 60
        assert min(shape.bounds[1] for shape in shapes) >= bay["y0"] - 1e-6
        assert max(shape.bounds[3] for shape in shapes) <= bay["y1"] + 1e-6


@given(WIDTHS, st.floats(6.0, 14.0), st.floats(20.0, 40.0))
def test_sweep_past_the_panel_is_that_of_the_turning_rectangle(width: float, thickness: float, depth: float) -> None:
    # A louver of width w in a panel of thickness T sweeps (w - T)/2 to each side, its thickness added by the diagonal.
    numbers = panel_numbers(width, thickness, depth)
    flat = box(-width / 2, -thickness / 2, width / 2, thickness / 2)
    reach = max(affinity.rotate(flat, step / 4, origin=(0, 0)).bounds[2] for step in range(360))
    told = louver_figures(fit_of("louver-panel", numbers, size_of()))
    found = next(figure["value"] for figure in told if figure["id"] == "louver_sweep")
    assert found == pytest.approx(max(0.0, reach - depth / 2), abs=0.01)
    assert found >= (width - depth) / 2
    assert found == pytest.approx(max(0.0, (math.hypot(width, thickness) - depth) / 2), abs=1e-9)
