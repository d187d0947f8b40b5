"""From open to closed: where a share of the way is, that closed is closed, and that the share is found again."""

import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.fit import pieces_at
from configurator.kernel.glass_shares import glass_shares
from configurator.kernel.mechanisms import family_legs
from configurator.kernel.mechanisms.legs import raised_legs
from configurator.kernel.mount.hung import hung
from configurator.kernel.position import (
    closed_position,
    open_position,
    part_value,
    position,
    position_at,
    share_at,
    with_part,
)
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Family
from configurator.kernel.tongue import ENGLISH
from configurator.kernel.whereabouts import place_words
from configurator.places import CONTENT

FAMILIES = [file.stem for file in sorted((CONTENT / "families").glob("*.yaml"))]
TURNED = ["metal-blind", "vertical-vanes", "wood-blind"]
SHARES = [step / 40 for step in range(41)]


@pytest.fixture(params=FAMILIES)
def family(request: pytest.FixtureRequest, catalog: Catalog) -> Family:
    """Each covering of the starter content."""
    return catalog.families[request.param]


def test_the_ends_of_the_way_are_open_and_closed(family: Family) -> None:
    numbers = resolve(family, {})
    assert position_at(numbers, 0.0) == open_position(numbers)
    assert position_at(numbers, 1.0) == closed_position(numbers)


def test_a_share_of_the_way_is_found_again_at_its_place(family: Family) -> None:
    numbers = resolve(family, {})
    if position_at(numbers, 0.0) == position_at(numbers, 1.0):
        return
    assert [share_at(numbers, position_at(numbers, share)) for share in SHARES] == pytest.approx(SHARES)


def test_all_the_way_along_the_glass_is_hidden_as_the_figures_of_closed_say(family: Family, catalog: Catalog) -> None:
    door = catalog.doors["garden-door"]
    fit = hung(door, family, {})
    shares = glass_shares(fit, pieces_at(fit, position_at(fit["numbers"], 1.0)))
    figures = ask(door, family, {}, catalog.household)["figures"]
    told = {name: figures[name]["value"] for name in ("visible_glass_closed", "view_closed", "light_closed")}
    assert [shares["visible"], shares["view"], shares["light"]] == pytest.approx(list(told.values()))


@pytest.mark.parametrize("ident", TURNED)
def test_what_comes_down_level_is_level_on_the_way_and_then_turned_shut(ident: str, catalog: Catalog) -> None:
    family = catalog.families[ident]
    numbers = resolve(family, {})
    legs = family_legs(family, numbers)
    told = [place_words(legs, position_at(numbers, share), ENGLISH) for share in (0.45, 0.9, 0.95, 1.0)]
    down = legs[0]["words"]["end"]
    assert "50%" in told[0]
    assert told[1] == f"{down}, level"
    assert told[2].startswith(f"{down}, tilted ")
    assert told[3] == f"{down}, closed"


def test_closed_the_other_way_is_closed_and_level_is_not(catalog: Catalog) -> None:
    numbers = resolve(catalog.families["wood-blind"], {})
    assert share_at(numbers, position(1.0, 0.0, numbers["tilt_far"])) == 1.0
    assert share_at(numbers, position(1.0, 0.0, 0.0)) == 0.9
    assert share_at(numbers, position(0.5, 0.0, numbers["tilt_closed"])) == 0.45


@pytest.mark.parametrize("moves", ["lower", "upper", "tilt"])
def test_one_part_moves_and_the_others_stay(moves: str) -> None:
    place = position(0.2, 0.1, 30.0)
    moved = with_part(place, moves, 0.7)
    assert part_value(moved, moves) == 0.7
    assert [part for part in ("lower", "upper", "tilt") if part_value(moved, part) != part_value(place, part)] == [
        moves
    ]


@pytest.mark.parametrize(("lower", "upper"), [(1.0, 0.0), (0.0, 1.0), (1.0, 1.0), (0.0, 0.0)])
def test_a_rail_that_does_not_travel_is_nothing_to_take_hold_of(lower: float, upper: float) -> None:
    legs = raised_legs({"lower_moves": lower, "upper_moves": upper, "tilt_moving": 0.0, "tilt_closed": 0.0})
    assert [leg["moves"] for leg in legs] == ["lower"] * (lower > 0) + ["upper"] * (upper > 0)
