"""What the address holds, what a broken one says, and what stays on the device."""

import io
from pathlib import Path
from typing import Any

import pytest
import zxingcpp
from PIL import Image
from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from tests.browser.conftest import OpenContext
from tests.browser.trying import (
    SHOWN_IN,
    covering,
    fragment,
    fragment_now,
    grip,
    open_page,
    said,
    settled,
    to_step,
    viewport,
)
from tests.links import hurt_links

# What other steps show is made ready unseen, sooner or later.
READ_DRAWING = """() => {
    const all = (what) => [...document.querySelectorAll(what)];
    const shown = (what) => all(what).filter((one) => !one.closest('.step-parts > [hidden], .controls > [hidden]'));
    return [
        shown('.sheet-frame :is(.still, .moving)').map((group) => group.innerHTML),
        shown('.figure').map((figure) => figure.textContent),
        shown('.verdicts, .cautions').map((list) => list.textContent),
    ];
}"""


# The same as one text.
TOLD = f"() => JSON.stringify(({READ_DRAWING})())"


def everything(page: Page) -> Any:
    """Return all drawings, figures, verdicts and cautions of the step that is shown."""
    return page.evaluate(READ_DRAWING)


def shade(catalog: Catalog) -> str:
    """Return the address of a shade on a pair, in millimeters."""
    return fragment(catalog, covering(catalog, "garden-pair", "soft-fold-shade", at=(0.35, 0.0, 0.0)), units="mm")


def test_the_address_brings_back_the_very_same_drawings_and_figures(
    page: Page, open_context: OpenContext, catalog: Catalog
) -> None:
    open_page(page, shade(catalog))
    to_step(page, "Door")
    page.get_by_label("Glass width", exact=True).fill("533.7")
    page.get_by_label("Handle height", exact=True).fill("35 1/3 in")
    page.get_by_label("Handle height", exact=True).blur()
    to_step(page, "Details")
    before = fragment_now(page)
    x, y = grip(page, "lower")
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y + 37, steps=3)
    page.mouse.up()
    settled(page, before)
    to_step(page, "Take along")
    address = page.locator("#share-address").input_value()
    to_step(page, "Details")
    other = open_context(viewport=viewport("desk")).new_page()
    open_page(other, address)
    page.mouse.move(0, 0)
    # Figures come once all has been asked, last of all that the step shows.
    other.locator(SHOWN_IN["Details"]).first.wait_for()
    page.wait_for_function(f"told => ({TOLD})() === told", arg=other.evaluate(TOLD))
    assert everything(other) == everything(page)


def test_back_and_forward_go_step_by_step(page: Page, catalog: Catalog) -> None:
    open_page(page, shade(catalog))
    start = fragment_now(page)
    page.get_by_role("button", name="Closed", exact=True).click()
    page.get_by_role("radio", name="Inches").check()
    last = fragment_now(page)
    page.go_back()
    page.go_back()
    assert fragment_now(page) == start
    assert said(page, "Bottom rail") == "35% down"
    expect(page.get_by_role("radio", name="Millimeters")).to_be_checked()
    page.go_forward()
    assert said(page, "Bottom rail") == "lowered"
    page.go_forward()
    assert fragment_now(page) == last
    expect(page.get_by_role("radio", name="Inches")).to_be_checked()


SHOWN = """() => [location.hash, document.querySelector('.travel-bar input').value,
    document.querySelector('.travel-bar output').textContent,
    [...document.querySelectorAll('.moving-sheet .moving *')].map((one) =>
        [one.tagName, one.textContent, ...[...one.attributes].map(({ name, value }) => `${name}=${value}`).sort()])]"""
NOTED = f"""() => {{
    window.noted = [];
    window.addEventListener("popstate", () => window.noted.push(({SHOWN})()));
}}"""


def test_address_slider_and_drawing_step_back_together(page: Page, catalog: Catalog) -> None:
    open_page(page, shade(catalog))
    page.evaluate(NOTED)
    shown = [page.evaluate(SHOWN)]
    for end, words in (("Closed", "lowered"), ("Open", "raised")):
        page.get_by_role("button", name=end, exact=True).click()
        expect(page.locator(".travel-bar output")).to_have_text(words)
        shown.append(page.evaluate(SHOWN))
    page.evaluate("history.go(-1)")
    page.wait_for_function("noted.length === 1")
    page.evaluate("history.go(-1)")
    page.wait_for_function("noted.length === 2")
    page.evaluate("history.go(2)")
    page.wait_for_function("noted.length === 3")
    assert page.evaluate("noted") == [shown[1], shown[0], shown[2]]


