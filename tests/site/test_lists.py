"""What lists are ordered and sifted by, and which door stands for all: rules that hold for any showroom."""

import itertools
from collections.abc import Iterable
from dataclasses import replace
from typing import Any

import pytest

from configurator.catalog import load
from configurator.kernel.guidance import binding_cautions
from configurator.kernel.shapes import Door
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.drawings.subjects import appeal, clears_all, first_pair, first_single, room_subject
from configurator.site.house import House
from configurator.site.kinds.compare import NO_FIT, STATES, best_first
from configurator.site.kinds.coverings_page import order, wants
from configurator.site.kinds.door_page import by_state, door_page, guidance_on, of_the_door
from configurator.site.kinds.fitted_page import fitted
from configurator.site.kinds.search_words import covering_words

CATALOG = load(CONTENT)
HOUSE = House(CATALOG, CONTENT, Answers())
CORDLESS = CATALOG.families["cellular-shade"]
# Figures that fulfil no wish but those for nothing in the way.
PLAIN = {"visible_glass_open": 0.5, "projection_most": 100.0, "light_closed": 0.1, "view_closed": 0.5}


def line(name: str = "Shade", state: str = "blocked", **figures: float) -> Any:
    """Return a line of a comparison with some of its figures; nothing is known of what does not fit."""
    fits = state != NO_FIT
    values = {**PLAIN, **figures} if fits else {}
    return {
        "name": name,
        "state": state,
        "says": state,
        "rank": STATES.index(state),
        "refusal": "" if fits else "It is too wide.",
        "figures": {key: {"value": value} for key, value in values.items()},
    }


def test_a_comparison_has_the_best_verdict_first_then_the_clearest_then_by_name() -> None:
    ranked = [
        line("D", "clears", visible_glass_open=0.9),
        line("B", "clears", visible_glass_open=0.8),
        line("C", "clears", visible_glass_open=0.8),
        line("A", "guide by hand", visible_glass_open=1.0),
        line("E", "caution", visible_glass_open=0.2),
        line("A", "blocked", visible_glass_open=1.0),
        line("A", NO_FIT),
    ]
    assert best_first(ranked[::-1]) == ranked
    assert best_first([*ranked[3:], *ranked[:3]]) == ranked
    groups = by_state(ranked)
    assert [group["state"] for group in groups] == list(STATES)
    assert [one for group in groups for one in group["families"]] == ranked
    assert by_state(ranked[:1])[0]["families"] == ranked[:1]


@pytest.mark.parametrize("key", ["clear", "low", "dark", "bright"])
def test_whatever_coverings_are_ordered_by_what_does_not_fit_comes_last(key: str) -> None:
    # As bad as a covering can be: 2 m out into the room, all light let in or none.
    worst = [line(visible_glass_open=0.0, projection_most=2000.0, light_closed=light) for light in (0.0, 1.0)]
    assert order(line(state=NO_FIT))[key] > max(order(one)[key] for one in worst)


@pytest.mark.parametrize(
    ("key", "figure", "better", "worse"),
    [
        ("clear", "visible_glass_open", 0.9, 0.8),
        ("low", "projection_most", 40.0, 41.0),
        ("dark", "light_closed", 0.1, 0.2),
        ("bright", "light_closed", 0.2, 0.1),
    ],
)
def test_an_order_has_more_of_what_is_wanted_first(key: str, figure: str, better: float, worse: float) -> None:
    assert order(line(**{figure: better}))[key] < order(line(**{figure: worse}))[key]


