"""What MkDocs warns of while it writes the pages, as problems of the content."""

import logging
import re
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from mkdocs.exceptions import Abort

from configurator.catalog import ContentProblems, Problem
from configurator.kernel.message import message
from configurator.site.house import House

# MkDocs' own words for a link in a Markdown page to a page that is not there.
LOST_LINK = re.compile(r"Doc file '([^']+)' contains a link '([^']+)'")


class Told(logging.Handler):
    """Keeps the words of each warning."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.words: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        """Keep one warning."""
        self.words.append(record.getMessage())


def page_problem(pages: Path, words: str, house: House) -> Problem:
    """Return a warning as a problem: at the link that leads nowhere, or else of the whole folder."""
    link = LOST_LINK.match(words)
    if link is None:
        return Problem(pages.as_posix(), 0, 0, words)
    text = (pages / link[1]).read_text(encoding="utf-8-sig")
    before = text.partition(link[2])[0]
    column = len(before) - before.rfind("\n")
    told = message("the link to '{link}' leads nowhere; there is no such page", {"link": [link[2], "name"]})
    return Problem((pages / link[1]).as_posix(), before.count("\n") + 1, column, house.phrase(told))


@contextmanager
def warnings_as_problems(pages: Path, house: House) -> Iterator[None]:
    """Raise :class:`ContentProblems` where MkDocs gives up because of its warnings about a folder of pages."""
    logger = logging.getLogger("mkdocs")
    logger.setLevel(logging.WARNING)
    told = Told()
    logger.addHandler(told)
    try:
        yield
    except Abort:
        raise ContentProblems([page_problem(pages, words, house) for words in told.words]) from None
    finally:
        logger.removeHandler(told)
