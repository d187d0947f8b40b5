"""Other makers of static sites, given the finished pages as Markdown: each page's whole ``<main>`` as a block of HTML.

MkDocs is there as it comes, with its own theme and its search index. The others come with ``sh .ci/setup benchmarks``:
Hugo as Debian's package, Eleventy from npm. Neither makes a search index.
"""

import json
import os
import shutil
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path

LAYOUT = "<!doctype html><title>{{ .Title }}</title>{{ .Content }}"
# What a page of ours holds as HTML goes through as it is, in both.
HUGO_SETTINGS = {
    "disableKinds": ["RSS", "sitemap", "taxonomy", "term"],
    "markup": {"goldmark": {"renderer": {"unsafe": True}}},
}
ELEVENTY_SETTINGS = "module.exports = () => ({ markdownTemplateEngine: false });\n"


def mkdocs(docs: Path, place: Path) -> Callable[[], object]:
    """Return what has plain MkDocs build the pages in ``docs``, in a new folder at ``place``."""
    place.mkdir()
    settings = place / "mkdocs.yml"
    told = {"site_name": "Plain", "docs_dir": str(docs), "site_dir": str(place / "site")}
    settings.write_text(json.dumps(told), encoding="utf-8")
    return running([sys.executable, "-m", "mkdocs", "build", "--quiet", "--config-file", str(settings)])


def hugo(docs: Path, place: Path) -> Callable[[], object]:
    """Return what has Hugo build the pages in ``docs``, in a new folder at ``place``."""
    shutil.copytree(docs, place / "content")
    # A folder with a page called index is to Hugo that one page.
    for page in (place / "content").rglob("index.md"):
        page.rename(page.with_name("_index.md"))
    layouts = place / "layouts" / "_default"
    layouts.mkdir(parents=True)
    for kind in ("single", "list"):
        (layouts / f"{kind}.html").write_text(LAYOUT, encoding="utf-8")
    (place / "config.json").write_text(json.dumps(HUGO_SETTINGS), encoding="utf-8")
    return running(["hugo", "--source", str(place)])


def eleventy(docs: Path, place: Path) -> Callable[[], object]:
    """Return what has Eleventy build the pages in ``docs``, in a new folder at ``place``."""
    shutil.copytree(docs, place / "content")
    (place / "settings.cjs").write_text(ELEVENTY_SETTINGS, encoding="utf-8")
    tool = Path(sys.prefix) / "eleventy" / "node_modules" / "@11ty" / "eleventy" / "cmd.cjs"
    node = Path(sys.prefix) / "bin" / "node"
    return running(
        [str(node), str(tool), "--config=settings.cjs", "--input=content", "--output=site", "--quiet"], place
    )


def running(command: list[str], place: Path | None = None) -> Callable[[], object]:
    """Return what runs a command in a folder."""
    return lambda: subprocess.run(command, check=True, capture_output=True, cwd=place, env=os.environ)
