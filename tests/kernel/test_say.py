"""Lengths and other values as people read them; nothing is rounded in silence."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.kernel.message import say_working
from configurator.kernel.say import say_length, say_value
from configurator.kernel.shapes import Figure
from configurator.kernel.tongue import ENGLISH


@pytest.mark.parametrize(
    ("mm", "units", "said"),
    [
        (571.5, "in", "22 1/2 in"),
        (571.5, "mm", "571.5 mm"),
        (0.0, "in", "0 in"),
        (3.175, "in", "1/8 in"),
        (19.05, "in", "3/4 in"),
        (25.4, "in", "1 in"),
        (-3.175, "in", "-1/8 in"),
        (820.0, "in", "≈ 32 1/4 in"),
        (506.4125, "in", "19 15/16 in"),
        (-506.4125, "in", "-19 15/16 in"),
        (559.59375, "in", "22 1/32 in"),
        (559.196875, "in", "22 1/64 in"),
        (0.396875, "in", "1/64 in"),
        (571.6, "in", "≈ 22 1/2 in"),
        (12.34, "mm", "12.34 mm"),
        (568.325, "mm", "568.325 mm"),
        (25.4 / 3, "mm", "≈ 8.5 mm"),
        (-12.5, "mm", "-12.5 mm"),
        (0.0, "mm", "0 mm"),
    ],
)
def test_lengths(mm: float, units: str, said: str) -> None:
    assert say_length(mm, ENGLISH, units) == said


@given(st.integers(min_value=0, max_value=16000))
def test_what_a_tape_shows_is_said_exactly_in_lowest_terms(count: int) -> None:
    said = say_length(count * 25.4 / 64, ENGLISH, "in").removesuffix(" in")
    assert sum(Fraction(part) for part in said.split()) == Fraction(count, 64)
    assert all(part == str(Fraction(part)) for part in said.split())


@given(st.floats(min_value=0, max_value=5000))
def test_a_length_is_never_off_by_more_than_half_its_last_place(mm: float) -> None:
    said = say_length(mm, ENGLISH, "in").removesuffix(" in").removeprefix("≈ ")
    assert abs(float(sum(Fraction(part) for part in said.split())) * 25.4 - mm) <= 25.4 / 16 + 1e-9


@pytest.mark.parametrize(
    ("value", "unit", "units", "said"),
    [
        (5 * 88 * 25.4, "run", "in", "≈ 12.22 yd"),
        (5 * 88 * 25.4, "run", "mm", "≈ 11.18 m"),
        (54 * 25.4, "run", "in", "1.5 yd"),
        (2500.0, "run", "mm", "2.5 m"),
        (0.36e-6, "kg/mm2", "mm", "0.36 kg/m²"),
        (0.36e-6, "kg/mm2", "in", "≈ 0.033 kg/sq ft"),
        (0.5e-3, "kg/mm", "mm", "0.5 kg/m"),
        (0.5e-3, "kg/mm", "in", "≈ 0.152 kg/ft"),
    ],
)
def test_cloth_and_its_mass(value: float, unit: str, units: str, said: str) -> None:
    assert say_value(value, unit, ENGLISH, units) == said


@pytest.mark.parametrize(("units", "said"), [("in", "≈ 10.76 sq ft"), ("mm", "≈ 1 m²")])
def test_an_area_is_told_in_the_reader_s_units(units: str, said: str) -> None:
    assert say_value(1_000_000.0, "mm2", ENGLISH, units) == said


@pytest.mark.parametrize(
    ("value", "unit", "said"),
    [(0.634, "share", "63.4%"), (87.5, "deg", "87.5°"), (12.0, "count", "12"), (1.3, "kg", "1.3 kg")],
)
def test_other_units(value: float, unit: str, said: str) -> None:
    assert say_value(value, unit, ENGLISH, "mm") == said


def test_a_working_puts_every_term_in_and_ends_with_the_result() -> None:
    figure: Figure = {
        "id": "stack_height",
        "name": "stack height",
        "value": 76.2,
        "unit": "mm",
        "working": {"rule": "", "template": "{rail} + {cells}", "terms": {"rail": [25.4, "mm"], "cells": [50.8, "mm"]}},
    }
    assert say_working(figure, ENGLISH, "in").endswith("1 in + 2 in = 3 in")