def test_a_step_back_before_the_page_stands_is_followed(page: Page, catalog: Catalog) -> None:
    other = fragment(catalog, covering(catalog, "garden-pair", "soft-fold-shade", at=(0.6, 0.0, 0.0)))
    page.add_init_script(f"""new MutationObserver((_, watching) => {{
        if (!document.querySelector(".sheet-frame")) return;
        watching.disconnect();
        location.hash = "{other.split("#")[1]}";
    }}).observe(document, {{ childList: true, subtree: true }})""")
    page.goto(shade(catalog))
    expect(page.locator(".travel-bar output")).to_have_text("60% down")
    assert fragment_now(page) == "#" + other.split("#")[1]


def test_a_step_back_to_the_page_without_a_link_shows_the_kept_door_again(page: Page, catalog: Catalog) -> None:
    open_page(page, shade(catalog))
    to_step(page, "Take along")
    page.get_by_role("button", name="Keep this door").click()
    open_page(page, "try.html")
    to_step(page, "Details")
    expect(page.locator(".chooser strong").last).to_have_text(catalog.families["soft-fold-shade"]["name"])
    page.get_by_role("button", name="Closed", exact=True).click()
    expect(page.locator(".travel-bar output")).to_have_text("lowered")
    page.evaluate("history.go(-2)")
    page.wait_for_function("location.hash === ''")
    to_step(page, "Details")
    expect(page.locator(".travel-bar output")).to_have_text("35% down")


def test_a_drag_is_one_step(page: Page, catalog: Catalog) -> None:
    open_page(page, shade(catalog))
    before = fragment_now(page)
    steps = page.evaluate("history.length")
    x, y = grip(page, "lower")
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y + 90, steps=30)
    page.mouse.up()
    settled(page, before)
    assert page.evaluate("history.length") == steps + 1


@pytest.mark.parametrize(
    ("hurt", "words"),
    [
        (lambda link: link[:-9], "cut short"),
        (lambda link: link.replace("#2/", "#7/"), "newer version"),
        (lambda link: link.replace("soft-fold", "soft-gold"), "cut short or changed"),
        (lambda link: link.split("#")[0] + "#nonsense", "no configuration that can be read"),
    ],
)
def test_a_broken_link_says_so_and_shows_what_it_can(page: Page, catalog: Catalog, hurt: Any, words: str) -> None:
    open_page(page, hurt(shade(catalog)))
    expect(page.get_by_role("alert")).to_contain_text(words)
    expect(page.locator(".moving path").first).to_be_attached()
    expect(page.locator(".shelf-verdict").first).to_contain_text("clears")
    page.get_by_role("alert").get_by_role("button", name="Close").click()
    expect(page.get_by_role("alert")).to_be_hidden()


def test_a_covering_no_longer_offered_is_shown_as_it_was(page: Page, catalog: Catalog) -> None:
    page.route("**/catalog.*.js", lambda route: route.fulfill(body=retired(route.fetch().text())))
    open_page(page, shade(catalog))
    expect(page.locator(".gone")).to_contain_text("no longer offered")
    assert "soft-fold-shade" not in [box.get_attribute("value") for box in page.locator(".card:visible input").all()]


def test_what_has_changed_behind_a_link_is_told_as_it_was_and_as_it_is(page: Page, catalog: Catalog) -> None:
    narrower = "Astragal.catalog.doors['garden-pair'].glass_width -= 25.4;"
    page.route("**/catalog.*.js", lambda route: route.fulfill(body=route.fetch().text() + narrower))
    open_page(page, shade(catalog))
    notice = page.get_by_role("alert")
    expect(notice).to_contain_text("has changed since")
    expect(notice.get_by_role("columnheader")).to_have_text(["As it was", "As it is"])
    width = notice.get_by_role("row", name="Order width").get_by_role("cell").all_text_contents()
    was, now = (float(text.removeprefix("≈").split()[0].replace(",", "")) for text in width)
    assert was - now == pytest.approx(25.4, abs=0.1)
    notice.get_by_role("button", name="Close").click()
    page.get_by_role("button", name="Closed", exact=True).click()
    again = page.url
    open_page(page, again)
    expect(notice).to_be_hidden()


