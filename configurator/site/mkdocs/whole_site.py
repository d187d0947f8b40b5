"""The plugin of our own build, where the whole site is the showroom's."""

from contextlib import nullcontext
from pathlib import Path

from mkdocs.config.defaults import MkDocsConfig
from mkdocs.structure.files import File, Files
from mkdocs.structure.pages import Page

from configurator.catalog.site_addresses import WORKER
from configurator.catalog.static import STATIC
from configurator.site.house import House
from configurator.site.kinds.all_pages import site_pages
from configurator.site.mkdocs.assets import keeping
from configurator.site.mkdocs.last_site import LastSite, PutFiles
from configurator.site.mkdocs.plugin import AstragalPlugin
from configurator.site.mkdocs.sitemap import robots, sitemap
from configurator.site.mkdocs.worker import worker_js


class WholeSitePlugin(AstragalPlugin):
    """Writes a site from content already read; its problems are told by whoever builds."""

    telling = staticmethod(nullcontext)

    def __init__(self, house: House, last_site: LastSite) -> None:
        super().__init__()
        self.last_site = last_site
        self.load_config({"content": str(house.content.resolve())})
        self.answers = house.answers
        self._house = house
        self.listed: list[str] = []

    def on_config(self, config: MkDocsConfig) -> MkDocsConfig:
        """Leave out MkDocs' own templates: among them is a site map with today's date, which ours stands in for."""
        config.theme.dirs[:] = [str(folder) for folder in self.house.templates]
        config.theme.static_templates = set()
        return config

    def on_files(self, files: Files, *, config: MkDocsConfig) -> Files:
        """Take the Markdown that MkDocs has found for guides, and add all other pages and files."""
        self.with_guides(self.house, files, config)
        own = [file for house in self.house.tongues for file in self.house_files(house, config)]
        for file in [*own, *self.engine_files(config)]:
            files.append(file)
        return PutFiles(files, self.last_site.put)

    def engine_files(self, config: MkDocsConfig) -> list[File]:
        """Return what search engines ask for at a public address, but for what the showroom has of its own."""
        address = self.house.address
        if not address:
            return []
        files = {"sitemap.xml": sitemap(address, self.listed), "robots.txt": robots(address)}
        own = self.house.content / STATIC
        return [File.generated(config, name, content=files[name]) for name in files if not (own / name).exists()]

    def house_files(self, house: House, config: MkDocsConfig) -> list[File]:
        """Return the pages and files of a language; the guides of the first are there already."""
        assets = self.asset_files(house, config)
        guides = [] if house is self.house else self.guide_files(house, config)
        pages = site_pages(house)
        self.listed += [house.root + page.url for page in [*pages, *house.markdown.values()] if page.listed]
        return [*guides, *self.page_files(house, pages, config), *assets]

    def assets_of(self, house: House) -> dict[str, str | bytes]:
        """Return every asset of a language, and with the first what has the site kept."""
        return {**super().assets_of(house), **(keeping() if house is self.house else {})}

    def on_post_page(self, output: str, *, page: Page, config: MkDocsConfig) -> str:
        """Put a page, of which nothing is left for MkDocs to write."""
        self.last_site.put(output.encode(errors="xmlcharrefreplace"), page.file.dest_uri)
        return ""

    def on_post_build(self, *, config: MkDocsConfig) -> None:
        """Add the service worker, which lists every file of the site as it has been written."""
        site = Path(config.site_dir)
        style = self.full_names[self.house.root]["assets/site.css"]
        (site / WORKER).write_text(worker_js(self.house, site, style), encoding="utf-8", newline="\n")
