"""YAML with the line and column of every key and value.

Scalars stay the text that was written: the schema says what each one means, so ``no`` may
be the id of an option and ``6'8"`` a length, without YAML's own guesses in between.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path
from stat import S_ISREG
from typing import cast

import yaml

from configurator.catalog.clauses import Term
from configurator.catalog.os_words import os_words
from configurator.catalog.problem import Problem
from configurator.catalog.syntax import syntax_problem
from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Message

KeyPath = tuple[str | int, ...]
Spot = tuple[int, int]

# The C parser is several times quicker; a PyYAML built without it has only the other.
LOADER = getattr(yaml, "CSafeLoader", yaml.SafeLoader)
DEEPEST = 12
# How YAML writes that there is no value.
NOTHING = ("~", "null", "Null", "NULL")
TOO_DEEP = (
    message("this is nested more than {most} deep", {"most": [DEEPEST, "count"]}),
    plain("nothing in the content is"),
)
# Of bytes: many times what a showroom writes into one file.
LARGEST = 4_000_000
TOO_LARGE = (
    message("the file is larger than {most} MB", {"most": [LARGEST // 1_000_000, "count"]}),
    plain("nothing in the content is"),
)
NO_PLAIN_FILE = (plain("this is no file that can be read"), plain("put a file of text here"))
NOT_UTF8 = (plain("the file is not in UTF-8"), plain("save it as UTF-8"))
ANCHORED = (plain("anchors and aliases (& and *) are not used here"), plain("write the value out"))
EMPTY_FILE = (plain("the file is empty"), plain("a mapping of keys and values is expected"))
NO_MAPPING = (
    plain("the file is no mapping"),
    plain("it must consist of lines such as 'name: Garden door'"),
)


@dataclass
class ContentFile:
    """One file of content: its data (mappings, lists, texts) and where each part stands."""

    name: str
    data: dict[str, object] = field(default_factory=dict)
    keys: dict[KeyPath, Spot] = field(default_factory=dict)
    values: dict[KeyPath, Spot] = field(default_factory=dict)
    problems: list[Problem] = field(default_factory=list)

    def at_value(self, path: KeyPath, *clauses: Message, units: str = "in") -> None:
        """Note a problem with the value at a path, or with the nearest part around it."""
        self.problems.append(Problem(self.name, *nearest_spot(self.values, path), clauses, units))

    def at_key(self, path: KeyPath, *clauses: Message, units: str = "in") -> None:
        """Note a problem with the key at a path, or with the nearest key around it."""
        self.problems.append(Problem(self.name, *nearest_spot(self.keys, path), clauses, units))

    def written(self, path: KeyPath) -> str:
        """Return the text that was written at a path, or nothing where there is none."""
        here: object = self.data
        for step in path:
            if isinstance(here, dict):
                here = here.get(step)
            elif isinstance(here, list) and isinstance(step, int) and step < len(here):
                here = here[step]
        return here if isinstance(here, str) else ""


def nearest_spot(spots: Mapping[KeyPath, Spot], path: KeyPath) -> Spot:
    """Return where a path's value or key stands, or the nearest around it."""
    while path and path not in spots:
        path = path[:-1]
    return spots.get(path, (1, 1))


def dotted(path: KeyPath) -> str:
    """Return a path as people say it: ``hinges.heights.2`` (lists count from 1)."""
    return ".".join(str(step + 1) if isinstance(step, int) else step for step in path)


def what_is(path: KeyPath, written: object) -> Message:
    """Return what was written at a path, as a clause."""
    terms: dict[str, Term] = {"path": [dotted(path), "name"]}
    if isinstance(written, dict):
        return message("{path} is a mapping", terms)
    if isinstance(written, list):
        return message("{path} is a list", terms)
    text = str(written)
    quoted = text if text.lstrip("-.")[:1].isdigit() else f"'{text}'"
    return message("{path} is {written}", {**terms, "written": [quoted, "name"]})


def spot(node: yaml.Node) -> Spot:
    """Return the line and column, from 1, at which a node starts."""
    return (node.start_mark.line + 1, node.start_mark.column + 1)


