"""Every dimension tells what lies between its ticks on the paper."""

import pytest

from configurator.catalog import load
from configurator.kernel.mount.hung import hung
from configurator.kernel.position import closed_position, open_position, position_at
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Drawing
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.draft import drafted
from configurator.kernel.views.measure_elevation import measure_elevation
from configurator.kernel.views.measure_plan import measure_plan
from configurator.kernel.views.measure_section import measure_section
from configurator.kernel.views.people import measure_people
from configurator.kernel.views.subject import subject
from configurator.places import CONTENT
from tests.drawing.drawing_doors import DOORS, HOUSEHOLD, door_like
from tests.drawing.drawing_samples import VIEWS
from tests.drawing.readings import readings, unread, untrue

CATALOG = load(CONTENT)
ALL_DOORS = CATALOG.doors | DOORS | {"level muntins": door_like(muntin_rows=3, muntin_projection=5.0)}
MEASURED = [measure_elevation, measure_section, measure_plan]


def drawings(door: str, family: str, units: str) -> list[Drawing]:
    """Return every view of a starter family on a door: open, on its way and closed."""
    one, covering = ALL_DOORS[door], CATALOG.families[family]
    numbers = resolve(covering, {})
    result: list[Drawing] = []
    for place in (open_position(numbers), position_at(numbers, 0.4), closed_position(numbers)):
        draft = drafted(one, subject(hung(one, covering, {}), place, CATALOG.household, ENGLISH), ENGLISH, units)
        result += [view(draft) for view in VIEWS.values()]
    return result


@pytest.mark.parametrize("door", ALL_DOORS)
def test_every_dimension_of_a_covering_tells_the_length_that_is_drawn(door: str) -> None:
    for number, family in enumerate(CATALOG.families):
        for drawing in drawings(door, family, ("in", "mm")[number % 2]):
            assert untrue(drawing) == [], (drawing["id"], family)
            assert unread(drawing) == 0, (drawing["id"], family)


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize("door", ALL_DOORS)
@pytest.mark.parametrize("view", MEASURED)
def test_every_dimension_to_measure_tells_the_length_that_is_drawn(view, door: str, units: str) -> None:
    drawing = view(ALL_DOORS[door], ENGLISH, units)
    assert readings(drawing) != []
    assert untrue(drawing) == []
    assert unread(drawing) == 0


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize("level", [-300.0, 0.0, 150.0])
def test_the_people_are_drawn_as_tall_and_as_far_apart_as_is_told(level: float, units: str) -> None:
    drawing = measure_people({**HOUSEHOLD, "outside_level": level}, DOORS["single"], ENGLISH, units)
    assert len(readings(drawing)) == 6
    assert untrue(drawing) == []
    assert unread(drawing) == 0
