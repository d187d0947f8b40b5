"""How long the whole site takes, against plain MkDocs rendering the same pages.

The peer is MkDocs as it comes: its own theme, and the search index that it makes unless told not to. Its pages are
ours, each page's whole ``<main>``, figures and drawings included, as a block of HTML in a Markdown file. So it is
given for nothing what our build works out: answers, drawings, and their words. It makes no pictures and no scripts.
"""

import logging
import time
from collections.abc import Callable
from pathlib import Path

from mkdocs.commands.build import build as mkdocs_build
from mkdocs.config.defaults import MkDocsConfig

from configurator.places import CONTENT
from configurator.site.mkdocs.build import build

# Our build, with all that it works out, may take as long as this many of the peer's. It takes about as long as one;
# it needs both cores for that, so what else the machine does slows it more than the peer, which needs one.
TIMES_PLAIN = 1.5
# Each is built this often by turns, and its quickest counts: what else the machine does then weighs less.
ROUNDS = 3


def seconds(work: Callable[[], None]) -> float:
    """Return how long the work takes."""
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def plain_pages(site: Path, docs: Path) -> None:
    """Write what is in the middle of every page of a site as a Markdown file of the same name."""
    for page in site.rglob("*.html"):
        text = page.read_text(encoding="utf-8")
        middle = text[text.index("<main") : text.index("</main>")] + "</main>"
        target = docs / page.relative_to(site).with_suffix(".md")
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_text(f"# {page.stem}\n\n{middle}\n", encoding="utf-8")


def plain_build(docs: Path, out: Path) -> None:
    """Build the pages with MkDocs alone, which says nothing of links that lead to pages it was not given."""
    logging.getLogger("mkdocs").setLevel(logging.ERROR)
    config = MkDocsConfig()
    config.load_dict({"site_name": "Plain", "docs_dir": str(docs), "site_dir": str(out)})
    config.validate()
    mkdocs_build(config)


def test_the_site_is_built_about_as_soon_as_plain_mkdocs_renders_its_pages(tmp_path: Path) -> None:
    site, docs, plain = tmp_path / "site", tmp_path / "docs", tmp_path / "plain"
    ours, theirs = [], []
    for _ in range(ROUNDS):
        ours.append(seconds(lambda: build(CONTENT, site)))
        plain_pages(site, docs)
        theirs.append(seconds(lambda: plain_build(docs, plain)))
    pages = [sorted(page.relative_to(folder) for page in folder.rglob("index.html")) for folder in (site, plain)]
    assert set(pages[0]) <= set(pages[1])
    assert (plain / "search" / "search_index.json").is_file()
    assert min(ours) < TIMES_PLAIN * min(theirs), f"{ours} s against {theirs} s"
