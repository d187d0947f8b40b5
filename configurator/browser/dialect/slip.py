"""A place where a file leaves the dialect."""

from typing import NamedTuple


class Slip(NamedTuple):
    """One place where a file leaves the dialect, with what to write instead."""

    path: str
    line: int
    text: str

    def __str__(self) -> str:
        return f"{self.path}:{self.line}: {self.text}"
