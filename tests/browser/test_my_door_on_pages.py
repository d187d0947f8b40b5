"""A kept door goes along to the pages that are read."""

from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.message import say, say_phrase
from configurator.kernel.say import say_value
from configurator.kernel.tongue import ENGLISH
from tests.browser.accessibility import barriers_day_and_evening
from tests.browser.conftest import OpenContext
from tests.browser.keeping import kept_doors, my_door, put
from tests.browser.trying import SHOWN_IN, covering, fragment, viewport
from tests.site.pages import plain_name

FAMILY = "roller-shade"
PAGE = f"coverings/{FAMILY}.html"
KEY = ["visible_glass_open", "light_closed", "stack_height", "projection_most", "order_width", "order_height"]


def keeping(page: Page, catalog: Catalog, address: str, **widths: float) -> None:
    """Open a page in a browser that keeps doors of these names and glass widths."""
    page.goto("index.html")
    put(page, kept_doors(catalog, **(widths or {"Kitchen": 533.4})))
    page.goto(address)


def plain(text: str) -> str:
    """Return a text as it is said, without what a page sets otherwise."""
    return text.replace("\u202f", " ").replace("\u00a0", " ").replace("\u2060", "").replace("’", "'").strip()


def test_a_covering_stands_on_my_door_with_its_verdict_and_figures(page: Page, catalog: Catalog) -> None:
    keeping(page, catalog, PAGE)
    shown = page.locator(".on-mine")
    shown.locator("dl").wait_for()
    answer = ask(my_door(catalog)["door"], catalog.families[FAMILY], {}, catalog.household)
    told = plain(shown.inner_text())
    assert "Kitchen" in told
    verdict = answer["verdicts"]["pass_through"]
    assert say_phrase(verdict["says"], ENGLISH, "in") in told
    assert plain(say(verdict["why"], ENGLISH, "in")) in told
    values = [plain(value) for value in shown.locator("dl dd").all_inner_texts()]
    figures = [answer["figures"][name] for name in KEY]
    assert values == [plain(say_value(each["value"], each["unit"], ENGLISH, "in")) for each in figures]


def test_it_is_my_door_wherever_the_covering_was_marked(page: Page, catalog: Catalog) -> None:
    picked = covering(catalog, "garden-pair", FAMILY, choices={"mount": "over-opening"})
    link = fragment(catalog, picked).split("#")[1]
    page.goto("index.html")
    put(page, {**kept_doors(catalog, Kitchen=533.4), "marks": [{"family": FAMILY, "link": link}]})
    page.goto(PAGE)
    answer = ask(my_door(catalog)["door"], catalog.families[FAMILY], picked["choices"], catalog.household)
    width = answer["figures"]["order_width"]
    order = page.locator(".on-mine dl > div", has_text="Order width").locator("dd")
    expect(order).to_have_text(say_value(width["value"], width["unit"], ENGLISH, "in"))


def test_it_moves_on_my_door(page: Page, catalog: Catalog) -> None:
    keeping(page, catalog, PAGE)
    drawn = page.locator(".on-mine .moving")
    slider = page.locator(".on-mine").get_by_role("slider", name="Position, from open to closed")
    slider.wait_for()
    before = drawn.inner_html()
    slider.focus()
    page.keyboard.press("End")
    expect(slider).to_have_attribute("aria-valuetext", "Lowered")
    expect(page.locator(".on-mine").get_by_role("img")).to_have_attribute("aria-label", "Roller shade: Lowered")
    assert drawn.inner_html() != before


def test_a_covering_that_does_not_fit_says_why(page: Page, catalog: Catalog) -> None:
    keeping(page, catalog, "coverings/louvered-shutter.html", Slot=110.0)
    answer = ask(my_door(catalog, 110.0)["door"], catalog.families["louvered-shutter"], {}, catalog.household)
    page.locator(".on-mine .judgment").wait_for()
    assert plain(say(answer["refusal"], ENGLISH, "in")) in plain(page.locator(".on-mine").inner_text())


