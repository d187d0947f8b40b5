"""Links give back exactly what went in, and whatever happens to one ends in a plain message.

What the showroom or the software changes after a link was made is in ``test_link_growth``.
"""

import random
import re
from collections.abc import Callable
from dataclasses import replace
from urllib.parse import quote

import pytest
from hypothesis import given
from hypothesis import strategies as st

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode, encode, fresh_state
from configurator.browser.link.outcome import NOTED_FIGURES, NOTED_VERDICT
from configurator.browser.link.shapes import Configuration, Opened, State, Stock
from configurator.browser.link.spell import read_number, spell_number
from configurator.browser.link.state import PAGE_STEPS
from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.message import is_said, say
from configurator.kernel.tongue import ENGLISH
from tests.corpus import entries, told
from tests.links import faults, hurt_links, random_state, resealed

URL_FRAGMENT = re.compile(r"[A-Za-z0-9\-._~!$&'()*+,;=:@/?]*")


@pytest.fixture(scope="module")
def stock(catalog: Catalog) -> Stock:
    """What links are read against."""
    return page_catalog(catalog)


def problem(opened: Opened) -> str:
    """Return what is wrong with a link, as it is told."""
    return " ".join(say(each, ENGLISH, "in") for each in opened["problems"])


def simple_state(stock: Stock, door: str, family: str) -> State:
    """Return one covering on one door, as both come."""
    state = fresh_state(stock)
    state["step"] = "details"
    state["configurations"] = [simple(stock, door, family)]
    return state


def simple(stock: Stock, door: str, family: str) -> Configuration:
    """Return a covering on a door, as both come."""
    link = resealed(f"1/in/{door}:{family}/00000000")
    return decode(link, stock)["state"]["configurations"][0]


@pytest.mark.parametrize("step", PAGE_STEPS)
def test_the_step_that_is_shown_is_in_the_link(stock: Stock, step: str) -> None:
    state = simple_state(stock, "garden-pair", "cellular-shade") | {"step": step}
    assert decode(encode(state, stock), stock)["state"]["step"] == step


def test_a_link_that_names_no_step_opens_the_details_and_none_at_all_the_choice(stock: Stock) -> None:
    assert decode(resealed("2/in/garden-pair:cellular-shade/00000"), stock)["state"]["step"] == "details"
    assert decode(resealed("2/in;step=kitchen/garden-pair:cellular-shade/00000"), stock)["state"]["step"] == "details"
    assert fresh_state(stock)["step"] == "coverings"


@given(st.floats(-1e6, 1e6), st.sampled_from(["in", "mm"]))
def test_any_number_survives_exactly(value: float, units: str) -> None:
    reading = read_number(spell_number(value, units))
    assert reading["good"]
    assert reading["value"] == value


@pytest.mark.parametrize(
    ("mm", "units", "text"),
    [
        (571.5, "in", "22.5in"),
        (482.6, "in", "19in"),
        ((22 + 41 / 64) * 254 / 10, "in", "22.640625in"),
        (571.5, "mm", "571.5"),
        (0.1, "mm", "0.1"),
        (-3.0, "mm", "-3"),
        (860.0, "in", "860"),
    ],
)
def test_a_length_is_spelled_as_people_read_it(mm: float, units: str, text: str) -> None:
    assert spell_number(mm, units) == text


@given(st.integers(1, 64 * 120))
def test_sixty_fourths_of_an_inch_stay_inches(count: int) -> None:
    assert spell_number(count * 254 / 640, "in").endswith("in")


def test_states_survive_exactly(catalog: Catalog, stock: Stock) -> None:
    rng = random.Random(5)
    for _ in range(300):
        state = random_state(rng, catalog)
        link = encode(state, stock)
        opened = decode(link, stock)
        assert (opened["state"], opened["problems"], opened["changes"]) == (state, [], [])
        assert encode(opened["state"], stock) == link
        assert URL_FRAGMENT.fullmatch(link)


def test_a_preset_makes_a_readable_link(stock: Stock) -> None:
    link = encode(simple_state(stock, "garden-pair", "cellular-shade"), stock)
    picks = "cell=double-3-8;fabric=meadow-milk;rails=bottom-up;lift=cordless;hold-down=none;mount=on-leaf"
    came = r"w25in,h68in,s100.4,p1.25in,g0.375in,x0.25in,v97.7,clears"
    assert re.fullmatch(rf"2/in/garden-pair:cellular-shade;{picks}@1@{came}/\w{{5}}", link)


def test_what_differs_and_what_was_measured_is_in_the_link(stock: Stock) -> None:
    state = simple_state(stock, "garden-pair", "cellular-shade")
    one = state["configurations"][0]
    one["door"]["glass_width"] = 574.675
    one["measured"] = ["swing", "wall_gap", "handle", "handle.gap"]
    one["choices"]["rails"] = "top-down"
    one["place"]["lower"] = 0.35
    link = encode(state, stock)
    assert link.split("/")[2].startswith(
        "garden-pair;swing=in;glass_width=22.625in;wall_gap=14in;handle=lever-on-long-plate;handle.gap=1.5in"
        ":cellular-shade;cell=double-3-8;fabric=meadow-milk;rails=top-down;"
    )
    assert "@0.35@" in link


def test_two_coverings_on_one_door_tell_of_the_door_once(stock: Stock) -> None:
    state = simple_state(stock, "garden-pair", "cellular-shade")
    state["configurations"].append(simple(stock, "garden-pair", "roller-shade"))
    doors = encode(state, stock).split("/")[2:-1]
    assert [piece.split(";")[0] for piece in doors[0].split(":")] == ["garden-pair", "cellular-shade", "roller-shade"]
    assert len(doors) == 1


