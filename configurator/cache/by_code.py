"""What comes of the code alone, kept beside Python's own bytecode: it may be deleted at any moment."""

import json
from collections.abc import Callable
from contextlib import suppress
from typing import Any

from configurator.cache.entries import keep_in, kept_in
from configurator.cache.stamps import PACKAGE, Unstamped, is_own_code, own_code, stamp_of

FOLDER = PACKAGE / "__pycache__" / "made"
# Of bytes: of the code as it is and as it was, each in some languages.
MOST = 20_000_000


def entry_name(kind: str, inputs: tuple[str, ...]) -> str:
    """Return the name of what the code of this process makes of inputs; nothing where none can be told."""
    try:
        return f"{kind}-{stamp_of(own_code(), *inputs)}"
    except Unstamped:
        return ""


def kept_for_code(kind: str, *inputs: str) -> bytes | None:
    """Return what is kept of the code and the inputs; None where there is nothing sound."""
    name = entry_name(kind, inputs)
    return kept_in(FOLDER, name) if name else None


def keep_for_code(content: bytes, kind: str, *inputs: str) -> None:
    """Keep what this process has made of the inputs, where it may write."""
    name = entry_name(kind, inputs)
    if name:
        with suppress(OSError):
            FOLDER.mkdir(parents=True, exist_ok=True)
            keep_in(FOLDER, name, content, MOST)


def once_for_code(make: Callable[[], Any], kind: str, *inputs: str) -> Any:
    """Return what ``make`` gives (JSON) of the code's files and the inputs, or what is kept of it.

    Nothing is kept where the files have changed since this process began.
    """
    found = kept_for_code(kind, *inputs)
    if found is not None:
        return json.loads(found)
    made = make()
    if is_own_code():
        keep_for_code(json.dumps(made, separators=(",", ":")).encode(), kind, *inputs)
    return made
