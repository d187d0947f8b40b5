"""Any two fabrics, and any two families, are told apart by their pictures alone, at a card's size.

What a picture says at a glance is the color of its small squares. Two pictures lie apart by what their most unlike
squares differ in, of 255: the largest difference of red, green and blue, on average over the fiftieth part of the
squares.
"""

from itertools import combinations

import numpy as np
import pytest
from numpy.typing import NDArray

from configurator.catalog import Catalog
from configurator.catalog.kernel_look import lines_of
from configurator.drawing.png import to_image
from configurator.kernel.shapes import Drawing, Look
from tests.drawing.starter_drawings import Shown, drawn, looks

CARD, SQUARE = 150, 6
MOST_UNLIKE = 0.02
# Invented: by how much two pictures must lie apart.
APART = 8.0
# How wide a drawing stands on a sheet, px, and how far the lines between blades lie from what they part, of 255.
LARGE, STRIPES = 700, 12.0
# The same of vanes that are half turned between sheers, on a card of a screen with two pixels to one.
FINE_CARD, VANES = 300, 24.0
# What holds a door on a page that shows all coverings on it, mm.
ON_ONE_DOOR = {"x": -120.0, "y": -2260.0, "width": 1160.0, "height": 2300.0}
PALE, DARK = "#f1ede2", "#64676d"


def squares(drawing: Drawing) -> NDArray[np.float64]:
    """Return the mean colors of a picture's small squares."""
    pixels = np.asarray(to_image(drawing, CARD).convert("RGB"), dtype=float)
    high, wide = (side // SQUARE for side in pixels.shape[:2])
    fitting = pixels[: high * SQUARE, : wide * SQUARE]
    means: NDArray[np.float64] = fitting.reshape(high, SQUARE, wide, SQUARE, 3).mean((1, 3))
    return means


def apart(one: NDArray[np.float64], other: NDArray[np.float64]) -> float:
    """Return how far two pictures of one size lie apart."""
    differences = np.sort(np.abs(one - other).max(2).ravel())
    return float(differences[-int(len(differences) * MOST_UNLIKE) :].mean())


def alike(pictures: dict[str, NDArray[np.float64]]) -> list[tuple[str, str, float]]:
    """Return which pictures are not told apart."""
    pairs = [(one, other, apart(pictures[one], pictures[other])) for one, other in combinations(pictures, 2)]
    return [pair for pair in pairs if pair[2] < APART]


def stripes(catalog: Catalog, shown: Shown, width: int) -> float:
    """Return how far apart light and dark lie down the middle of the glass, of 255, in a picture so wide."""
    pixels = np.asarray(to_image(drawn(catalog, shown), width).convert("L"), dtype=float)
    high, wide = pixels.shape
    # Past the tree and above the handle.
    run = pixels[int(high * 0.5) : int(high * 0.7), int(wide * 0.42) : int(wide * 0.46)].mean(1)
    return float(run.max() - run.min())


@pytest.mark.parametrize("place", ["half", "closed"])
def test_any_two_fabrics_of_a_family_are_told_apart(catalog: Catalog, place: str) -> None:
    found = []
    for ident, family in catalog.families.items():
        options = [option for picks in looks(family) for option in picks.values()]
        shown = [Shown(ident, option, "elevation", place) for option in options]
        found.extend(alike({f"{ident} {each.option}": squares(drawn(catalog, each)) for each in shown}))
    assert found == []


@pytest.mark.parametrize("color", [PALE, DARK])
@pytest.mark.parametrize("place", ["half", "closed"])
def test_any_two_families_are_told_apart_by_their_form_alone(catalog: Catalog, place: str, color: str) -> None:
    """All in one look, on one door."""
    look: Look = {"color": color, **lines_of(color), "weave": "plain", "luster": "matte"}  # type: ignore[typeddict-item]
    pictures = {}
    for ident, family in catalog.families.items():
        first = next(iter(looks(family)[0].values()))
        drawing = drawn(catalog, Shown(ident, first, "elevation", place))
        pictures[ident] = squares({**drawing, **ON_ONE_DOOR, "look": look})  # type: ignore[typeddict-item]
    assert len(pictures) == 15
    assert alike(pictures) == []


@pytest.mark.parametrize(
    "blades",
    [
        ("metal-blind", "bronze"),
        ("wood-blind", "cherry"),
        ("louvered-shutter", "walnut"),
        ("vane-sheer-shade", "thunder"),
    ],
)
def test_dark_blades_stay_blades_when_they_are_closed(catalog: Catalog, blades: tuple[str, str]) -> None:
    assert stripes(catalog, Shown(*blades, "elevation", "closed"), LARGE) > STRIPES


@pytest.mark.parametrize("option", ["feather", "almond", "thunder"])
def test_vanes_between_sheers_are_seen_when_they_are_half_turned(catalog: Catalog, option: str) -> None:
    assert stripes(catalog, Shown("vane-sheer-shade", option, "elevation", "turned"), FINE_CARD) > VANES
