"""Where each number comes from: the file's own mark, or one written beside the number."""

import re
from collections.abc import Callable
from dataclasses import dataclass, replace

from configurator.catalog.clauses import Slip
from configurator.catalog.located import ContentFile, KeyPath, dotted, what_is
from configurator.catalog.suggest import nearest, suggestion
from configurator.kernel.message import message, plain
from configurator.kernel.tongue import Words, in_words, wording

MARKS = (wording("invented"), wording("common practice"))
EXPECTED = wording("invented, common practice or 'published — <where>' is expected")


@dataclass(frozen=True)
class Source:
    """``mark`` is ``invented``, ``common practice`` or ``published`` (then ``where`` names the publication)."""

    mark: str
    where: str = ""

    def told(self, tell: Callable[[str, KeyPath], str], path: KeyPath) -> "Source":
        """Return the source with the publication's name told anew; ``path`` is where it stands."""
        return replace(self, where=tell(self.where, path)) if self.where else self

    def said(self, words: Words) -> str:
        """Return where a number comes from, in a language."""
        mark = in_words(self.mark, words)
        return f"{mark} — {self.where}" if self.where else mark

    def __str__(self) -> str:
        return f"{self.mark} — {self.where}" if self.where else self.mark


# What a number is when nobody measured it and the schema's own preset stands in.
PRESET = Source(wording("common practice"))


def read_source(text: str) -> Source:
    """Return a written source.

    :raises Slip: with what is expected
    """
    if text in MARKS:
        return Source(text)
    published = re.fullmatch(r"published\s*(?:—|–|-|:)\s*(\S.*)", text, re.DOTALL)
    if not published:
        raise Slip(plain(EXPECTED))
    return Source(wording("published"), published[1])


def lift_sources(file: ContentFile) -> dict[KeyPath, Source]:
    """Replace each ``{value: …, source: …}`` in the data by its value; return the sources by path."""
    sources: dict[KeyPath, Source] = {}
    file.data = {key: _lifted(file, sources, value, (key,)) for key, value in file.data.items()}
    return sources


def _lifted(file: ContentFile, sources: dict[KeyPath, Source], value: object, path: KeyPath) -> object:
    if isinstance(value, list):
        return [_lifted(file, sources, item, (*path, index)) for index, item in enumerate(value)]
    if not isinstance(value, dict):
        return value
    valued = _key_of_value(value)
    if not isinstance(value.get(valued), str):
        return {key: _lifted(file, sources, item, (*path, key)) for key, item in value.items()}
    for key in value:
        if key not in ("value", "source"):
            unknown = message("unknown key '{key}'", {"key": [key, "name"]})
            file.at_key((*path, key), unknown, suggestion(key, ["value", "source"]))
    _note_source(file, sources, value.get("source"), path)
    file.values[path] = file.values[(*path, valued)]
    return value[valued]


def _key_of_value(mapping: dict[str, object]) -> str:
    """Return the key under which a value stands that has its source beside it, a slip of ``value`` included."""
    if "value" in mapping or len(mapping) != 2 or "source" not in mapping:
        return "value"
    (other,) = (key for key in mapping if key != "source")
    return other if nearest(other, ["value"]) else "value"


def _note_source(file: ContentFile, sources: dict[KeyPath, Source], written: object, path: KeyPath) -> None:
    here = (*path, "source")
    if not isinstance(written, str):
        none = message("{path} has no source beside its value", {"path": [dotted(path), "name"]})
        file.at_value(here, none, plain(EXPECTED))
        return
    try:
        sources[path] = read_source(written)
    except Slip as slip:
        file.at_value(here, what_is(here, written), *slip.clauses)
