"""What a client wants, judged by published rules, and the picks that answer it best."""

import itertools

import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import answer_to, ask
from configurator.kernel.mount.hung import hung
from configurator.kernel.needs import NEEDS, is_met, need_score, needs, questions_for
from configurator.kernel.needs.ids import NEED_IDS
from configurator.kernel.needs.matching import Match, best_match, costliest_wish, match_on, matching_for
from configurator.kernel.resolve import full_choices
from configurator.kernel.shapes import Answer, Family

DOOR = "garden-door"


def answered(catalog: Catalog, family: str, **choices: str) -> tuple[Answer, Family]:
    """Return a family's answer on a door with some picks."""
    return ask(catalog.doors[DOOR], catalog.families[family], choices, catalog.household), catalog.families[family]


def test_links_carry_every_need_by_an_id() -> None:
    assert list(needs()) == NEED_IDS


@pytest.mark.parametrize(
    ("need", "family", "choices", "score"),
    [
        # Shares of the glass as the figures tell them: a cellular shade shows nothing of the view and lets 38 % of the
        # light through, 1 % with foil in its cells.
        ("day", "cellular-shade", {}, 1.0),
        ("night", "cellular-shade", {}, 1.0),
        ("dark", "cellular-shade", {}, 1 - 0.38),
        ("dark", "cellular-shade", {"fabric": "harbour"}, 1 - 0.01),
        ("cool", "cellular-shade", {"fabric": "harbour"}, 1 - 0.01),
        # Two layers hold still air between them; one does not.
        ("warm", "cellular-shade", {}, 1.0),
        ("warm", "roller-shade", {}, 0.5),
        # 1 1/4 in deep, against 8 in.
        ("flat", "cellular-shade", {}, 1 - 1.25 / 8),
        # Cordless, the hand follows the rail down to 222.25 mm above the floor, against 381 mm.
        ("bending", "cellular-shade", {}, 222.25 / 381),
        ("children", "cellular-shade", {}, 1.0),
        # Price level 2 of 4, dusted, torn by a cat: as its file says.
        ("price", "cellular-shade", {}, 2 / 3),
        ("cleaning", "cellular-shade", {}, 0.75),
        ("animals", "cellular-shade", {}, 0.0),
    ],
)
def test_a_rule_worked_by_hand(catalog: Catalog, need: str, family: str, choices: dict[str, str], score: float) -> None:
    assert need_score(need, *answered(catalog, family, **choices)) == pytest.approx(score, abs=1e-9)


@pytest.mark.parametrize("need", NEED_IDS)
def test_its_own_questions_answer_a_need(catalog: Catalog, need: str) -> None:
    for key, family in catalog.families.items():
        for door in ("garden-door", "garden-pair"):
            fit = hung(catalog.doors[door], family, {})
            own = answer_to(questions_for([need]), fit, catalog.household)
            whole = ask(catalog.doors[door], family, {}, catalog.household)
            assert need_score(need, own, family) == need_score(need, whole, family), (key, door)


def test_what_cannot_go_on_the_door_meets_nothing(catalog: Catalog) -> None:
    narrow = {**catalog.doors[DOOR], "glass_width": 110.0}
    family = catalog.families["louvered-shutter"]
    answer = ask(narrow, family, {}, catalog.household)
    assert {need_score(need, answer, family) for need in NEEDS} == {0.0}


def test_nearly_every_family_can_darken_and_the_search_finds_it(catalog: Catalog) -> None:
    door = catalog.doors[DOOR]
    found = {
        key for key, family in catalog.families.items() if best_match(door, family, catalog.household, ["dark"])["met"]
    }
    assert len(found) == 14
    assert set(catalog.families) - found == {"vertical-vanes"}


@pytest.mark.parametrize("family", ["louvered-shutter", "sliding-panels", "wood-blind"])
@pytest.mark.parametrize("wanted", [["dark", "handle"], ["view", "flat"], ["bending", "children", "day"]])
def test_no_other_picks_meet_more(catalog: Catalog, family: str, wanted: list[str]) -> None:
    door, own = catalog.doors[DOOR], catalog.families[family]
    best = best_match(door, own, catalog.household, wanted)
    options = [[(choice["id"], option["id"]) for option in choice["options"]] for choice in own["choices"]]
    for picks in itertools.product(*options):
        answer = ask(door, own, dict(picks), catalog.household)
        met = [need for need in wanted if is_met(need, need_score(need, answer, own))]
        assert len(met) <= len(best["met"]), picks


def test_first_picks_stay_where_no_others_are_better(catalog: Catalog) -> None:
    family = catalog.families["cellular-shade"]
    best = best_match(catalog.doors[DOOR], family, catalog.household, ["day", "children"])
    assert best["choices"] == full_choices(family, {})


@pytest.mark.parametrize(("wanted", "count"), [(["price"], 1), (["price", "children"], 1), (["dark"], 4)])
def test_nothing_is_asked_once_other_picks_could_gain_next_to_nothing(
    catalog: Catalog, wanted: list[str], count: int
) -> None:
    # No picks change a price level. Of the cloths, which hang as the first does, the fourth has foil in its cells and
    # keeps out all but 1 % of the light: no pick could gain more than that.
    family = catalog.families["cellular-shade"]
    search = matching_for(catalog.doors[DOOR], family, catalog.household, wanted)
    while not search["done"]:
        match_on(search)
    assert len(search["asked"]) == count
    assert search["asked"][-1] == search["best"][0]


def match_of(*met: str) -> Match:
    """Return a match that meets some needs."""
    return {"family": "", "choices": {}, "answer": None, "scores": {}, "met": list(met), "weight": 0.0}  # type: ignore[typeddict-item]


def test_the_wish_that_costs_most_is_the_one_without_which_most_would_match() -> None:
    wanted = ["view", "dark", "flat"]
    assert (
        costliest_wish([match_of("view", "dark"), match_of("view", "dark"), match_of("dark", "flat")], wanted) == "flat"
    )
    assert costliest_wish([match_of(*wanted), match_of("view")], wanted) == ""
    assert costliest_wish([match_of("view"), match_of()], wanted) == ""
