"""What a device keeps, and how a test puts it there."""

import json
from typing import Any

from playwright.sync_api import Page

from configurator.catalog import Catalog
from tests.browser.trying import covering, fragment

KEY = "astragal-kept"


def my_door(catalog: Catalog, width: float = 533.4) -> dict[str, Any]:
    """Return a covering on a garden door whose glass is as wide as measured."""
    one = covering(catalog, "garden-door", "cellular-shade")
    one["door"] = {**one["door"], "glass_width": width}
    return one


def door_link(catalog: Catalog, width: float = 533.4) -> str:
    """Return the link under which such a door is kept."""
    return fragment(catalog, my_door(catalog, width), step="coverings").split("#")[1]


def kept_doors(catalog: Catalog, **widths: float) -> dict[str, Any]:
    """Return what is kept with doors of these names and glass widths, the first of them being mine."""
    doors = [
        {"id": str(number), "name": name, "link": door_link(catalog, width)}
        for number, (name, width) in enumerate(widths.items(), 1)
    ]
    return {"doors": doors, "mine": "1", "marks": []}


def put(page: Page, kept: dict[str, Any] | str) -> None:
    """Have the browser keep something, spoilt or not; the page is of the site and reads it when it is loaded again."""
    text = kept if isinstance(kept, str) else json.dumps(kept)
    page.evaluate("([key, text]) => localStorage.setItem(key, text)", [KEY, text])


def kept_now(page: Page) -> dict[str, Any]:
    """Return what the browser keeps."""
    found: dict[str, Any] = json.loads(page.evaluate("key => localStorage.getItem(key)", KEY) or "{}")
    return found
