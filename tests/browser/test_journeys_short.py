"""From the home page to a ranked shelf on a door of one's own, and to a fix tried there: by few taps, or by keys."""

import re

from playwright.sync_api import Locator, Page, expect

from tests.browser.conftest import OpenContext
from tests.browser.trying import fragment_now, viewport

MOST_TAPS_TO_THE_SHELF = 10
MOST_TAPS_TO_A_FIX = 3
# More steps than this to one place are more than anybody makes by keyboard.
MOST_KEYS = 60
# What a tape found on a door of one's own, by the names of the fields; none of it is as on the preset.
MEASURED = {
    "Glass width": "21 3/4",
    "Glass height": "62 1/2",
    "Beside the glass, lock side": "5 7/8",
    "Gap behind the handle": "1 1/8",
}
KEPT = ("glass_width=21.75in", "glass_height=62.5in", "stile_latch=5.875in", "handle.gap=1.125in")


class Finger:
    """A finger that only taps, and counts."""

    def __init__(self, page: Page) -> None:
        self.page = page
        self.taps = 0

    def tap(self, what: Locator) -> None:
        """Tap something once."""
        what.tap()
        self.taps += 1


class Keys:
    """Hands on a keyboard, and nothing else."""

    def __init__(self, page: Page) -> None:
        self.page = page

    def go_to(self, what: Locator) -> None:
        """Step on until something has the focus."""
        what.wait_for()
        for _ in range(MOST_KEYS):
            if what.evaluate("one => one === document.activeElement"):
                return
            self.page.keyboard.press("Tab")
        raise AssertionError(f"{what} is not reached in {MOST_KEYS} steps")

    def press(self, what: Locator, key: str = "Enter") -> None:
        """Step on to something and press a key on it."""
        self.go_to(what)
        self.page.keyboard.press(key)


def all_kept(page: Page) -> None:
    """Wait until all that was typed is in the address."""
    page.wait_for_function("kept => kept.every((one) => location.hash.includes(one))", arg=list(KEPT))


def mendable(page: Page) -> Locator:
    """Return the first covering of the shelf that does not clear the handle."""
    return page.locator(".shelf-card").filter(has=page.locator(".verdict:not(.clears)")).first


def ranked(page: Page) -> Locator:
    """Return the covering that stands first, once the shelf says why it does."""
    return page.locator(".shelf-cards > li").first.locator(".shelf-why").filter(has_text=re.compile("Gives"))


def test_ten_taps_lead_to_a_ranked_shelf_and_three_more_to_a_fix(open_context: OpenContext) -> None:
    page = open_context(viewport=viewport("phone"), has_touch=True, is_mobile=True).new_page()
    finger = Finger(page)
    page.goto("index.html")
    finger.tap(page.get_by_role("link", name="Your door", exact=True))
    finger.tap(page.get_by_role("navigation", name="Steps").get_by_role("button", name="Door", exact=True))
    for name, length in MEASURED.items():
        field = page.get_by_label(name, exact=True)
        finger.tap(field)
        page.keyboard.type(length)
        expect(field).to_have_value(length)
    finger.tap(page.get_by_role("button", name="See every covering on this door"))
    all_kept(page)
    finger.tap(page.get_by_role("checkbox", name="Privacy by day"))
    ranked(page).wait_for()
    assert finger.taps <= MOST_TAPS_TO_THE_SHELF
    before = finger.taps
    finger.tap(mendable(page))
    fix = page.locator(".fix").first
    fix.wait_for()
    finger.tap(fix)
    expect(page.locator(".tried")).to_contain_text("Tried:")
    assert finger.taps - before <= MOST_TAPS_TO_A_FIX
    assert page.evaluate("document.documentElement.scrollWidth") <= 390


def test_the_same_way_is_gone_by_keys_alone(page: Page) -> None:
    keys = Keys(page)
    page.goto("index.html")
    keys.press(page.get_by_role("link", name="Your door", exact=True))
    keys.press(page.get_by_role("navigation", name="Steps").get_by_role("button", name="Door", exact=True))
    for name, length in MEASURED.items():
        keys.go_to(page.get_by_label(name, exact=True))
        page.keyboard.type(length)
        expect(page.get_by_label(name, exact=True)).to_have_value(length)
    keys.press(page.get_by_role("button", name="See every covering on this door"))
    all_kept(page)
    keys.press(page.get_by_role("checkbox", name="Privacy by day"), "Space")
    ranked(page).wait_for()
    before = fragment_now(page)
    keys.press(mendable(page))
    keys.press(page.locator(".fix").first)
    expect(page.locator(".tried")).to_contain_text("Tried:")
    assert fragment_now(page) != before
