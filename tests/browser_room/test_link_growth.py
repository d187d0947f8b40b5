"""What the showroom or the software changes after a link was made: what changes nothing is silent, all else is told."""

from copy import deepcopy
from typing import Any

import pytest

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode, encode
from configurator.browser.link.shapes import Difference, Opened, Stock
from configurator.catalog import Catalog, load
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.mechanisms.common import COMMON_TAKES
from configurator.kernel.message import say
from configurator.kernel.tape.table import DOOR_LIMITS
from configurator.kernel.tongue import ENGLISH
from configurator.places import CONTENT
from tests.corpus import entries
from tests.links import resealed

PAIR, SHADE = "garden-pair", "cellular-shade"


@pytest.fixture
def stock(catalog: Catalog) -> Any:
    """What links are read against, to be changed; the page opens with what none of the changes takes away."""
    return {**deepcopy(page_catalog(catalog)), "opening": ["tall-door", "roller-shade"]}


def link_of(stock: Stock, door: str = PAIR, family: str = SHADE) -> str:
    """Return the link of a covering on a door, as both come."""
    opened = decode(resealed(f"1/in/{door}:{family}/00000000"), stock)
    return encode(opened["state"], stock)


def told(opened: Opened) -> str:
    """Return what is wrong with a link, as it is told."""
    return " ".join(say(each, ENGLISH, "in") for each in opened["problems"])


def then_and_now(change: Difference) -> tuple[str, str, str]:
    """Return a change in words."""
    return change["name"], say(change["then"], ENGLISH, "in"), say(change["now"], ENGLISH, "in")


def silent(stock: Stock, before: Stock) -> None:
    """Assert that every kept link opens as before, and tells nothing that it did not tell before."""
    for entry in entries():
        was, opened = decode(entry.link, before), decode(entry.link, stock)
        assert (opened["problems"], opened["changes"]) == (was["problems"], was["changes"]), entry.link
        assert [one["choices"] for one in opened["state"]["configurations"]] == [
            one["choices"] for one in was["state"]["configurations"]
        ]


def test_a_number_that_the_software_gains_leaves_all_kept_links_silent(
    monkeypatch: pytest.MonkeyPatch, stock: Any
) -> None:
    before = deepcopy(stock)
    monkeypatch.setitem(COMMON_TAKES, "scent", ["share", 0.5, "how much it smells of lavender"])
    for mechanism in MECHANISMS.values():
        monkeypatch.setitem(mechanism["takes"], "echo", ["length", 12.0, "how far off it is heard"])
    grown = page_catalog(load(CONTENT))
    assert all(family["numbers"]["scent"] == 0.5 for family in grown["families"].values())
    silent(grown, before)


def test_a_measurement_that_a_door_gains_leaves_all_kept_links_silent(
    monkeypatch: pytest.MonkeyPatch, stock: Any
) -> None:
    before = deepcopy(stock)
    monkeypatch.setitem(DOOR_LIMITS, "doormat_depth", [0.0, 40.0])
    for door in stock["doors"].values():
        door["doormat_depth"] = 18.0
    assert "doormat_depth" not in link_of(stock)
    silent(stock, before)


def test_a_new_first_option_moves_no_ones_covering(stock: Any) -> None:
    link = link_of(stock)
    choice = stock["families"][SHADE]["choices"][1]
    first = choice["options"][0]["id"]
    choice["options"].insert(0, {**choice["options"][1], "id": "brand-new", "name": "Brand new"})
    opened = decode(link, stock)
    assert (opened["problems"], opened["changes"]) == ([], [])
    assert opened["state"]["configurations"][0]["choices"][choice["id"]] == first


def test_a_corrected_preset_is_told_as_it_was_and_as_it_is(stock: Any) -> None:
    link = link_of(stock)
    stock["doors"][PAIR]["glass_width"] -= 25.4
    opened = decode(link, stock)
    assert opened["problems"] == []
    changes = {each["id"]: then_and_now(each) for each in opened["changes"]}
    assert changes["order_width"] == ("order width", "25 in", "24 in")
    assert "pass_through" not in changes
    assert {each["configuration"] for each in opened["changes"]} == {0}


