"""The names of a built site's assets: each holds the hash of its content, so that a copy may be kept for ever and no
page meets a file of another version.

Templates and pages that are remembered know assets by their plain names; a page has the full ones as it is written. So
what a page is remembered under does not hang on its assets' content.
"""

import re
from collections.abc import Iterable, Mapping
from hashlib import sha256
from pathlib import PurePosixPath

FOLDER = "assets"
# Hexadecimal digits: two versions of one file have the same name once in four thousand million times.
DIGITS = 8
# From the folder on: such an expression begins with what it looks for, and is found in a page in no time.
ADDRESS = re.compile(rf'{FOLDER}/[^"\s<>]+')


def full_file(name: str, content: str | bytes) -> str:
    """Return the name of an asset's file with its hash, as what lies beside it calls it."""
    path = PurePosixPath(name)
    held = content if isinstance(content, bytes) else content.encode()
    return path.with_suffix(f".{sha256(held).hexdigest()[:DIGITS]}{path.suffix}").as_posix()


def full_name(address: str, content: str | bytes) -> str:
    """Return the address of an asset with its hash; that of any other file, such as a link preview, as it is."""
    return full_file(address, content) if PurePosixPath(address).parts[0] == FOLDER else address


def full_names(files: Mapping[str, str | bytes]) -> dict[str, str]:
    """Return the full addresses of files by their plain ones."""
    return {address: full_name(address, content) for address, content in files.items()}


def with_full_names(html: str, ways: Iterable[tuple[str, Mapping[str, str]]]) -> str:
    """Return a page whose elements name assets in full; ``ways`` are those from the page to where assets stand, each
    with the full addresses of these."""
    known = list(ways)
    parts: list[str] = []
    done = 0
    for found in ADDRESS.finditer(html):
        full = next((assets[found[0]] for way, assets in known if found[0] in assets and leads(html, way, found)), "")
        if full and is_in_element(html, found.start()):
            parts += [html[done : found.start()], full]
            done = found.end()
    return "".join([*parts, html[done:]])


def leads(html: str, way: str, found: re.Match[str]) -> bool:
    """Return whether an address begins with a way, after a quotation mark or, in a list of addresses, a space."""
    start = found.start() - len(way)
    return html.startswith(way, start) and (html[start - 1] == '"' or html[start - 1].isspace())


def is_in_element(html: str, place: int) -> bool:
    """Return whether a place in a page is within a tag: in a text, no angle bracket stands as it is."""
    return html.rfind("<", 0, place) > html.rfind(">", 0, place)
