"""Random configurations of the starter content, the same for the same seed, for parity and property tests."""

import random
from copy import deepcopy
from typing import Any, TypedDict

from hypothesis import strategies as st

from configurator.catalog import Catalog
from configurator.kernel.mechanisms import family_legs
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Door, Family, Household, Leg, Position
from configurator.kernel.tape.table import DOOR_LIMITS, HANDLE_LIMITS, HOUSEHOLD_LIMITS

EIGHTH = 25.4 / 8


class Case(TypedDict):
    """What the kernel is asked: all of it plain JSON."""

    door: Door
    family: Family
    choices: dict[str, str]
    place: Position
    household: Household
    units: str


def measured(rng: random.Random, preset: float, limits: list[float]) -> float:
    """Return a measurement near its preset: a length in eighths of an inch, in millimeters or in no step at all."""
    value = preset * rng.uniform(0.85, 1.15)
    if limits[1] > 10:
        value = rng.choice([value, float(round(value)), round(value / EIGHTH) * EIGHTH])
    return min(max(value, limits[0]), limits[1])


def remeasured(rng: random.Random, shape: Any, limits: dict[str, list[float]], share: float) -> None:
    """Measure a share of a shape's lengths anew."""
    for name, span in limits.items():
        if isinstance(shape[name], float) and rng.random() < share:
            shape[name] = measured(rng, shape[name], span)


def random_door(rng: random.Random, catalog: Catalog) -> Door:
    """Return a preset door, as it comes or measured anew, with any handle, hand and swing."""
    door = deepcopy(rng.choice(list(catalog.doors.values())))
    if rng.random() < 0.5:
        door["handle"] = deepcopy(rng.choice(list(catalog.handles.values())))
    if rng.random() < 0.4:
        door["hinge_side"] = rng.choice(["left", "right"])
    if rng.random() < 0.4:
        door["swing"] = rng.choice(["in", "out"])
        door["stop_lap"] = 12.7 if door["swing"] == "out" else 0.0
    for name in ("bead_projection", "muntin_projection", "reveal"):
        if rng.random() < 0.1:
            door[name] = rng.uniform(0, 40)
    share = rng.choice([0, 0, 0.1, 0.5, 1])
    remeasured(rng, door, DOOR_LIMITS, share)
    remeasured(rng, door["handle"], HANDLE_LIMITS, share)
    door["handle"]["projection"] = max(door["handle"]["projection"], door["handle"]["gap"] + 1)
    return door


def random_choices(rng: random.Random, family: Family) -> dict[str, str]:
    """Return any pick of every choice; sometimes some are left to the preset."""
    picks = {choice["id"]: rng.choice(choice["options"])["id"] for choice in family["choices"]}
    return {name: pick for name, pick in picks.items() if rng.random() < 0.9}


def random_place(rng: random.Random, legs: list[Leg]) -> Position:
    """Return any position, those at the ends of the travel among them."""
    tilts = [leg[end]["tilt"] for leg in legs for end in ("start", "end")] or [0.0]
    return {
        "lower": rng.choice([0.0, 1.0, rng.random()]),
        "upper": rng.choice([0.0, 0.0, 1.0, rng.random()]),
        "tilt": rng.choice([min(tilts), max(tilts), rng.uniform(min(tilts), max(tilts))]),
        "coarse": False,
    }


def random_case(rng: random.Random, catalog: Catalog, family: Family | None = None) -> Case:
    """Return one configuration, of the given family or of any."""
    chosen = family or rng.choice(list(catalog.families.values()))
    choices = random_choices(rng, chosen)
    household = deepcopy(catalog.household)
    remeasured(rng, household, HOUSEHOLD_LIMITS, rng.choice([0, 0.5]))
    return {
        "door": random_door(rng, catalog),
        "family": chosen,
        "choices": choices,
        "place": random_place(rng, family_legs(chosen, resolve(chosen, choices))),
        "household": household,
        "units": rng.choice(["in", "mm"]),
    }


def seeded_case(catalog: Catalog, seed: int, number: int) -> Case:
    """Return the numbered case of a seed, by itself; families take turns."""
    families = list(catalog.families.values())
    return random_case(random.Random(f"{seed} {number}"), catalog, families[number % len(families)])


def cases(catalog: Catalog, family: Family | None = None) -> st.SearchStrategy[Case]:
    """Return a hypothesis strategy over the same configurations."""
    return st.randoms(use_true_random=False).map(lambda rng: random_case(rng, catalog, family))
