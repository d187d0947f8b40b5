"""What may stand under a key of a content file: how it is read, what is expected there, how its texts are told."""

from abc import ABC, abstractmethod
from collections.abc import Callable
from typing import Any

from configurator.catalog.clauses import Slip
from configurator.catalog.located import ContentFile, KeyPath, what_is
from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Message

# Gives what stands in place of a text that stands at a path.
Tell = Callable[[str, KeyPath], str]


class Reading:
    """One run over a file's data; ``sound`` until something in it cannot be read."""

    def __init__(self, file: ContentFile) -> None:
        self.file = file
        self.sound = True

    def refuse(self, written: object, path: KeyPath, slip: Slip) -> None:
        """Note what was written at a path, and what to write instead."""
        self.sound = False
        # An empty value has been noted already, where it stands.
        if written is not None:
            self.file.at_value(path, what_is(path, written), *slip.clauses, units=slip.units)


class Kind(ABC):
    """One kind of value; ``expected`` says what to write."""

    @property
    @abstractmethod
    def expected(self) -> Message:
        """Return ``a … is expected``."""

    @abstractmethod
    def taken(self, written: object, path: KeyPath, reading: Reading) -> Any:
        """Return what was written as the program needs it; slips are noted, and something stands in for them."""

    def told(self, value: Any, path: KeyPath, tell: Tell) -> Any:
        """Return a value with its texts told anew; one that holds no text is the same in every language."""
        return value


class Anything(Kind):
    """A value that another check reads."""

    @property
    def expected(self) -> Message:
        return plain("a mapping is expected")

    def taken(self, written: object, path: KeyPath, reading: Reading) -> Any:
        return written


class Items(Kind):
    """A list of values of one kind."""

    def __init__(self, item: Kind, keys: str) -> None:
        self.item = item
        self.keys = keys

    @property
    def expected(self) -> Message:
        if self.keys:
            return message("a list of mappings with {keys} is expected", {"keys": [self.keys, "name"]})
        return plain("a list in [ ] is expected")

    def taken(self, written: object, path: KeyPath, reading: Reading) -> Any:
        if isinstance(written, list):
            return [self.item.taken(each, (*path, index), reading) for index, each in enumerate(written)]
        return reading.refuse(written, path, Slip(self.expected))

    def told(self, value: Any, path: KeyPath, tell: Tell) -> Any:
        return [self.item.told(each, (*path, index), tell) for index, each in enumerate(value)]


class ByName(Kind):
    """A mapping from ids to values of one kind."""

    def __init__(self, item: Kind, keys: str) -> None:
        self.item = item
        self.keys = keys

    @property
    def expected(self) -> Message:
        if self.keys:
            return message("a mapping from ids to mappings with {keys} is expected", {"keys": [self.keys, "name"]})
        return plain("a mapping is expected")

    def taken(self, written: object, path: KeyPath, reading: Reading) -> Any:
        if isinstance(written, dict):
            return {name: self.item.taken(each, (*path, name), reading) for name, each in written.items()}
        return reading.refuse(written, path, Slip(self.expected))

    def told(self, value: Any, path: KeyPath, tell: Tell) -> Any:
        return {name: self.item.told(each, (*path, name), tell) for name, each in value.items()}
