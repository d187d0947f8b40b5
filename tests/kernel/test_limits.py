"""Doors at the ends of what a client may type: an answer or a plain reason, and a drawing, never a crash."""

import math
from copy import deepcopy
from random import Random

from hypothesis import given
from hypothesis import strategies as st

from configurator.catalog import load
from configurator.kernel.answer import ask
from configurator.kernel.message import is_said
from configurator.kernel.mount.hung import hung
from configurator.kernel.scene import scene_at
from configurator.kernel.shapes import Door
from configurator.kernel.tape.table import DOOR_COUNTS, DOOR_LIMITS, DOOR_WORDS, HANDLE_LIMITS
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.views.draft import drafted
from configurator.kernel.views.sheet import sheet_of
from configurator.kernel.views.subject import subject
from configurator.places import CONTENT
from tests.cases import random_choices

CATALOG = load(CONTENT)


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


@given(st.integers(0, 999_999))
def test_whatever_can_be_typed_has_an_answer_and_a_drawing(number: int) -> None:
    rng = Random(number)
    door = extreme_door(rng)
    family = rng.choice(list(CATALOG.families.values()))
    choices = random_choices(rng, family)
    answer = ask(door, family, choices, CATALOG.household)
    assert is_said(answer["refusal"]) != bool(answer["figures"])
    for name, figure in answer["figures"].items():
        assert math.isfinite(figure["value"]), name
        assert figure["value"] >= 0, name
        assert figure["unit"] != "share" or figure["value"] <= 1 + 1e-9, name
    for piece in scene_at(hung(door, family, choices), answer["closed"])["covering"]:
        assert all(piece[axis + "0"] <= piece[axis + "1"] + 1e-9 for axis in "xyz"), piece["kind"]
    given = subject(hung(door, family, choices), answer["open"], CATALOG.household, ENGLISH)
    drawn = sheet_of(drafted(door, given, ENGLISH, "in"))
    assert all(math.isfinite(value) for mark in drawn["marks"] for value in mark["points"])
