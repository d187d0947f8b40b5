"""The short list: coverings marked on every page that shows them, and their comparison."""

import pytest
from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from tests.browser.accessibility import barriers_day_and_evening
from tests.browser.conftest import OpenContext
from tests.browser.keeping import kept_doors, kept_now, put
from tests.browser.test_my_doors import FULL
from tests.browser.test_touch import PAINTED, Finger
from tests.browser.trying import SIZES, covering, fragment, open_page, to_step, viewport

FOUR = ["roller-shade", "cellular-shade", "soft-fold-shade", "louvered-shutter"]
# How many columns are seen whole, and how many in part.
SEEN = """() => {
    const frame = document.querySelector('.swiped').getBoundingClientRect();
    const boxes = [...document.querySelectorAll('.column')].map((column) => column.getBoundingClientRect());
    const whole = boxes.filter((box) => box.left >= frame.left - 1 && box.right <= frame.right + 1);
    const begun = boxes.filter((box) => box.left < frame.right - 8 && box.right > frame.right + 1);
    return [whole.length, begun.length];
}"""

LEFTS = """selector => [...document.querySelectorAll(selector)]
    .map((one) => Math.round(one.getBoundingClientRect().left))"""


def marks(*families: str) -> dict[str, object]:
    """Return what is kept with these on the short list."""
    return {"doors": [], "mine": "", "marks": [{"family": family, "link": ""} for family in families]}


def mark(page: Page, name: str) -> None:
    """Press the mark of a covering."""
    page.get_by_role("button", name=f"Short list: {name}", exact=True).click()


def marked(page: Page) -> list[str]:
    """Return the families on the short list, in their order."""
    return [each["family"] for each in kept_now(page).get("marks", [])]


def compared(page: Page, *families: str, to: str = "details", catalog: Catalog) -> None:
    """Open a covering in a browser with these on its short list."""
    page.goto("index.html")
    put(page, marks(*families))
    open_page(page, fragment(catalog, covering(catalog, "garden-door", "cellular-shade"), step=to))


@pytest.mark.parametrize("size", SIZES)
def test_coverings_are_marked_on_the_shelf_and_compared(open_context: OpenContext, size: str) -> None:
    page = open_context(viewport=viewport(size), has_touch=size != "desk").new_page()
    open_page(page, "try.html")
    expect(page.locator(".list-bar")).to_be_hidden()
    mark(page, "Roller shade")
    expect(page.get_by_role("button", name="Short list: Roller shade")).to_have_attribute("aria-pressed", "true")
    expect(page.locator(".list-bar")).to_contain_text("Mark a second one")
    mark(page, "Louvered shutter")
    page.get_by_role("button", name="Compare 2").click()
    expect(page.locator(".column h3")).to_contain_text(["Roller shade", "Louvered shutter"])
    expect(page.locator("#compare-title")).to_be_focused()
    expect(page.locator("#compare-title")).to_be_in_viewport()


def test_a_mark_is_taken_off_again_by_keyboard(page: Page) -> None:
    open_page(page, "try.html")
    button = page.get_by_role("button", name="Short list: Roller shade")
    button.focus()
    page.keyboard.press("Space")
    expect(button).to_have_attribute("aria-pressed", "true")
    assert marked(page) == ["roller-shade"]
    page.keyboard.press("Enter")
    expect(button).to_have_attribute("aria-pressed", "false")
    expect(button).to_be_focused()
    assert page.evaluate("localStorage.length") == 0


def test_marks_are_the_same_on_every_page_and_in_every_tab(open_context: OpenContext) -> None:
    context = open_context()
    page, shelf = context.new_page(), context.new_page()
    open_page(shelf, "try.html")
    page.goto("coverings/index.html")
    mark(page, "Roller shade")
    expect(shelf.get_by_role("button", name="Short list: Roller shade")).to_have_attribute("aria-pressed", "true")
    mark(shelf, "Cellular shade")
    expect(page.get_by_role("button", name="Short list: Cellular shade")).to_have_attribute("aria-pressed", "true")
    page.goto("coverings/cellular-shade.html")
    mark(page, "Cellular shade")
    expect(shelf.get_by_role("button", name="Short list: Cellular shade")).to_have_attribute("aria-pressed", "false")
    page.goto("doors/garden-pair/roller-shade.html")
    expect(page.locator(".mark")).to_have_attribute("aria-pressed", "true")


