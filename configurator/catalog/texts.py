"""A text of the content and where it stands."""

from dataclasses import dataclass


@dataclass(frozen=True)
class ContentText:
    """A text that the content says: as it stands there, in which file (from the content folder) and line."""

    text: str
    file: str
    line: int
