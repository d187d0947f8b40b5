"""A page of the site before it is written: its address, its words and what its template is given."""

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files, InclusionLevel
from mkdocs.structure.pages import Page

Given = dict[str, Any]


@dataclass(frozen=True)
class Crumb:
    """One step of the way to a page: its short name and its address from the site's root."""

    name: str
    url: str


@dataclass(frozen=True)
class SitePage:
    """A page that no Markdown file stands for.

    ``url`` is from the site's root, ``given`` is called once when the page is written, ``card`` is
    the link preview's address from the root (empty: the showroom's own card), ``schema`` holds
    schema.org objects beside the breadcrumbs. A page that names the ``inputs`` it depends on, beside
    what all pages do, is not written again while they stay the same.
    """

    url: str
    template: str
    title: str
    description: str
    given: Callable[[], Given]
    crumbs: list[Crumb] = field(default_factory=list)
    card: str = ""
    schema: list[Given] = field(default_factory=list)
    listed: bool = True
    inputs: tuple[object, ...] = ()


class WrittenPage(Page):
    """A MkDocs page whose template gets everything from a :class:`SitePage`; no Markdown is read."""

    def __init__(self, site_page: SitePage, file: File, config: MkDocsConfig) -> None:
        super().__init__(site_page.title, file, config)
        self.site_page = site_page

    def read_source(self, config: MkDocsConfig) -> None:
        """Take the template's name instead of a source file."""
        self.markdown = ""
        self.meta = {"template": self.site_page.template}

    def render(self, config: MkDocsConfig, files: Files) -> None:
        """Leave the page to its template."""
        self.content = ""


def site_file(site_page: SitePage, config: MkDocsConfig) -> File:
    """Return the MkDocs file that stands for a page."""
    source = site_page.url.removesuffix(".html") + ".md"
    file = File.generated(config, source, content="", inclusion=InclusionLevel.NOT_IN_NAV)
    file.page = WrittenPage(site_page, file, config)
    return file


def way_up(url: str) -> str:
    """Return the relative way from a page back to the site's root (empty, ``../``, ``../../`` …)."""
    return "../" * url.count("/")
