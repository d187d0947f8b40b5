"""Level rays cast through the cuts of a covering's pieces, with numpy: boxes are looked at only where a cut is one."""

import numpy as np
from numpy.typing import NDArray

from configurator.kernel.door.opening import covered_rows, covered_spans
from configurator.kernel.fit import over_opening
from configurator.kernel.shapes import Fit, Piece

Numbers = NDArray[np.float64]
Hits = NDArray[np.bool_]
# Millimetres between two rays. They are jittered, or a pitch that is a multiple of it would count one way for every louver.
SPACING = 0.05


def rays_over(spans: list[list[float]], seed: int) -> Numbers:
    """Return where rays cross the spans, one at random in each stretch of the spacing."""
    random = np.random.default_rng(seed)
    places = []
    for low, high in spans:
        count = max(1, round((high - low) / SPACING))
        places.append(low + (np.arange(count) + random.random(count)) * (high - low) / count)
    return np.concatenate(places)


def crossed(points: list[list[float]], along: int, places: Numbers) -> Hits:
    """Return which rays meet a closed polygon: those that some side of it straddles."""
    met = np.zeros(len(places), dtype=bool)
    for one, other in zip(points, points[1:] + points[:1], strict=True):
        low, high = sorted((one[along], other[along]))
        met |= (places > low) & (places < high)
    return met


def met_along(piece: Piece, axis: str, places: Numbers) -> Hits:
    """Return which rays at these places along ``x`` or ``y`` meet a piece: its own cut where that lies across them."""
    low, high = piece[axis + "0"], piece[axis + "1"]  # type: ignore[literal-required]
    cut = piece["outline"]
    if not cut or piece["axis"] == axis:
        return (places > low) & (places < high)
    along = 1 if axis == "y" else 0
    met = np.zeros(len(places), dtype=bool)
    for unit in range(piece["count"]):
        moved = [[value + unit * piece["pitch"] * (i == along) for i, value in enumerate(point)] for point in cut]
        met |= crossed(moved, along, places)
    return met


def patterns(pieces: list[Piece], axis: str, places: Numbers) -> tuple[Hits, Numbers]:
    """Return the different sets of pieces that rays meet along an axis, and what share of the rays meets each."""
    met = np.array([met_along(piece, axis, places) for piece in pieces])
    kinds, counts = np.unique(met, axis=1, return_counts=True)
    return kinds, counts / len(places)


def cast(fit: Fit, pieces: list[Piece], what: str) -> float:
    """Return the mean of what comes through over all rays: ``view``, ``light``, or ``visible`` for those that meet none."""
    across, widths = patterns(pieces, "x", rays_over(covered_spans(fit["door"], over_opening(fit)), 1))
    up, heights = patterns(pieces, "y", rays_over(covered_rows(fit["door"]), 2))
    through = np.array([0.0 if what == "visible" else piece["optics"][what] for piece in pieces])  # type: ignore[literal-required]
    total = 0.0
    for column, width in zip(across.T, widths, strict=True):
        left = np.where(up[column], through[column][:, None], 1.0).prod(axis=0)
        total += width * float((left * heights).sum())
    return total
