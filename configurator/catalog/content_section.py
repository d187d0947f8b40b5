"""A mapping of a content file as a class: its keys are the class's annotated fields, in their order.

Each field says by its type what may stand under its key: ``Annotated[…, marker]`` for one value (``fields``), another
section, a list or a dict of either, or ``dict[str, object]`` for what another check reads. A field without a preset
is needed; a key that is no field is a slip to be told of.
"""

from inspect import get_annotations
from types import UnionType
from typing import Any, ClassVar, NamedTuple, Self, TypeVar, Union, cast, dataclass_transform, get_args, get_origin

from configurator.catalog.clauses import Slip
from configurator.catalog.kind import Anything, ByName, Items, Kind, Reading, Tell
from configurator.catalog.located import ContentFile, KeyPath, dotted
from configurator.catalog.suggest import nearest, suggestion
from configurator.kernel.message import message
from configurator.kernel.shapes import Message

Model = TypeVar("Model", bound="Section")
# Stands where a key has no preset.
NEEDED: Any = object()


class Entry(NamedTuple):
    """What may stand under a key, and what stands for it where the file leaves it out."""

    kind: Kind
    preset: Any


@dataclass_transform(eq_default=False, kw_only_default=True, frozen_default=True)
class Section:
    """One mapping, which nothing changes; ``given`` are the keys that the file gives itself."""

    entries: ClassVar[dict[str, Entry]] = {}
    given: frozenset[str]

    def __init_subclass__(cls) -> None:
        own = {name: Entry(kind_of(kind), vars(cls).get(name, NEEDED)) for name, kind in get_annotations(cls).items()}
        cls.entries = {**cls.entries, **own}

    def __init__(self, **values: Any) -> None:
        # A preset is an attribute of the class.
        vars(self).update(values, given=frozenset(values))

    def __repr__(self) -> str:
        # What is kept from one build to the next is known by what it was made of.
        held = ", ".join(f"{name}={getattr(self, name)!r}" for name in self.entries)
        return f"{type(self).__name__}({held})"

    def changed(self, **values: Any) -> Self:
        """Return the section with other values; what the file gives itself is the same."""
        made = object.__new__(type(self))
        vars(made).update({**vars(self), **values})
        return made


def kind_of(annotation: Any) -> Kind:
    """Return what a field's type lets stand under its key.

    :raises TypeError: where it does not tell
    """
    if isinstance(annotation, type) and issubclass(annotation, Section):
        return Within(annotation)
    marker = next((mark for mark in getattr(annotation, "__metadata__", ()) if isinstance(mark, Kind)), None)
    if marker:
        return marker
    parts = get_args(annotation)
    if get_origin(annotation) in (Union, UnionType):
        return kind_of(next(part for part in parts if part is not type(None)))
    if annotation is object:
        return Anything()
    if get_origin(annotation) not in (list, dict):
        raise TypeError(annotation)
    item = kind_of(parts[-1])
    return (Items if get_origin(annotation) is list else ByName)(item, keys_of(item))


def keys_of(kind: Kind) -> str:
    """Return the keys of the section that a kind of value is; nothing where it is none."""
    return ", ".join(kind.section.entries) if isinstance(kind, Within) else ""


def section_under(section: type[Section], key: str) -> type[Section] | None:
    """Return the section that stands under a key; None where something else does."""
    entry = section.entries.get(key)
    return entry.kind.section if entry and isinstance(entry.kind, Within) else None


def needs_any(section: type[Section]) -> bool:
    """Return whether a section has a key that a file must give."""
    return any(entry.preset is NEEDED for entry in section.entries.values())


class Within(Kind):
    """A section within another."""

    def __init__(self, section: type[Section]) -> None:
        self.section = section

    @property
    def expected(self) -> Message:
        return message("a mapping with {keys} is expected", {"keys": [keys_of(self), "name"]})

    def taken(self, written: object, path: KeyPath, reading: Reading) -> Any:
        if not isinstance(written, dict):
            return reading.refuse(written, path, Slip(self.expected))
        known = self.section.entries
        note_keys(known, written, path, reading)
        return self.section(
            **{
                name: entry.kind.taken(written[name], (*path, name), reading)
                for name, entry in known.items()
                if name in written
            }
        )

    def told(self, value: Any, path: KeyPath, tell: Tell) -> Any:
        return told(value, tell, path) if value else value


def note_keys(known: dict[str, Entry], written: dict[str, object], path: KeyPath, reading: Reading) -> None:
    """Note the keys that are unknown and those that are missing."""
    strange = [key for key in written if key not in known]
    for key in strange:
        reading.sound = False
        unknown = message("unknown key '{key}'", {"key": [key, "name"]})
        reading.file.at_key((*path, key), unknown, suggestion(key, known))
    # A key that is missing only because it is misspelt is told of once, at the slip.
    meant = {nearest(key, known) for key in strange}
    for name, entry in known.items():
        if entry.preset is NEEDED and name not in written:
            reading.sound = False
            here = (*path, name)
            # An empty value has been noted already, where it stands.
            if name not in meant and here not in reading.file.keys:
                missing = message("{path} is missing", {"path": [dotted(here), "name"]})
                reading.file.at_key(here, missing, entry.kind.expected)


def check(file: ContentFile, section: type[Model]) -> Model | None:
    """Return a file's data as a section, or None with every problem noted."""
    reading = Reading(file)
    found = Within(section).taken(file.data, (), reading)
    return cast(Model, found) if reading.sound else None


def told(section: Model, tell: Tell, path: KeyPath = ()) -> Model:
    """Return a section with each of its texts told anew, presets among them; all else stays."""
    entries = section.entries.items()
    return section.changed(
        **{name: entry.kind.told(getattr(section, name), (*path, name), tell) for name, entry in entries}
    )
