"""The Markdown pages of the content: guides, and the pages that the law asks for."""

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


def nothing_more() -> Given:
    """Return what a Markdown page is given beside its text."""
    return {}


def markdown_page(file: File) -> SitePage:
    """Return a Markdown page's frame; ``title`` and ``description`` stand between the lines ``---`` at its top."""
    _, meta = get_data(file.content_string)
    title = str(meta.get("title", file.name.replace("-", " ").capitalize()))
    return SitePage(
        url=file.dest_uri,
        template="main.html",
        title=title,
        description=str(meta.get("description", title)),
        given=nothing_more,
        crumbs=CRUMBS[:1] if file.name in ROOT_PAGES else CRUMBS,
    )
