"""While a door is measured, the form has the room: on a phone, with a keyboard up, held sideways, and much enlarged."""

import re

import pytest
from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from tests.browser.conftest import OpenContext
from tests.browser.trying import covering, fragment, open_page

PHONE = (390, 844)
KEYBOARD_UP = (390, 500)
SIDEWAYS = (844, 390)
ENLARGED = (320, 256)


def measure(open_context: OpenContext, catalog: Catalog, size: tuple[int, int], door: str = "garden-door") -> Page:
    """Open a door to be measured in a window of a size, every group of measurements opened."""
    page = open_context(viewport={"width": size[0], "height": size[1]}).new_page()
    open_page(page, fragment(catalog, covering(catalog, door, "cellular-shade"), step="door"))
    page.locator(".more-lengths").evaluate_all("all => all.forEach((one) => { one.open = true; })")
    return page


def shown_of_drawing(page: Page) -> float:
    """Return how much of the window's height the drawing covers just now."""
    found: float = page.evaluate("""() => {
        const { top, bottom } = document.querySelector(".drawing-table").getBoundingClientRect();
        return Math.max(0, Math.min(bottom, innerHeight) - Math.max(top, 0)) / innerHeight;
    }""")
    return found


@pytest.mark.parametrize("size", [PHONE, KEYBOARD_UP, SIDEWAYS, ENLARGED])
def test_a_field_in_focus_is_clear_of_the_drawing(
    open_context: OpenContext, catalog: Catalog, size: tuple[int, int]
) -> None:
    page = measure(open_context, catalog, size)
    for entry in page.locator(".length-groups input[type=text]").all():
        entry.focus()
        seen = entry.evaluate("""(one) => {
            const { left, top, width, height } = one.getBoundingClientRect();
            const at = [0.05, 0.95].map((share) => document.elementFromPoint(left + width / 2, top + height * share));
            return at.every((found) => found === one);
        }""")
        assert seen, entry.get_attribute("id")
        assert shown_of_drawing(page) <= 1 / 3 + 0.01, entry.get_attribute("id")
    assert page.evaluate("document.documentElement.scrollWidth") <= size[0]


@pytest.mark.parametrize(("size", "sticks"), [(PHONE, True), (KEYBOARD_UP, True), (SIDEWAYS, False), (ENLARGED, False)])
def test_the_drawing_sticks_only_where_the_window_has_height_for_it(
    open_context: OpenContext, catalog: Catalog, size: tuple[int, int], sticks: bool
) -> None:
    page = measure(open_context, catalog, size)
    page.locator(".more-lengths input").last.focus()
    assert (shown_of_drawing(page) > 0) == sticks


def test_a_keyboard_on_the_screen_leaves_the_field_to_be_seen(open_context: OpenContext, catalog: Catalog) -> None:
    page = measure(open_context, catalog, PHONE)
    # A keyboard on the screen makes the seen part lower, and the page stays as high as it was.
    page.evaluate("""() => {
        Object.defineProperty(visualViewport, "height", { value: 500 });
        visualViewport.dispatchEvent(new Event("resize"));
    }""")
    expect(page.locator("#configurator")).to_have_class("keyboard-up")
    height = page.evaluate("document.querySelector('.drawing-table').getBoundingClientRect().height")
    assert height <= 500 / 3


@pytest.mark.parametrize("door", ["garden-door", "garden-pair", "sidelight-door"])
def test_every_measurement_has_a_small_drawing_of_its_own(
    open_context: OpenContext, catalog: Catalog, door: str
) -> None:
    page = measure(open_context, catalog, (1440, 900), door)
    places = page.locator(".length.drawn > .tape-place")
    assert places.count() == page.locator(".length-groups input[type=text]").count()
    for place in places.all():
        expect(place.locator(".tick").first).to_be_attached()
    drawn = places.evaluate_all("all => all.map((one) => one.getAttribute('viewBox') + one.innerHTML)")
    assert len(set(drawn)) == len(drawn)


def test_the_small_drawing_follows_what_is_typed(open_context: OpenContext, catalog: Catalog) -> None:
    page = measure(open_context, catalog, PHONE)
    place = page.locator(".length.drawn", has=page.locator("#field-glass_height")).locator(".tape-place")
    expect(place.locator(".tick").first).to_be_attached()
    before = place.get_attribute("viewBox")
    page.get_by_label("Glass height", exact=True).fill("40")
    expect(place).not_to_have_attribute("viewBox", before or "")


def test_where_a_number_comes_from_is_said_until_it_is_measured(open_context: OpenContext, catalog: Catalog) -> None:
    page = measure(open_context, catalog, PHONE)
    expect(page.get_by_text("Until you measure, the numbers are those of this door: invented.")).to_be_visible()
    height = page.get_by_label("Handle height", exact=True)
    expect(height).to_have_accessible_description(re.compile("^common practice "))
    height.fill("37")
    expect(height).to_have_accessible_description(re.compile("^From the floor"))


def test_the_plain_word_stands_first_and_the_trades_beside_it(open_context: OpenContext, catalog: Catalog) -> None:
    page = measure(open_context, catalog, PHONE)
    stile = page.get_by_label("Beside the glass, lock side", exact=True)
    expect(stile).to_have_accessible_description("Latch stile From the outside of the bead to the edge with the lock.")


def test_the_measurements_add_up_to_a_leaf_that_the_tape_can_check(open_context: OpenContext, catalog: Catalog) -> None:
    page = measure(open_context, catalog, PHONE)
    size = page.locator(".leaf-size")
    expect(size).to_contain_text("36 in wide and 80 in high")
    page.get_by_label("Glass width", exact=True).fill("23")
    expect(size).to_contain_text("37 in wide and 80 in high")
