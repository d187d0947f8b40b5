"""What MkDocs warns of while it writes the pages, as problems of the content: nothing that no check has told."""

import logging
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

from mkdocs.exceptions import Abort

from configurator.catalog import ContentProblems, Problem
from configurator.kernel.message import message
from configurator.kernel.tongue import Words


class Told(logging.Handler):
    """Keeps the words of each warning."""

    def __init__(self) -> None:
        super().__init__(logging.WARNING)
        self.words: list[str] = []

    def emit(self, record: logging.LogRecord) -> None:
        """Keep one warning."""
        self.words.append(record.getMessage())


def page_problem(pages: Path, words: str) -> Problem:
    """Return a warning as a problem of the whole folder."""
    return Problem(pages.as_posix(), 0, 0, (message("MkDocs says: {said}", {"said": [words, "name"]}),))


@contextmanager
def warnings_as_problems(pages: Path, words: Words) -> Iterator[None]:
    """Raise :class:`ContentProblems` where MkDocs gives up because of its warnings about a folder of pages, read in
    the language of ``words``."""
    logger = logging.getLogger("mkdocs")
    logger.setLevel(logging.WARNING)
    told = Told()
    logger.addHandler(told)
    try:
        yield
    except Abort:
        raise ContentProblems([page_problem(pages, said) for said in told.words], words) from None
    finally:
        logger.removeHandler(told)
