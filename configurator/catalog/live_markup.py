"""Markup that does something by itself: scripts, what fetches a page into a page, addresses that run, own styles.

A guide's words may hold HTML, but none of this. It is looked for in the Markdown, where it can be told at its line, and
again in the page that was made of it, where nothing is hidden.
"""

import re
from html import unescape
from html.parser import HTMLParser

from configurator.kernel.message import message
from configurator.kernel.shapes import Message

# Elements of HTML that run, fetch, send, or change a page that is not theirs.
LIVE = {
    *("script", "style", "iframe", "frame", "object", "embed", "applet", "form", "input", "button", "textarea"),
    *("link", "meta", "base", "template", "portal", "foreignobject", "animate", "set"),
}
RUNS = re.compile(r"(?:javascript|vbscript):|data:(?!image/(?:png|jpeg|webp|gif)[;,])", re.IGNORECASE)
# What attributes in braces after a block set, as Markdown's attribute lists write them.
LISTED = re.compile(r"\{:?[^}\n]*?\b(on[a-z]+|style)\s*=")
TARGET = re.compile(r"\]\(\s*<?([^)\n]*)|^ {0,3}\[[^\]\n]+\]:\s*<?(\S*)", re.MULTILINE)
CODE = re.compile(r"^(```+|~~~+).*?^\1|(`+)(?!`)(?:(?!\n[ \t]*\n).)+?(?<!`)\2(?!`)", re.MULTILINE | re.DOTALL)


class LiveMarkup(HTMLParser):
    """Finds what does something by itself: what each is, and at which line and column, from 1."""

    def __init__(self) -> None:
        super().__init__(convert_charrefs=True)
        self.found: list[tuple[Message, int, int]] = []

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        """Note a live element, and an element's live attributes."""
        if tag in LIVE:
            self.note(message("<{element}> has no place in a guide", {"element": [tag, "name"]}))
        for name, value in attrs:
            if name.startswith("on") or name == "style":
                self.note(live_attribute(name))
            elif RUNS.match("".join((value or "").split())):
                self.note(message("'{attribute}' has an address that runs", {"attribute": [name, "name"]}))

    def note(self, what: Message) -> None:
        """Note something where the parser stands."""
        line, column = self.getpos()
        self.found.append((what, line, column + 1))


def live_in_html(html: str) -> list[tuple[Message, int, int]]:
    """Return what in a page's HTML does something by itself, with line and column."""
    reader = LiveMarkup()
    reader.feed(html)
    reader.close()
    return reader.found


def without_code(markdown: str) -> str:
    """Return a Markdown text with spaces in place of what is shown as code."""
    return CODE.sub(lambda code: re.sub(r"[^\n]", " ", code[0]), markdown)


def live_in_markdown(markdown: str) -> list[tuple[Message, int, int]]:
    """Return what in a Markdown text does something by itself, with line and column; what is shown as code does not."""
    text = without_code(markdown)
    found = live_in_html(text)
    for attribute in LISTED.finditer(text):
        found.append((live_attribute(attribute[1]), *place_in(text, attribute.start(1))))
    for target in TARGET.finditer(text):
        written = target[1] or target[2] or ""
        if RUNS.match("".join(unescape(written).split())):
            what = message("the link has an address that runs: {address}", {"address": [written, "name"]})
            found.append((what, *place_in(text, target.start())))
    return found


def live_attribute(name: str) -> Message:
    """Return what an attribute does that has no place in a guide: a handler, or a style, which a page's policy bars."""
    named: dict[str, list[float | str]] = {"attribute": [name, "name"]}
    if name == "style":
        return message("'{attribute}' does nothing: only the site's style sheet says how a page looks", named)
    return message("'{attribute}' runs a script", named)


def place_in(text: str, at: int) -> tuple[int, int]:
    """Return line and column, from 1, of a place in a text."""
    return text.count("\n", 0, at) + 1, at - text.rfind("\n", 0, at)
