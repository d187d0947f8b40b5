"""Up to four configurations side by side."""

import re

import pytest
from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from tests.browser.conftest import OpenContext
from tests.browser.trying import SIZES, covering, fragment, open_page, to_step, viewport

READ_SCALES = """() => [...document.querySelectorAll('.column svg')].map((svg) => {
    const box = svg.viewBox.baseVal;
    return [box.width / svg.getBoundingClientRect().width, box.y, box.height];
})"""


def three(catalog: Catalog, share: float = 0.5) -> str:
    """Return the address of three coverings on doors of different heights."""
    return fragment(
        catalog,
        covering(catalog, "garden-pair", "cellular-shade", at=(share, 0.0, 0.0)),
        covering(catalog, "garden-pair", "roller-shade", at=(0.1, 0.0, 0.0)),
        covering(catalog, "tall-door", "louvered-shutter", at=(1.0, 0.0, 30.0)),
    )


@pytest.mark.parametrize("size", SIZES)
def test_one_adds_up_to_four_and_removes(open_context: OpenContext, catalog: Catalog, size: str) -> None:
    page = open_context(viewport=viewport(size)).new_page()
    open_page(page, fragment(catalog, covering(catalog, "garden-pair", "cellular-shade")))
    add = page.get_by_role("button", name="The same with other choices")
    for _ in range(3):
        add.click()
    expect(add).to_be_hidden()
    expect(page.locator(".column")).to_have_count(4)
    page.get_by_role("button", name="Remove B").click()
    expect(page.locator(".column")).to_have_count(3)
    page.go_back()
    expect(page.locator(".column")).to_have_count(4)


def test_all_stand_at_one_scale_and_one_position(page: Page, catalog: Catalog) -> None:
    open_page(page, three(catalog))
    page.locator(".compared .column").first.wait_for()
    scales = page.evaluate(READ_SCALES)
    assert len(scales) == 3
    for scale, top, height in scales:
        assert scale == pytest.approx(scales[0][0], rel=1e-3)
        assert [top, height] == scales[0][1:]
    for label in page.locator(".column svg").evaluate_all("all => all.map((one) => one.ariaLabel)")[:2]:
        assert "50% down" in label
    page.get_by_role("slider", name="All at the same position").fill("100")
    expect(page.locator(".column svg").nth(1)).to_have_attribute("aria-label", re.compile("Roller shade, lowered"))
    expect(page.locator(".column-clear").first).to_contain_text("0%")


def test_what_differs_comes_first(page: Page, catalog: Catalog) -> None:
    open_page(page, three(catalog))
    bodies = page.locator("#compare tbody")
    expect(bodies.nth(0)).to_contain_text("What differs")
    expect(bodies.nth(1)).to_contain_text("The same in all")
    for body, differs in ((0, True), (1, False)):
        for row in bodies.nth(body).locator("tr:not(.part)").all():
            cells = row.locator("td").all_inner_texts()
            assert (len(set(cells)) > 1) is differs


def test_the_rest_of_the_figures_follow_on_request(page: Page, catalog: Catalog) -> None:
    open_page(page, three(catalog))
    tables = page.locator("#compare table")
    expect(tables.nth(0)).to_contain_text("Order width")
    expect(tables.nth(1)).to_be_hidden()
    page.locator("#compare summary").click()
    expect(tables.nth(1)).to_be_visible()
    expect(tables.nth(1)).to_contain_text("Overlap on the latch side")


def test_a_question_that_one_covering_does_not_raise_is_left_open(page: Page, catalog: Catalog) -> None:
    both = [covering(catalog, "garden-pair", family) for family in ("cellular-shade", "traversing-drapery")]
    open_page(page, fragment(catalog, *both))
    row = page.locator("#compare tr", has_text="Opening the leaf behind the closed covering")
    expect(row.locator("td").nth(0)).to_have_text("–")
    expect(row.locator("td").nth(1)).to_have_text("open the covering first")


def test_a_correction_reaches_all_on_the_same_door(page: Page, catalog: Catalog) -> None:
    open_page(page, three(catalog))
    to_step(page, "Door")
    page.get_by_label("Glass width", exact=True).fill("19")
    page.get_by_label("Glass width", exact=True).blur()
    page.wait_for_url("**glass_width=19in**")
    doors = [part for part in page.url.split("/") if part.startswith(("garden-pair", "tall-door"))]
    assert len(doors) == 2
    assert doors[0].count(":") == 2
    to_step(page, "Details")
    page.get_by_role("button", name="Work on this one").nth(1).click()
    to_step(page, "Door")
    expect(page.get_by_label("Glass width", exact=True)).not_to_have_value("19")


def test_another_one_can_be_worked_on(page: Page, catalog: Catalog) -> None:
    open_page(page, three(catalog))
    page.get_by_role("group", name="Configurations").get_by_role("button").nth(2).click()
    expect(page.locator(".chooser strong").filter(visible=True).first).to_have_text(
        catalog.families["louvered-shutter"]["name"]
    )
    expect(page.get_by_role("slider", name="Louvers")).to_be_visible()
