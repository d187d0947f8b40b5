"""Which page stands at which address: two never share one."""

from collections.abc import Iterable

from configurator.catalog import ContentProblems, Problem
from configurator.kernel.message import message
from configurator.site.house import House, Terms
from configurator.site.site_page import SitePage


def register(house: House, pages: Iterable[SitePage]) -> None:
    """Give each page and each Markdown page of the content its address.

    :raises ContentProblems: where an address is another's already; the later of the two is to be renamed
    """
    taken: dict[str, str] = {}
    problems: list[Problem] = []
    for page in pages:
        problems += [Problem(house.content.as_posix(), 0, 0, told) for told in claimed(taken, page, house)]
    for file, page in sorted(house.markdown.items()):
        place = (house.content / "pages" / file).as_posix()
        problems += [Problem(place, 1, 1, told) for told in claimed(taken, page, house)]
    if problems:
        raise ContentProblems(problems)


def claimed(taken: dict[str, str], page: SitePage, house: House) -> list[str]:
    """Return what is wrong with a page's address, or nothing and take it."""
    if page.url in taken:
        terms: Terms = {
            "title": [page.title, "name"],
            "address": [page.url, "name"],
            "other": [taken[page.url], "name"],
        }
        told = message("'{title}' would stand at {address}, where '{other}' stands already; rename its file", terms)
        return [house.phrase(told)]
    taken[page.url] = page.title
    return []
