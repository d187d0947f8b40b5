"""How long the whole site takes, against plain MkDocs rendering pages of the same words."""

import time
from collections.abc import Callable
from pathlib import Path

from lxml import html
from mkdocs.commands.build import build as mkdocs_build
from mkdocs.config.defaults import MkDocsConfig

from configurator.places import CONTENT
from configurator.site import build

# Answers, drawings and pictures included, a page of ours may cost this many plain ones.
TIMES_PLAIN = 6


def seconds(work: Callable[[], None]) -> float:
    """Return how long the work takes."""
    start = time.perf_counter()
    work()
    return time.perf_counter() - start


def plain_pages(site: Path, docs: Path) -> None:
    """Write the words of every page of a site as Markdown, a paragraph for each stretch of text."""
    for page in site.rglob("*.html"):
        body = html.fromstring(page.read_bytes()).find("body")
        words = "\n\n".join(text.strip() for text in body.itertext() if text.strip())
        target = docs / page.relative_to(site).with_suffix(".md")
        target.parent.mkdir(parents=True, exist_ok=True)
        target.write_text(f"# {page.stem}\n\n{words}\n", encoding="utf-8")


def plain_build(docs: Path, out: Path) -> None:
    """Build the pages with MkDocs alone and its plainest theme."""
    config = MkDocsConfig()
    config.load_dict({"site_name": "Plain", "docs_dir": str(docs), "site_dir": str(out), "plugins": []})
    config.validate()
    mkdocs_build(config)


def test_a_page_costs_no_more_than_a_few_plain_ones(tmp_path: Path) -> None:
    site, docs, plain = tmp_path / "site", tmp_path / "docs", tmp_path / "plain"
    ours = seconds(lambda: build(CONTENT, site))
    plain_pages(site, docs)
    theirs = seconds(lambda: plain_build(docs, plain))
    assert ours < TIMES_PLAIN * theirs, f"{ours:.1f} s against {theirs:.1f} s"