def test_a_page_leads_to_the_comparison_on_my_door(page: Page, catalog: Catalog) -> None:
    page.goto("index.html")
    put(page, {**kept_doors(catalog, Kitchen=533.4), "marks": marks(*FOUR[:2])["marks"]})
    page.goto("coverings/index.html")
    page.get_by_role("link", name="See your short list side by side").click()
    expect(page.locator(".column")).to_have_count(2)
    page.wait_for_url("**garden-door;glass_width=21in:roller-shade*:cellular-shade**")


def test_the_picks_that_were_marked_are_compared(page: Page, catalog: Catalog) -> None:
    compared(page, catalog=catalog)
    page.get_by_label("Single, 3/8 in").or_(page.locator("#option-cell-single-3-8")).first.check()
    mark(page, "Cellular shade")
    picked = kept_now(page)["marks"][0]["link"]
    to_step(page, "Coverings")
    mark(page, "Roller shade")
    page.locator(".shelf-card", has_text="Louvered shutter").click()
    page.get_by_role("button", name="Compare your short list").click()
    expect(page.locator(".column").nth(0)).to_contain_text("Cellular shade")
    choice = picked.split("cellular-shade;")[1].split(";")[0]
    page.wait_for_url(f"**cellular-shade;{choice};**")


def test_other_choices_are_put_on_the_list_when_asked(page: Page, catalog: Catalog) -> None:
    compared(page, catalog=catalog)
    mark(page, "Cellular shade")
    before = kept_now(page)["marks"]
    renew = page.get_by_role("button", name="Put it on the short list with these choices")
    expect(renew).to_be_hidden()
    other = page.locator(".options input:not(:checked):enabled").first
    other.check()
    expect(renew).to_be_visible()
    assert kept_now(page)["marks"] == before
    renew.click()
    expect(renew).to_be_hidden()
    assert kept_now(page)["marks"] != before


def test_a_comparison_that_gives_way_comes_back(page: Page, catalog: Catalog) -> None:
    page.goto("index.html")
    put(page, marks("roller-shade", "soft-fold-shade"))
    both = [covering(catalog, "garden-pair", family) for family in ("cellular-shade", "louvered-shutter")]
    open_page(page, fragment(catalog, *both))
    page.get_by_role("button", name="Compare your short list").click()
    expect(page.locator(".column h3")).to_contain_text(["Roller shade", "Soft-fold shade"])
    page.get_by_role("button", name="Undo").click()
    expect(page.locator(".column h3")).to_contain_text(["Cellular shade", "Louvered shutter"])


def test_another_is_picked_from_the_shelf_and_stands_beside(page: Page, catalog: Catalog) -> None:
    compared(page, catalog=catalog)
    page.locator("#compare").get_by_role("button", name="Compare with another").click()
    expect(page.locator("#shelf-title")).to_be_focused()
    expect(page.locator(".list-bar")).to_contain_text("Pick the covering to stand beside: Cellular shade")
    page.locator(".shelf-card", has_text="Roller shade").click()
    expect(page.locator(".column h3")).to_contain_text(["Cellular shade", "Roller shade"])
    expect(page.locator("#compare-title")).to_be_in_viewport()


def test_nothing_need_be_picked(page: Page, catalog: Catalog) -> None:
    compared(page, catalog=catalog)
    page.locator("#compare").get_by_role("button", name="Compare with another").click()
    page.get_by_role("button", name="Back without one").click()
    expect(page.locator("#compare-title")).to_be_focused()
    to_step(page, "Coverings")
    page.locator(".shelf-card", has_text="Roller shade").click()
    expect(page.locator(".column")).to_have_count(0)


