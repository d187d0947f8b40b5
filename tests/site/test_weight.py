"""How much of a site comes through the wire."""

import gzip
from functools import cache
from pathlib import Path

from tests.site.pages import pages, parsed, plain_name, target

PAGE_LIMIT = 150_000
SCRIPT_LIMIT = 60_000
STATIC_SCRIPT_LIMIT = 3_500
SITE_LIMIT = 12_000_000

# Everything that a browser fetches with a page; a lazy image comes when it is scrolled to.
SCRIPTS = "//script/@src"
LOADED = f"//link[@rel='stylesheet' or @rel='icon']/@href | {SCRIPTS} | //img[not(@loading='lazy')]/@src"
# What the configurator knows of doors and families is data, sent as a script so that it opens from a disk.
DATA = "catalog.js"


@cache
def packed(file: Path) -> int:
    """Return how many bytes of a file are sent, packed."""
    return len(gzip.compress(file.read_bytes()))


def loaded(page: Path, what: str) -> list[Path]:
    """Return the files that a page loads."""
    return [target(page, str(link))[0] for link in parsed(page)[0].xpath(what)]


def test_every_page_weighs_little_with_all_that_it_loads(demo: Path) -> None:
    weights = {
        str(page.relative_to(demo)): packed(page) + sum(packed(file) for file in loaded(page, LOADED))
        for page in pages(demo)
    }
    assert {page: weight for page, weight in weights.items() if weight > PAGE_LIMIT} == {}
    # The style, two scripts and the page itself: nothing has been overlooked.
    assert len(loaded(demo / "try.html", LOADED)) >= 5


def test_every_page_loads_little_script(demo: Path) -> None:
    weights = {
        str(page.relative_to(demo)): sum(
            packed(file) for file in loaded(page, SCRIPTS) if plain_name(file.name) != DATA
        )
        for page in pages(demo)
    }
    assert {page: weight for page, weight in weights.items() if weight > SCRIPT_LIMIT} == {}


def test_a_page_that_is_only_read_loads_hardly_any_script(demo: Path) -> None:
    for url in ("index.html", "coverings/index.html", "doors/index.html"):
        assert sum(packed(file) for file in loaded(demo / url, SCRIPTS)) < STATIC_SCRIPT_LIMIT, url


def test_the_whole_site_stays_small(demo: Path) -> None:
    assert sum(file.stat().st_size for file in demo.rglob("*") if file.is_file()) < SITE_LIMIT
