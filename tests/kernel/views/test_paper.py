"""Whatever is drawn, its words stay legible and nothing leaves the paper."""

import pytest

from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.measure_elevation import measure_elevation
from configurator.kernel.views.measure_plan import measure_plan
from configurator.kernel.views.measure_section import measure_section
from configurator.kernel.views.people import measure_people
from tests.drawing.drawing_doors import DOORS, HOUSEHOLD
from tests.drawing.drawing_samples import COVERINGS, PLACES, draft_of, every_drawing
from tests.drawing.paper_marks import clashes, outside


@pytest.mark.parametrize("door", DOORS)
def test_words_never_meet_a_line_or_each_other_and_nothing_leaves_the_paper(door: str) -> None:
    # Every covering is seen at each place, each time on other doors, in either unit.
    for number, covering in enumerate(COVERINGS, list(DOORS).index(door)):
        at = PLACES[number % len(PLACES)]
        for view, drawing in every_drawing(draft_of(DOORS[door], covering, at, ("in", "mm")[number % 2])).items():
            assert clashes(drawing) == [], (view, covering, at)
            assert outside(drawing) == [], (view, covering, at)


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize("door", DOORS)
@pytest.mark.parametrize("view", [measure_elevation, measure_section, measure_plan])
def test_measured_drawings_are_legible(view, door: str, units: str) -> None:
    drawing = view(DOORS[door], ENGLISH, units)
    assert clashes(drawing) == []
    assert outside(drawing) == []


@pytest.mark.parametrize("units", ["in", "mm"])
@pytest.mark.parametrize("level", [-300.0, -150.0, 0.0, 150.0])
@pytest.mark.parametrize("door", DOORS)
def test_the_people_stand_clear_of_their_measures(door: str, level: float, units: str) -> None:
    drawing = measure_people({**HOUSEHOLD, "outside_level": level}, DOORS[door], ENGLISH, units)
    assert clashes(drawing) == []
    assert outside(drawing) == []
