"""The starter's metric doors against the preferred sizes.

published: DIN 18101 preferred sizes. A pair's size is that of both leaves and the joint.
published: German lock-case practice after DIN 18251 (backsets, handle to cylinder).
"""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.door.leaf import leaf_height, leaf_width

REBATED_WIDTHS = (610, 735, 860, 985, 1110)
REBATED_HEIGHTS = (1985, 2110)


def test_the_single_leaf_is_one_of_the_rebated_series(catalog: Catalog) -> None:
    door = catalog.doors["metric-single"]
    assert leaf_width(door) in REBATED_WIDTHS
    assert leaf_height(door) in REBATED_HEIGHTS


@pytest.mark.parametrize(
    ("name", "width", "height"), [("metric-pair-rebated", 1485, 1985), ("metric-pair-flush", 1459, 1972)]
)
def test_a_pair_fills_its_preferred_size(catalog: Catalog, name: str, width: float, height: float) -> None:
    door = catalog.doors[name]
    assert 2 * leaf_width(door) + door["meeting_gap"] == width
    assert leaf_height(door) == height


@pytest.mark.parametrize(
    ("name", "low", "high"),
    [("metric-single", 55, 55), ("metric-pair-flush", 65, 65), ("narrow-stile-door", 24, 35)],
)
def test_backsets_are_those_of_lock_cases(catalog: Catalog, name: str, low: float, high: float) -> None:
    assert low <= catalog.doors[name]["backset"] <= high


@pytest.mark.parametrize(("handle", "down"), [("multipoint-lever", 92), ("slim-lever", 72)])
def test_a_long_plate_lies_between_handle_and_cylinder(catalog: Catalog, handle: str, down: float) -> None:
    assert catalog.handles[handle]["plate_below"] * 2 == down
