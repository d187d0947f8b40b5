"""The folder of what a site carries as it is: the proof that an address is somebody's, a host's own settings."""

import os
from pathlib import Path

from configurator.catalog.files import shown
from configurator.catalog.problem import Problem
from configurator.kernel.message import plain

STATIC = "static"
NO_FILE = (plain("this is no file that can be carried over"), plain("put the file itself here"))


def note_static(folder: Path, problems: list[Problem]) -> None:
    """Note what in it is no file: links, and what is neither a file nor a folder; hidden things are looked at too."""
    for place, folders, files in os.walk(folder / STATIC):
        for path in sorted(Path(place) / name for name in [*folders, *files]):
            if path.is_symlink() or not (path.is_file() or path.is_dir()):
                problems.append(Problem(shown(path), 1, 1, NO_FILE))
