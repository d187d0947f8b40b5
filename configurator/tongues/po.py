"""A gettext catalog as its entries, read without what is only needed to write one.

The format is that of GNU gettext's manual, "The Format of PO Files"; what is obsolete (``#~``) is left out.
"""

import re
from collections.abc import Iterator
from typing import NamedTuple

QUOTED = re.compile(r'"((?:[^"\\]|\\.)*)"')
ESCAPED = re.compile(r'\\([\\abfnrtv"])')
ESCAPES = {"a": "\a", "b": "\b", "f": "\f", "n": "\n", "r": "\r", "t": "\t", "v": "\v"}
FORM = re.compile(r"msgstr\[(\d)\]")
FORMS_IN_HEADER = re.compile(r"^Plural-Forms:.*\bnplurals\s*=\s*(\d)", re.MULTILINE)
# What a catalog whose header is silent has: one thing and several.
USUAL_FORMS = 2


class PoSlip(ValueError):
    """A line, counted from 1, that no catalog can have."""

    def __init__(self, line: int) -> None:
        self.line = line
        super().__init__(line)


class PoEntry(NamedTuple):
    """A text in all its forms, what it is in the language, and the line of its ``msgid``, from 1.

    ``said`` has as many forms as the language where ``forms`` are two; a form that is not translated is empty.
    """

    forms: tuple[str, ...]
    said: tuple[str, ...]
    line: int
    fuzzy: bool


def read_po(text: str) -> list[PoEntry]:
    """Return the entries of a catalog; the first may be its header, whose text is empty.

    :raises PoSlip: at the first line that no catalog can have
    """
    found: list[PoEntry] = []
    plurals = USUAL_FORMS
    for written in stanzas(text):
        entry = written.entry(plurals)
        if entry.forms == ("",):
            told = FORMS_IN_HEADER.search(entry.said[0])
            plurals = int(told[1]) if told else plurals
        found.append(entry)
    return found


class Stanza:
    """The lines of one entry as they are read: the text after each keyword."""

    def __init__(self) -> None:
        self.texts: dict[str, str] = {}
        self.keyword = ""
        self.line = 0
        self.fuzzy = False

    def take(self, keyword: str, quoted: str, line: int) -> None:
        """Take a line's text: one after a keyword, or one that goes on with the text above it."""
        text = QUOTED.fullmatch(quoted.strip())
        known = keyword in ("msgctxt", "msgid", "msgid_plural", "msgstr") or FORM.fullmatch(keyword)
        if text is None or not known:
            raise PoSlip(line)
        if not self.texts or (keyword == "msgid" and keyword not in self.texts):
            self.line = line
        self.keyword = keyword
        self.texts[keyword] = self.texts.get(keyword, "") + ESCAPED.sub(unescaped, text[1])

    def entry(self, plurals: int) -> PoEntry:
        """Return the entry, which has all its parts."""
        forms = tuple(self.texts[part] for part in ("msgid", "msgid_plural") if part in self.texts)
        told = {int(form[1]): text for keyword, text in self.texts.items() if (form := FORM.fullmatch(keyword))}
        told |= {0: self.texts["msgstr"]} if "msgstr" in self.texts else {}
        if not forms or not told or max(told) >= (plurals if forms[1:] else 1):
            raise PoSlip(self.line)
        return PoEntry(
            forms, tuple(told.get(at, "") for at in range(plurals if forms[1:] else 1)), self.line, self.fuzzy
        )


def unescaped(sign: re.Match[str]) -> str:
    """Return the sign that is written after a backslash."""
    return ESCAPES.get(sign[1], sign[1])


def stanzas(text: str) -> Iterator[Stanza]:
    """Yield the lines of each entry."""
    stanza = Stanza()
    for number, line in enumerate(map(str.strip, text.split("\n")), 1):
        keyword, _, quoted = line.partition(" ")
        if stanza.texts and (line.startswith("#") or keyword in ("msgctxt", "msgid")) and stanza.keyword != "msgctxt":
            yield stanza
            stanza = Stanza()
        if line.startswith("#,"):
            stanza.fuzzy = stanza.fuzzy or "fuzzy" in re.split(r"[,\s]+", line)
        elif line.startswith("#-"):
            raise PoSlip(number)
        elif line.startswith('"'):
            stanza.take(stanza.keyword, line, number)
        elif line and not line.startswith("#"):
            if keyword in stanza.texts:
                raise PoSlip(number)
            stanza.take(keyword, quoted, number)
    if stanza.texts:
        yield stanza
