"""A new site takes the old one's place, at one stroke where the system can, and killed builds are tidied up after."""

import errno
import os
import re
import shutil
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path
from tempfile import TemporaryDirectory

from configurator.site.mkdocs.asset_names import FOLDER
from configurator.site.mkdocs.exchange import exchanged
from configurator.site.mkdocs.manifest import entries, is_leaf, own_files

# In a build's workshop: the new site, and the old one while the two trade places.
FRESH = "site"
BEFORE = "before"
WORKSHOP = re.compile(r"\.astragal-(\d+)-")


@contextmanager
def workshop(out: Path) -> Iterator[Path]:
    """Make a folder beside ``out`` in which a site is built; its name tells whose it is."""
    with TemporaryDirectory(prefix=f".astragal-{os.getpid()}-", dir=out.parent, ignore_cleanup_errors=True) as folder:
        yield Path(folder)


def tidy(out: Path) -> None:
    """Clear away the workshops of builds that were killed, and put back an old site that one of them had put aside."""
    for folder in sorted(out.parent.glob(".astragal-*-*")) if out.parent.is_dir() else []:
        named = WORKSHOP.match(folder.name)
        if named and not is_running(int(named[1])):
            if (folder / BEFORE).is_dir() and not out.exists():
                (folder / BEFORE).rename(out)
            shutil.rmtree(folder, ignore_errors=True)


def is_running(process: int) -> bool:
    """Return whether there is a process of that number."""
    try:
        os.kill(process, 0)
    except ProcessLookupError:
        return False
    except PermissionError:
        pass
    return True


def swap(folder: Path, out: Path) -> None:
    """Put the new site of a workshop where ``out`` is; the old one stays when that fails."""
    fresh, before = folder / FRESH, folder / BEFORE
    if out.exists():
        if exchanged(fresh, out):
            return
        try:
            out.rename(before)
        except OSError as error:
            if error.errno not in (errno.EBUSY, errno.EXDEV):
                raise
            # Something is mounted there, which no other folder can take the place of.
            fill(fresh, out)
            return
    try:
        fresh.rename(out)
    except OSError:
        if before.exists():
            before.rename(out)
        raise


def fill(fresh: Path, out: Path) -> None:
    """Put a new site's files into ``out`` one by one, each at one stroke, and take out those of the old one.

    Assets go first, as a page names those of its own version.
    """
    stale = own_files(out, fresh)
    for path in sorted(entries(fresh), key=lambda path: (FOLDER not in path.parts, path)):
        if not is_leaf(fresh / path):
            (out / path).mkdir(parents=True, exist_ok=True)
        elif path.as_posix() in stale or not os.path.lexists(out / path):
            beside = out / path.with_name(f".astragal-{path.name}")
            shutil.copyfile(fresh / path, beside)
            beside.replace(out / path)
            stale.discard(path.as_posix())
    for name in stale:
        (out / name).unlink(missing_ok=True)