def test_no_link_is_a_fresh_start(stock: Stock) -> None:
    assert decode("", stock) == decode("#", stock)
    opened = decode("", stock)
    assert (opened["state"], opened["problems"], opened["changes"]) == (fresh_state(stock), [], [])


def test_every_way_of_cutting_a_link_short_is_told(catalog: Catalog, stock: Stock) -> None:
    link = encode(random_state(random.Random(8), catalog), stock)
    for length in range(1, len(link)):
        opened = decode("#" + link[:length], stock)
        assert opened["state"] == fresh_state(stock)
        assert "link" in problem(opened) or "address" in problem(opened)


@pytest.mark.parametrize("spelled", [quote, lambda text: quote(text).lower(), lambda text: text.replace("/", "%2F")])
def test_a_link_that_was_escaped_on_its_way_opens_all_the_same(stock: Stock, spelled: Callable[[str], str]) -> None:
    for link, _, _ in entries():
        assert decode(spelled(link), stock) == decode(link, stock)


def test_a_newer_link_says_so(stock: Stock) -> None:
    assert "newer version" in problem(decode("3/xyz/whatever", stock))


def test_what_the_showroom_no_longer_has_is_named(stock: Stock) -> None:
    opened = decode(resealed("1/mm/no-such-door;glass_width=600:roller-shade:no-such-shade/00000000"), stock)
    assert "no-such-door" in problem(opened)
    assert "no-such-shade" in problem(opened)
    assert [one["family"] for one in opened["state"]["configurations"]] == ["roller-shade", stock["opening"][1]]
    assert [one["door"]["glass_width"] for one in opened["state"]["configurations"]] == [600, 600]


def test_numbers_that_cannot_be_are_named_and_left_out(stock: Stock) -> None:
    link = resealed("1/in/garden-pair;glass_width=99999;muntin_rows=2.5;glass_height=60.5in:roller-shade@7/00000000")
    opened = decode(link, stock)
    one = opened["state"]["configurations"][0]
    assert "glass_width" in problem(opened)
    assert "muntin_rows" in problem(opened)
    assert one["door"]["glass_width"] == stock["doors"]["garden-pair"]["glass_width"]
    assert one["door"]["glass_height"] == 1536.7
    assert one["place"]["lower"] == 1


def test_a_retired_family_and_option_still_open_and_say_so(stock: Stock) -> None:
    family = stock["families"]["roller-shade"]
    option = family["choices"][0]["options"][1]
    old = {**family, "retired": True, "choices": [retiring(choice, option["id"]) for choice in family["choices"]]}
    later: Stock = {**stock, "families": {**stock["families"], "roller-shade": old}}  # type: ignore[typeddict-item]
    state = simple_state(stock, "garden-pair", "roller-shade")
    state["configurations"][0]["choices"][family["choices"][0]["id"]] = option["id"]
    opened = decode(encode(state, stock), later)
    assert opened["state"] == state
    assert f"{family['name']} is no longer offered" in problem(opened)
    assert f"{option['name']} is no longer offered" in problem(opened)


def retiring(choice: object, option: str) -> object:
    """Return a choice with one of its options retired."""
    options = [{**one, "retired": one["id"] == option} for one in choice["options"]]  # type: ignore[index]
    return {**choice, "options": options}  # type: ignore[dict-item]


def test_four_thousand_hurt_links_open_to_something_sound(catalog: Catalog, stock: Stock) -> None:
    for link in hurt_links(catalog, 11, 4_000):
        opened = decode(link, stock)
        assert faults(opened["state"], stock) == [], link
        fits = link.removeprefix("#") in ("", resealed(link.removeprefix("#")))
        assert fits or opened["problems"] != [], link


def test_the_kernel_answers_whatever_a_link_opens_to(catalog: Catalog, stock: Stock) -> None:
    for link in hurt_links(catalog, 12, 900):
        state = decode(link, stock)["state"]
        for one in state["configurations"] if resealed(link) == link else []:
            answer = ask(one["door"], stock["families"][one["family"]], one["choices"], state["household"])
            assert is_said(answer["refusal"]) or len(answer["figures"]) > 0


@given(st.text(max_size=60))
def test_no_text_at_all_throws(stock: Stock, text: str) -> None:
    for link in (text, f"1/in/{text}/00000000", resealed(f"1/in/{text}/00000000")):
        assert faults(decode(link, stock)["state"], stock) == []


def test_links_made_long_ago_open_with_the_figures_noted(stock: Stock) -> None:
    for link, lines, _ in entries():
        opened = decode(link, stock)
        assert opened["problems"] == [], link
        assert [told(one, opened["state"], stock) for one in opened["state"]["configurations"]] == lines, link


def test_links_made_long_ago_tell_what_has_moved_since_where_they_noted_it(stock: Stock) -> None:
    noted = [*NOTED_FIGURES.values(), NOTED_VERDICT]
    for link, _, moved in entries():
        told_now = [
            sorted(each["id"] for each in decode(link, stock)["changes"] if each["configuration"] == i)
            for i in range(len(moved))
        ]
        then = (
            [sorted(key for key in keys if key in noted) for keys in moved]
            if link.startswith("2/")
            else [[] for _ in moved]
        )
        assert told_now == then, link


def test_the_page_opens_with_the_showrooms_first_door(catalog: Catalog) -> None:
    named = replace(catalog, showroom=catalog.showroom.model_copy(update={"first_door": "tall-door"}))
    assert page_catalog(named)["opening"][0] == "tall-door"
    unnamed = replace(catalog, showroom=catalog.showroom.model_copy(update={"first_door": ""}))
    assert page_catalog(unnamed)["opening"][0] == next(iter(catalog.doors))
