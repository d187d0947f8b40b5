"""The Markdown pages of the content: guides, and the pages that the law asks for."""

from collections.abc import Callable, Mapping
from typing import TypedDict

from configurator.catalog.site_addresses import ROOT_PAGES, guide_url
from configurator.kernel.tongue import wording
from configurator.site.house import House
from configurator.site.site_page import Crumb, SitePage

CRUMBS = [Crumb(wording("Home"), "index.html"), Crumb(wording("Guides"), "guides/index.html")]


class GuidesPage(TypedDict):
    """What the page of all guides shows."""

    guides: list[SitePage]


class MarkdownPage(TypedDict):
    """What a Markdown page shows: its title, the words under it or nothing, its text, and where it is a guide the
    others."""

    title: str
    lede: str
    content: str
    others: list[SitePage]


def is_guide(url: str) -> bool:
    """Return whether a page's address is that of a guide."""
    return url.startswith("guides/")


def guides(house: House) -> GuidesPage:
    """Return the guides among the Markdown pages, by their names."""
    return {"guides": [page for page in house.markdown.values() if is_guide(page.url)]}


def markdown_page(house: House, name: str, head: Mapping[str, object], text: Callable[[], str]) -> SitePage:
    """Return the page of a Markdown file.

    ``head`` is what stands between the lines ``---`` at the file's top: ``title``, ``description``, ``lede``. ``text``
    gives the page's HTML by the time it is written; the house knows all Markdown pages by then.
    """
    title = str(head.get("title", name.replace("-", " ").capitalize()))
    url = guide_url(name)

    def given() -> MarkdownPage:
        others = [page for page in guides(house)["guides"] if page.url != url] if is_guide(url) else []
        return {"title": title, "lede": str(head.get("lede", "")), "content": text(), "others": others}

    description = str(head.get("description", title))
    crumbs = CRUMBS[:1] if name in ROOT_PAGES else CRUMBS
    return SitePage(url, "main.html", title, description, given, crumbs)
