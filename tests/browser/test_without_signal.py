"""The site with the network off: kept once visited, of one version, under a sub-path; from a disk nothing is kept."""

import os
import shutil
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from playwright.sync_api import Browser, BrowserContext, Page

from configurator.catalog.site_addresses import WORKER
from configurator.local import folder_server
from configurator.site.answers import Answers
from configurator.site.mkdocs.build import build
from tests.browser.conftest import OpenContext, serving
from tests.conftest import small_content

FITTED = "doors/garden-door/roller-shade.html"
# When the first version was put there: a server tells no two dates apart within a second.
HOURS_AGO = -2
READY = "async () => { await navigator.serviceWorker.ready; }"
# The page before may have asked just before the site changed, and a browser makes one of two questions that meet. What
# could not be had whole is asked for again.
NEWER = """async () => {
    const registration = await navigator.serviceWorker.ready;
    for (let asked = 0; asked < 100 && !registration.waiting; asked++) {
        await registration.update();
        const coming = registration.installing;
        if (coming) await new Promise((done) => coming.addEventListener("statechange", done, { once: true }));
    }
}"""
KEPT = "async path => Boolean(await caches.match(new URL(path, document.baseURI)))"


@pytest.fixture(scope="module")
def versions(tmp_path_factory: pytest.TempPathFactory, demo_answers: Callable[[], Answers]) -> tuple[Path, Path]:
    """Two versions of a small site: the second has another name."""
    folder = tmp_path_factory.mktemp("versions")
    content = small_content(folder / "content", "roller-shade")
    answers = demo_answers()
    build(content, folder / "one", answers)
    showroom = content / "showroom.yaml"
    written = showroom.read_text(encoding="utf-8")
    showroom.write_text(written.replace("Lantern & Sill", "Sill & Lantern"), encoding="utf-8")
    build(content, folder / "two", answers)
    assert "Sill & Lantern" not in (folder / "one" / "index.html").read_text(encoding="utf-8")
    return folder / "one", folder / "two"


@pytest.fixture
def web(tmp_path: Path, versions: tuple[Path, Path]) -> Iterator[tuple[Path, str]]:
    """A web space with the first version under a sub-path: its folder, and the site's address."""
    dated(shutil.copytree(versions[0], tmp_path / "web" / "doors" / "here"), HOURS_AGO)
    with serving(folder_server(tmp_path / "web", 0)) as address:
        yield tmp_path / "web" / "doors" / "here", f"{address}doors/here/"


def dated(site: Path, hours: int) -> Path:
    """Date a site's files so many hours from now, and return it."""
    when = time.time() + hours * 3600
    for path in site.rglob("*"):
        os.utime(path, (when, when))
    return site


def swap_in(version: Path, place: Path, hours: int) -> None:
    """Put another version in a site's place as a build does: at one stroke, never half of it. Its worker is of now, all
    else so many hours older or younger."""
    fresh = dated(shutil.copytree(version, place.with_name("fresh")), hours)
    (fresh / WORKER).touch()
    place.rename(place.with_name("former"))
    fresh.rename(place)


def visited(context: BrowserContext, page_path: str = "index.html") -> Page:
    """Open a page, wait until the site is kept, and open it again as what is kept."""
    page = context.new_page()
    page.goto(page_path)
    page.evaluate(READY)
    page.reload()
    return page


def test_a_site_that_was_visited_once_opens_without_a_signal(open_context: OpenContext, web: tuple[Path, str]) -> None:
    context = open_context(base_url=web[1], service_workers="allow")
    page = visited(context)
    context.set_offline(True)
    page.goto("try.html")
    page.locator("#configurator svg").filter(visible=True).first.wait_for()
    page.goto("coverings/roller-shade.html")
    assert "Lantern & Sill" in page.title()
    page.goto("doors/")
    assert page.locator("h1").inner_text()


def test_fitted_pages_are_kept_as_they_are_read_or_when_the_reader_asks_for_all(
    open_context: OpenContext, web: tuple[Path, str]
) -> None:
    context = open_context(base_url=web[1], service_workers="allow")
    page = visited(context)
    assert not page.evaluate(KEPT, FITTED)
    page.get_by_role("button", name="Keep the whole site on this device").click()
    page.get_by_text("The whole site is kept on this device and opens without a signal.").wait_for()
    context.set_offline(True)
    page.goto(FITTED)
    assert page.locator("figure svg").count() > 0


def test_a_page_that_is_not_kept_says_so(browser: Browser, web: tuple[Path, str]) -> None:
    # The browser's own log tells of the missing answer, so nobody listens to it here.
    context = browser.new_context(base_url=web[1])
    page = visited(context)
    context.set_offline(True)
    answer = page.goto(FITTED)
    assert answer
    assert answer.status == 503
    assert page.get_by_role("heading", name="This page is not kept on this device").is_visible()
    page.get_by_role("link", name="Your door").click()
    page.locator("#configurator svg").filter(visible=True).first.wait_for()
    context.close()


# Whoever puts a site where it is served may keep its files' dates, and a server compares these.
@pytest.mark.parametrize("hours", [0, 2 * HOURS_AGO], ids=["of now", "dated earlier"])
def test_a_newer_version_is_told_and_never_mixed(
    open_context: OpenContext, web: tuple[Path, str], versions: tuple[Path, Path], hours: int
) -> None:
    context = open_context(base_url=web[1], service_workers="allow")
    page = visited(context)
    swap_in(versions[1], web[0], hours)
    page.goto("coverings/index.html")
    assert "Lantern & Sill" in page.title()
    page.evaluate(NEWER)
    page.get_by_text("A newer version of this site is here.").wait_for()
    page.goto("doors/index.html")
    assert "Lantern & Sill" in page.title()
    page.get_by_role("button", name="Show the newer version").click()
    page.wait_for_function("document.title.includes('Sill & Lantern')")
    context.set_offline(True)
    page.goto("index.html")
    assert "Sill & Lantern" in page.title()
    names = page.evaluate("caches.keys()")
    assert len([name for name in names if not name.endswith(" wish")]) == 1


def test_from_a_disk_nothing_is_kept_and_nothing_goes_wrong(
    open_context: OpenContext, versions: tuple[Path, Path]
) -> None:
    page = open_context(service_workers="allow").new_page()
    page.goto((versions[0] / "index.html").as_uri())
    assert page.locator("script[src*='/device.']").count() == 0
