"""Doors of one's own: kept on this device under names, never lost without a way back."""

from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from configurator.catalog import Catalog
from tests.browser.conftest import OpenContext
from tests.browser.keeping import door_link, kept_doors, kept_now, my_door, put
from tests.browser.trying import SIZES, fragment, fragment_now, open_page, to_step, viewport

REFUSE = """Object.defineProperty(window, 'localStorage', {
    get() { throw new DOMException('refused', 'SecurityError'); },
})"""
FULL = "Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); }"


def at_the_door(page: Page, catalog: Catalog, width: float = 533.4) -> None:
    """Open the step that measures, on a measured door, with my doors unfolded."""
    open_page(page, fragment(catalog, my_door(catalog, width), step="door"))
    page.locator(".my-doors summary").click()


def name_field(page: Page) -> Locator:
    """Return the field for a door's name; what another step shows is made ready unseen."""
    return page.get_by_label("A name for this door").filter(visible=True)


def keep(page: Page, name: str) -> None:
    """Keep the door that is measured under a name."""
    name_field(page).fill(name)
    page.get_by_role("button", name="Keep this door").click()
    expect(page.locator(".kept-door[aria-pressed=true]").filter(visible=True)).to_contain_text(name)


def measure(page: Page, inches: str) -> None:
    """Write another width of the glass."""
    field = page.get_by_label("Glass width", exact=True)
    field.fill(inches)
    field.blur()
    page.wait_for_url(f"**glass_width={inches}in**")


def names(page: Page) -> list[str]:
    """Return the names of the doors that are kept."""
    return [door["name"] for door in kept_now(page)["doors"]]


@pytest.mark.parametrize("size", SIZES)
def test_several_doors_are_kept_under_names_and_opened_again(
    open_context: OpenContext, catalog: Catalog, size: str
) -> None:
    page = open_context(viewport=viewport(size), has_touch=size != "desk").new_page()
    at_the_door(page, catalog)
    keep(page, "Kitchen")
    measure(page, "20")
    keep(page, "Terrace")
    assert names(page) == ["Kitchen", "Terrace"]
    page.locator(".kept-door", has_text="Kitchen").filter(visible=True).click()
    page.wait_for_url("**glass_width=21in**")
    expect(page.locator(".my-doors summary strong")).to_have_text("Kitchen")
    expect(page.get_by_role("button", name="Undo")).to_be_hidden()
    open_page(page, "try.html")
    expect(page.locator(".shelf-door strong")).to_have_text("Kitchen")


def test_a_name_goes_into_no_link(page: Page, catalog: Catalog) -> None:
    at_the_door(page, catalog)
    keep(page, "Kitchen")
    assert "Kitchen" not in kept_now(page)["doors"][0]["link"]
    to_step(page, "Take along")
    assert "Kitchen" not in page.locator("#share-address").input_value() + page.url


def test_another_preset_is_a_way_back_from_what_was_measured(page: Page, catalog: Catalog) -> None:
    at_the_door(page, catalog)
    before = fragment_now(page)
    page.locator(".chooser summary").nth(1).click()
    page.get_by_role("radio", name="Half-lite door").check(force=True)
    expect(page.locator(".undo")).to_contain_text("Half-lite door has taken the place of your measurements.")
    page.get_by_role("button", name="Undo").click()
    expect(page.get_by_label("Glass width", exact=True)).to_have_value("21")
    page.wait_for_function("before => location.hash === before", arg=before)


def test_what_was_measured_since_is_not_taken_back(page: Page, catalog: Catalog) -> None:
    at_the_door(page, catalog)
    page.locator(".chooser summary").nth(1).click()
    page.get_by_role("radio", name="Half-lite door").check(force=True)
    expect(page.get_by_role("button", name="Undo")).to_be_visible()
    measure(page, "20")
    expect(page.get_by_role("button", name="Undo")).to_be_hidden()


