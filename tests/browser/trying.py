"""The configurator as a person uses it: its addresses, its grips, and what stands on the page."""

from typing import Any

from playwright.sync_api import Locator, Page

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import encode
from configurator.catalog import Catalog
from configurator.kernel.position import position
from configurator.kernel.resolve import full_choices

# What stands on the page once a step is there.
SHOWN_IN = {
    "Door": ".lengths input",
    "Coverings": ".shelf-card .moving path",
    "Details": "[data-figure=order_width], .panel .refusal:not([hidden])",
    "Take along": "#share-address",
}
# What would fix it has been looked for; what is found there moves what stands below.
LOOKED = """![...document.querySelectorAll("main p")].some((one) =>
    one.textContent.startsWith("Looking for what would fix it") && one.checkVisibility())"""
# What a page shows of what has just been done to it, it shows by then.
TWO_FRAMES = "new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))"
# What is drawn over the door in elevation, section and plan.
VIEWS = '[...document.querySelectorAll(".moving-sheet .moving")].map((group) => group.innerHTML)'
SIZES = {"phone": (390, 844), "tablet": (820, 1180), "desk": (1440, 900)}


def viewport(size: str) -> dict[str, int]:
    """Return the viewport of a phone, a tablet or a desk."""
    width, height = SIZES[size]
    return {"width": width, "height": height}


def covering(catalog: Catalog, door: str, family: str, **changes: Any) -> dict[str, Any]:
    """Return a configuration; ``choices`` and ``at`` (lower, upper, tilt) may be changed."""
    chosen = full_choices(catalog.families[family], changes.get("choices", {}))
    return {
        "door": catalog.doors[door],
        "family": family,
        "choices": chosen,
        "place": position(*changes.get("at", (0.5, 0.0, 0.0))),
        "measured": [],
        "wishes": changes.get("wishes", {}),
    }


def fragment(
    catalog: Catalog, *configurations: dict[str, Any], active: int = 0, units: str = "in", step: str = "details"
) -> str:
    """Return the address of the page with these configurations."""
    stock = page_catalog(catalog)
    state: Any = {
        "units": units,
        "active": active,
        "step": step,
        "needs": [],
        "household": stock["household"],
        "configurations": list(configurations),
    }
    return "try.html#" + encode(state, stock)


def open_page(page: Page, address: str) -> None:
    """Open an address of the configurator anew and wait for all that its step shows, and for the paper."""
    if page.url != "about:blank":
        page.goto("about:blank")
    page.goto(address)
    page.locator(".onward").wait_for(state="attached")
    page.wait_for_function("Boolean(Astragal.page.sheetPages && Astragal.page.clientPages)")
    page.wait_for_function(LOOKED)


def to_step(page: Page, name: str) -> None:
    """Go to one of the page's steps and wait for what it shows."""
    page.get_by_role("navigation", name="Steps").get_by_role("button", name=name, exact=True).click()
    page.locator(SHOWN_IN[name]).first.wait_for()


def grip(page: Page, moves: str) -> tuple[float, float]:
    """Return the middle of the grip by which a part is taken on the elevation."""
    taken = page.locator(f".hold[data-moves={moves}] .grip")
    taken.wait_for()
    # While it is drawn anew it has no box.
    page.evaluate(TWO_FRAMES)
    box = taken.bounding_box()
    assert box
    return box["x"] + box["width"] / 2, box["y"] + box["height"] / 2


def slider(page: Page, name: str) -> Locator:
    """Return the slider of a moving part."""
    return page.get_by_role("group", name="Move the covering").get_by_role("slider", name=name)


def said(page: Page, name: str) -> str:
    """Return in which words a slider says where its part stands."""
    return slider(page, name).get_attribute("aria-valuetext") or ""


def views(page: Page) -> list[str]:
    """Return what is drawn over the door in elevation, section and plan."""
    found: list[str] = page.evaluate(VIEWS)
    return found


def fragment_now(page: Page) -> str:
    """Return the address's fragment."""
    found: str = page.evaluate("location.hash")
    return found


def settled(page: Page, before: str) -> str:
    """Wait until the address has taken up a movement; return its new fragment."""
    page.wait_for_function("before => location.hash !== before", arg=before)
    return fragment_now(page)
