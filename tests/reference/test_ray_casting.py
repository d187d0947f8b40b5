"""Shares of the glass against level rays cast through the pieces' own cuts."""

import math

import numpy as np
import pytest

from configurator.catalog import load
from configurator.kernel.fit import pieces_at
from configurator.kernel.glass_shares import glass_shares
from configurator.kernel.mechanisms.blades import LENS_BLADE
from configurator.kernel.message import is_said
from configurator.kernel.mount.hung import hung
from configurator.kernel.position import along, closed_position, open_position, position
from configurator.kernel.shapes import Fit, Piece
from configurator.places import CONTENT
from tests.reference.rays import cast, crossed, rays_over

CATALOG = load(CONTENT)
DOORS = ["garden-door", "divided-lite-door", "garden-pair", "sidelight-door"]
OFFERED = [family["id"] for family in CATALOG.families.values() if not family["retired"]]
NEAR = 0.001


def fit_on(door: str, family: str, **picks: str) -> Fit:
    """Return a starter family hung on a starter door."""
    return hung(CATALOG.doors[door], CATALOG.families[family], picks)


def turning(family: str) -> bool:
    """Return whether parts of a family turn."""
    return any(leg["way"] == "turn" for leg in fit_on(DOORS[0], family)["legs"])


TILTING = [family for family in OFFERED if turning(family)]


def assert_as_cast(fit: Fit, pieces: list[Piece]) -> None:
    """Check the three shares against rays."""
    shares = glass_shares(fit, pieces)
    for what, rays in cast(fit, pieces).items():
        assert dict(shares)[what] == pytest.approx(rays, abs=NEAR), what


@pytest.mark.parametrize("door", DOORS)
@pytest.mark.parametrize("family", OFFERED)
def test_every_family_open_and_closed_and_along_its_travel(family: str, door: str) -> None:
    fit = fit_on(door, family)
    if is_said(fit["size"]["refusal"]):
        assert pieces_at(fit, open_position(fit["numbers"])) == []
        return
    places = [open_position(fit["numbers"]), closed_position(fit["numbers"])]
    places += [along(leg, share) for leg in fit["legs"] for share in (0.13, 0.5, 0.87)]
    for place in places:
        assert_as_cast(fit, pieces_at(fit, place))


@pytest.mark.parametrize("tilt", [-88, -70, -55, -40, -20, -5, 0, 10, 25, 40, 50, 65, 75, 90])
@pytest.mark.parametrize("family", TILTING)
def test_what_turns_at_every_tilt(family: str, tilt: float) -> None:
    fit = fit_on("garden-door", family)
    assert_as_cast(fit, pieces_at(fit, position(1.0, 0.0, float(tilt))))
    if fit["numbers"]["lower_moves"] > 0:
        assert_as_cast(fit, pieces_at(fit, position(0.6, 0.0, float(tilt))))


def lens_share(numbers: dict[str, float], pitch: float, tilt: float) -> float:
    """Return the share of the rays that pass between louvers a pitch apart, each lens built flat and turned here."""
    turn = math.radians(tilt)
    half, thick = numbers["louver_width"] / 2, numbers["louver_thickness"] / 2
    heights = rays_over([[0.0, pitch]], 3)
    lens = [[0.0, v * thick * math.cos(turn) - u * half * math.sin(turn)] for u, v in LENS_BLADE]
    met = np.zeros(len(heights), dtype=bool)
    for louver in range(-2, 4):
        met |= crossed(lens, 1, louver * pitch, heights)
    return 1.0 - float(met.mean())


def test_lenses_let_through_three_times_what_their_rectangles_would_at_forty_degrees() -> None:
    fit = fit_on("garden-door", "louvered-shutter")
    numbers = fit["numbers"]
    first, second = [piece for piece in pieces_at(fit, position(1.0, 0.0, 40.0)) if piece["kind"] == "louver"][:2]
    pitch = second["y0"] - first["y0"]
    told = 1 - (first["y1"] - first["y0"]) / pitch
    assert told == pytest.approx(lens_share(numbers, pitch, 40.0), abs=NEAR)
    turn = math.radians(40.0)
    oblong = numbers["louver_width"] * math.sin(turn) + numbers["louver_thickness"] * math.cos(turn)
    assert told > 0.2
    assert 1 - oblong / pitch < 0.07
