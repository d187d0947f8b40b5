"""The price that the configurator tells is the quote's, for the door as measured and the picks as chosen."""

import json
import random
import re
from typing import Any

import pytest
from click.testing import CliRunner
from playwright.sync_api import Page, Route, expect

from configurator.catalog import Catalog
from configurator.cli import main
from tests.browser.trying import covering, fragment

SAYS = ".price-says"
LINES = ".price-part:last-of-type .price-line b"


def shown_as(page: Page, how: str) -> None:
    """Have the site show its prices as another showroom would, from the next page on."""

    def told(route: Route) -> None:
        text = route.fetch().text()
        assert '"shown":"from"' in text
        route.fulfill(body=text.replace('"shown":"from"', f'"shown":"{how}"', 1), content_type="text/javascript")

    page.route("**/astragal-price.*.js", told)


def quoted(address: str) -> Any:
    """Return the quote that the command makes of an address of the page."""
    told = CliRunner().invoke(main, ["quote", address.removeprefix("try.html#"), "--json"])
    assert told.exit_code == 0, told.output
    return json.loads(told.stdout)


def set_plain(text: str) -> str:
    """Return a text as a keyboard has it: with plain spaces and apostrophes."""
    return re.sub(r"\s+", " ", text).replace("’", "'")


def wide_door(catalog: Catalog, name: str, by: float) -> dict[str, Any]:
    """Return a door whose glass somebody has measured wider than the preset's, mm."""
    one = covering(catalog, "garden-door", name)
    one["door"] = {**one["door"], "glass_width": one["door"]["glass_width"] + by}
    return {**one, "measured": ["glass_width"]}


def some_configurations(catalog: Catalog) -> list[dict[str, Any]]:
    """Return every family on some door with some picks, and one on a door that is wider than its preset."""
    rng = random.Random(7)
    made = []
    for ident, family in catalog.families.items():
        for door in rng.sample(list(catalog.doors), 2 if catalog.prices and ident in catalog.prices.books else 1):
            picks = {choice["id"]: rng.choice(choice["options"])["id"] for choice in family["choices"]}
            made.append(covering(catalog, door, ident, choices=picks))
    return [*made, wide_door(catalog, "cellular-shade", 76.2)]


def test_every_covering_costs_on_the_page_what_the_command_quotes(page: Page, catalog: Catalog) -> None:
    assert catalog.prices is not None
    shown_as(page, "full")
    priced = 0
    for one in some_configurations(catalog):
        address = fragment(catalog, one)
        quote = quoted(address)
        page.goto(address)
        (offer,) = quote["openings"][0]["offers"]
        if one["family"] not in catalog.prices.books:
            expect(page.locator(".price")).to_contain_text("Price level")
            expect(page.locator(SAYS)).to_have_count(0)
            continue
        if not quote["ways"]:
            told = page.locator(f"{SAYS}, .panel .refusal:not([hidden])")
            expect(told.first).to_have_text(offer["refusal"])
            continue
        priced += 1
        bill = quote["ways"][0]["bill"]
        expect(page.locator(SAYS)).to_contain_text(f"${bill['total'] / 100:,.2f} with all")
        expect(page.locator(SAYS)).to_contain_text(f"${offer['amount'] / 100:,.2f} with the choices")
        amounts = [text.strip("$").replace(",", "") for text in page.locator(LINES).all_text_contents()]
        assert amounts == [line["digits"] for line in bill["lines"]]
        workings = " ".join(map(set_plain, page.locator(".price-part .why").all_text_contents()))
        for line in [*offer["prices"][0]["lines"], *bill["lines"]]:
            assert set_plain(line["rule"]) in workings
    assert priced >= 6


def test_a_start_is_a_round_amount_and_the_working_waits_to_be_opened(page: Page, catalog: Catalog) -> None:
    # 26 by 69 1/8 in takes $137.00; the screen 12 %, the cassette $42.00, the battery motor $236.00: $431.44 a leaf.
    page.goto(fragment(catalog, covering(catalog, "garden-pair", "roller-shade", choices={"lift": "motor-battery"})))
    expect(page.locator(SAYS)).to_have_text("From $860 with the choices drawn here. What binds is a written quote.")
    expect(page.locator(".price details")).to_have_count(0)
    page.get_by_role("radio", name="lift wand").check()
    expect(page.locator(SAYS)).to_contain_text("From $430 with")


@pytest.mark.parametrize(
    ("how", "told"), [("full", "How the price comes about"), ("level", "Price level: low (1 of 4)")]
)
def test_more_is_shown_only_where_the_showroom_shows_it(page: Page, catalog: Catalog, how: str, told: str) -> None:
    shown_as(page, how)
    page.goto(fragment(catalog, covering(catalog, "garden-door", "roller-shade")))
    expect(page.locator(".price")).to_contain_text(told)
    if how == "level":
        expect(page.locator(".price")).not_to_contain_text("$")
        return
    part = page.locator(".price-part").first
    expect(part).to_be_hidden()
    page.get_by_text(told).click()
    expect(part).to_be_visible()
    # It stays open while something else is picked.
    page.get_by_role("radio", name="Night, clay").check()
    expect(part).to_be_visible()
