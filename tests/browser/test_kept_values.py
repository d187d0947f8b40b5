"""Whatever a device keeps, pages work; and what one tab keeps, the others show."""

import pytest
from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from tests.browser.conftest import OpenContext
from tests.browser.keeping import door_link
from tests.browser.trying import open_page

ENTRIES = ("astragal-kept", "astragal-kept-door", "astragal-shade")
FAMILY = "coverings/cellular-shade.html"
SPOILT = {
    "nothing": "",
    "no JSON": "{",
    "null": "null",
    "a number": "1e999",
    "a text": '"dark"',
    "a quote and a bracket": 'x"]',
    "a list of lists": "[[[[]]]]",
    "what is no list": '{"doors": {"length": 2, "0": {}}, "marks": "roller-shade", "mine": {}}',
    "lists of anything": '{"doors": [[], true, "", {"id": {}, "link": [], "name": 0}], "marks": [{"family": {}}]}',
    "names of every object": '{"__proto__": {"doors": 1}, "constructor": null, "doors": [{"id": "1", "toString": 1}]}',
    "a link without end": '{"doors": [{"id": "1", "name": "Kitchen", "link": "' + "2/in/" * 1000 + '"}], "mine": "1"}',
    "half of a letter": '{"doors": [{"id": "1", "name": "\\ud800", "link": "2/in/\\udfff"}], "mine": "1"}',
    "much": "[" * 50_000,
    "light, but loudly": "LIGHT",
}
PAPER = "getComputedStyle(document.body).backgroundColor"


def keep_everywhere(page: Page, text: str) -> None:
    """Have each entry of the device's storage hold a text."""
    page.evaluate("([keys, text]) => keys.forEach((key) => localStorage.setItem(key, text))", [ENTRIES, text])


def test_no_value_that_is_kept_breaks_a_page(page: Page) -> None:
    page.goto(FAMILY)
    paper = page.evaluate(PAPER)
    for kind, text in SPOILT.items():
        keep_everywhere(page, text)
        page.reload()
        assert page.locator("table .sort").count() > 3, kind
        assert page.evaluate(PAPER) == paper, kind
        expect(page.locator(".mark")).to_have_attribute("aria-pressed", "false")
        expect(page.get_by_label("As the device")).to_be_checked()


@pytest.mark.parametrize("kind", ["a quote and a bracket", "a link without end", "half of a letter"])
def test_no_value_that_is_kept_breaks_the_configurator(page: Page, kind: str) -> None:
    page.goto("index.html")
    keep_everywhere(page, SPOILT[kind])
    open_page(page, "try.html")
    expect(page.get_by_role("navigation", name="Steps")).to_be_visible()


def test_two_tabs_show_the_same_light_and_the_same_list(open_context: OpenContext, catalog: Catalog) -> None:
    context = open_context(color_scheme="light")
    one, other = context.new_page(), context.new_page()
    for page in (one, other):
        page.goto(FAMILY)
    day = other.evaluate(PAPER)
    one.get_by_label("Evening").check()
    one.get_by_label("Keep on this device").check()
    expect(other.get_by_label("Evening")).to_be_checked()
    expect(other.get_by_label("Keep on this device")).to_be_checked()
    assert other.evaluate(PAPER) == one.evaluate(PAPER) != day
    one.locator(".mark").click()
    expect(other.locator(".mark")).to_have_attribute("aria-pressed", "true")
    one.evaluate("link => localStorage.setItem('astragal-kept-door', link)", door_link(catalog))
    other.evaluate("keys => keys.forEach((key) => localStorage.removeItem(key))", list(ENTRIES))
    expect(one.locator(".mark")).to_have_attribute("aria-pressed", "false")
    expect(one.get_by_label("As the device")).to_be_checked()
    assert one.evaluate(PAPER) == day
