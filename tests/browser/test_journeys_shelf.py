"""Every covering on one's own door: at one scale and position, ranked by what matters, a fix one tap away."""

import pytest
from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.fit import pieces_at
from configurator.kernel.glass_shares import glass_shares
from configurator.kernel.message import say
from configurator.kernel.mount.hung import hung
from configurator.kernel.needs.matching import best_match
from configurator.kernel.position import position_at
from configurator.kernel.remedy.fixes import fixes
from configurator.kernel.resolve import resolve
from configurator.kernel.tongue import ENGLISH
from tests.benchmarks.working import quiet
from tests.browser.conftest import OpenContext
from tests.browser.trying import SIZES, covering, fragment, fragment_now, open_page, to_step, viewport

DOOR = "garden-pair"


def shelf(page: Page, catalog: Catalog, share: float = 0.5) -> None:
    """Open the shelf on a door, all coverings a share of the way closed."""
    open_page(
        page, fragment(catalog, covering(catalog, DOOR, "cellular-shade", at=(share, 0.0, 0.0)), step="coverings")
    )
    page.locator(".shelf-card .moving path").first.wait_for()


def names(page: Page) -> list[str]:
    """Return the coverings from the first to the last."""
    return page.locator(".shelf-name").all_text_contents()


def families(page: Page) -> list[str]:
    """Return their ids."""
    found: list[str] = page.locator(".shelf-cards > li").evaluate_all("all => all.map((one) => one.dataset.family)")
    return found


@pytest.mark.parametrize("size", SIZES)
def test_a_fresh_page_shows_every_covering_drawn_on_one_door(
    open_context: OpenContext, catalog: Catalog, size: str
) -> None:
    page = open_context(viewport=viewport(size)).new_page()
    open_page(page, "try.html")
    offered = {family["name"] for family in catalog.families.values() if not family["retired"]}
    assert set(names(page)) == offered
    for card in page.locator(".shelf-card").all():
        card.scroll_into_view_if_needed()
        expect(card.locator(".moving path").first).to_be_attached()
    assert (
        len(set(page.locator(".shelf-picture").evaluate_all("all => all.map((one) => one.getAttribute('viewBox'))")))
        == 1
    )
    assert page.evaluate("document.documentElement.scrollWidth") <= page.evaluate("innerWidth")


def test_verdict_and_glass_of_each_are_the_kernels(page: Page, catalog: Catalog) -> None:
    shelf(page, catalog)
    for ident in families(page):
        family = catalog.families[ident]
        answer = ask(catalog.doors[DOOR], family, {}, catalog.household)
        fit = hung(catalog.doors[DOOR], family, {})
        shares = glass_shares(fit, pieces_at(fit, position_at(resolve(family, {}), 0.5)))
        card = page.locator(f"[data-family={ident}]")
        assert answer["verdicts"]["pass_through"]["says"]["text"].lower() in card.inner_text().lower()
        share = str(round(shares["visible"] * 100))
        assert f"{share}%" in card.locator(".shelf-facts").inner_text().replace("\u202f", " ").replace("\u00a0", " "), (
            ident
        )


def test_while_nothing_is_wanted_the_handle_ranks_them_and_then_the_clear_glass(page: Page, catalog: Catalog) -> None:
    shelf(page, catalog)
    standing = {}
    for family in catalog.families.values():
        if not family["retired"]:
            answer = ask(catalog.doors[DOOR], family, {}, catalog.household)
            state = answer["verdicts"]["pass_through"]["state"]
            place = {"clears": 0, "blocked": 2}.get(state, 1) if answer["refusal"]["text"] == "" else 3
            glass = answer["figures"]["visible_glass_open"]["value"] if place < 3 else 0.0
            standing[family["id"]] = (place, -glass)
    assert len({place for place, _ in standing.values()}) > 1
    ranked = sorted(standing, key=lambda family: standing[family])
    expect(page.locator(".shelf-cards > li").first).to_have_attribute("data-family", ranked[0])
    assert families(page) == ranked


def test_one_slider_moves_all_and_a_measurement_changes_all(page: Page, catalog: Catalog) -> None:
    shelf(page, catalog)
    picture = page.locator("[data-family=roller-shade] .moving")
    half = picture.inner_html()
    page.get_by_role("slider", name="All at the same position").fill("100")
    page.wait_for_function(
        "before => document.querySelector('[data-family=roller-shade] .moving').innerHTML !== before", arg=half
    )
    expect(page.locator("[data-family=roller-shade] .shelf-facts")).to_contain_text("0")
    closed = picture.inner_html()
    to_step(page, "Door")
    page.get_by_label("Glass width", exact=True).fill("19")
    to_step(page, "Coverings")
    page.wait_for_function(
        "before => document.querySelector('[data-family=roller-shade] .moving').innerHTML !== before", arg=closed
    )


def test_while_a_door_is_measured_the_shelf_is_made_ready_for_it(page: Page, catalog: Catalog) -> None:
    shelf(page, catalog)
    to_step(page, "Door")
    # What was still to be done for the door before would show the next one too.
    quiet(page)
    cards = page.locator(".shelf-cards")
    before = cards.text_content()
    page.get_by_label("Glass width", exact=True).fill("12")
    page.wait_for_function("before => document.querySelector('.shelf-cards').textContent !== before", arg=before)
    expect(cards).to_be_hidden()