@pytest.mark.parametrize(
    ("wish", "met", "missed"),
    [
        ("passes", {"state": "caution"}, {"state": "blocked"}),
        ("clears", {"visible_glass_open": 0.9}, {"visible_glass_open": 0.899}),
        ("low", {"projection_most": 45.0}, {"projection_most": 45.1}),
        ("private", {"view_closed": 0.05, "light_closed": 0.15}, {"view_closed": 0.051, "light_closed": 0.15}),
        ("private", {"view_closed": 0.05, "light_closed": 0.15}, {"view_closed": 0.05, "light_closed": 0.149}),
        ("dark", {"light_closed": 0.05}, {"light_closed": 0.051}),
        # What sidelights leave bare counts.
        ("dark", {"light_closed": 0.9, "light_closed_opening": 0.05}, {"light_closed_opening": 0.051}),
        (
            "private",
            {"light_closed": 0.2, "view_closed_opening": 0.05},
            {"light_closed": 0.2, "view_closed": 0.0, "view_closed_opening": 0.06},
        ),
    ],
)
def test_a_wish_is_fulfilled_up_to_its_limit(wish: str, met: dict[str, Any], missed: dict[str, Any]) -> None:
    assert set(wants(line(**met), CORDLESS)) - {"cordless"} == {wish}
    assert wish not in wants(line(**missed), CORDLESS)


@pytest.mark.parametrize("keys", [["cord_length"], ["loop_length"], ["cord_length", "loop_length"]])
def test_any_cord_or_loop_is_a_cord(keys: list[str]) -> None:
    corded: Any = {
        **CORDLESS,
        "choices": [],
        "numbers": {**CORDLESS["numbers"], "cord_length": 0.0, "loop_length": 0.0},
    }
    assert "cordless" in wants(line(), corded)
    assert "cordless" not in wants(line(), {**corded, "numbers": corded["numbers"] | dict.fromkeys(keys, 1.0)})


def test_what_goes_on_nothing_fulfils_no_wish() -> None:
    assert wants(line(state=NO_FIT), CORDLESS) == []


def test_what_is_to_be_minded_on_a_door_is_what_every_covering_there_has() -> None:
    def answer(*notes: tuple[str, bool]) -> Any:
        return {"cautions": [{"id": name, "general": general} for name, general in notes]}

    way_out, cord, sun = ("way_out", False), ("cord", False), ("sun", True)
    answers = [answer(way_out, cord, sun), answer(cord, way_out), answer(way_out, sun)]
    assert [note["id"] for note in of_the_door(answers)] == ["way_out"]
    assert [note["id"] for note in of_the_door(answers[:2])] == ["way_out", "cord"]
    assert [note["id"] for note in guidance_on(answers)] == ["sun"]


def test_a_page_s_cautions_are_those_of_its_answer() -> None:
    door, family = CATALOG.doors["garden-pair"], CATALOG.families["traversing-drapery"]
    page, answer = fitted(HOUSE, door, family), HOUSE.answer(door, family)
    assert page["cautions"] == binding_cautions(answer["cautions"])
    assert [note for note in answer["cautions"] if note not in page["cautions"]] == page["guidance"]
    states = {verdict["state"] for verdict in page["settled"]}
    assert states <= {"clears"}
    assert "clears" not in {verdict["state"] for verdict in page["open_questions"]}
    told = [*page["settled"], *page["open_questions"], page["passing"]]
    assert sorted(verdict["id"] for verdict in told if verdict) == sorted(answer["verdicts"])


def test_what_does_not_go_on_a_door_has_a_reason_and_neither_drawing_nor_price() -> None:
    narrow: Door = {**CATALOG.doors["garden-door"], "glass_width": 170.0}
    house = House(replace(CATALOG, doors={"garden-door": narrow}), CONTENT, Answers())
    blind, shade = (house.catalog.families[name] for name in ("wood-blind", "cellular-shade"))
    refused, sound = fitted(house, narrow, blind), fitted(house, narrow, shade)
    assert refused["refusal"]
    assert [refused["key"], refused["plates"], refused["figures"], refused["price"]] == [[], [], [], None]
    assert not sound["refusal"]
    assert all([sound["key"], sound["plates"], sound["figures"]])
    lines = {one["family"]: one for one in door_page(house, narrow)["families"]}
    assert [lines[name]["state"] == NO_FIT for name in ("wood-blind", "cellular-shade")] == [True, False]
    assert "when-open" in lines["cellular-shade"]["svg"], "open and closed"
    assert "when-open" not in lines["wood-blind"]["svg"], "the door alone"


