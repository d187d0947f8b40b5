"""A house as a consultant and her client go through it, the network off: measured, chosen, agreed, ordered."""

import csv
from pathlib import Path

import pytest
from click.testing import CliRunner
from playwright.sync_api import BrowserContext, Locator, Page, expect

from configurator.cli import main
from configurator.kernel.lengths import written_length
from tests.browser.conftest import OpenContext
from tests.browser.test_visits import add_door, is_kept, measure, open_leaf, saved
from tests.browser.trying import to_step, viewport

CONTROLLED = "Boolean(navigator.serviceWorker.controller)"


def without_network(context: BrowserContext) -> Page:
    """Open the page of visits, once it is kept on the device, with the network off."""
    page = context.new_page()
    page.goto("visits.html")
    page.evaluate("async () => { await navigator.serviceWorker.ready; }")
    page.reload()
    page.wait_for_function(CONTROLLED)
    context.set_offline(True)
    return page


def opened(fold: Locator) -> Locator:
    """Open a door, or another part of the visit that is folded; return it."""
    if fold.get_attribute("open") is None:
        fold.locator("summary").first.click()
    return fold


def choose(page: Page, door: Locator, family: str) -> Locator:
    """Choose a covering for a door in the configurator and take it back; return its card in the visit."""
    opened(door)
    door.get_by_role("link", name="Choose a covering for this door").click()
    page.locator(f"[data-family={family}] button").first.click()
    to_step(page, "Take along")
    page.get_by_role("link", name="Put it to a visit").click()
    page.get_by_role("button", name="Put it there").click()
    card = door.locator(".proposal").last
    expect(card.locator("h4")).to_be_focused()
    expect(card.locator("h4")).to_be_in_viewport()
    return card


def measured_house(page: Page) -> tuple[Locator, Locator]:
    """Begin a visit with a pair and a half-lite door, their glass measured; return both."""
    page.get_by_role("button", name="Begin a visit").click()
    page.get_by_label("Client", exact=True).fill("Mrs Tansy")
    study = add_door(page, "Study", "garden-pair")
    measure(open_leaf(study, "active", "The glass"), "Glass width", "19 15/16", "19 7/8", "19 7/8")
    measure(open_leaf(study, "other", "The glass"), "Glass width", "19 13/16", "19 13/16", "19 3/4")
    study.locator("summary").first.click()
    kitchen = add_door(page, "Kitchen", "half-lite-door")
    leaf = open_leaf(kitchen, "active", "The leaf")
    measure(open_leaf(kitchen, "active", "The glass"), "Width of the glass molding", "1/2")
    measure(leaf, "Above the glass", "5")
    measure(leaf, "Below the glass", "37 3/8")
    height = measure(leaf, "Whole height of the door", "76 1/2")
    measure(open_leaf(kitchen, "active", "The glass"), "Glass height", "36 1/8", "36 1/8", "36 1/16")
    expect(height.locator(".finding")).to_contain_text("Measure the whole height again")
    measure(leaf, "Whole height of the door", "79 1/2")
    is_kept(page)
    return page.locator(".one-door").first, page.locator(".one-door").last


def answered(context: BrowserContext, link: str) -> str:
    """Open proposals as the client, mark the second for the first door, say something, and return the answer."""
    page = context.new_page()
    page.goto(link)
    doors = page.locator(".client-door")
    expect(doors.locator(".leaf-told dl")).to_have_count(3)
    expect(doors.first.get_by_text("Price: $1,250.50")).to_have_count(1)
    expect(doors.first.get_by_text("The other leaf measures a little otherwise")).to_have_count(2)
    following = doors.first.get_by_role("button", name="Next")
    if following.is_visible():
        following.click()
    doors.first.get_by_role("radio").nth(1).check()
    doors.last.get_by_role("radio").check()
    doors.last.get_by_label("Your remarks on this door").fill("The other white, please.")
    expect(page.locator(".client-answer dd").first).to_have_text("B: Roller shade")
    assert page.evaluate("document.documentElement.scrollWidth") <= page.evaluate("innerWidth")
    letter = page.get_by_role("link", name="Write to the showroom").get_attribute("href") or ""
    page.close()
    return letter.split("visits.html%23")[1].replace("%7E", "~").replace("%2F", "/")


