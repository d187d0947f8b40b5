"""The page in another language is the same page with the same configuration, from a host as from a disk."""

from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from configurator.catalog import load
from configurator.local import folder_server
from configurator.site.answers import Answers
from tests.browser.conftest import OpenContext, serving
from tests.browser.trying import covering, fragment, fragment_now, open_page, said, viewport
from tests.conftest import built_once, other_content


def two_tongues(folder: Path) -> Path:
    """Write a small content in two languages."""
    other_content(folder)
    showroom = folder / "showroom.yaml"
    showroom.write_text(f"languages: [en, es]\n{showroom.read_text(encoding='utf-8')}", encoding="utf-8")
    return folder


@pytest.fixture(scope="session")
def site(tmp_path_factory: pytest.TempPathFactory, demo_answers: Callable[[], Answers]) -> Path:
    """A folder with a site in two languages."""
    return built_once(tmp_path_factory, "two-tongues", two_tongues, demo_answers)


@pytest.fixture(params=["host", "disk"])
def root(request: pytest.FixtureRequest, site: Path) -> Iterator[str]:
    """The address of the site, ending in a slash: served, and as files."""
    if request.param == "disk":
        yield f"{site.as_uri()}/"
        return
    with serving(folder_server(site, 0)) as address:
        yield address


@pytest.fixture
def page(open_context: OpenContext, root: str) -> Page:
    return open_context(base_url=root, viewport=viewport("desk")).new_page()


def switch(page: Page, language: str) -> None:
    """Read the page in another language."""
    page.locator("nav.tongues").get_by_role("link", name=language, exact=True).click()
    page.wait_for_function(f"document.documentElement.lang === '{'es' if language == 'español' else 'en'}'")


def shown(page: Page) -> list[object]:
    """Return what is picked and measured, and where the covering stands."""
    return page.evaluate("""() => {
        // What another step shows is made ready unseen.
        const all = (what) => [...document.querySelectorAll(`#configurator ${what}`)];
        const seen = (what) => all(what).filter((one) => !one.closest("[hidden]"));
        return [
            seen("input:checked").map((box) => [box.name, box.value]),
            seen("input[type=text]").map((field) => field.value),
            seen("input[type=range]").map((slider) => slider.value),
        ];
    }""")


def test_the_switch_keeps_page_and_configuration(page: Page, root: str, site: Path) -> None:
    stock = load(site.parent / "two-tongues-content")
    shade = covering(stock, "garden-pair", "cellular-shade", at=(0.35, 0.0, 0.0))
    open_page(page, root + fragment(stock, shade, step="door"))
    page.get_by_label("Glass width", exact=True).fill("21 3/8")
    page.get_by_label("Glass width", exact=True).blur()
    page.wait_for_function("location.hash.includes('glass_width')")
    before, kept = shown(page), fragment_now(page)
    switch(page, "español")
    page.locator(".moving path").first.wait_for(state="attached")
    page.locator(".onward").wait_for(state="attached")
    assert page.url.startswith(f"{root}es/try.html#")
    assert fragment_now(page) == kept
    assert shown(page) == before
    switch(page, "English")
    page.locator(".moving path").first.wait_for(state="attached")
    assert page.url == f"{root}try.html{kept}"
    assert said(page, "Bottom rail") == "35% down"


@pytest.mark.parametrize("name", ["index.html", "doors/garden-pair.html", "doors/garden-pair/cellular-shade.html"])
def test_the_switch_keeps_a_page_without_configuration(page: Page, root: str, name: str) -> None:
    page.goto(f"{root}{name}#content")
    switch(page, "español")
    assert page.url == f"{root}es/{name}#content"
    expect(page.locator("nav.tongues a[aria-current]")).to_have_text("español")
