"""What has been worked out already: kernel answers, drawings, pictures and whole pages.

The memory outlives a rebuild, and with a pack of the cache also the process. Whatever depends on a door and a family is
kept under both, so that an edit of one family works out that family alone.
"""

import hashlib
import json
from collections.abc import Callable
from typing import NamedTuple, TypeVar, cast

from configurator.cache.pack import Pack, packed, unpacked

Kept = TypeVar("Kept")
# A page's key and its HTML.
KeptPage = tuple[str, str]
# How a thing is written in a pack: bytes as they are, files by name, a page, and all else as JSON.
BYTES, FILES, PAGE, DATA = b"b", b"f", b"p", b"j"


class Added(NamedTuple):
    """What a memory has taken in for a while: what was worked out, and the pages that were written, by address."""

    kept: dict[str, object]
    pages: dict[str, KeptPage]


def digest(*inputs: object) -> str:
    """Return a short text that differs when any of the (JSON) inputs does."""
    return hashlib.sha1(json.dumps(inputs, sort_keys=True).encode(), usedforsecurity=False).hexdigest()


def written(thing: object) -> bytes:
    """Return what was worked out as bytes."""
    if isinstance(thing, bytes):
        return BYTES + thing
    if isinstance(thing, dict) and any(isinstance(part, bytes) for part in thing.values()):
        return FILES + packed(thing)
    return DATA + json.dumps(thing, separators=(",", ":")).encode()


def as_worked_out(thing: bytes) -> object:
    """Return what :func:`written` was given; what was a tuple is a list."""
    kind, content = thing[:1], thing[1:]
    if kind == BYTES:
        return content
    return unpacked(content) if kind == FILES else json.loads(content)


class Answers:
    """A memory by what went in: JSON, bytes or files by name; ``before`` is what an earlier process has worked out."""

    def __init__(self, before: Pack | None = None) -> None:
        self.before = before or Pack()
        self._kept: dict[str, object] = {}
        self._pages: dict[str, KeptPage] = {}
        self._added = Added({}, {})

    def once(self, make: Callable[[], Kept], *inputs: object) -> Kept:
        """Return what ``make`` gives, from memory when the same (JSON) inputs came before."""
        key = digest(*inputs)
        if key in self._kept:
            # What was asked for last stands last, so that what nobody asks for any more stands first.
            self._kept[key] = self._kept.pop(key)
        else:
            found = self.before.get(key)
            self._kept[key] = as_worked_out(found) if found else self._add(key, make())
        return cast(Kept, self._kept[key])

    def _add(self, key: str, made: Kept) -> Kept:
        self._added.kept[key] = made
        return made

    @property
    def count(self) -> int:
        """How many things are kept, pages aside."""
        return len(self._kept)

    def forget_all_but(self, most: int) -> None:
        """Keep no more than the ``most`` things that were asked for last."""
        for key in list(self._kept)[:-most]:
            del self._kept[key]
            self._added.kept.pop(key, None)

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
        if found and found[0] == key:
            return found[1]
        before = self.before.get(key)
        if before is None:
            return None
        self._pages[url] = (key, before[1:].decode())
        return self._pages[url][1]

    def keep_page(self, url: str, key: str, html: str) -> None:
        """Keep a page in place of what was kept of it before."""
        self._pages[url] = self._added.pages[url] = (key, html)

    def pack(self, most: int) -> bytes | None:
        """Return all of it for a later process, with what came from an earlier one as long as that stays below ``most``
        bytes; None where an earlier process has worked out all of it."""
        pages = {key: PAGE + html.encode() for key, html in self._pages.values() if key not in self.before}
        kept = {key: written(thing) for key, thing in self._kept.items() if key not in self.before}
        if not pages and not kept:
            return None
        if self.before.size < most:
            return packed({**self.before.things(), **kept, **pages})
        used = {*self._kept, *(key for key, _ in self._pages.values())}
        return packed({**{key: thing for key, thing in self.before.things().items() if key in used}, **kept, **pages})
