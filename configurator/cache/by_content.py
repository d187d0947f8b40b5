"""What is remembered of a content folder for as long as it, the code and the themes stay as they are."""

from collections.abc import Callable
from pathlib import Path
from typing import Any

from configurator.cache.entries import keep_json, kept_json
from configurator.cache.stamps import Unstamped, content_stamp, own_code, stamp_of


def whole_stamp(folder: Path) -> str:
    """Return a stamp of a folder, by the name under which it is spoken of, and of the code; nothing where none can be
    told."""
    try:
        return stamp_of(own_code(), content_stamp(folder), str(folder))
    except Unstamped:
        return ""


class ByContent:
    """What is remembered of a content folder as it lies there now."""

    def __init__(self, folder: Path) -> None:
        self.folder = folder
        self.stamp = whole_stamp(folder)

    def name(self, kind: str, inputs: tuple[str, ...]) -> str:
        """Return the name of an entry."""
        return f"{kind}-{stamp_of(self.stamp, *inputs)}"

    def found(self, kind: str, *inputs: str) -> Any:
        """Return what (JSON) is remembered of a kind and its inputs, or None."""
        return kept_json(self.name(kind, inputs)) if self.stamp else None

    def remember(self, value: object, kind: str, *inputs: str) -> None:
        """Remember a (JSON) value, unless anything has changed since this was made."""
        if self.stamp and whole_stamp(self.folder) == self.stamp:
            keep_json(self.name(kind, inputs), value)

    def once(self, make: Callable[[], Any], kind: str, *inputs: str) -> Any:
        """Return what ``make`` gives (JSON), or what is remembered of it."""
        found = self.found(kind, *inputs)
        if found is None:
            found = make()
            self.remember(found, kind, *inputs)
        return found
