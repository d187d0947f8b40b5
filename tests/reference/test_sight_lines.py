"""Sight lines against shapely's intersections of the lines with the glass."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from shapely import LineString

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.questions.sight import sight_band
from configurator.kernel.shapes import Household
from tests.kernel.questions.question_samples import DOOR

households = st.fixed_dictionaries(
    {
        "shoulder_height": st.just(1400.0),
        "person_height": st.floats(900.0, 2000.0),
        "person_distance": st.floats(100.0, 8000.0),
        "outside_eye": st.floats(1000.0, 1800.0),
        "outside_distance": st.floats(100.0, 50_000.0),
        "outside_level": st.floats(-6000.0, 8000.0),
    }
)


@given(households)
def test_the_band_against_intersections(household: Household) -> None:
    glass = glass_box(DOOR)
    pane = LineString([(0.0, -1e6), (0.0, 1e6)])
    eye = (-household["outside_distance"], household["outside_level"] + household["outside_eye"])
    expected = []
    for height in (0.0, household["person_height"]):
        crossing = LineString([eye, (household["person_distance"], height)]).intersection(pane)
        expected.append(min(max(crossing.y, glass["y0"]), glass["y1"]))
    assert sight_band(DOOR, household) == pytest.approx(expected, abs=1e-5)


@given(households, st.floats(0.0, 1.0))
def test_no_line_to_the_person_passes_outside_the_band(household: Household, share: float) -> None:
    glass = glass_box(DOOR)
    pane = LineString([(0.0, glass["y0"]), (0.0, glass["y1"])])
    eye = (-household["outside_distance"], household["outside_level"] + household["outside_eye"])
    line = LineString([eye, (household["person_distance"], household["person_height"] * share)])
    low, high = sight_band(DOOR, household)
    crossing = line.intersection(pane)
    if not crossing.is_empty:
        assert low - 1e-5 <= crossing.y <= high + 1e-5
