"""Many things in one entry of the cache, each looked at only when it is asked for."""

import json
from collections.abc import Mapping

from configurator.cache.entries import kept

# Of the number that says how long the list of what is in it is.
HEAD = 8


def packed(things: Mapping[str, bytes | memoryview]) -> bytes:
    """Return things as one: how long the list of their names and lengths is, that list, and the things in a row."""
    listed = json.dumps({name: len(thing) for name, thing in things.items()}, separators=(",", ":")).encode()
    return b"".join([len(listed).to_bytes(HEAD, "big"), listed, *things.values()])


def places_in(pack: bytes) -> dict[str, tuple[int, int]]:
    """Return where in a pack each thing begins and ends, by its name."""
    place = HEAD + int.from_bytes(pack[:HEAD], "big")
    places: dict[str, tuple[int, int]] = {}
    for name, length in json.loads(pack[HEAD:place] or b"{}").items():
        places[name] = (place, place + length)
        place += length
    return places


def unpacked(pack: bytes) -> dict[str, bytes]:
    """Return the things that are in a pack."""
    return {name: pack[start:end] for name, (start, end) in places_in(pack).items()}


class Pack:
    """What is kept under a name of the cache, by the names of what is in it; empty where there is nothing sound."""

    def __init__(self, name: str = "") -> None:
        self.name = name
        self._content = (kept(name) if name else None) or b""
        self._places = places_in(self._content)

    def __contains__(self, name: str) -> bool:
        return name in self._places

    def __len__(self) -> int:
        return len(self._places)

    def get(self, name: str) -> bytes | None:
        """Return one thing, or None."""
        if name not in self._places:
            return None
        start, end = self._places[name]
        return self._content[start:end]

    def things(self) -> dict[str, memoryview]:
        """Return all things, none of them copied."""
        whole = memoryview(self._content)
        return {name: whole[start:end] for name, (start, end) in self._places.items()}

    @property
    def size(self) -> int:
        """How many bytes all of it takes."""
        return len(self._content)