def test_two_stand_side_by_side_on_a_phone_and_the_others_are_told(open_context: OpenContext, catalog: Catalog) -> None:
    page = open_context(viewport=viewport("phone"), has_touch=True, reduced_motion="reduce").new_page()
    page.goto("index.html")
    put(page, marks(*FOUR))
    page.goto("coverings/index.html")
    page.get_by_role("link", name="See your short list side by side").click()
    expect(page.locator(".column")).to_have_count(4)
    count = page.locator(".turner [role=status]")
    expect(count).to_have_text("1 to 2 of 4")
    assert page.evaluate(SEEN) == [2, 1]
    on, back = page.get_by_role("button", name="The next one"), page.get_by_role("button", name="The one before")
    expect(back).to_have_attribute("aria-disabled", "true")
    on.focus()
    page.keyboard.press("Enter")
    expect(count).to_have_text("2 to 3 of 4")
    page.keyboard.press("Enter")
    expect(count).to_have_text("3 to 4 of 4")
    expect(on).to_have_attribute("aria-disabled", "true")
    expect(on).to_be_focused()
    page.get_by_role("region", name="The configurations compared").evaluate("one => one.scrollTo({ left: 0 })")
    expect(count).to_have_text("1 to 2 of 4")
    assert page.evaluate("document.documentElement.scrollWidth <= innerWidth")


def test_a_finger_swipes_to_the_others(open_context: OpenContext, catalog: Catalog) -> None:
    page = open_context(viewport=viewport("phone"), has_touch=True, is_mobile=True).new_page()
    compared(page, *FOUR, catalog=catalog)
    page.get_by_role("button", name="Compare your short list").click()
    count = page.locator(".turner [role=status]")
    expect(count).to_have_text("1 to 2 of 4")
    second = page.locator(".column .stand").nth(1)
    second.scroll_into_view_if_needed()
    page.evaluate(PAINTED)
    box = second.bounding_box()
    assert box
    Finger(page).swipe((box["x"] + box["width"] / 2, box["y"] + 60), -300, 0)
    expect(count).not_to_have_text("1 to 2 of 4")


def test_on_a_phone_a_value_stands_under_its_drawing(open_context: OpenContext, catalog: Catalog) -> None:
    page = open_context(viewport=viewport("phone")).new_page()
    compared(page, *FOUR, catalog=catalog)
    page.get_by_role("button", name="Compare your short list").click()
    page.locator("#compare tbody td").first.wait_for()
    row = page.evaluate(LEFTS, "#compare tbody tr:nth-child(2) td")[:4]
    assert row == page.evaluate(LEFTS, ".column")


def test_all_are_seen_on_a_desk(page: Page, catalog: Catalog) -> None:
    compared(page, *FOUR, catalog=catalog)
    page.get_by_role("button", name="Compare your short list").click()
    expect(page.locator(".column")).to_have_count(4)
    expect(page.locator(".turner")).to_be_hidden()
    assert page.evaluate(SEEN) == [4, 0]


def test_more_than_four_can_be_marked_and_four_are_compared(page: Page, catalog: Catalog) -> None:
    compared(page, *FOUR, "wood-blind", to="coverings", catalog=catalog)
    expect(page.locator(".list-bar")).to_contain_text("The first four are compared.")
    page.get_by_role("button", name="Compare 4").click()
    expect(page.locator(".column")).to_have_count(4)


def test_a_browser_that_keeps_no_mark_says_so(page: Page) -> None:
    page.add_init_script(FULL)
    page.goto("coverings/index.html")
    mark(page, "Roller shade")
    expect(page.get_by_text("This browser did not keep it")).to_be_visible()
    expect(page.get_by_role("button", name="Short list: Roller shade")).to_have_attribute("aria-pressed", "false")
    open_page(page, "try.html")
    mark(page, "Roller shade")
    expect(page.locator(".undo")).to_contain_text("This browser did not keep it")


@pytest.mark.parametrize("size", ["phone", "desk"])
def test_axe_finds_nothing(open_context: OpenContext, catalog: Catalog, size: str) -> None:
    page = open_context(viewport=viewport(size), reduced_motion="reduce").new_page()
    page.goto("index.html")
    put(page, {**kept_doors(catalog, Kitchen=533.4, Terrace=508.0), "marks": marks(*FOUR)["marks"]})
    for step in ("door", "coverings", "take"):
        open_page(page, fragment(catalog, covering(catalog, "garden-door", "cellular-shade"), step=step))
        page.locator("details").evaluate_all("all => all.forEach((one) => { one.open = true; })")
        assert barriers_day_and_evening(page, size) == [], step
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), step
    to_step(page, "Coverings")
    page.get_by_role("button", name="Compare 4").click()
    expect(page.locator(".column")).to_have_count(4)
    assert barriers_day_and_evening(page, size) == []