def test_a_handle_is_a_way_back_from_what_was_measured_of_it(page: Page, catalog: Catalog) -> None:
    at_the_door(page, catalog)
    page.locator(".lengths details").evaluate_all("all => all.forEach((one) => { one.open = true; })")
    gap = page.get_by_label("Gap behind the handle", exact=True)
    gap.fill("1")
    gap.blur()
    page.wait_for_url("**handle.gap=1in**")
    page.get_by_label("A handle like").select_option("round-knob")
    page.get_by_role("button", name="Undo").click()
    page.wait_for_url("**handle.gap=1in**")


def test_an_unkept_door_makes_way_for_a_kept_one_and_comes_back(page: Page, catalog: Catalog) -> None:
    at_the_door(page, catalog)
    keep(page, "Kitchen")
    measure(page, "20")
    page.locator(".kept-door").filter(visible=True).click()
    page.wait_for_url("**glass_width=21in**")
    page.get_by_role("button", name="Undo").click()
    page.wait_for_url("**glass_width=20in**")


def test_a_kept_door_is_renewed_renamed_and_forgotten_each_with_a_way_back(page: Page, catalog: Catalog) -> None:
    at_the_door(page, catalog)
    keep(page, "Kitchen")
    first = kept_now(page)["doors"]
    measure(page, "20")
    page.get_by_role("button", name="Keep it in place of Kitchen").click()
    expect(page.locator(".undo")).to_contain_text("Kitchen is kept as it is measured now.")
    assert "glass_width=20in" in kept_now(page)["doors"][0]["link"]
    page.get_by_role("button", name="Undo").click()
    assert kept_now(page)["doors"] == first
    page.get_by_role("button", name="Rename Kitchen").click()
    page.get_by_label("A new name for it").filter(visible=True).fill("Larder")
    page.keyboard.press("Enter")
    page.get_by_role("button", name="Forget Larder").click()
    expect(page.locator(".kept-door").filter(visible=True)).to_have_count(0)
    page.get_by_role("button", name="Undo").click()
    expect(page.locator(".kept-door").filter(visible=True)).to_contain_text("Larder")
    assert names(page) == ["Larder"]


def test_all_by_keyboard(page: Page, catalog: Catalog) -> None:
    open_page(page, fragment(catalog, my_door(catalog), step="door"))
    page.locator(".my-doors summary").focus()
    for key in ("Enter", "Tab"):
        page.keyboard.press(key)
    page.keyboard.type("Kitchen")
    page.keyboard.press("Enter")
    expect(page.locator(".kept-door").filter(visible=True)).to_be_focused()
    for key in ("Tab", "Enter"):
        page.keyboard.press(key)
    page.keyboard.type("Larder")
    page.keyboard.press("Enter")
    expect(page.locator(".kept-door").filter(visible=True)).to_contain_text("Larder")
    expect(page.locator(".kept-door").filter(visible=True)).to_be_focused()
    for key in ("Tab", "Tab", "Enter"):
        page.keyboard.press(key)
    expect(page.locator(".kept-door").filter(visible=True)).to_have_count(0)
    expect(name_field(page)).to_be_focused()


def test_two_tabs_agree(open_context: OpenContext, catalog: Catalog) -> None:
    context = open_context()
    one, other = context.new_page(), context.new_page()
    for page in (one, other):
        at_the_door(page, catalog)
    keep(one, "Kitchen")
    expect(other.locator(".kept-door").filter(visible=True)).to_contain_text("Kitchen")
    measure(other, "20")
    keep(other, "Terrace")
    expect(one.locator(".kept-door").filter(visible=True)).to_have_count(2)
    one.get_by_role("button", name="Forget Kitchen").click()
    expect(other.locator(".kept-door").filter(visible=True)).to_have_count(1)


@pytest.mark.parametrize("script", [REFUSE, FULL], ids=["refused", "full"])
def test_a_browser_that_keeps_nothing_says_so(page: Page, catalog: Catalog, script: str) -> None:
    page.add_init_script(script)
    at_the_door(page, catalog)
    name_field(page).fill("Kitchen")
    page.get_by_role("button", name="Keep this door").click()
    expect(page.locator(".undo")).to_contain_text("This browser did not keep it")
    expect(name_field(page)).to_have_value("Kitchen")


