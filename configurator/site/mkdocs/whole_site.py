"""The plugin of our own build, where the whole site is the showroom's."""

from contextlib import nullcontext

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files

from configurator.site.house import House
from configurator.site.kinds.addresses import register
from configurator.site.kinds.all_pages import site_pages
from configurator.site.mkdocs.plugin import AstragalPlugin
from configurator.site.mkdocs.sitemap import sitemap


class WholeSitePlugin(AstragalPlugin):
    """Writes a site from content already read; its problems are told by whoever builds."""

    telling = staticmethod(nullcontext)

    def __init__(self, house: House) -> None:
        super().__init__()
        self.load_config({"content": str(house.content.resolve())})
        self.answers = house.answers
        self._house = house

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Leave out MkDocs' own templates: among them is a site map with today's date, which ours stands in for."""
        config.theme.dirs[:] = [str(folder) for folder in self.house.templates]
        config.theme.static_templates = set()
        return config

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Take the Markdown that MkDocs has found for guides, and add all other pages and files."""
        self.with_guides(files, config)
        pages = site_pages(self.house)
        register(self.house, pages)
        own = [*self.page_files(pages, config), *self.asset_files(config)]
        if self.house.address:
            listed = [page.url for page in [*pages, *self.house.markdown.values()] if page.listed]
            own.append(File.generated(config, "sitemap.xml", content=sitemap(self.house.address, listed)))
        for file in own:
            files.append(file)
        return files
