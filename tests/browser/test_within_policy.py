"""Nothing that a page does is barred by its own policy, and what others slip in is; over a wire as from a disk."""

import io
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from PIL import Image
from playwright.sync_api import Browser, Page

from configurator.catalog import Catalog
from tests.browser.conftest import OpenContext
from tests.browser.trying import SHOWN_IN, covering, fragment, open_page, to_step
from tests.site.kinds import KINDS

WATCH = """window.barred = [];
document.addEventListener("securitypolicyviolation", (event) => barred.push(event.effectiveDirective));"""
SLIP_IN = """async () => {
    document.body.insertAdjacentHTML("beforeend", "<style>body { color: rgb(1, 2, 3); }</style>"
        + '<p id="slipped" style="color: rgb(1, 2, 3)" onclick="window.ran = 1">x</p>');
    const script = document.createElement("script");
    script.textContent = "window.ran = 2";
    const sheet = document.createElement("link");
    sheet.rel = "stylesheet";
    sheet.href = "data:text/css,h1{color:rgb(1,2,3)}";
    const base = document.createElement("base");
    base.href = "https://far.example/";
    document.head.prepend(script, sheet, base);
    const picture = new Image();
    const settled = new Promise((done) => (picture.onerror = done));
    picture.src = "https://far.example/a.png";
    document.body.append(picture);
    document.getElementById("slipped").click();
    await settled;
    const colors = ["#slipped", "body", "h1"].map((one) => getComputedStyle(document.querySelector(one)).color);
    const [colored, away] = [colors.includes("rgb(1, 2, 3)"), document.baseURI.includes("far.example")];
    return { ran: window.ran ?? 0, colored, away };
}"""
BARRED = ["base-uri", "img-src", "script-src-attr", "script-src-elem", "style-src-attr", "style-src-elem"]


@pytest.fixture(params=["wire", "disk"])
def home(request: pytest.FixtureRequest, origin: str, demo: Path) -> str:
    """The address of the demo, ending in a slash: served, or on the disk."""
    return origin if request.param == "wire" else f"{demo.as_uri()}/"


@pytest.fixture
def watched(open_context: OpenContext) -> Page:
    """A page that notes what its policy bars; that it says so on its console fails a test, too."""
    context = open_context(viewport={"width": 1440, "height": 900})
    context.add_init_script(WATCH)
    return context.new_page()


def barred(page: Page) -> list[str]:
    """Return what the policy has barred on a page."""
    found: list[str] = page.evaluate("barred")
    return found


def test_no_kind_of_page_does_what_its_policy_bars(watched: Page, home: str) -> None:
    for kind, address in KINDS.items():
        watched.goto(home + address)
        assert watched.evaluate("document.documentElement.className") == "scripted", kind
        assert barred(watched) == [], kind


def test_no_step_of_the_configurator_does_what_the_policy_bars(watched: Page, home: str, catalog: Catalog) -> None:
    two = [
        covering(catalog, "garden-pair", "cellular-shade", at=(0.5, 0.0, 0.0)),
        covering(catalog, "garden-door", "roller-shade", at=(0.5, 0.0, 0.0)),
    ]
    open_page(watched, home + fragment(catalog, *two))
    watched.locator(".compared .column").first.wait_for()
    for step in SHOWN_IN:
        to_step(watched, step)
    watched.pdf()
    assert barred(watched) == []


@pytest.fixture
def slipped(browser: Browser, home: str) -> Iterator[tuple[dict[str, Any], list[str]]]:
    """What comes of scripts, styles and addresses that somebody has put into a page, and what the policy bars of it."""
    context = browser.new_context(service_workers="block")
    context.add_init_script(WATCH)
    page = context.new_page()
    page.goto(home + "index.html")
    came: dict[str, Any] = page.evaluate(SLIP_IN)
    yield came, barred(page)
    context.close()


def test_what_others_slip_in_does_nothing(slipped: tuple[dict[str, Any], list[str]]) -> None:
    came, stopped = slipped
    assert came == {"ran": 0, "colored": False, "away": False}
    assert sorted(set(stopped)) == BARRED


def test_a_drawing_has_the_color_and_the_weave_of_its_look(watched: Page, home: str) -> None:
    watched.goto(home + "coverings/nested-fold-shade.html")
    swatch = watched.locator("svg.swatch[data-look$=slub], svg.swatch[data-look$=basket]").first
    color = (swatch.get_attribute("data-look") or "").split("-")[1]
    cloth = swatch.locator(".cloth").first
    red, green, blue = (int(color[at : at + 2], 16) for at in (0, 2, 4))
    fill = cloth.evaluate("node => getComputedStyle(node).fill")
    assert fill.endswith(f"rgb({red}, {green}, {blue})")
    # Its weave is painted over that color: more than one shade of it is seen.
    seen = Image.open(io.BytesIO(swatch.screenshot())).convert("RGB")
    left = seen.crop((2, 2, seen.width // 2 - 2, seen.height - 2))
    assert len(left.getcolors(1 << 20) or []) > 3
