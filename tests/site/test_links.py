"""Every link leads somewhere, from a disk as from any sub-path."""

from pathlib import Path

import pytest

from tests.site.pages import ids, links, pages, target

OUTSIDE = ("tel:", "mailto:")


def inside(link: str) -> bool:
    """Return whether a link leads to a file of the site."""
    return not link.startswith(OUTSIDE)


def test_every_link_is_relative(demo: Path) -> None:
    strays = {(page.name, link) for page in pages(demo) for link in links(page) if inside(link)}
    assert [stray for stray in strays if "://" in stray[1] or stray[1].startswith("/")] == []


def test_every_link_leads_to_a_file_of_the_site(demo: Path) -> None:
    lost = {
        (str(page.relative_to(demo)), link)
        for page in pages(demo)
        for link in links(page)
        if inside(link) and not target(page, link)[0].is_file()
    }
    assert lost == set()


def test_every_anchor_is_there(demo: Path) -> None:
    # What follows the # of the configurator's page is a configuration, which tests of links open.
    lost = set()
    for page in pages(demo):
        for link in links(page):
            file, anchor = target(page, link) if inside(link) else (page, "")
            if anchor and file.suffix == ".html" and file.name != "try.html" and anchor not in ids(file):
                lost.add((str(page.relative_to(demo)), link))
    assert lost == set()


def test_nothing_is_fetched_from_elsewhere(demo: Path) -> None:
    for sheet in demo.rglob("*.css"):
        text = sheet.read_text(encoding="utf-8")
        assert "@import" not in text
        assert "url(http" not in text.replace('"', "").replace("'", "")


@pytest.mark.parametrize("file", ["index.html", "try.html", "measure.html", "404.html", "imprint.html", "privacy.html"])
def test_the_pages_that_every_site_needs_are_there(demo: Path, file: str) -> None:
    assert (demo / file).is_file()
