"""Something wrong in the content: where it stands, what is wrong and what to write instead."""

from dataclasses import dataclass

from configurator.catalog.clauses import Clauses, say_clauses
from configurator.kernel.tongue import ENGLISH, Words


@dataclass(frozen=True)
class Problem:
    """One problem. ``line`` and ``column`` count from 1; both are 0 where a whole folder is meant.

    ``clauses`` say what is wrong and what to write, their lengths in ``units`` (``in`` or ``mm``).
    """

    file: str
    line: int
    column: int
    clauses: Clauses
    units: str = "in"

    def told(self, words: Words) -> str:
        """Return the problem in a language, as a line."""
        place = self.file if self.line == 0 else f"{self.file}:{self.line}:{self.column}"
        return f"{place}: {say_clauses(self.clauses, words, self.units)}"

    def __str__(self) -> str:
        return self.told(ENGLISH)


class ContentProblems(Exception):
    """All problems of a run, sorted by file, line and column; ``words`` is the content's language, if that is known."""

    def __init__(self, problems: list[Problem], words: Words = ENGLISH) -> None:
        unlike = {str(problem): problem for problem in problems}
        self.problems = sorted(unlike.values(), key=lambda each: (each.file, each.line, each.column, str(each)))
        self.words = words
        super().__init__("\n".join(self.lines(words)))

    def lines(self, words: Words) -> list[str]:
        """Return each problem in a language."""
        return [problem.told(words) for problem in self.problems]
