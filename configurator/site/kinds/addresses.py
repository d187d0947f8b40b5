"""Which page stands at which address: two never share one."""

from collections.abc import Iterable
from pathlib import Path

from configurator.catalog import ContentProblems, Problem
from configurator.kernel.message import message, plain
from configurator.site.house import House
from configurator.site.site_page import SitePage


def register(house: House, pages: Iterable[SitePage]) -> None:
    """Give each page and each Markdown page of the content its address.

    :raises ContentProblems: where an address is another's already; the later of the two is to be renamed
    """
    taken: dict[str, str] = {}
    problems: list[Problem] = []
    for page in pages:
        problems += claimed(taken, page, house.content)
    for file, page in sorted(house.markdown.items()):
        problems += claimed(taken, page, house.content / "pages" / file)
    if problems:
        raise ContentProblems(problems, house.words)


def claimed(taken: dict[str, str], page: SitePage, place: Path) -> list[Problem]:
    """Return what is wrong with a page's address, or nothing and take it."""
    if page.url in taken:
        told = message(
            "'{page}' would stand at {address}, where '{other}' stands already",
            {"page": [page.title, "name"], "address": [page.url, "name"], "other": [taken[page.url], "name"]},
        )
        line = 0 if place.suffix == "" else 1
        return [Problem(place.as_posix(), line, line, (told, plain("rename its file")))]
    taken[page.url] = page.title
    return []
