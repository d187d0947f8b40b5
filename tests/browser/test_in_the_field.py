"""The configurator in one file, from a disk, with the network off: the same shelf and figures as the site's."""

from collections.abc import Callable
from pathlib import Path

import pytest
from playwright.sync_api import Page

from configurator.catalog import Catalog
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.mkdocs.field_file import field_file
from tests.browser.conftest import OpenContext
from tests.browser.trying import covering, fragment, open_page, to_step


@pytest.fixture(scope="module")
def field(tmp_path_factory: pytest.TempPathFactory, demo_answers: Callable[[], Answers]) -> str:
    """The address of the file on a disk."""
    file = tmp_path_factory.mktemp("field") / "field.html"
    file.write_text(field_file(CONTENT), encoding="utf-8")
    return file.as_uri()


@pytest.fixture
def offline(open_context: OpenContext) -> Page:
    """A page of a browser without a network."""
    context = open_context(viewport={"width": 390, "height": 844})
    context.set_offline(True)
    return context.new_page()


def shelf(page: Page) -> list[str]:
    """Return the coverings of the shelf in their order."""
    page.locator(".shelf-card .moving path").first.wait_for()
    return page.locator(".shelf-name").all_text_contents()


def figures(page: Page) -> dict[str, str]:
    """Return every figure that the details tell."""
    page.locator("[data-figure=order_width]").first.wait_for()
    page.wait_for_function("document.querySelectorAll('[data-figure]').length > 20")
    found: dict[str, str] = page.locator("[data-figure]").evaluate_all(
        "all => Object.fromEntries(all.map((one) => [one.dataset.figure, one.textContent]))"
    )
    return found


def test_shelf_and_figures_are_those_of_the_site(offline: Page, field: str, demo: Path, catalog: Catalog) -> None:
    details = fragment(catalog, covering(catalog, "garden-pair", "cellular-shade")).partition("#")[2]
    told = []
    for address in (field, (demo / "try.html").as_uri()):
        open_page(offline, address)
        ranked = shelf(offline)
        open_page(offline, f"{address}#{details}")
        told.append((ranked, figures(offline)))
    assert told[0] == told[1]
    assert len(told[0][0]) > 10


def test_a_covering_of_the_shelf_opens_and_goes_along(offline: Page, field: str) -> None:
    open_page(offline, field)
    shelf(offline)
    to_step(offline, "Details")
    to_step(offline, "Take along")
    assert offline.locator("#share-address").input_value().startswith(field)
    offline.get_by_role("button", name="Show as a code to scan").click()
    offline.locator(".code svg").wait_for()
