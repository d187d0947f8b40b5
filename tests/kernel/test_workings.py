"""Every figure's working, evaluated term by term, gives the figure, for any door, family, picks and household."""

import re

import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.catalog import load
from configurator.kernel.answer import ask
from configurator.kernel.message import say_working
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT
from tests.cases import seeded_case
from tests.workings import worked_out

CATALOG = load(CONTENT)


@given(st.integers(0, 999_999))
def test_every_working_gives_its_figure_and_names_only_its_terms(number: int) -> None:
    case = seeded_case(CATALOG, 7, number)
    answer = ask(case["door"], case["family"], case["choices"], case["household"])
    for key, figure in answer["figures"].items():
        assert worked_out(figure) == pytest.approx(figure["value"], rel=1e-9, abs=1e-6), key
        working = figure["working"]
        named = set(re.findall(r"{(\w+)}", working["rule"] + working["template"]))
        assert named <= set(working["terms"]), key
        assert "{" not in say_working(figure, ENGLISH, case["units"]), key
