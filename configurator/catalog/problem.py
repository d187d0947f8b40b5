"""Something wrong in the content: where it stands, what is wrong and what to write instead."""

from dataclasses import dataclass


@dataclass(frozen=True, order=True)
class Problem:
    """One problem. ``line`` and ``column`` count from 1; both are 0 where a whole folder is meant."""

    file: str
    line: int
    column: int
    message: str

    def __str__(self) -> str:
        if self.line == 0:
            return f"{self.file}: {self.message}"
        return f"{self.file}:{self.line}:{self.column}: {self.message}"


class ContentProblems(Exception):
    """All problems of a run, sorted by file, line and column."""

    def __init__(self, problems: list[Problem]) -> None:
        self.problems = sorted(set(problems))
        super().__init__("\n".join(str(problem) for problem in self.problems))
