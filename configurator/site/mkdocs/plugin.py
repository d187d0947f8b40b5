"""The MkDocs plugin: gives MkDocs a showroom's pages and files, and leaves the rest of a site as it is."""

import logging
from collections.abc import Callable, Iterable, Iterator
from contextlib import AbstractContextManager, contextmanager
from copy import copy
from pathlib import Path
from typing import Literal, cast

import jinja2
from markupsafe import Markup
from mkdocs.config import config_options
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.exceptions import PluginError
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files, InclusionLevel, get_files
from mkdocs.structure.nav import Navigation
from mkdocs.structure.pages import Page
from mkdocs.utils.templates import TemplateContext

from configurator.catalog import ContentProblems
from configurator.catalog.files import PICTURE_ENDINGS
from configurator.catalog.page_blocks import told_page
from configurator.drawing.photo import without_notes
from configurator.kernel.message import message
from configurator.kernel.tongue import wording
from configurator.places import THEMES
from configurator.site.answers import Answers
from configurator.site.house import House, open_houses
from configurator.site.kinds.all_pages import site_pages
from configurator.site.kinds.fences import draw_fences
from configurator.site.kinds.frame import MENU, own_way, shared_way
from configurator.site.kinds.policy import without_policy
from configurator.site.mkdocs.ahead import work_ahead
from configurator.site.mkdocs.asset_names import full_names, with_full_names
from configurator.site.mkdocs.assets import asset_files
from configurator.site.mkdocs.kept_answers import keep_answers, known_answers
from configurator.site.mkdocs.page_html import page_html
from configurator.site.mkdocs.written_page import (
    WHOLE,
    WHOLE_TEXT,
    GuidePage,
    ShowroomPage,
    guide_file,
    nav_titles,
    put,
    written_file,
)
from configurator.site.site_page import SitePage

log = logging.getLogger("mkdocs.plugins.astragal")
LEFT_OUT = wording("{page} is a page of the site already, so the showroom's is left out")
# What a site's menu holds of the showroom when nobody has written the menu.
IN_MENU = {"index.html", *(url for url, _, _ in MENU)}


class PluginOptions(Config):
    """What ``mkdocs.yml`` may say: where the content lies, and under which path of the site the showroom stands."""

    content = config_options.Dir(exists=True, default="content")
    under = config_options.Type(str, default="")


@contextmanager
def told_by_mkdocs() -> Iterator[None]:
    """Have MkDocs tell the problems of the content in its own manner, each with file, line and column."""
    try:
        yield
    except ContentProblems as found:
        raise PluginError(str(found)) from None