def test_coverings_are_leafed_through_in_one_row() -> None:
    door = CATALOG.doors["garden-pair"]
    pages = [fitted(HOUSE, door, family) for family in HOUSE.families]
    assert pages[0]["before"] is None
    assert pages[-1]["after"] is None
    for (one, page), (other, following) in itertools.pairwise(zip(HOUSE.families, pages, strict=True)):
        assert page["after"] == {"name": other["name"], "url": f"doors/{door['id']}/{other['id']}.html"}
        assert following["before"] == {"name": one["name"], "url": f"doors/{door['id']}/{one['id']}.html"}


def test_the_options_that_are_drawn_are_the_ones_marked_and_told() -> None:
    door, family = CATALOG.doors["garden-pair"], CATALOG.families["cellular-shade"]
    page = fitted(HOUSE, door, family)
    marked = [[option["name"] for option in choice["options"] if option["chosen"]] for choice in page["choices"]]
    assert all(len(names) == 1 for names in marked)
    names = [choice["name"] for choice in page["choices"]]
    assert page["chosen"] == [f"{name}: {drawn[0]}" for name, drawn in zip(names, marked, strict=True)]
    assert all(not option["why"] for choice in page["choices"] for option in choice["options"] if option["chosen"])


def of_doors(doors: Iterable[str]) -> House:
    """Return a showroom of some of the doors, in their order."""
    return House(replace(CATALOG, doors={name: CATALOG.doors[name] for name in doors}), CONTENT, Answers())


def test_a_single_undivided_door_stands_for_all_and_a_pair_for_the_showroom() -> None:
    divided, pair, single = "divided-lite-door", "garden-pair", "garden-door"
    assert CATALOG.doors[divided]["layout"] == "single"
    for names in itertools.permutations((divided, pair, single)):
        assert first_single(of_doors(names))["id"] == single
        assert first_pair(of_doors(names))["id"] == pair
    assert first_single(of_doors([pair, divided]))["id"] == divided
    assert first_single(of_doors([pair]))["id"] == pair
    assert first_pair(of_doors([divided, single]))["id"] == divided


def test_the_first_page_opens_with_the_dearest_and_clearest_that_clears_on_a_pair() -> None:
    for names in (["garden-door", "garden-pair"], ["garden-pair", "garden-door"], ["garden-door"]):
        house = of_doors(names)
        door, family = room_subject(house)
        assert clears_all(house, door, family)
        assert door["layout"] == ("pair" if "garden-pair" in names else "single")
        here = [appeal(house, door, other) for other in house.families]
        assert appeal(house, door, family) == max(found for found in here if found)
        assert [found is not None for found in here] == [clears_all(house, door, other) for other in house.families]


def test_a_covering_is_found_by_its_names_and_needs_and_not_by_what_it_is_not() -> None:
    family = CATALOG.families["roller-shade"]
    notes = CATALOG.family_notes["roller-shade"]
    found = covering_words(HOUSE, family, ["dark"]).split()
    assert len(found) == len(set(found))
    assert set(" ".join([notes.name, *notes.also_called, notes.summary]).lower().split()) <= set(found)
    assert {"bedroom", "pet", "kitchen"} <= set(found)
    torn: Any = {**family, "animals": "tears", "cleaning": "specialist", "price_level": 4.0}
    others = covering_words(HOUSE, torn, []).split()
    assert {"specialist"} <= set(others)
    assert not {"bedroom", "pet", "kitchen", "affordable"} & set(others)
    assert "affordable" in covering_words(HOUSE, {**torn, "price_level": 1.0}, []).split()
