"""A visit's file, read: the text is parsed here, what it holds is judged by the kernel."""

from pathlib import Path

from configurator.catalog.clauses import Refusal
from configurator.catalog.visit_json import kind_in_python, parsed
from configurator.kernel.message import message, plain
from configurator.kernel.visit.read_visit import FILE_MOST, NOT_JSON, TOO_DEEP, TOO_LARGE, read_visit
from configurator.kernel.visit.visit_shapes import ReadVisit, Visit
from configurator.spoken import phrase


def read_text(text: str) -> ReadVisit:
    """Return the visit that a file's text holds, or what is wrong with it. Never throws, whatever the text."""
    if len(text) > FILE_MOST:
        return wrong(TOO_LARGE)
    try:
        value = parsed(text)
    except ValueError:
        return wrong(NOT_JSON)
    except RecursionError:
        return wrong(TOO_DEEP)
    return read_visit(value, kind_in_python)


def wrong(why: str) -> ReadVisit:
    """Return that nothing of a file can be read."""
    told = read_visit(None, kind_in_python)
    return {"visit": told["visit"], "slips": [{"at": "", "says": plain(why)}]}


def read_file(path: Path) -> Visit:
    """Return the visit of a file.

    :raises Refusal: where it holds none, or one with slips, the first of which it tells
    """
    try:
        text = path.read_text(encoding="utf-8")
    except UnicodeDecodeError:
        text = ""
    told = read_text(text)
    if told["slips"]:
        why = phrase(told["slips"][0]["says"])
        raise Refusal(message("{file}: {why}", {"file": [str(path), "name"], "why": [why, "name"]}))
    return told["visit"]
