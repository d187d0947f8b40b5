"""Kernel answers and pictures, each worked out once for as long as what went in stays the same."""

import hashlib
import json
from collections.abc import Callable
from typing import TypeVar, cast

from configurator.kernel.answer import ask, ruled_out
from configurator.kernel.shapes import Answer, Door, Family, Household

Kept = TypeVar("Kept")


class Answers:
    """A memory that outlives a rebuild: an edit of one family works out that family alone."""

    def __init__(self) -> None:
        self._kept: dict[str, object] = {}

    def once(self, make: Callable[[], Kept], *inputs: object) -> Kept:
        """Return what ``make`` gives, from memory when the same (JSON) inputs came before."""
        key = hashlib.sha1(json.dumps(inputs, sort_keys=True).encode(), usedforsecurity=False).hexdigest()
        if key not in self._kept:
            self._kept[key] = make()
        return cast(Kept, self._kept[key])

    def ask(self, door: Door, family: Family, household: Household) -> Answer:
        """Return everything the kernel tells of a family, with its preset choices, on a door."""
        return self.once(lambda: ask(door, family, {}, household), "ask", door, family, household)

    def ruled_out(self, door: Door, family: Family) -> dict[str, dict[str, str]]:
        """Return the options that the door rules out, with the reason: choice id to option id to reason."""
        return self.once(lambda: ruled_out(door, family, {}), "ruled out", door, family)
