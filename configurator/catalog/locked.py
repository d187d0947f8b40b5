"""What lies in a content folder and may not be read by whoever runs us."""

import os
from pathlib import Path

from configurator.catalog.files import shown
from configurator.catalog.problem import Problem
from configurator.catalog.static import STATIC
from configurator.catalog.strays import READ
from configurator.kernel.message import plain

# Without the leave to search a folder, what it lists cannot be looked at.
TO_OPEN = os.R_OK | os.X_OK
LOCKED_FOLDER = (plain("you may not read this folder"), plain("allow yourself to read and search it"))
LOCKED_FILE = (plain("you may not read this file"), plain("allow yourself to read it"))


def locked(folder: Path) -> list[Problem]:
    """Return what may not be read of a content folder; of a locked folder only itself, as none can say what it holds.

    Hidden things are nobody's content, but a site carries those of its ``static`` folder.
    """
    if not os.access(folder, TO_OPEN):
        return [Problem(shown(folder), 0, 0, LOCKED_FOLDER)]
    read = [path for path in sorted(folder.iterdir()) if path.name in READ]
    found = [problem for path in read for problem in locked_in(path, hidden=False)]
    return [*found, *locked_in(folder / STATIC, hidden=True)]


def locked_in(path: Path, *, hidden: bool) -> list[Problem]:
    """Return what may not be read of a file or folder, ``hidden`` things in it too or not; no link is followed."""
    if path.is_symlink():
        return []
    if path.is_file():
        return [] if os.access(path, os.R_OK) else [Problem(shown(path), 1, 1, LOCKED_FILE)]
    if not path.is_dir():
        return []
    if not os.access(path, TO_OPEN):
        return [Problem(shown(path), 0, 0, LOCKED_FOLDER)]
    within = [one for one in sorted(path.iterdir()) if hidden or not one.name.startswith(".")]
    return [problem for one in within for problem in locked_in(one, hidden=hidden)]