def agree_on_all(page: Page) -> Locator:
    """Agree on what the client likes for each door; return what is agreed."""
    desk = opened(page.locator("details.desk").last)
    expect(desk.locator(".agreement option:checked").first).to_have_text("B: Roller shade")
    for agreement in desk.locator(".agreement").all():
        agreement.get_by_role("button", name="Agree on it today").click()
        expect(agreement.locator(".agreed")).to_contain_text("Everything is as it was agreed.")
    return desk


def sizes_on_paper(page: Page) -> list[float]:
    """Return the finished widths and heights of the order as its paper on the page has them, mm."""
    page.locator("[data-paper=order]").click()
    rows = page.locator(".paper table").filter(has_text="Finished width").locator("tbody tr")
    told = [cell for row in rows.all() for cell in row.locator("td, th").all_inner_texts()[-2:]]
    return [written_length(text.replace("\xa0", " "), "in")["mm"] for text in told]


def change_one_wall_and_one_fabric(page: Page, study: Locator, kitchen: Locator) -> None:
    """Measure a wall anew, and put another fabric in the place of what was agreed."""
    measure(open_leaf(study, "active", "Around the door"), "Side wall", "4")
    opened(kitchen).get_by_role("link", name="Open in the configurator").click()
    page.get_by_role("radio", name="Screen, charcoal").check(force=True)
    to_step(page, "Take along")
    page.get_by_role("link", name="Put it to a visit").click()
    page.get_by_role("button", name="Put it in place of Roller shade").click()
    expect(kitchen.locator(".proposal")).to_have_count(1)
    expect(kitchen.get_by_label("What the client says to it")).to_have_value("The other white, please.")


@pytest.mark.parametrize("size", ["phone", "desk"])
def test_a_house_goes_from_the_tape_to_the_order_and_is_opened_again(
    open_context: OpenContext, tmp_path: Path, size: str
) -> None:
    context = open_context(
        viewport=viewport(size), has_touch=size == "phone", reduced_motion="reduce", service_workers="allow"
    )
    page = without_network(context)
    study, kitchen = measured_house(page)
    choose(page, study, "cellular-shade").get_by_label("Price").fill("1,250.50")
    choose(page, study, "roller-shade").get_by_label("Your note to it").fill("The darkest.")
    choose(page, kitchen, "roller-shade")
    part = opened(page.locator("details.desk").first)
    part.get_by_label("With the prices that you have named").check()
    answer = answered(context, part.get_by_label("The link that the client opens").input_value())
    part.get_by_label("Paste the link").fill(f"Dear all,\nvisits.html#{answer}")
    part.get_by_role("button", name="Take the answer over").click()

    agreed = agree_on_all(page)
    file = saved(page, tmp_path)
    table = list(csv.DictReader(CliRunner().invoke(main, ["order", str(file), "--csv"]).stdout.splitlines()))
    assert [row["room"] for row in table] == ["Study", "Study", "Kitchen"]
    ordered = [float(row[name]) for row in table for name in ("order_width", "order_height")]
    assert sizes_on_paper(page) == pytest.approx(ordered, abs=0.01)

    change_one_wall_and_one_fabric(page, study, kitchen)
    opened(agreed)
    expect(agreed).to_contain_text("Side wall agreed: ")
    expect(agreed).to_contain_text("Fabric agreed: Screen, pearl; today: Screen, charcoal")
    assert sizes_on_paper(page) == pytest.approx(ordered, abs=0.01)
    assert page.evaluate("document.documentElement.scrollWidth") <= viewport(size)["width"]
