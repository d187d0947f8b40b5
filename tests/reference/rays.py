"""Level rays cast through the cuts of a covering's pieces, with numpy: a box is looked at only where it is the cut."""

from typing import Any

import numpy as np
from numpy.typing import NDArray

from configurator.kernel.door.opening import covered_rows, covered_spans
from configurator.kernel.fit import over_opening
from configurator.kernel.shapes import Fit, Piece

Numbers = NDArray[np.float64]
Hits = NDArray[np.bool_]
# Millimeters between two rays. They are jittered: a pitch of whole spacings would err the same way at every louver.
SPACING = 0.05


def rays_over(spans: list[list[float]], seed: int) -> Numbers:
    """Return where rays cross the spans, in order: one at random in each stretch of the spacing."""
    random = np.random.default_rng(seed)
    places = []
    for low, high in spans:
        count = max(1, round((high - low) / SPACING))
        places.append(low + (np.arange(count) + random.random(count)) * (high - low) / count)
    return np.sort(np.concatenate(places))


def crossed(points: list[list[float]], along: int, shift: float, places: Numbers) -> Hits:
    """Return which rays meet a closed polygon, shifted: those that some side of it straddles."""
    met = np.zeros(len(places), dtype=bool)
    for one, other in zip(points, points[1:] + points[:1], strict=True):
        low, high = np.searchsorted(places, sorted((one[along] + shift, other[along] + shift)))
        met[low:high] = True
    return met


def met_along(piece: dict[str, Any], axis: str, places: Numbers) -> Hits:
    """Return which rays at these places along ``x`` or ``y`` meet a piece: its own cut where that lies across them."""
    cut = piece["outline"]
    if not cut or piece["axis"] == axis:
        return (places > piece[axis + "0"]) & (places < piece[axis + "1"])
    met = np.zeros(len(places), dtype=bool)
    for unit in range(piece["count"]):
        met |= crossed(cut, 1 if axis == "y" else 0, unit * piece["pitch"], places)
    return met


def patterns(pieces: list[Piece], axis: str, places: Numbers) -> tuple[Hits, Numbers]:
    """Return which pieces neighboring rays meet along an axis, run by run, and each run's share of the rays."""
    met = np.array([met_along(dict(piece), axis, places) for piece in pieces])
    starts = np.concatenate([[0], 1 + np.flatnonzero((met[:, 1:] != met[:, :-1]).any(axis=0))])
    return met[:, starts], np.diff(np.append(starts, len(places))) / len(places)


def cast(fit: Fit, pieces: list[Piece]) -> dict[str, float]:
    """Return the mean of what comes through over all rays: of view, of light, and of the rays that meet nothing."""
    across, widths = patterns(pieces, "x", rays_over(covered_spans(fit["door"], over_opening(fit)), 1))
    up, heights = patterns(pieces, "y", rays_over(covered_rows(fit["door"]), 2))
    optics = [dict(piece["optics"]) | {"visible": 0.0} for piece in pieces]
    found = {}
    for what in ("visible", "view", "light"):
        through = np.array([each[what] for each in optics])[:, None]
        found[what] = 0.0
        for column, width in zip(across.T, widths, strict=True):
            left = np.where(up[column], through[column], 1.0).prod(axis=0)
            found[what] += float(width * (left * heights).sum())
    return found
