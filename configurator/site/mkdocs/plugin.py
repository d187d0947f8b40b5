"""The MkDocs plugin: gives MkDocs the showroom's pages, files and template context."""

from pathlib import Path
from typing import cast

import jinja2
from mkdocs.config import config_options
from mkdocs.config.base import Config
from mkdocs.config.defaults import MkDocsConfig
from mkdocs.plugins import BasePlugin
from mkdocs.structure.files import File, Files
from mkdocs.structure.nav import Navigation
from mkdocs.structure.pages import Page
from mkdocs.utils.templates import TemplateContext

from configurator.catalog import load
from configurator.site.answers import Answers
from configurator.site.face.template_words import add_words
from configurator.site.house import House
from configurator.site.kinds.all_pages import site_pages
from configurator.site.kinds.fences import draw_fences
from configurator.site.kinds.guide_pages import markdown_page, place_markdown
from configurator.site.mkdocs.assets import asset_files
from configurator.site.mkdocs.sitemap import sitemap
from configurator.site.mkdocs.slim import slim
from configurator.site.sitepage import SitePage, WrittenPage, site_file


class PluginOptions(Config):
    """What ``mkdocs.yml`` may say when MkDocs itself is run: where the content lies."""

    content = config_options.Dir(exists=True, default="content")


def page_file(house: House, page: SitePage, config: MkDocsConfig) -> File:
    """Return a page for MkDocs to write, or the file as it is where nothing that the page shows has changed."""
    written = house.answers.page(page.url, house.page_key(page)) if page.inputs else None
    return site_file(page, config) if written is None else File.generated(config, page.url, content=written)


class AstragalPlugin(BasePlugin[PluginOptions]):
    """Writes a page for every family, every door and every family on every door."""

    house: House | None = None

    @classmethod
    def for_house(cls, house: House) -> "AstragalPlugin":
        """Return a plugin that works on content already read."""
        plugin = cls()
        plugin.house = house
        return plugin

    def known_house(self) -> House:
        """Return the house whose content has been read."""
        if self.house is None:
            raise RuntimeError("the content is read in on_config, which has not run")
        return self.house

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Read the content, take the showroom's theme and leave the sitemap to us."""
        if self.house is None:
            content = Path(self.config.content)
            self.house = House(load(content), content, Answers())
        # MkDocs' own templates hold a site map with today's date, which ours stands in for.
        config.theme.dirs[:] = [str(folder) for folder in self.house.templates]
        config.theme.static_templates = set()
        config.use_directory_urls = False
        return config

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Add the generated pages and the assets."""
        house = self.known_house()
        for file in files.documentation_pages():
            place_markdown(file)
            house.markdown[file.src_uri] = markdown_page(file, house.markdown)
        pages = site_pages(house)
        for page in pages:
            files.append(page_file(house, page, config))
        for path, content in asset_files(house).items():
            files.append(File.generated(config, path, content=content))
        listed = [page.url for page in [*pages, *house.markdown.values()] if page.listed]
        if house.address:
            files.append(File.generated(config, "sitemap.xml", content=sitemap(house.address, listed)))
        return files

    def on_env(self, env: jinja2.Environment, *, config: MkDocsConfig, files: Files) -> jinja2.Environment:
        """Set the templates' manners: escaped, strict about names, without stray white space."""
        env.autoescape = True
        env.undefined = jinja2.StrictUndefined
        env.trim_blocks = True
        env.lstrip_blocks = True
        add_words(env, self.known_house().units)
        return env

    def on_page_markdown(self, markdown: str, *, page: Page, config: MkDocsConfig, files: Files) -> str:
        """Draw the drawings that a guide asks for."""
        if isinstance(page, WrittenPage):
            return markdown
        house = self.known_house()
        # MkDocs has taken the lines between --- off the top.
        above = page.file.content_string.count("\n") - markdown.count("\n")
        return draw_fences(markdown, house.content / "pages" / page.file.src_uri, above, house)

    def on_page_context(
        self, context: TemplateContext, *, page: Page, config: MkDocsConfig, nav: Navigation
    ) -> TemplateContext:
        """Give a page's template what its kind of page needs."""
        house = self.known_house()
        shown = page.site_page if isinstance(page, WrittenPage) else house.markdown[page.file.src_uri]
        given = {**context, **house.common(shown), **shown.given()}
        return cast(TemplateContext, given)

    def on_post_page(self, output: str, *, page: Page, config: MkDocsConfig) -> str:
        """Leave out what HTML calls optional, and keep the page for the next rebuild."""
        html = slim(output)
        if isinstance(page, WrittenPage) and page.site_page.inputs:
            house = self.known_house()
            house.answers.keep_page(page.site_page.url, house.page_key(page.site_page), html)
        return html