@pytest.mark.parametrize(
    "spoilt",
    [
        "{",
        "null",
        "7",
        '"text"',
        "[]",
        '{"doors": 5, "marks": {}, "mine": []}',
        '{"doors": [null, 1, {"id": 1}, {"id": "x", "name": "a", "link": "b"}], "marks": [{"family": "<b>"}]}',
        '{"doors": [{"id": "1", "name": "Kitchen", "link": "2/in/garden-door:roller-shade@0.5/wrong"}], "mine": "1"}',
        '{"doors": [{"id": "1", "name": "Kitchen", "link": "nothing"}], "marks": [{"family": "gone", "link": "x"}]}',
    ],
)
def test_nothing_spoilt_breaks_a_page(page: Page, catalog: Catalog, spoilt: str) -> None:
    page.goto("index.html")
    put(page, spoilt)
    page.goto("coverings/cellular-shade.html")
    expect(page.locator(".mark")).to_have_attribute("aria-pressed", "false")
    open_page(page, "try.html")
    to_step(page, "Door")
    page.locator(".my-doors summary").click()
    keep(page, "Terrace")
    to_step(page, "Take along")
    expect(page.locator(".keeping .kept-door", has_text="Terrace")).to_be_visible()


def test_a_door_that_no_longer_reads_can_only_be_forgotten(page: Page, catalog: Catalog) -> None:
    page.goto("index.html")
    put(page, {"doors": [{"id": "1", "name": "Kitchen", "link": door_link(catalog)[:-9]}], "mine": "1", "marks": []})
    at_the_door(page, catalog)
    expect(page.locator(".kept-door").filter(visible=True)).to_be_disabled()
    expect(page.locator(".kept-door").filter(visible=True)).to_contain_text("It can no longer be read.")
    page.get_by_role("button", name="Forget Kitchen").click()
    expect(page.locator(".kept-door").filter(visible=True)).to_have_count(0)


def test_the_one_door_of_before_there_were_several_goes_along(page: Page, catalog: Catalog) -> None:
    page.goto("index.html")
    page.evaluate("link => localStorage.setItem('astragal-kept-door', link)", door_link(catalog))
    at_the_door(page, catalog)
    expect(page.locator(".my-doors summary strong")).to_have_text("My door")
    page.get_by_role("button", name="Rename My door").click()
    page.get_by_label("A new name for it").filter(visible=True).fill("Kitchen")
    page.keyboard.press("Enter")
    expect(page.locator(".kept-door").filter(visible=True)).to_contain_text("Kitchen")
    assert page.evaluate("Object.keys(localStorage)") == ["astragal-kept"]


def test_all_is_cleared_in_one_place_with_a_way_back(page: Page, catalog: Catalog) -> None:
    page.goto("index.html")
    kept = {**kept_doors(catalog, Kitchen=533.4), "marks": [{"family": "roller-shade", "link": ""}]}
    put(page, kept)
    page.get_by_label("Keep on this device").check()
    page.get_by_label("Evening").check()
    open_page(page, "try.html")
    to_step(page, "Take along")
    expect(page.locator(".keeping")).to_contain_text("Roller shade")
    page.get_by_role("button", name="Clear all that is kept").click()
    expect(page.locator(".undo")).to_contain_text("Nothing is kept on this device any more.")
    assert page.evaluate("localStorage.length") == 0
    page.get_by_role("button", name="Undo").click()
    assert kept_now(page) == kept


def test_doors_are_kept_from_a_disk(open_context: OpenContext, catalog: Catalog, demo: Path) -> None:
    page = open_context(offline=True).new_page()
    at = (demo / "try.html").as_uri()
    open_page(page, f"{at}#{fragment(catalog, my_door(catalog), step='door').split('#')[1]}")
    page.locator(".my-doors summary").click()
    keep(page, "Kitchen")
    open_page(page, at)
    expect(page.locator(".shelf-door strong")).to_have_text("Kitchen")
