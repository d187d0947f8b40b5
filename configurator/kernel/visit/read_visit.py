"""A parsed file as a visit: every entry as it should be, or what is wrong with it and where.

Whoever parses the text, Python or a browser, says of which kind a value is: ``text``, ``number``, ``flag``, ``list``,
``entry`` (things by name) or anything else. What the code does not know stays where it is.
"""

import math
from collections.abc import Callable
from typing import Any, TypedDict

from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Household, Message
from configurator.kernel.tongue import wording
from configurator.kernel.visit.visit_parts import (
    BY_ID,
    LIST_MOST,
    NUMBER_MOST,
    TEXT_MOST,
    is_filled,
    is_needed,
    limits_within,
    part_kinds,
)
from configurator.kernel.visit.visit_shapes import VISIT_VERSION, ReadVisit, Visit, VisitSlip

# Letters of a whole file, and how deep its entries lie within each other.
FILE_MOST = 4000000
NESTED_MOST = 40
NOT_JSON = wording("the file is no JSON text, so no visit can be read from it")
TOO_LARGE = wording("the file is larger than any visit")
TOO_DEEP = wording("the file's entries lie deeper within each other than those of any visit")
NO_VISIT = wording("the file holds no visit")
NEWER_VISIT = wording("the file was written by a newer version of Astragal; take the newest to read it")
NOT_A = {
    "text": wording("{at} must be a text"),
    "number": wording("{at} must be a number"),
    "whole": wording("{at} must be a whole number"),
    "flag": wording("{at} must be true or false"),
    "list": wording("{at} must be a list"),
    "entry": wording("{at} must be an entry in braces"),
}


class VisitReader(TypedDict):
    """What says of which kind a value is, and what has been found wrong so far."""

    said_kind: Callable[[Any], str]
    slips: list[VisitSlip]


def slip_at(reader: VisitReader, at: str, text: str) -> None:
    """Note what is wrong with an entry."""
    reader["slips"].append({"at": at, "says": message(text, {"at": [at, "name"]})})


def is_within_depth(value: Any, levels: int, said_kind: Callable[[Any], str]) -> bool:
    """Return whether a value's lists and entries lie within each other over so many levels at most."""
    kind = said_kind(value)
    if kind != "list" and kind != "entry":
        return True
    if levels == 0:
        return False
    for part in parts_within(value, kind):
        if not is_within_depth(part, levels - 1, said_kind):
            return False
    return True


def parts_within(value: Any, kind: str) -> list[Any]:
    """Return what a list or an entry holds."""
    if kind == "list":
        many: list[Any] = value
        return many
    named: dict[str, Any] = value
    return [named[name] for name in named]


def empty_of(kind: str) -> Any:
    """Return what stands for something that is missing and need not be there."""
    if kind == "text":
        return ""
    if kind == "flag":
        return False
    if kind == "number" or kind == "whole":
        return 0
    return [] if kind.startswith("list:") else {}


def read_text(value: Any, at: str, reader: VisitReader) -> Any:
    """Return a text."""
    if reader["said_kind"](value) != "text":
        slip_at(reader, at, NOT_A["text"])
        return ""
    text: str = value
    if len(text) > TEXT_MOST:
        slip_at(reader, at, wording("{at} is longer than any text of a visit"))
    return text


def read_amount(value: Any, at: str, whole: bool, reader: VisitReader) -> Any:
    """Return a number."""
    if reader["said_kind"](value) != "number":
        slip_at(reader, at, NOT_A["whole"] if whole else NOT_A["number"])
        return 0
    amount: float = value
    if not (amount >= -NUMBER_MOST and amount <= NUMBER_MOST):
        slip_at(reader, at, wording("{at} is larger than any number of a visit"))
        return 0
    if whole and amount != math.floor(amount):
        slip_at(reader, at, NOT_A["whole"])
        return 0
    return int(amount) if whole else amount


def read_flag(value: Any, at: str, reader: VisitReader) -> Any:
    """Return true or false."""
    if reader["said_kind"](value) != "flag":
        slip_at(reader, at, NOT_A["flag"])
        return False
    return value


def read_named(value: Any, kind: str, at: str, reader: VisitReader) -> Any:
    """Return things of one kind by their names."""
    if reader["said_kind"](value) != "entry":
        slip_at(reader, at, NOT_A["entry"])
        return {}
    given: dict[str, Any] = value
    named = given.copy()
    for name in given:
        named[name] = read_kind(given[name], kind, at + "." + name, reader)
    return named


def read_list(value: Any, kind: str, at: str, reader: VisitReader) -> Any:
    """Return a list of things of one kind; those that go by ids have each its own."""
    read: list[Any] = []
    if reader["said_kind"](value) != "list":
        slip_at(reader, at, NOT_A["list"])
        return read
    given: list[Any] = value
    if len(given) > LIST_MOST:
        slip_at(reader, at, wording("{at} holds more than any list of a visit"))
        return read
    for i in range(len(given)):
        read.append(read_kind(given[i], kind, at + "." + str(i), reader))
    part = kind[len("entry:") :]
    if part in BY_ID:
        check_ids(read, at, reader)
    return read


