"""What a kept result hangs on, as short texts that differ where it may differ: the code and a folder's files."""

import os
import sys
from collections.abc import Iterator
from functools import cache
from hashlib import blake2b
from pathlib import Path
from stat import S_ISDIR, S_ISREG

from configurator.places import MANIFEST, THEMES

PACKAGE = Path(__file__).resolve().parent.parent
LENGTH = 16
# Of bytes: what holds more is rather read anew than gone through for its stamp.
LARGEST = 200_000_000
# What is written while the code runs.
NO_CODE = ("__pycache__", ".cache")
INSTALLED = (".dist-info", ".egg-info")


class Unstamped(Exception):
    """A folder whose content no stamp can tell: it holds links or what is no file, is too large, or cannot be read."""


def stamp_of(*parts: str | bytes) -> str:
    """Return a short text that differs when any of the parts does."""
    told = blake2b(digest_size=LENGTH)
    for part in parts:
        held = os.fsencode(part) if isinstance(part, str) else part
        told.update(len(held).to_bytes(8, "big"))
        told.update(held)
    return told.hexdigest()


def content_stamp(folder: Path) -> str:
    """Return a stamp of all that a content folder holds, by name and to the byte.

    :raises Unstamped: where there is none, so that nothing may be kept
    """
    try:
        return files_stamp(folder, sorted(in_content(folder)))
    except OSError as why:
        raise Unstamped(folder) from why


def code_stamp() -> str:
    """Return a stamp of our own code and themes to the byte, and of the packages beside them by version.

    :raises Unstamped: where they cannot be read
    """
    try:
        own = [files_stamp(place, sorted(in_folder(place, "", NO_CODE))) for place in (PACKAGE, THEMES)]
        return stamp_of(sys.version, *sorted(installed()), *own)
    except OSError as why:
        raise Unstamped(PACKAGE) from why


@cache
def own_code() -> str:
    """Return the stamp of the code with which this process began."""
    return code_stamp()


def is_own_code() -> bool:
    """Return whether the code's files are still those with which this process began."""
    try:
        return code_stamp() == own_code()
    except Unstamped:
        return False


def installed() -> set[str]:
    """Return the names and versions of all packages that can be imported."""
    # An empty name is the folder one stands in.
    places = [place or "." for place in sys.path]
    return {
        name
        for place in places
        if Path(place).is_dir()
        for name in os.listdir(place)  # noqa: PTH208 - names alone
        if name.endswith(INSTALLED)
    }


def in_content(folder: Path) -> Iterator[str]:
    """Yield what :func:`in_folder` does of a content folder; what is hidden at its top is no content, nor is a site."""
    with os.scandir(folder) as found:
        top = [entry for entry in found if not entry.name.startswith(".")]
    for entry in top:
        if not (entry.is_dir() and (folder / entry.name / MANIFEST).is_file()):
            yield from in_entry(entry, "", ())


def in_folder(folder: Path | str, within: str, left_out: tuple[str, ...]) -> Iterator[str]:
    """Yield the path of each file of a folder and, with a slash at its end, of each folder, from the outermost on.

    :raises Unstamped: where something is neither
    """
    with os.scandir(folder) as found:
        entries = [entry for entry in found if entry.name not in left_out]
    for entry in entries:
        yield from in_entry(entry, within, left_out)


def in_entry(entry: os.DirEntry[str], within: str, left_out: tuple[str, ...]) -> Iterator[str]:
    """Yield the path of a file, or of a folder and all that it holds."""
    kind = entry.stat(follow_symlinks=False).st_mode
    if S_ISREG(kind):
        yield within + entry.name
    elif S_ISDIR(kind):
        here = f"{within}{entry.name}/"
        yield here
        yield from in_folder(entry.path, here, left_out)
    else:
        raise Unstamped(entry.path)


def files_stamp(folder: Path, names: list[str]) -> str:
    """Return a stamp of files and folders that lie in a folder.

    :raises Unstamped: where they hold too much
    """
    paths = {name: os.path.join(folder, name) for name in names}  # noqa: PTH118 - of hundreds, and each time
    if sum(os.stat(path).st_size for path in paths.values()) > LARGEST:  # noqa: PTH116
        raise Unstamped(folder)
    return stamp_of(*(part for name, path in paths.items() for part in (name, held(path))))


def held(path: str) -> bytes:
    """Return a digest of what a file holds; nothing of a folder, which ends in a slash."""
    if path.endswith("/"):
        return b""
    with open(path, "rb", buffering=0) as file:  # noqa: PTH123 - quicker by half than a Path's
        return blake2b(file.read(), digest_size=LENGTH).digest()
