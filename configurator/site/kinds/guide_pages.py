"""The Markdown pages of the content: guides, and the pages that the law asks for."""

from collections.abc import Iterable, Mapping

from mkdocs.structure.files import File
from mkdocs.utils.meta import get_data

from configurator.site.sitepage import Crumb, Given, SitePage

# These stand at the root of a site; every other page is a guide.
ROOT_PAGES = ("imprint", "privacy")
CRUMBS = [Crumb("Home", "index.html"), Crumb("Guides", "guides/index.html")]


def place_markdown(file: File) -> None:
    """Give a Markdown file its address: guides stand in their own folder."""
    if file.name not in ROOT_PAGES:
        file.dest_uri = f"guides/{file.name}.html"


def is_guide(url: str) -> bool:
    """Return whether a page's address is that of a guide."""
    return url.startswith("guides/")


def others(url: str, pages: Iterable[SitePage]) -> Given:
    """Return what a Markdown page is given beside its text: a guide leads on to the other guides."""
    guides = [page for page in pages if is_guide(page.url) and page.url != url]
    return {"others": guides if is_guide(url) else []}


def markdown_page(file: File, pages: Mapping[str, SitePage]) -> SitePage:
    """Return a Markdown page's frame; ``title`` and ``description`` stand between the lines ``---`` at its top.

    ``pages`` are all Markdown pages by their files, complete by the time a page is written.
    """
    _, meta = get_data(file.content_string)
    title = str(meta.get("title", file.name.replace("-", " ").capitalize()))
    return SitePage(
        url=file.dest_uri,
        template="main.html",
        title=title,
        description=str(meta.get("description", title)),
        given=lambda: others(file.dest_uri, pages.values()),
        crumbs=CRUMBS[:1] if file.name in ROOT_PAGES else CRUMBS,
    )