def check_ids(read: list[Any], at: str, reader: VisitReader) -> None:
    """Note ids that are missing or there twice."""
    known: list[str] = []
    for i in range(len(read)):
        ident: str = read[i].get("id", "")
        here = at + "." + str(i) + ".id"
        if ident == "":
            slip_at(reader, here, wording("{at} must not be empty"))
        elif ident in known:
            slip_at(reader, here, wording("{at} is the id of another one too"))
        known.append(ident)


def read_kind(value: Any, kind: str, at: str, reader: VisitReader) -> Any:
    """Return a value of a kind of :mod:`configurator.kernel.visit.visit_parts`."""
    if kind == "text":
        return read_text(value, at, reader)
    if kind == "number" or kind == "whole":
        return read_amount(value, at, kind == "whole", reader)
    if kind == "flag":
        return read_flag(value, at, reader)
    if kind == "texts" or kind == "numbers":
        return read_named(value, kind[: len(kind) - 1], at, reader)
    words = kind.split(":")
    if words[0] == "list":
        inner = words[1] if words[1] == "text" or words[1] == "number" else "entry:" + words[1]
        return read_list(value, inner, at, reader)
    if words[0] == "entries":
        return read_named(value, "entry:" + words[1], at, reader)
    return read_entry(value, words[1], at, reader)


def read_entry(value: Any, part: str, at: str, reader: VisitReader) -> Any:
    """Return an entry with everything that it should hold, and whatever else it does."""
    if reader["said_kind"](value) != "entry":
        slip_at(reader, at, NOT_A["entry"])
        return {}
    given: dict[str, Any] = value
    read = given.copy()
    for name, kind in part_kinds(part).items():
        here = name if at == "" else at + "." + name
        if name in given:
            read[name] = read_kind(given[name], kind, here, reader)
        elif is_needed(part, name):
            slip_at(reader, here, wording("{at} is missing"))
        elif is_filled(part, name):
            inner = kind[len("entry:") :]
            read[name] = read_entry({}, inner, here, reader) if kind.startswith("entry:") else empty_of(kind)
    check_limits(read, limits_within(part), at, reader)
    if "wishes" in read:
        check_limits(read["wishes"], limits_within("wishes"), at + ".wishes", reader)
    return read


def check_limits(read: dict[str, Any], limits: dict[str, list[float]], at: str, reader: VisitReader) -> None:
    """Note numbers that cannot be."""
    for name, span in limits.items():
        if name in read and not (read[name] >= span[0] and read[name] <= span[1]):
            slip_at(reader, at + "." + name, wording("{at} is a number that cannot be"))


def fresh_visit(ident: str, on: str, units: str, household: Household) -> Visit:
    """Return a visit in which nothing stands yet."""
    return {
        "version": VISIT_VERSION,
        "id": ident,
        "client": "",
        "place": "",
        "on": on,
        "units": units,
        "note": "",
        "household": household,
        "openings": [],
        "revisions": [],
    }


def refused(why: Message) -> ReadVisit:
    """Return that a file cannot be read at all."""
    nobody: Household = {
        "shoulder_height": 0.0,
        "person_height": 0.0,
        "person_distance": 0.0,
        "outside_eye": 0.0,
        "outside_distance": 0.0,
        "outside_level": 0.0,
    }
    return {"visit": fresh_visit("", "", "in", nobody), "slips": [{"at": "", "says": why}]}


def read_visit(value: Any, said_kind: Callable[[Any], str]) -> ReadVisit:
    """Return the visit of a parsed file; with any slip it must not be worked with. Never throws."""
    if said_kind(value) != "entry":
        return refused(plain(NO_VISIT))
    if not is_within_depth(value, NESTED_MOST, said_kind):
        return refused(plain(TOO_DEEP))
    given: dict[str, Any] = value
    version = given.get("version", "")
    if said_kind(version) != "number" or not (version >= 1):
        return refused(plain(NO_VISIT))
    if version > VISIT_VERSION:
        return refused(plain(NEWER_VISIT))
    reader: VisitReader = {"said_kind": said_kind, "slips": []}
    visit: Visit = read_entry(given, "Visit", "", reader)
    if len(reader["slips"]) == 0 and visit["units"] != "in" and visit["units"] != "mm":
        slip_at(reader, "units", wording("{at} must be in or mm"))
    if len(reader["slips"]) > 0:
        return {"visit": refused(plain(NO_VISIT))["visit"], "slips": reader["slips"]}
    return {"visit": visit, "slips": reader["slips"]}
