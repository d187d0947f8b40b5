"""The site's pages as MkDocs takes them: it finds, links and writes them, and our own templates make them."""

import re
from collections.abc import Mapping
from copy import copy
from html import escape
from typing import Any

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files, InclusionLevel
from mkdocs.structure.pages import Page
from mkdocs.structure.toc import TableOfContents
from mkdocs.utils.meta import get_data

from configurator.catalog import ContentProblems, Problem
from configurator.catalog.guide_html import EXTENSIONS, with_policy
from configurator.catalog.live_markup import live_in_html
from configurator.catalog.site_addresses import guide_url
from configurator.kernel.message import plain
from configurator.site.house import House
from configurator.site.kinds.guide_pages import markdown_page
from configurator.site.site_page import SitePage

# The one template that MkDocs itself fills in for our pages: it holds the whole page and nothing else.
WHOLE = "astragal.html"
WHOLE_TEXT = "{{ astragal }}"
TABLE = re.compile(r"<table\b.*?</table>", re.DOTALL)


def with_rolling_tables(html: str, label: str) -> str:
    """Return a page whose tables roll sideways in a frame, as a wide one must on a narrow screen."""
    frame = f'<div class="table" role="group" tabindex="0" aria-label="{label}">'
    return TABLE.sub(lambda table: f"{frame}{table[0]}</div>", html)


class ShowroomPage(Page):
    """A page of the showroom, which stands at ``site_page.url`` from where the showroom is put in its language."""

    house: House
    site_page: SitePage


class WrittenPage(ShowroomPage):
    """A page that no Markdown file stands for."""

    def __init__(self, site_page: SitePage, title: str, file: File, config: MkDocsConfig) -> None:
        super().__init__(title, file, config)
        self.site_page = site_page

    def read_source(self, config: MkDocsConfig) -> None:
        """Take the template's name instead of a source file."""
        self.markdown = ""
        self.meta = {"template": WHOLE}

    def render(self, config: MkDocsConfig, files: Files) -> None:
        """Leave the page to its template; what it is about is there for whoever makes an index."""
        self.content = f"<p>{escape(self.site_page.description)}</p>"
        self.toc = TableOfContents([])


class GuidePage(ShowroomPage):
    """A page that a Markdown file of the content stands for."""

    def __init__(self, house: House, file: File, config: MkDocsConfig) -> None:
        _, written = get_data(file.content_string)
        head = {key: house.tell(value) if isinstance(value, str) else value for key, value in written.items()}
        self.house = house
        self.site_page = markdown_page(house, file.name, head, lambda: self.content or "")
        super().__init__(self.site_page.title, file, config)

    def read_source(self, config: MkDocsConfig) -> None:
        """Read the file; our own template makes the page."""
        super().read_source(config)
        self.meta = {**self.meta, "template": WHOLE}

    def render(self, config: MkDocsConfig, files: Files) -> None:
        """Render the Markdown as the content's guides are written, whatever the rest of a site may use."""
        own = copy(config)
        own.markdown_extensions, own.mdx_configs = EXTENSIONS, {}
        super().render(own, files)
        html = with_policy(self.content or "")
        self.refuse_live(html)
        self.content = with_rolling_tables(html, escape(self.house.phrase(plain("Table"))))

    def refuse_live(self, html: str) -> None:
        """Raise :class:`ContentProblems` where the page that was made does anything by itself."""
        found = [Problem(self.file.name, 0, 0, (what,)) for what, _, _ in live_in_html(html)]
        if found:
            raise ContentProblems(found, self.house.words)


def written_file(site_page: SitePage, under: str, titles: Mapping[str, str], config: MkDocsConfig) -> File:
    """Return the file for a page, put ``under`` a path; ``titles`` are those that the site's menu has by file."""
    source = under + site_page.url.removesuffix(".html") + ".md"
    file = File.generated(config, source, content="", inclusion=InclusionLevel.NOT_IN_NAV)
    put(file, under + site_page.url)
    file.page = WrittenPage(site_page, titles.get(source, site_page.title), file, config)
    return file


def guide_file(house: House, file: File, under: str, config: MkDocsConfig) -> File:
    """Return a Markdown file of the content with its page, put ``under`` a path."""
    put(file, under + guide_url(file.name))
    file.inclusion = InclusionLevel.NOT_IN_NAV
    file.page = GuidePage(house, file, config)
    return file


def put(file: File, address: str) -> None:
    """Give a file its address, which is always that of a file and never of a folder."""
    file.use_directory_urls = False
    file.dest_uri = address


def nav_titles(nav: Any) -> dict[str, str]:
    """Return the titles that ``nav`` in a ``mkdocs.yml`` gives to pages, by the page's file."""
    if isinstance(nav, list):
        return {file: title for part in nav for file, title in nav_titles(part).items()}
    if not isinstance(nav, dict):
        return {}
    named = {inner: title for title, inner in nav.items() if isinstance(inner, str)}
    return named | nav_titles([inner for inner in nav.values() if not isinstance(inner, str)])
