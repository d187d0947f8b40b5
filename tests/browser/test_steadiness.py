"""Pages stand still while they load, and open from a disk without a complaint."""

import time
from pathlib import Path

import pytest
from playwright.sync_api import Page, Route

from tests.browser.conftest import OpenContext
from tests.browser.trying import TWO_FRAMES, viewport
from tests.site.kinds import KINDS

LATE = 0.4
# A busy machine may paint a page half read and close a gap with the rest; a hundredth of the screen goes unseen.
LEAST_SEEN = 0.01
WATCH = """
window.shifted = 0;
new PerformanceObserver((list) => {
  for (const entry of list.getEntries()) window.shifted += entry.value;
}).observe({ type: "layout-shift", buffered: true });
"""


def late(route: Route) -> None:
    """Let a file come after the page has been painted without it."""
    time.sleep(LATE)
    route.continue_()


@pytest.mark.parametrize("size", ["phone", "desk"])
def test_nothing_moves_while_a_page_loads(open_context: OpenContext, size: str) -> None:
    page = open_context(viewport=viewport(size)).new_page()
    page.add_init_script(WATCH)
    page.route("**/assets/catalog.*.js", late)
    moved = {}
    for kind, address in KINDS.items():
        page.goto(address, wait_until="networkidle")
        page.evaluate(TWO_FRAMES)
        moved[kind] = page.evaluate("window.shifted")
    assert {kind: share for kind, share in moved.items() if share >= LEAST_SEEN} == {}


def test_the_watch_sees_a_page_that_moves(page: Page) -> None:
    page.add_init_script(WATCH)
    page.goto("imprint.html")
    page.wait_for_timeout(600)
    page.evaluate("document.body.prepend(Object.assign(document.createElement('h1'), { textContent: 'One more' }))")
    page.evaluate(TWO_FRAMES)
    page.wait_for_function("window.shifted > 0")


def test_pages_open_from_a_disk_without_a_complaint(open_context: OpenContext, demo: Path) -> None:
    page = open_context(viewport=viewport("desk")).new_page()
    for pattern in ("*.html", "*/*.html", "doors/garden-pair/*.html"):
        for file in demo.glob(pattern):
            page.goto(file.as_uri(), wait_until="domcontentloaded")
            assert page.locator("h1").count() == 1
