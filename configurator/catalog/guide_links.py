"""The links and pictures of the content's Markdown pages: each leads to a page or to a file that there is."""

import posixpath
import re
from collections.abc import Iterable, Iterator
from pathlib import Path
from urllib.parse import unquote, urlsplit

from configurator.catalog.files import shown
from configurator.catalog.guide_html import guide_html
from configurator.catalog.live_markup import live_in_html, place_in, without_code
from configurator.catalog.located import TOO_DEEP
from configurator.catalog.problem import Problem
from configurator.catalog.site_addresses import Shelf, beside_pages, own_urls
from configurator.catalog.suggest import did_you_mean, nearest
from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Message

OUT = plain("take it out")


def note_guides(guides: dict[Path, str], folder: Path, shelf: Shelf, problems: list[Problem]) -> None:
    """Note what the pages that are made of Markdown do by themselves, and each link of theirs that leads nowhere."""
    home = folder / "pages"
    own = {url.removesuffix(".html") + ".md" for url in own_urls(shelf)}
    files = {path.relative_to(home).as_posix() for path in [*guides, *beside_pages(folder)]}
    for page, text in guides.items():
        try:
            html, links = guide_html(text)
        except RecursionError:
            problems.append(Problem(shown(page), 1, 1, TOO_DEEP))
            continue
        problems += [Problem(shown(page), 1, 1, (what, OUT)) for what, _, _ in live_in_html(html)]
        place = page.relative_to(home).parent.as_posix()
        for link, told in lost_links(links, place, (files, own | files)):
            problems.append(Problem(shown(page), *where(text, link), told))


def lost_links(
    links: Iterable[str], place: str, known: tuple[set[str], set[str]]
) -> Iterator[tuple[str, tuple[Message, Message]]]:
    """Yield each link of a page in a folder that leads to nothing that is there, and what is told of it.

    ``known`` are the files beside the page, and all that can be linked to.
    """
    files, there = known
    for link in dict.fromkeys(links):
        meant = aim(link)
        path = posixpath.normpath(posixpath.join(place, meant))
        if not meant or path in there:
            continue
        # A last step without an ending is a folder of the host's, unless a page is named so.
        if posixpath.splitext(meant)[1] or f"{path}.md" in there:
            lost = message("the link to '{page}' leads nowhere", {"page": [link, "name"]})
            yield link, (lost, advice(path, place, files, there))


def aim(link: str) -> str:
    """Return to which file a link leads, from the page's folder; nothing where that is not said in a file's name."""
    try:
        parts = urlsplit(link)
    except ValueError:
        return ""
    outside = parts.scheme or parts.netloc or link.startswith(("/", "\\"))
    return "" if outside else unquote(parts.path)


def advice(path: str, place: str, files: set[str], there: set[str]) -> Message:
    """Return the name that was probably meant by a path that leads to nothing: that of a page, or a file's near it."""
    written = f"{path.removesuffix('.html').removesuffix('.md')}.md"
    alike = [known for known in sorted(files) if posixpath.basename(known) == posixpath.basename(written)]
    near = written if written in there else next(iter(alike), None) or nearest(path, sorted(files))
    return did_you_mean(posixpath.relpath(near, place)) if near else plain("there is no such page")


def where(text: str, link: str) -> tuple[int, int]:
    """Return the line and column at which a link stands in a page; its start where it is written otherwise."""
    found = re.search(rf"(?<=[(<:\s]){re.escape(link)}", without_code(text))
    return place_in(text, found.start()) if found else (1, 1)