class AstragalPlugin(BasePlugin[PluginOptions]):
    """Adds a showroom to a site that MkDocs builds. The site's theme, menu and other pages stay what they are;
    where it has a file of the same address already, that one stays."""

    # How the content's problems are told.
    telling: Callable[[], AbstractContextManager[None]] = staticmethod(told_by_mkdocs)

    def __init__(self) -> None:
        super().__init__()
        self.answers = Answers()
        self.served = False
        # The full addresses of each language's assets by their plain ones.
        self.full_names: dict[str, dict[str, str]] = {}
        self._house: House | None = None

    @property
    def house(self) -> House:
        """The showroom whose content has been read, in its first language."""
        if self._house is None:
            raise RuntimeError("the content is read in on_config, which has not run")
        return self._house

    @property
    def under(self) -> str:
        """The path under which the showroom stands, with a closing slash; nothing for the site's root."""
        path = self.config.under.strip("/")
        return f"{path}/" if path else ""

    def on_startup(self, *, command: Literal["build", "gh-deploy", "serve"], dirty: bool) -> None:
        """Stay from one build of ``mkdocs serve`` to the next, with all that has been worked out."""
        self.served = command == "serve"

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Read the content, and have it and the themes watched."""
        content = Path(self.config.content)
        if self.answers.empty:
            self.answers = known_answers(content)
        with self.telling():
            self._house = open_houses(content, self.answers)
            if self.answers.empty:
                work_ahead(self.house)
                keep_answers(self.answers, content)
        config.watch += [str(content), str(THEMES)]
        return config

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Add the showroom's pages and files to those of the site."""
        with self.telling():
            own = [file for house in self.house.tongues for file in self.house_files(house, config)]
        taken = {file.dest_uri for file in files}
        for file in own:
            if file.dest_uri in taken:
                page: dict[str, list[float | str]] = {"page": [file.dest_uri, "name"]}
                text = wording("{page} is a page of the site already, so the showroom's is left out")
                log.info(self.house.phrase(message(text, page)))
            else:
                files.append(file)
        return files

    def house_files(self, house: House, config: MkDocsConfig) -> list[File]:
        """Return the pages and files of a language."""
        assets = self.asset_files(house, config)
        guides = self.guide_files(house, config)
        # What a site shows for an address that leads nowhere is its own affair.
        pages = [page for page in site_pages(house) if page.listed or page.moved_to]
        return [*guides, *self.page_files(house, pages, config), *assets]

    def guide_files(self, house: House, config: MkDocsConfig) -> list[File]:
        """Return what lies in the content's folder of pages: Markdown, and the files beside it."""
        there = copy(config)
        there.docs_dir = str((self.house.content / "pages").resolve())
        found = list(get_files(there))
        for file in found:
            # Where the file lies is worked out from its name, so before that changes.
            file.abs_src_path = file.abs_src_path
            if not file.is_documentation_page():
                file.dest_uri = self.under + file.src_uri
            file.src_uri = self.under + house.root + file.src_uri
        return self.with_guides(house, found, config)

    def with_guides(self, house: House, files: Iterable[File], config: MkDocsConfig) -> list[File]:
        """Return files of the content, the Markdown among them as guides."""
        found = list(files)
        for file in found:
            if file.inclusion.is_excluded():
                # Hidden things, and templates.
                continue
            if Path(file.src_uri).suffix.lower() in PICTURE_ENDINGS and file.abs_src_path:
                file.content_bytes = without_notes(Path(file.abs_src_path))
            if file.is_documentation_page():
                guide_file(house, file, self.under + house.root, config)
                house.markdown[file.src_uri] = cast(GuidePage, file.page).site_page
        return found

    def page_files(self, house: House, pages: Iterable[SitePage], config: MkDocsConfig) -> list[File]:
        """Return the files of pages that no Markdown file stands for."""
        titles = nav_titles(config.nav)
        files = [written_file(page, self.under + house.root, titles, config) for page in pages]
        for file in files:
            cast(ShowroomPage, file.page).house = house
            if config.nav is None and file.dest_uri.removeprefix(self.under) in IN_MENU:
                file.inclusion = InclusionLevel.INCLUDED
        return files

    def assets_of(self, house: House) -> dict[str, str | bytes]:
        """Return every asset of a language by its address."""
        return asset_files(house)

    def asset_files(self, house: House, config: MkDocsConfig) -> list[File]:
        """Return style sheets, scripts and pictures; pages of a site round the showroom link to them by plain names."""
        assets = self.assets_of(house)
        full = self.full_names[house.root] = full_names(assets)
        under = self.under + house.root
        files = [File.generated(config, under + path, content=content) for path, content in assets.items()]
        for file, path in zip(files, assets, strict=True):
            put(file, under + full[path])
        return files

    def on_env(self, env: jinja2.Environment, *, config: MkDocsConfig, files: Files) -> jinja2.Environment:
        """Add the one template that holds a page of ours, which is made in its language's own environment."""
        loaders = [jinja2.DictLoader({WHOLE: WHOLE_TEXT}), *([env.loader] if env.loader else [])]
        env.loader = jinja2.ChoiceLoader(loaders)
        return env

    def on_page_markdown(self, markdown: str, *, page: Page, config: MkDocsConfig, files: Files) -> str:
        """Draw the drawings that a guide asks for."""
        if not isinstance(page, GuidePage):
            return markdown
        # MkDocs has taken the lines between --- off the top.
        above = page.file.content_string.count("\n") - markdown.count("\n")
        file = self.house.content / "pages" / page.file.src_uri.removeprefix(self.under + page.house.root)
        told = told_page(markdown, page.house.tell) if page.house.catalog.translations else markdown
        with self.telling():
            return draw_fences(told, file, above, page.house)

    def written_html(self, house: House, page: SitePage) -> str:
        """Return a page as it stands in the site."""
        shared = shared_way(house, page), self.full_names[house.first.root]
        own = own_way(house, page), self.full_names[house.root]
        return with_full_names(page_html(house, page), [shared, own])

    def on_page_context(
        self, context: TemplateContext, *, page: Page, config: MkDocsConfig, nav: Navigation
    ) -> TemplateContext:
        """Make a page of the showroom."""
        if not isinstance(page, ShowroomPage):
            return context
        html = self.written_html(page.house, page.site_page)
        return cast(TemplateContext, {**context, "astragal": Markup(without_policy(html) if self.served else html)})
