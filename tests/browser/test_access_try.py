"""The configurator for those who see little, use no mouse, or listen."""

import pytest
from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from tests.browser.accessibility import barriers_day_and_evening
from tests.browser.conftest import OpenContext
from tests.browser.trying import covering, fragment, open_page, viewport


def states(catalog: Catalog) -> dict[str, str]:
    """Return addresses of the page in its different states."""
    narrow = covering(catalog, "garden-door", "louvered-shutter")
    narrow["door"] = {**narrow["door"], "glass_width": 110.0}
    return {
        "fresh": "try.html",
        "door": fragment(catalog, covering(catalog, "sidelight-door", "cellular-shade"), step="door"),
        "take": fragment(catalog, covering(catalog, "garden-door", "cellular-shade"), step="take"),
        "compared": fragment(
            catalog,
            covering(catalog, "garden-pair", "vane-sheer-shade"),
            covering(catalog, "tall-door", "louvered-shutter", at=(1.0, 0.0, 0.0)),
        ),
        "refused": fragment(catalog, narrow),
        "broken": "try.html#1/in/nothing/xxxxxxxx",
    }


@pytest.mark.parametrize("size", ["phone", "desk"])
def test_axe_finds_nothing(open_context: OpenContext, catalog: Catalog, size: str) -> None:
    page = open_context(viewport=viewport(size), reduced_motion="reduce").new_page()
    for name, address in states(catalog).items():
        open_page(page, address)
        page.locator("details").evaluate_all("all => all.forEach((one) => { one.open = true; })")
        if name == "take":
            page.get_by_role("button", name="Show as a code to scan").click()
        if name == "door":
            page.get_by_label("Glass width", exact=True).fill("nothing")
        assert barriers_day_and_evening(page, size) == [], name


def test_nothing_is_wider_than_a_phone(open_context: OpenContext, catalog: Catalog) -> None:
    page = open_context(viewport={"width": 320, "height": 700}).new_page()
    for address in states(catalog).values():
        open_page(page, address)
        assert page.evaluate("document.documentElement.scrollWidth") <= 320


def test_the_whole_journey_by_keyboard_alone(page: Page, catalog: Catalog) -> None:
    reached = []
    for step in ("door", "coverings", "details", "take"):
        open_page(page, fragment(catalog, covering(catalog, "garden-door", "cellular-shade"), step=step))
        reached += tabbed_through(page)
    words = " | ".join(reached)
    assert "unseen:" not in words
    wanted = ["Open", "Closed", "Bottom rail", "Glass width", "A handle like", "Order width", "Copy the link"]
    for name in [*wanted, "All at the same position", "Darkness", "Roller shade"]:
        assert name in words


def tabbed_through(page: Page) -> list[str]:
    """Return what the tab key comes to, and whether it is seen."""
    reached: list[str] = []
    for _ in range(120):
        page.keyboard.press("Tab")
        name = page.evaluate(
            """() => {
                const at = document.activeElement;
                const box = at.getBoundingClientRect();
                const seen = box.width > 0 && box.bottom > 0 && box.top < innerHeight;
                const words = at.labels?.[0]?.textContent || at.textContent || at.id;
                return at === document.body ? 'end' : (seen ? '' : 'unseen: ') + words;
            }"""
        )
        if name == "end":
            break
        reached.append(name)
    return reached


def test_the_focus_is_never_hidden_by_the_drawing(open_context: OpenContext, catalog: Catalog) -> None:
    page = open_context(viewport=viewport("phone")).new_page()
    open_page(page, fragment(catalog, covering(catalog, "garden-door", "cellular-shade"), step="door"))
    page.get_by_label("Glass height", exact=True).focus()
    for _ in range(12):
        page.keyboard.press("Shift+Tab")
        hidden = page.evaluate(
            """() => {
                const table = document.querySelector('.drawing-table');
                const at = document.activeElement;
                const label = at.closest('label, summary') ?? at;
                const box = label.getBoundingClientRect();
                const over = table.getBoundingClientRect();
                return !table.contains(at) && box.top >= over.top && box.bottom <= over.bottom;
            }"""
        )
        assert not hidden


def test_targets_are_large_enough_for_a_finger(open_context: OpenContext, catalog: Catalog) -> None:
    page = open_context(viewport=viewport("phone")).new_page()
    small = [found for address in states(catalog).values() for found in small_targets(page, address)]
    assert small == []


def small_targets(page: Page, address: str) -> list[str]:
    """Return what is too small for a finger on a page."""
    open_page(page, address)
    found: list[str] = page.evaluate(
        """() => [...document.querySelectorAll('#configurator button, #configurator summary, #configurator input,'
            + '#configurator select, #configurator textarea')]
            .map((target) => target.closest('label') ?? target)
            .filter((target) => target.offsetParent && target.getBoundingClientRect().height < 24)
            .map((target) => target.outerHTML.slice(0, 120))"""
    )
    return found


def test_drawings_speak(page: Page, catalog: Catalog) -> None:
    open_page(page, states(catalog)["compared"])
    for name in ("elevation from the room", "vertical section", "plan at the height of the handle"):
        expect(page.locator(".moving-sheet").get_by_role("img", name=name)).to_have_count(1)
