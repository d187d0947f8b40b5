"""Every dimension tells what lies between its ticks on the paper."""

import pytest

from configurator.catalog import load
from configurator.kernel.mount.hung import hung
from configurator.kernel.position import closed_position, open_position, position_at
from configurator.kernel.resolve import resolve
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.draft import drafted
from configurator.kernel.views.measure_elevation import measure_elevation
from configurator.kernel.views.measure_plan import measure_plan
from configurator.kernel.views.measure_section import measure_section
from configurator.kernel.views.people import measure_people
from configurator.kernel.views.subject import subject
from configurator.places import CONTENT
from tests.drawing.drawing_doors import DOORS, HOUSEHOLD, door_like
from tests.drawing.drawing_samples import every_drawing
from tests.drawing.readings import read_back

CATALOG = load(CONTENT)
ALL_DOORS = CATALOG.doors | DOORS | {"level muntins": door_like(muntin_rows=3, muntin_projection=5.0)}
MEASURED = [measure_elevation, measure_section, measure_plan]
PLACES = (open_position, lambda numbers: position_at(numbers, 0.4), closed_position)


@pytest.mark.parametrize("door", ALL_DOORS)
def test_every_dimension_of_a_covering_tells_the_length_that_is_drawn(door: str) -> None:
    # Every family is seen at each place, each time on other doors, in either unit.
    for number, family in enumerate(CATALOG.families.values(), list(ALL_DOORS).index(door)):
        place = PLACES[number % len(PLACES)](resolve(family, {}))
        given = subject(hung(ALL_DOORS[door], family, {}), place, CATALOG.household, ENGLISH)
        drawings = every_drawing(drafted(ALL_DOORS[door], given, ENGLISH, ("in", "mm")[number % 2]))
        assert sum(len(read_back(drawing)) for drawing in drawings.values()) > 10, family["id"]


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize("door", ALL_DOORS)
@pytest.mark.parametrize("view", MEASURED)
def test_every_dimension_to_measure_tells_the_length_that_is_drawn(view, door: str, units: str) -> None:
    assert read_back(view(ALL_DOORS[door], ENGLISH, units)) != []


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize("level", [-300.0, 0.0, 150.0])
def test_the_people_are_drawn_as_tall_and_as_far_apart_as_is_told(level: float, units: str) -> None:
    drawing = measure_people({**HOUSEHOLD, "outside_level": level}, DOORS["single"], ENGLISH, units)
    assert len(read_back(drawing)) == 6
