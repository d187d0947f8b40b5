"""What comes of the code alone, kept beside Python's own bytecode: it may be deleted at any moment."""

import json
from collections.abc import Callable
from contextlib import suppress
from typing import Any

from configurator.cache.entries import keep_in, kept_in
from configurator.cache.stamps import PACKAGE, Unstamped, code_stamp, own_code, stamp_of

FOLDER = PACKAGE / "__pycache__" / "made"
# Of bytes: of the code as it is and as it was, each in some languages.
MOST = 20_000_000


def once_for_code(make: Callable[[], Any], kind: str, *inputs: str) -> Any:
    """Return what ``make`` gives (JSON) of the code and the inputs, or what is kept of it.

    Nothing is kept where the code has changed since this process began, nor where nothing can be written.
    """
    try:
        name = f"{kind}-{stamp_of(own_code(), *inputs)}"
    except Unstamped:
        return make()
    found = kept_in(FOLDER, name)
    if found is not None:
        return json.loads(found)
    made = make()
    with suppress(OSError, Unstamped):
        if code_stamp() == own_code():
            FOLDER.mkdir(parents=True, exist_ok=True)
            keep_in(FOLDER, name, json.dumps(made, separators=(",", ":")).encode(), MOST)
    return made