def test_another_door_of_mine_takes_its_place_in_every_tab(open_context: OpenContext, catalog: Catalog) -> None:
    context = open_context()
    page, other = context.new_page(), context.new_page()
    keeping(page, catalog, PAGE, Kitchen=533.4, Terrace=508.0)
    page.locator(".on-mine dl").wait_for()
    before = page.locator(".on-mine dl").inner_text()
    other.goto("index.html")
    put(other, {**kept_doors(catalog, Kitchen=533.4, Terrace=508.0), "mine": "2"})
    expect(page.locator(".on-mine h2")).to_contain_text("Terrace")
    page.wait_for_function("before => document.querySelector('.on-mine dl').innerText !== before", arg=before)


@pytest.mark.parametrize("address", [PAGE, f"doors/garden-pair/{FAMILY}.html"])
def test_it_is_tried_on_my_door(page: Page, catalog: Catalog, address: str) -> None:
    keeping(page, catalog, address)
    if address != PAGE:
        page.get_by_role("link", name="See it on my door").click()
    page.get_by_role("link", name="Try it on your door").click()
    page.locator(SHOWN_IN["Details"]).first.wait_for()
    page.wait_for_url("**garden-door;glass_width=21in:roller-shade**")
    expect(page.locator(".onward-words")).to_have_text("Roller shade on your door: Kitchen")


@pytest.mark.parametrize("address", ["index.html", "doors/garden-pair.html", "coverings/index.html"])
def test_a_page_goes_on_with_my_door(page: Page, catalog: Catalog, address: str) -> None:
    page.goto(address)
    expect(page.get_by_role("link", name="Go on with my door")).to_be_hidden()
    keeping(page, catalog, address)
    expect(page.locator(".go-on")).to_contain_text("Kitchen")
    page.get_by_role("link", name="Go on with my door").click()
    expect(page.locator(".shelf-door strong")).to_have_text("Kitchen")


def test_who_keeps_no_door_is_sent_no_kernel(page: Page) -> None:
    fetched: list[str] = []
    page.on("request", lambda request: fetched.append(request.url.rsplit("/", 1)[1]))
    page.goto(PAGE)
    expect(page.locator(".mark")).to_be_visible()
    expect(page.locator(".on-mine")).to_be_hidden()
    assert {plain_name(name) for name in fetched if name.endswith(".js")} == {"page.js", "mine.js", "device.js"}


def test_without_scripts_the_page_is_as_ever(open_context: OpenContext) -> None:
    page = open_context(java_script_enabled=False).new_page()
    page.goto(PAGE)
    expect(page.locator(".on-mine")).to_be_hidden()
    expect(page.locator(".mark")).to_be_hidden()
    expect(page.locator(".mover").first).to_be_visible()


def test_it_works_from_a_disk(open_context: OpenContext, catalog: Catalog, demo: Path) -> None:
    page = open_context(base_url=demo.as_uri() + "/", offline=True).new_page()
    keeping(page, catalog, PAGE)
    page.locator(".on-mine dl").wait_for()
    page.get_by_role("link", name="Try it on your door").click()
    page.wait_for_url("**garden-door;glass_width=21in:roller-shade**")


def test_what_no_longer_reads_is_told(page: Page, catalog: Catalog) -> None:
    page.goto("index.html")
    put(page, '{"doors": [{"id": "1", "name": "Kitchen", "link": "2/in/garden-door/xxxxx"}], "mine": "1"}')
    page.goto(PAGE)
    expect(page.locator(".on-mine [role=status]")).to_contain_text("can no longer be read")


@pytest.mark.parametrize("size", ["phone", "desk"])
def test_axe_finds_nothing(open_context: OpenContext, catalog: Catalog, size: str) -> None:
    page = open_context(viewport=viewport(size), reduced_motion="reduce").new_page()
    for address in (PAGE, "index.html", "coverings/index.html", f"doors/garden-pair/{FAMILY}.html"):
        keeping(page, catalog, address)
        if address == PAGE:
            page.locator(".on-mine dl").wait_for()
        assert barriers_day_and_evening(page, size) == [], address
        assert page.evaluate("document.documentElement.scrollWidth <= innerWidth"), address