def test_what_matters_ranks_them_by_the_kernels_best_picks(page: Page, catalog: Catalog) -> None:
    shelf(page, catalog)
    for need in ("Darkness", "Easy to clean"):
        page.get_by_role("checkbox", name=need).check()
    best = {
        ident: best_match(catalog.doors[DOOR], family, catalog.household, ["dark", "cleaning"])
        for ident, family in catalog.families.items()
        if not family["retired"]
    }
    whole = len([match for match in best.values() if len(match["met"]) == 2])
    expect(page.locator(".needs")).to_contain_text(f"{whole} coverings meet all of it.")
    page.wait_for_function(
        "() => [...document.querySelectorAll('.shelf-why')].some((one) => one.textContent.includes('With '))"
    )
    ranked = [best[ident]["weight"] for ident in families(page)]
    assert ranked == sorted(ranked, reverse=True)
    expect(page.locator("[data-family=cellular-shade] .shelf-why")).to_contain_text("Gives darkness and easy to clean")
    assert ";needs=dark,cleaning" in fragment_now(page)
    open_page(page, page.url)
    expect(page.get_by_role("checkbox", name="Darkness")).to_be_checked()


def test_where_nothing_matches_it_says_which_wish_costs_most(page: Page, catalog: Catalog) -> None:
    shelf(page, catalog)
    for need in ("The view", "Pets that push through", "A low price", "Little depth", "Heat kept in"):
        page.get_by_role("checkbox", name=need).check()
    expect(page.locator(".needs")).to_contain_text(
        "No covering meets all of it on this door. The wish that costs most:"
    )


def test_a_tap_opens_the_picks_that_get_there_and_back_returns(page: Page, catalog: Catalog) -> None:
    shelf(page, catalog)
    page.get_by_role("checkbox", name="Darkness").check()
    expect(page.locator("[data-family=cellular-shade] .shelf-why")).to_contain_text("fabric: Harbor, slate")
    page.locator("[data-family=cellular-shade] .shelf-card").click()
    expect(page.locator("#option-fabric-harbour")).to_be_checked()
    expect(page.get_by_role("navigation", name="Steps").get_by_role("button", name="Details")).to_be_focused()
    expect(page.get_by_role("slider", name="Bottom rail")).to_have_value("50")
    page.go_back()
    expect(page.locator(".shelf-card").first).to_be_visible()


def test_a_fix_is_one_tap_and_so_is_its_undoing(page: Page, catalog: Catalog) -> None:
    door, family = catalog.doors["garden-door"], catalog.families["flat-fold-shade"]
    told = fixes(hung(door, family, {}), catalog.household)
    open_page(page, fragment(catalog, covering(catalog, "garden-door", "flat-fold-shade")))
    buttons = page.locator(".fix > span:first-child")
    expect(buttons).to_have_text([say(fix["says"], ENGLISH, "in") for fix in told])
    expect(page.locator(".fixes-panel")).to_contain_text("Each has been tried on this door.")
    before = fragment_now(page)
    expect(page.locator(".now-verdict")).not_to_contain_text("clears")
    page.locator(".fix").first.click()
    expect(page.locator(".now-verdict")).to_contain_text("clears")
    expect(page.locator(".tried-row")).to_contain_text("Tried:")
    page.get_by_role("button", name="Undo").click()
    expect(page.locator(".now-verdict")).not_to_contain_text("clears")
    assert fragment_now(page) == before


def test_the_page_says_when_nothing_would_fix_it(page: Page, catalog: Catalog) -> None:
    door, family = catalog.doors["sidelight-door"], catalog.families["stretched-panel"]
    verdicts = ask(door, family, {}, catalog.household)["verdicts"].values()
    names = [verdict["name"] for verdict in verdicts if verdict["state"] != "clears"]
    assert len(names) == 1
    assert fixes(hung(door, family, {}), catalog.household) == []
    open_page(page, fragment(catalog, covering(catalog, "sidelight-door", "stretched-panel", at=(0.0, 0.0, 0.0))))
    expect(page.locator(".fixes-panel")).to_contain_text(f"would fix this: {names[0]}.")


def test_a_width_set_by_hand_is_in_the_link_and_comes_back(page: Page, catalog: Catalog) -> None:
    narrow = covering(catalog, "garden-door", "cellular-shade", wishes={"width_wanted": 558.8})
    open_page(page, fragment(catalog, narrow))
    assert "width_wanted=22in" in fragment_now(page)
    expect(page.locator("[data-figure=order_width] b")).to_have_text("22 in")


def test_a_width_is_set_by_hand_within_what_the_leaf_allows(page: Page, catalog: Catalog) -> None:
    open_page(page, fragment(catalog, covering(catalog, "garden-door", "cellular-shade")))
    order = page.locator("[data-figure=order_width] b")
    allowed = order.inner_text()
    width = page.get_by_label("Ordered width, where you set it")
    width.fill("22")
    expect(order).to_have_text("22 in")
    width.fill("99")
    expect(width).to_have_attribute("aria-invalid", "true")
    expect(order).to_have_text("22 in")
    expect(page.locator("#ordered-width-note")).to_contain_text(allowed)
    width.fill("22")
    width.blur()
    page.wait_for_url("**;width_wanted=22in@**")
    page.get_by_role("button", name="As the leaf allows").click()
    expect(order).to_have_text(allowed)


def test_the_door_takes_no_more_than_a_third_of_a_phone_while_it_is_measured(
    open_context: OpenContext, catalog: Catalog
) -> None:
    page = open_context(viewport=viewport("phone")).new_page()
    open_page(page, fragment(catalog, covering(catalog, DOOR, "cellular-shade"), step="door"))
    box = page.locator(".drawing-table").bounding_box()
    assert box
    assert box["height"] <= 844 / 3
