"""The starter content, copied out for a showroom of one's own."""

import shutil
from pathlib import Path

from configurator.catalog.clauses import Refusal
from configurator.kernel.message import message, plain
from configurator.places import CONTENT


def copy_starter(dest: Path) -> None:
    """Copy the starter content into a new or empty folder.

    :raises Refusal: having written nothing, where something is there already
    """
    if dest.exists() and (not dest.is_dir() or any(dest.iterdir())):
        taken = message("{folder} is not empty", {"folder": [str(dest), "name"]})
        raise Refusal(taken, plain("name a new folder, so that nothing is overwritten"))
    shutil.copytree(CONTENT, dest, dirs_exist_ok=True)
