"""The entries of the cache: files in the user's own folder of caches, each with a checksum over name and content.

What is spoilt, cut short or under another name is as none. Where the folder cannot be used, nothing is kept, and
nothing is said of it: whatever is kept can be worked out again.
"""

import json
import os
from contextlib import suppress
from hashlib import sha1
from pathlib import Path
from tempfile import NamedTemporaryFile
from typing import Any

from platformdirs import user_cache_path

NAME = "astragal"
CHECKSUM = 20
# Of bytes, for all entries together; what was used longest ago goes first.
MOST = 300_000_000
OTHERS_MAY_WRITE = 0o022


def own_folder() -> Path | None:
    """Return the folder of the cache, made where it was not; None where it is not the user's alone to write."""
    folder = user_cache_path(NAME, appauthor=False)
    if not folder.is_absolute():
        return None
    try:
        folder.mkdir(mode=0o700, parents=True, exist_ok=True)
        found = folder.stat()
    except OSError:
        return None
    return folder if found.st_uid == os.getuid() and not found.st_mode & OTHERS_MAY_WRITE else None


def checksum(name: str, content: bytes) -> bytes:
    """Return the checksum of an entry: SHA-1, since what is spoilt is told by any and this one is the quickest."""
    told = sha1(name.encode() + b"\n", usedforsecurity=False)
    told.update(content)
    return told.digest()


def kept(name: str) -> bytes | None:
    """Return what is kept under a name; None where there is nothing sound."""
    folder = own_folder()
    return None if folder is None else kept_in(folder, name)


def keep(name: str, content: bytes) -> None:
    """Keep something under a name, at one stroke, in place of what was kept there before."""
    folder = own_folder()
    if folder is not None:
        keep_in(folder, name, content, MOST)


def kept_in(folder: Path, name: str) -> bytes | None:
    """Return what is kept in a folder under a name; None where there is nothing sound."""
    try:
        held = (folder / name).read_bytes()
    except OSError:
        return None
    content = held[CHECKSUM:]
    if held[:CHECKSUM] != checksum(name, content):
        return None
    with suppress(OSError):
        os.utime(folder / name)
    return content


def keep_in(folder: Path, name: str, content: bytes, most: int) -> None:
    """Keep something in a folder that holds no more than ``most`` bytes."""
    # A folder that is full, or that somebody deletes at this moment, has nothing kept.
    with suppress(OSError):
        file = NamedTemporaryFile(dir=folder, prefix="unfinished-", delete=False)  # noqa: SIM115 - it outlives its writing
        try:
            with file:
                file.write(checksum(name, content))
                file.write(content)
            Path(file.name).replace(folder / name)
        except OSError:
            Path(file.name).unlink(missing_ok=True)
        hold_to(folder, most)


def hold_to(folder: Path, most: int) -> None:
    """Delete entries, those used longest ago first, until the rest holds no more than so many bytes."""
    with os.scandir(folder) as found:
        entries = [(entry.stat(), folder / entry.name) for entry in found]
    entries.sort(key=lambda entry: entry[0].st_mtime_ns)
    total = sum(stat.st_size for stat, _ in entries)
    for stat, path in entries:
        if total <= most:
            return
        path.unlink(missing_ok=True)
        total -= stat.st_size


def kept_json(name: str) -> Any:
    """Return the JSON that is kept under a name; None where there is nothing sound."""
    content = kept(name)
    return None if content is None else json.loads(content)


def keep_json(name: str, value: object) -> None:
    """Keep what JSON can tell under a name."""
    keep(name, json.dumps(value, separators=(",", ":")).encode())