def test_what_was_measured_stays_when_the_preset_is_corrected(stock: Any) -> None:
    state = decode(link_of(stock), stock)["state"]
    state["configurations"][0]["measured"] = ["glass_width"]
    width = state["configurations"][0]["door"]["glass_width"]
    link = encode(state, stock)
    stock["doors"][PAIR]["glass_width"] -= 25.4
    opened = decode(link, stock)
    assert opened["changes"] == []
    assert opened["state"]["configurations"][0]["door"]["glass_width"] == width
    assert opened["state"]["configurations"][0]["measured"] == ["glass_width"]


def test_a_verdict_that_has_changed_is_told_in_its_words(stock: Any) -> None:
    link = link_of(stock)
    for handle in (stock["handles"][stock["doors"][PAIR]["handle"]["id"]], stock["doors"][PAIR]["handle"]):
        handle.update({"plate_thickness": 0.0, "gap": 1.0, "projection": 90.0})
    changes = {each["id"]: then_and_now(each) for each in decode(link, stock)["changes"]}
    assert changes["pass_through"][1:] == ("Clears", "Blocked")


def test_a_covering_that_can_no_longer_be_hung_says_that_it_could(stock: Any) -> None:
    link = link_of(stock)
    stock["doors"][PAIR].update({"glass_width": 100.0, "muntin_columns": 12, "muntin_width": 80.0})
    (change,) = decode(link, stock)["changes"]
    assert then_and_now(change)[:2] == ("On this door", "It could be hung.")
    assert len(then_and_now(change)[2]) > 20
    gone = encode(decode(link, stock)["state"], stock)
    assert "@none/" in gone
    assert decode(gone, stock)["changes"] == []


def test_a_link_keeps_its_door_when_its_covering_is_gone(stock: Any) -> None:
    state = decode(link_of(stock), stock)["state"]
    state["configurations"][0]["door"]["glass_width"] = 600.0
    link = encode(state, stock)
    del stock["families"][SHADE]
    opened = decode(link, stock)
    (one,) = opened["state"]["configurations"]
    assert (one["door"]["id"], one["door"]["glass_width"]) == (PAIR, 600.0)
    assert one["family"] == stock["opening"][1]
    assert SHADE in told(opened)
    assert stock["families"][one["family"]]["name"] in told(opened)


def renamed(stock: Any, kind: str, old: str, new: str) -> None:
    """Give a door, a handle or a family of the stock another id."""
    things = stock[{"door": "doors", "handle": "handles", "family": "families"}[kind]]
    things[new] = {**things.pop(old), "id": new}
    stock["formerly"][f"{kind}/{old}"] = new


def test_a_link_finds_what_has_another_id_today(stock: Any) -> None:
    state = decode(link_of(stock), stock)["state"]
    state["configurations"][0]["measured"] = ["handle"]
    link, before = encode(state, stock), state["configurations"][0]["choices"]
    handle = stock["doors"][PAIR]["handle"]["id"]
    renamed(stock, "door", PAIR, "veranda-doors")
    renamed(stock, "handle", handle, "long-lever")
    renamed(stock, "family", SHADE, "honeycomb")
    family = stock["families"]["honeycomb"]
    choice, old = family["choices"][1], family["choices"][1]["id"]
    option, old_option = choice["options"][0], choice["options"][0]["id"]
    choice["id"], option["id"] = "cloth", "cream"
    stock["formerly"] |= {f"choice/honeycomb/{old}": "cloth", f"option/honeycomb/cloth/{old_option}": "cream"}
    opened = decode(link, stock)
    assert (opened["problems"], opened["changes"]) == ([], [])
    one = opened["state"]["configurations"][0]
    assert (one["door"]["id"], one["door"]["handle"]["id"], one["family"]) == (
        "veranda-doors",
        "long-lever",
        "honeycomb",
    )
    assert one["choices"] == {
        {old: "cloth"}.get(key, key): "cream" if key == old else pick for key, pick in before.items()
    }
