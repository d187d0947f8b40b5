"""Pages are set in the site's own letters wherever they are read from, and keep their places without them."""

import re
import time
from collections.abc import Callable
from itertools import cycle
from pathlib import Path

import pytest
from playwright.sync_api import Page, Route

from tests.browser.conftest import OpenContext
from tests.browser.test_steadiness import LEAST_SEEN as LEAST_MOVED
from tests.browser.test_steadiness import WATCH
from tests.browser.trying import TWO_FRAMES, viewport
from tests.site.kinds import KINDS
from tests.site.pages import asset

# The fonts that have come; what stands in for one is a system's own.
COME = """document.fonts.ready.then((all) =>
    [...all].filter((one) => one.status === "loaded" && !one.family.includes("Stand-In")).map((one) => one.family))"""
HEIGHT = "document.fonts.ready.then(() => document.documentElement.scrollHeight)"
OWN = re.compile(r"@font-face{[^}]*url\(data:[^}]*}")
# Of a page's height: words end their lines elsewhere, and few paragraphs have a line more or less.
LEAST_SEEN = 0.03
# How long the style takes to come, s.
LATE = 0.4


@pytest.mark.parametrize("home", ["wire", "disk"])
def test_a_page_is_set_in_the_site_s_own_letters(page: Page, origin: str, demo: Path, home: str) -> None:
    root = origin if home == "wire" else f"{demo.as_uri()}/"
    for address in ("index.html", "doors/garden-pair/roller-shade.html"):
        page.goto(root + address)
        assert {"Astragal Sans", "Astragal Serif"} <= set(page.evaluate(COME)), address
        assert page.evaluate("getComputedStyle(document.querySelector('h1')).fontFamily").startswith('"Astragal Serif"')
    drawn = "getComputedStyle(document.querySelector('.drawing-sheet text')).fontFamily"
    assert page.evaluate(drawn).startswith('"Astragal Sans"')


def set_in(page: Page, what: str) -> set[str]:
    """Return the faces in which the words of an element are painted."""
    session = page.context.new_cdp_session(page)
    session.send("DOM.enable")
    session.send("CSS.enable")
    root = session.send("DOM.getDocument")["root"]["nodeId"]
    node = session.send("DOM.querySelector", {"nodeId": root, "selector": what})["nodeId"]
    return {font["familyName"] for font in session.send("CSS.getPlatformFontsForNode", {"nodeId": node})["fonts"]}


def late(route: Route) -> None:
    """Let the style come when the page's words have long been there."""
    time.sleep(LATE)
    route.continue_()


def test_the_very_first_page_is_set_in_them_and_stands_still(open_context: OpenContext) -> None:
    for (kind, address), size in zip(KINDS.items(), cycle(("phone", "desk")), strict=False):
        # What one context has unpacked is not there in the next.
        page = open_context(viewport=viewport(size)).new_page()
        page.add_init_script(WATCH)
        page.route("**/assets/site.*.css", late)
        page.goto(address, wait_until="networkidle")
        page.evaluate(TWO_FRAMES)
        assert set_in(page, "h1") == {"Astragal Serif"}, kind
        assert set_in(page, ".wordmark span") == {"Astragal Serif"}, kind
        assert set_in(page, ".masthead li a") == {"Astragal Sans"}, kind
        assert page.evaluate("window.shifted") < LEAST_MOVED, kind


def with_style(page: Page, demo: Path, change: Callable[[str], str]) -> None:
    """Have a page come with a changed style sheet."""
    style = change(asset(demo, "site.css").read_text(encoding="utf-8"))

    def answer(route: Route) -> None:
        route.fulfill(body=style, content_type="text/css")

    page.route("**/assets/site.*.css", answer)


def heights(page: Page) -> dict[str, int]:
    """Return how high the kinds of page are that are only read."""
    found = {}
    for kind, address in KINDS.items():
        if address not in ("try.html", "visits.html", "proposals.html"):
            page.goto(address)
            found[kind] = page.evaluate(HEIGHT)
    return found


@pytest.mark.parametrize("size", ["phone", "desk"])
def test_what_stands_in_takes_the_same_room(open_context: OpenContext, demo: Path, size: str) -> None:
    context = open_context(viewport=viewport(size))
    own, bare = context.new_page(), context.new_page()
    with_style(bare, demo, lambda style: OWN.sub("", style))
    come, stood_in = heights(own), heights(bare)
    apart = {kind: abs(stood_in[kind] - height) / height for kind, height in come.items()}
    assert {kind: share for kind, share in apart.items() if share > LEAST_SEEN} == {}


def test_a_page_s_head_is_as_high_with_either(page: Page, demo: Path) -> None:
    head = "document.fonts.ready.then(() => document.querySelector('.masthead').getBoundingClientRect().height)"
    page.goto("index.html")
    come = page.evaluate(head)
    with_style(page, demo, lambda style: OWN.sub("", style))
    page.goto("imprint.html")
    page.goto("index.html")
    assert page.evaluate(COME) == []
    assert page.evaluate(head) == come
