"""The nearest place to the handle is solved: no dense scan of the travel finds a nearer one."""

import random

import pytest

from configurator.catalog import load
from configurator.kernel.contact import clustered, nearest_of
from configurator.kernel.fit import pieces_at
from configurator.kernel.message import is_said
from configurator.kernel.mount.hung import hung
from configurator.kernel.position import along
from configurator.kernel.shapes import Fit, Sample
from configurator.kernel.travel import travelled
from configurator.places import CONTENT
from tests.cases import seeded_case

CATALOG = load(CONTENT)
STEPS = 2000
# What the scan itself may miss between two of its steps: half of one, of a travel of no more than 3 m.
BETWEEN = 3000.0 / STEPS / 2
SOLVED = 0.1


def scanned(fit: Fit) -> float:
    """Return the least air at the handle over the travel, looked for at two thousand places of every leg."""
    least = 1e9
    for number, leg in enumerate(fit["legs"]):
        for step in range(STEPS + 1):
            place = along(leg, step / STEPS) | {"coarse": True}
            sample: Sample = {"leg": number, "at": step / STEPS, "pieces": pieces_at(fit, place)}
            least = min(least, nearest_of(sample, clustered(fit["handle"]))["air"])
    return least


def assert_solved(fit: Fit) -> None:
    """Check that the solved air is no more than the scanned one, and less only by what the scan may miss."""
    if is_said(fit["size"]["refusal"]) or len(fit["legs"]) == 0:
        return
    solved = travelled(fit)["handle"]["air"]
    found = scanned(fit)
    assert solved <= found + SOLVED
    assert solved >= found - BETWEEN


def starter_fits() -> list[tuple[str, str, str, str]]:
    """Return every family with every single pick on every door, by their ids, shuffled the same way every time."""
    every = [
        (door, family["id"], choice["id"], option["id"])
        for door in CATALOG.doors
        for family in CATALOG.families.values()
        for choice in family["choices"]
        for option in choice["options"]
    ]
    random.Random(1).shuffle(every)
    return every


@pytest.mark.parametrize("part", range(4))
def test_no_scan_of_a_starter_fit_finds_a_nearer_place(part: int) -> None:
    for door, family, choice, option in starter_fits()[part * 40 : part * 40 + 40]:
        assert_solved(hung(CATALOG.doors[door], CATALOG.families[family], {choice: option}))


@pytest.mark.parametrize("part", range(4))
def test_no_scan_of_a_random_fit_finds_a_nearer_place(part: int) -> None:
    for number in range(part * 40, part * 40 + 40):
        case = seeded_case(CATALOG, 11, number)
        assert_solved(hung(case["door"], case["family"], case["choices"]))


def test_gathered_folds_do_not_slip_between_two_steps() -> None:
    # The bundle of a flat-fold shade rides above its rail: as first chosen it stands in the lever of a garden pair.
    answer = travelled(hung(CATALOG.doors["garden-pair"], CATALOG.families["flat-fold-shade"], {}))
    assert answer["handle"]["piece"]["kind"] == "fold"
    assert answer["handle"]["air"] < -10
