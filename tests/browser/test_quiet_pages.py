"""What a page says first, what it folds away, and that wide tables show that they go on."""

import pytest
from playwright.sync_api import Locator, Page, expect

from configurator.catalog import Catalog
from tests.browser.conftest import OpenContext
from tests.browser.trying import covering, fragment, open_page, viewport

FIT = "doors/garden-door/wood-blind.html"
GUIDANCE = "General guidance, for nearly every covering"
REACH = "Not everyone can reach"
TABLES = ["doors/garden-door.html", "coverings/roller-shade.html"]


def fold(page: Page) -> Locator:
    """Return the line behind which the general guidance is folded."""
    return page.locator("summary").filter(has_text=GUIDANCE).first


def test_a_fit_shows_verdict_drawing_and_five_figures_before_anything_is_scrolled(page: Page) -> None:
    page.goto(FIT)
    figures = page.locator(".at-first dt")
    expect(figures).to_have_count(5)
    for shown in (page.locator(".judgment .verdict"), page.locator(".plate svg").first, *figures.all()):
        box = shown.bounding_box()
        assert box
        assert box["y"] < 900
    above = page.locator("#verdicts").bounding_box()
    workings = page.locator(".workings").bounding_box()
    assert above
    assert workings
    assert above["y"] < workings["y"]


def test_workings_open_on_demand_and_are_there_without_scripts(open_context: OpenContext) -> None:
    page = open_context(java_script_enabled=False).new_page()
    page.goto(FIT)
    working = page.locator("table.figures td:last-child").first
    expect(working).to_be_hidden()
    page.locator(".workings summary").click()
    expect(working).to_be_visible()


def test_paper_has_the_workings_and_the_guidance_lying_open(page: Page) -> None:
    page.goto(FIT)
    page.emulate_media(media="print")
    for shown in (page.locator("table.figures td:last-child").first, page.get_by_text(REACH)):
        box = shown.bounding_box()
        assert box
        assert box["height"] > 0
    expect(page.locator(".workings summary")).to_be_hidden()


@pytest.mark.parametrize("address", [FIT, "doors/garden-door.html"])
def test_a_page_folds_the_general_guidance_and_nothing_else(page: Page, address: str) -> None:
    page.goto(address)
    expect(page.get_by_text(REACH)).to_be_hidden()
    fold(page).click()
    expect(page.get_by_text(REACH)).to_be_visible()
    assert page.locator(".guidance .cautions li").count() == 1
    if address == FIT:
        expect(page.get_by_text("lets the sun heat the pane")).to_be_visible()


def test_a_door_that_is_narrow_by_itself_says_so_once(page: Page) -> None:
    page.goto("doors/narrow-stile-door.html")
    expect(page.get_by_text("Even without a covering")).to_have_count(1)
    expect(page.get_by_text("Even without a covering")).to_be_visible()


def test_the_figures_fold_the_guidance_but_never_a_cord(page: Page, catalog: Catalog) -> None:
    looped = covering(catalog, "garden-door", "cellular-shade", choices={"lift": loop_of(catalog, "cellular-shade")})
    open_page(page, fragment(catalog, looped))
    expect(page.get_by_text("have been strangled by cords and loops")).to_be_visible()
    page.get_by_role("button", name="Coverings", exact=True).click()
    expect(page.get_by_text(REACH).last).to_be_hidden()
    page.locator(".shelf .guidance summary").click()
    expect(page.locator(".shelf .guidance li")).to_be_visible()


def loop_of(catalog: Catalog, family: str) -> str:
    """Return a lift of a family that leaves a cord or a loop."""
    lift = next(choice for choice in catalog.families[family]["choices"] if choice["id"] == "lift")
    corded = ("cord_length", "loop_length")
    return next(
        option["id"] for option in lift["options"] if any(option["numbers"].get(name, 0) > 0 for name in corded)
    )


@pytest.mark.parametrize("address", TABLES)
def test_a_wide_table_shows_that_it_goes_on_and_is_moved_by_keyboard(open_context: OpenContext, address: str) -> None:
    page = open_context(viewport=viewport("phone")).new_page()
    page.goto(address)
    table = page.locator(".table:has(table[data-sortable])")
    expect(table).to_have_accessible_name(page.locator(f"#{table.get_attribute('aria-labelledby')}").inner_text())
    assert table.evaluate("one => one.scrollWidth > one.clientWidth")
    # The shadows stay at the edges, and what covers them at an end moves with the table.
    assert table.evaluate("one => getComputedStyle(one).backgroundAttachment") == "local, local, scroll, scroll"
    table.focus()
    page.keyboard.press("ArrowRight")
    page.wait_for_function("() => document.querySelector('.table:focus').scrollLeft > 0")


def abreast(tiles: Locator) -> int:
    """Return how many tiles stand in the first row."""
    tops: list[int] = tiles.evaluate_all("all => all.map((one) => Math.round(one.getBoundingClientRect().top))")
    return tops.count(tops[0])


def test_on_a_tablet_held_upright_the_coverings_stand_three_abreast(open_context: OpenContext) -> None:
    page = open_context(viewport=viewport("tablet")).new_page()
    page.goto("coverings/index.html")
    assert abreast(page.locator("#found > li")) == 3
    open_page(page, "try.html")
    assert abreast(page.locator(".shelf-cards > li")) == 3
