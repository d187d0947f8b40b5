"""By day, in the evening and from the street: the one chosen stays while the covering is moved."""

from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from tests.browser.conftest import OpenContext
from tests.browser.trying import covering, fragment, open_page, slider, viewport

PERSON = ".stage-sheet .person"
DARK_SKY = ".stage-sheet .sky.unlit"
MADE_OUT = ".light-words p >> nth=0"


def choose(page: Page, name: str) -> None:
    """Choose in which light the elevation is seen."""
    page.get_by_role("radio", name=name, exact=True).check()


def test_the_light_that_is_chosen_stays_while_the_covering_moves(open_context: OpenContext, catalog: Catalog) -> None:
    page = open_context(viewport=viewport("desk")).new_page()
    opened = covering(catalog, "garden-door", "roller-shade", choices={"fabric": "night-clay"}, at=(1.0, 0.0, 0.0))
    open_page(page, fragment(catalog, opened))
    expect(page.get_by_role("radio", name="By day", exact=True)).to_be_checked()
    assert page.locator(PERSON).count() == 0
    choose(page, "In the evening")
    page.locator(DARK_SKY).first.wait_for(state="attached")
    choose(page, "From the street")
    page.locator(PERSON).first.wait_for(state="attached")
    expect(page.locator(MADE_OUT)).to_have_text("Of the person behind the covering nothing is made out.")
    expect(page.locator(".hold .grip")).to_have_count(0)
    slider(page, "Bottom rail").focus()
    page.keyboard.press("Home")
    expect(page.locator(MADE_OUT)).to_contain_text("the person is seen as without a covering")
    assert page.locator(PERSON).count() > 0
    choose(page, "By day")
    page.locator(".hold .grip").first.wait_for(state="attached")
    expect(page.locator(PERSON)).to_have_count(0)
    expect(page.locator(".light-words")).to_be_hidden()
