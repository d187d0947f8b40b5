"""The starter content, copied out for a showroom of one's own."""

import shutil
from pathlib import Path

from configurator.places import CONTENT


def copy_starter(dest: Path) -> None:
    """Copy the starter content into a new or empty folder.

    Raises FileExistsError, having written nothing, where something is there already.
    """
    if dest.exists() and (not dest.is_dir() or any(dest.iterdir())):
        raise FileExistsError(f"{dest} is not empty; name a new folder, so that nothing is overwritten")
    shutil.copytree(CONTENT, dest, dirs_exist_ok=True)
