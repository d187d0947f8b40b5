"""Doors at the ends of what a client may type: an answer or a plain reason, and a drawing, never a crash."""

import math
from copy import deepcopy
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from configurator.catalog import load
from configurator.catalog.family_bounds import check_bounds
from configurator.catalog.family_numbers import marker_of, takes_of
from configurator.catalog.located import ContentFile
from configurator.kernel.answer import ask
from configurator.kernel.mechanisms.bounds import UNITS_MOST
from configurator.kernel.message import is_said
from configurator.kernel.mount.hung import hung
from configurator.kernel.scene import scene_at
from configurator.kernel.shapes import Door, Family
from configurator.kernel.tape.table import DOOR_COUNTS, DOOR_LIMITS, DOOR_WORDS, HANDLE_LIMITS
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.draft import drafted
from configurator.kernel.views.sheet import sheet_of
from configurator.kernel.views.subject import subject
from configurator.places import CONTENT
from tests.cases import random_choices

CATALOG = load(CONTENT)
# Two layers of bands, each clear and solid; all else has fewer.
PIECES_MOST = 4 * UNITS_MOST + 20


def extreme_door(rng: Random) -> Door:
    """Return a preset door with some of its measurements at, or anywhere between, their limits."""
    door = deepcopy(rng.choice(list(CATALOG.doors.values())))
    for name, words in DOOR_WORDS.items():
        door[name] = rng.choice([door[name], rng.choice(list(words["options"]))])
    share = rng.choice([0.05, 0.2, 0.7])
    for shape, limits in ((door, DOOR_LIMITS), (door["handle"], HANDLE_LIMITS)):
        for name, (low, high) in limits.items():
            if rng.random() < share:
                value = rng.choice([low, high, rng.uniform(low, high)])
                shape[name] = int(value) if name in DOOR_COUNTS else value
    return door


def extreme_family(rng: Random) -> Family:
    """Return a family of the starter content with some of its numbers at their limits, wherever they are set."""
    family = deepcopy(rng.choice(list(CATALOG.families.values())))
    takes = takes_of(family["mechanism"])
    for name in rng.sample(sorted(family["numbers"]), rng.choice([1, 1, 1, 2, 4])):
        marker = marker_of(takes[name])
        value = rng.choice([marker.low, marker.high])
        options = [option["numbers"] for choice in family["choices"] for option in choice["options"]]
        for numbers in [family["numbers"], *(numbers for numbers in options if name in numbers)]:
            numbers[name] = value
    return family


def is_refused(family: Family) -> bool:
    """Return whether the check refuses a family for what its numbers are to each other."""
    file = ContentFile("any.yaml")
    check_bounds(file, family)
    return bool(file.problems)


@given(st.integers(0, 999_999))
def test_a_family_at_its_limits_is_refused_or_comes_out(number: int) -> None:
    rng = Random(number)
    family = extreme_family(rng)
    if not is_refused(family):
        comes_out(rng.choice(list(CATALOG.doors.values())), family, random_choices(rng, family))


def test_vanes_that_overlap_wider_than_their_opening_still_have_a_stack_on_either_side() -> None:
    family = deepcopy(CATALOG.families["vertical-vanes"])
    family["numbers"]["vane_thickness"] = 10_000.0
    comes_out(CATALOG.doors["metric-pair-flush"], family, {"draw": "pair"})
    assert is_refused(family)


@given(st.integers(0, 999_999))
def test_whatever_can_be_typed_has_an_answer_and_a_drawing(number: int) -> None:
    rng = Random(number)
    door = extreme_door(rng)
    family = rng.choice(list(CATALOG.families.values()))
    choices = random_choices(rng, family)
    comes_out(door, family, choices)


def comes_out(door: Door, family: Family, choices: dict[str, str]) -> None:
    """Check that a covering has an answer or a plain reason, and a drawing, of a number of parts that has its bound."""
    answer = ask(door, family, choices, CATALOG.household)
    assert is_said(answer["refusal"]) != bool(answer["figures"])
    for name, figure in answer["figures"].items():
        assert math.isfinite(figure["value"]), name
        assert figure["value"] >= 0, name
        assert figure["unit"] != "share" or figure["value"] <= 1 + 1e-9, name
    pieces = scene_at(hung(door, family, choices), answer["closed"])["covering"]
    assert len(pieces) <= PIECES_MOST
    for piece in pieces:
        assert piece["count"] <= UNITS_MOST + 1, piece["kind"]
        assert all(piece[axis + "0"] <= piece[axis + "1"] + 1e-9 for axis in "xyz"), piece["kind"]
    given = subject(hung(door, family, choices), answer["open"], CATALOG.household, ENGLISH)
    drawn = sheet_of(drafted(door, given, ENGLISH, "in"))
    assert all(math.isfinite(value) for mark in drawn["marks"] for value in mark["points"])
