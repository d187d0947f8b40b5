"""Which files of a built site are the build's own: what is not on its list has been put there by others and stays."""

import json
import os
import shutil
from collections.abc import Iterator
from hashlib import blake2b
from pathlib import Path

from configurator.catalog.clauses import Refusal
from configurator.kernel.message import message, plain
from configurator.places import MANIFEST

# Where the files of sites lie that were built before there was a list.
UNLISTED = ("assets", "cards", "coverings", "doors", "guides")


class Foreign(Refusal):
    """What others have put into a site's folder stands where the site needs its own."""


def entries(site: Path) -> Iterator[Path]:
    """Yield all that a folder holds, from that folder on: each file and link, and each folder before what is in it."""
    for place, folders, files in os.walk(site):
        here = Path(place).relative_to(site)
        yield from (here / name for name in [*folders, *files])


def is_leaf(path: Path) -> bool:
    """Return whether a path is anything but a folder of its own; a link to one is none."""
    return path.is_symlink() or not path.is_dir()


def file_hash(path: str) -> str:
    """Return the hash of a file under which it is listed."""
    with open(path, "rb", buffering=0) as file:  # noqa: PTH123 - quicker by half than a Path's
        return blake2b(file.read(), digest_size=8).hexdigest()


def write_manifest(site: Path) -> None:
    """List a site's files with the hash of each."""
    listed = {path.as_posix(): file_hash(str(site / path)) for path in sorted(entries(site)) if is_leaf(site / path)}
    (site / MANIFEST).write_text(json.dumps(listed, separators=(",", ":")), encoding="utf-8")


def read_manifest(site: Path) -> dict[str, str] | None:
    """Return the files that a build has listed, with their hashes; None where there is no list that can be read."""
    try:
        listed = json.loads((site / MANIFEST).read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return None
    return {**listed, MANIFEST.as_posix(): ""} if isinstance(listed, dict) else None


def own_files(site: Path, fresh: Path) -> set[str]:
    """Return the files of an older site that are its build's own, and make way for those of ``fresh``."""
    listed = read_manifest(site)
    if listed is not None:
        return set(listed)
    every = [path for path in entries(site) if is_leaf(site / path)]
    return {path.as_posix() for path in every if path.parts[0] in UNLISTED or (fresh / path).is_file()}


def carry_over(site: Path, fresh: Path) -> None:
    """Bring into ``fresh`` what others have put into an older site; there it stays until the two are exchanged.

    :raises Foreign: where the new site has something of its own at that place
    """
    own = own_files(site, fresh)
    built_folders = {parent.as_posix() for name in own for parent in Path(name).parents}
    for path in entries(site):
        if not is_leaf(site / path):
            if path.as_posix() not in built_folders:
                (fresh / path).mkdir(parents=True, exist_ok=True)
        elif path.as_posix() not in own:
            if os.path.lexists(fresh / path):
                raise Foreign(
                    message(
                        "{file} was not built by astragal, and the site needs its place",
                        {"file": [str(site / path), "name"]},
                    ),
                    plain("rename it or put it elsewhere"),
                )
            (fresh / path).parent.mkdir(parents=True, exist_ok=True)
            as_it_is(site / path, fresh / path)


def as_it_is(source: Path, target: Path) -> None:
    """Have the same file stand at a second place."""
    try:
        os.link(source, target, follow_symlinks=False)
    except OSError:
        # Not every file system has files at two places.
        shutil.copy2(source, target, follow_symlinks=False)
