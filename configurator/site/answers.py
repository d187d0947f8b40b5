"""What has been worked out already: kernel answers, drawings, pictures and whole pages.

The memory outlives a rebuild. Whatever depends on a door and a family is kept under both, so that
an edit of one family works out that family alone.
"""

import hashlib
import json
from collections.abc import Callable
from typing import NamedTuple, TypeVar, cast

Kept = TypeVar("Kept")
# A page's key and its HTML.
KeptPage = tuple[str, str]


class Added(NamedTuple):
    """What a memory has taken in for a while: what was worked out, and the pages that were written, by address."""

    kept: dict[str, object]
    pages: dict[str, KeptPage]


def digest(*inputs: object) -> str:
    """Return a short text that differs when any of the (JSON) inputs does."""
    return hashlib.sha1(json.dumps(inputs, sort_keys=True).encode(), usedforsecurity=False).hexdigest()


class Answers:
    """A memory by what went in."""

    def __init__(self) -> None:
        self._kept: dict[str, object] = {}
        self._pages: dict[str, KeptPage] = {}
        self._added = Added({}, {})

    def once(self, make: Callable[[], Kept], *inputs: object) -> Kept:
        """Return what ``make`` gives, from memory when the same (JSON) inputs came before."""
        key = digest(*inputs)
        if key not in self._kept:
            self._kept[key] = self._added.kept[key] = make()
        return cast(Kept, self._kept[key])

    @property
    def empty(self) -> bool:
        """Whether nothing has been worked out yet."""
        return not self._kept

    def taken(self) -> Added:
        """Return what has been added since this was last asked."""
        added, self._added = self._added, Added({}, {})
        return added

    def add(self, added: Added) -> None:
        """Take over what another memory has taken in."""
        self._kept.update(added.kept)
        self._pages.update(added.pages)

    def page(self, url: str, key: str) -> str | None:
        """Return a page as it was last written, if its key is still the same."""
        found = self._pages.get(url)
        return found[1] if found and found[0] == key else None

    def keep_page(self, url: str, key: str, html: str) -> None:
        """Keep a page in place of what was kept of it before."""
        self._pages[url] = self._added.pages[url] = (key, html)