def read_text(path: Path, file: ContentFile) -> str | None:
    """Return a file's text, or None with the problem noted."""
    try:
        kept = path.stat()
        if not S_ISREG(kept.st_mode):
            file.at_value((), *NO_PLAIN_FILE)
        elif kept.st_size > LARGEST:
            file.at_value((), *TOO_LARGE)
        else:
            return path.read_bytes().decode("utf-8-sig")
    except UnicodeDecodeError as slip:
        line = slip.object[: slip.start].count(b"\n") + 1
        column = slip.start - (slip.object.rfind(b"\n", 0, slip.start) + 1) + 1
        file.problems.append(Problem(file.name, line, column, NOT_UTF8))
    except FileNotFoundError:
        file.at_value((), plain("there is no such file, but the content needs it"))
    except OSError as slip:
        file.at_value((), message("the file cannot be read: {why}", {"why": os_words(slip)}))
    return None


def read_content(path: Path, name: str) -> ContentFile:
    """Read one file; whatever is wrong with it as YAML is among its problems, under ``name``."""
    file = ContentFile(name)
    text = read_text(path, file)
    if text is not None:
        take_text(file, text)
    return file


def take_text(file: ContentFile, text: str) -> None:
    """Take the data of a text into a file, and note whatever is wrong with it as YAML."""
    try:
        root = yaml.compose(text, Loader=LOADER)
    except yaml.YAMLError as slip:
        file.problems.append(syntax_problem(file.name, text, slip))
        return
    except RecursionError:
        file.at_value((), *TOO_DEEP)
        return
    if root is None:
        file.at_value((), *EMPTY_FILE)
    elif not isinstance(root, yaml.MappingNode):
        file.at_value((), *NO_MAPPING)
    else:
        data = _Walk(file).data_of(root, ())
        file.data = data if isinstance(data, dict) else {}


class _Walk:
    """Turns YAML nodes into data, noting where each stands and what may not be."""

    def __init__(self, file: ContentFile) -> None:
        self.file = file
        self.seen: set[int] = set()

    def data_of(self, node: yaml.Node, path: KeyPath) -> object:
        self.file.values[path] = spot(node)
        if id(node) in self.seen:
            self.file.at_value(path, *ANCHORED)
            return None
        self.seen.add(id(node))
        if len(path) > DEEPEST:
            self.file.at_value(path, *TOO_DEEP)
            return None
        if isinstance(node, yaml.MappingNode):
            return self.mapping(node, path)
        if isinstance(node, yaml.SequenceNode):
            return [self.data_of(item, (*path, index)) for index, item in enumerate(node.value)]
        return self.scalar(cast(yaml.ScalarNode, node), path)

    def scalar(self, node: yaml.ScalarNode, path: KeyPath) -> str | None:
        text = str(node.value).strip()
        nothing = not node.style and text in NOTHING
        if text and not nothing:
            return text
        empty = message("{path} is empty", {"path": [dotted(path), "name"]})
        self.file.at_value(path, empty, plain("write a value or take the line out"))
        return None

    def mapping(self, node: yaml.MappingNode, path: KeyPath) -> dict[str, object]:
        data: dict[str, object] = {}
        for key_node, value_node in node.value:
            if not isinstance(key_node, yaml.ScalarNode):
                no_word = (plain("a key must be a plain word"),)
                self.file.problems.append(Problem(self.file.name, *spot(key_node), no_word))
                continue
            self.entry(data, key_node, value_node, path)
        return data

    def entry(self, data: dict[str, object], key_node: yaml.ScalarNode, value_node: yaml.Node, path: KeyPath) -> None:
        key = str(key_node.value)
        here = (*path, key)
        if here in self.file.keys:
            first: dict[str, Term] = {"key": [key, "name"], "line": [self.file.keys[here][0], "count"]}
            twice = message("key '{key}' is here twice, first in line {line}", first)
            self.file.problems.append(Problem(self.file.name, *spot(key_node), (twice, plain("keep one"))))
            return
        self.file.keys[here] = spot(key_node)
        value = self.data_of(value_node, here)
        if value is not None:
            data[key] = value
