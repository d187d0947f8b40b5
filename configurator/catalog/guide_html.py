"""A guide's Markdown as HTML, in the one dialect in which guides are written, and the links that it has."""

import re
from xml.etree.ElementTree import Element

from markdown import Markdown
from markdown.treeprocessors import Treeprocessor
from markdown.util import AMP_SUBSTITUTE

from configurator.catalog.page_blocks import HEAD

EXTENSIONS = ["toc", "tables", "fenced_code", "attr_list", "def_list"]
# How Markdown aligns a column; a page's policy lets no element bring a style of its own.
ALIGNED = re.compile(r'(<t[hd]) style="text-align: (left|center|right);"')
LEADS = {"a": "href", "img": "src"}


class _Links(Treeprocessor):  # type: ignore[misc]
    """Gathers where links and pictures lead, after everything else has been done."""

    def __init__(self) -> None:
        super().__init__()
        self.found: list[str] = []

    def run(self, root: Element) -> None:
        """Look at every element of a page."""
        for element in root.iter():
            leads = element.get(LEADS.get(element.tag, ""))
            # A mail address is written in signs that only the finished page has.
            if leads and AMP_SUBSTITUTE not in leads:
                self.found.append(leads)


def with_policy(html: str) -> str:
    """Return a page's HTML with the columns of its tables aligned by attributes of our own."""
    return ALIGNED.sub(r'\1 data-to="\2"', html)


def guide_html(text: str) -> tuple[str, list[str]]:
    """Return a guide as HTML, and where its links and pictures lead, as they are written.

    :raises RecursionError: where it is nested too deeply
    """
    links = _Links()
    reader = Markdown(extensions=EXTENSIONS)
    reader.treeprocessors.register(links, "links", 0)
    return with_policy(reader.convert(HEAD.sub("", text))), links.found
