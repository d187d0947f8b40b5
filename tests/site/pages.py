"""A built site as tests read it: its pages, parsed by the HTML standard's own rules."""

import re
from functools import cache
from pathlib import Path
from urllib.parse import unquote, urlsplit

import html5lib
from lxml.etree import _Element

LINKING = ("href", "src")
HASH = re.compile(r"\.[0-9a-f]{8}(?=\.\w+$)")


def pages(site: Path) -> list[Path]:
    """Return every page of a site."""
    return sorted(site.rglob("*.html"))


def plain_name(address: str) -> str:
    """Return the address of an asset without the hash in its name."""
    return HASH.sub("", address)


def asset(site: Path, name: str) -> Path:
    """Return an asset by its plain name."""
    (found,) = (path for path in (site / "assets").iterdir() if plain_name(path.name) == name)
    return found


@cache
def parsed(page: Path) -> tuple[_Element, list[str]]:
    """Return a page's root element and what the standard's parser found wrong with it."""
    parser = html5lib.HTMLParser(tree=html5lib.getTreeBuilder("lxml"), namespaceHTMLElements=False)
    root = parser.parse(page.read_bytes()).getroot()
    return root, [f"{page.name}:{place[0]}: {code}" for place, code, _ in parser.errors]


@cache
def ids(page: Path) -> frozenset[str]:
    """Return the anchors of a page."""
    return frozenset(parsed(page)[0].xpath("//@id"))


@cache
def links(page: Path) -> frozenset[str]:
    """Return every address that a page refers to, but for those within structured data."""
    root = parsed(page)[0]
    found = {str(value) for name in LINKING for value in root.xpath(f"//@{name}")}
    return frozenset(found | {part.split()[0] for value in root.xpath("//@srcset") for part in str(value).split(",")})


def target(page: Path, link: str) -> tuple[Path, str]:
    """Return the file and the anchor that a relative link leads to."""
    parts = urlsplit(link)
    file = (page.parent / unquote(parts.path)).resolve() if parts.path else page.resolve()
    return file, unquote(parts.fragment)