def test_a_measurement_that_is_confirmed_is_in_the_link(page: Page, catalog: Catalog) -> None:
    open_page(page, shade(catalog))
    to_step(page, "Door")
    assert "wall_gap" not in fragment_now(page)
    field = page.get_by_label("Glass width", exact=True)
    before = fragment_now(page)
    field.fill(field.input_value())
    field.blur()
    settled(page, before)
    assert ";glass_width=" in fragment_now(page)


def retired(script: str) -> str:
    """Return the catalog's script with the soft-fold shade retired."""
    return script + "Astragal.catalog.families['soft-fold-shade'].retired = true;"


def test_hurt_links_never_throw_and_never_change_the_page_but_for_a_message(page: Page, catalog: Catalog) -> None:
    open_page(page, "try.html")
    count = "document.querySelectorAll('#configurator > *').length"
    parts = page.evaluate(count)
    for link in hurt_links(catalog, 5, 120):
        page.evaluate("link => { location.hash = link; }", link)
    page.wait_for_timeout(200)
    assert page.evaluate(count) == parts
    expect(page.locator(".moving path").first).to_be_attached()


def read_code(picture: bytes) -> str:
    """Return what a code reader reads from a picture."""
    found = zxingcpp.read_barcodes(Image.open(io.BytesIO(picture)))
    assert len(found) == 1
    text: str = found[0].text
    return text


def test_the_code_reads_back_to_the_link(page: Page, catalog: Catalog) -> None:
    four = [covering(catalog, door, "cellular-shade") for door in ("garden-pair", "tall-door", "metric-single")]
    for address in (shade(catalog), fragment(catalog, *four)):
        open_page(page, address)
        link = page.url
        to_step(page, "Take along")
        page.get_by_role("button", name="Show as a code to scan").click()
        assert read_code(page.locator(".code .qr").screenshot()) == link


def test_the_link_can_be_copied(open_context: OpenContext, catalog: Catalog) -> None:
    context = open_context(viewport=viewport("desk"), permissions=["clipboard-read", "clipboard-write"])
    page = context.new_page()
    open_page(page, shade(catalog))
    link = page.url
    to_step(page, "Take along")
    page.get_by_role("button", name="Copy the link").click()
    expect(page.locator(".share")).to_contain_text("The link is copied.")
    assert page.evaluate("navigator.clipboard.readText()") == link


def test_only_what_is_asked_for_stays_on_the_device(page: Page, catalog: Catalog) -> None:
    open_page(page, shade(catalog))
    page.get_by_role("button", name="Closed", exact=True).click()
    assert page.evaluate("localStorage.length + sessionStorage.length") == 0
    assert page.context.cookies() == []
    to_step(page, "Take along")
    page.get_by_role("button", name="Keep this door").click()
    assert page.evaluate("localStorage.length") == 1
    page.goto("imprint.html")
    open_page(page, "try.html")
    expect(page.locator(".onward")).to_be_visible()
    to_step(page, "Details")
    expect(page.locator(".chooser strong").last).to_have_text(catalog.families["soft-fold-shade"]["name"])
    to_step(page, "Take along")
    page.get_by_role("button", name="Clear all that is kept").click()
    assert page.evaluate("localStorage.length") == 0


def test_it_works_from_a_disk_without_a_network(open_context: OpenContext, demo: Path, catalog: Catalog) -> None:
    context = open_context(viewport=viewport("desk"), offline=True)
    page = context.new_page()
    open_page(page, (demo / "try.html").as_uri() + "#" + shade(catalog).split("#")[1])
    before = fragment_now(page)
    x, y = grip(page, "lower")
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y + 40, steps=3)
    page.mouse.up()
    settled(page, before)
    page.go_back()
    assert fragment_now(page) == before
    to_step(page, "Take along")
    page.get_by_role("button", name="Keep this door").click()
    page.get_by_role("button", name="Clear all that is kept").click()


def test_it_works_under_any_path(page: Page, demo: Path, tmp_path: Path, catalog: Catalog) -> None:
    deep = tmp_path / "a folder" / "of ours"
    deep.parent.mkdir()
    deep.symlink_to(demo)
    open_page(page, (deep / "try.html").as_uri() + "#" + shade(catalog).split("#")[1])
    assert said(page, "Bottom rail") == "35% down"
