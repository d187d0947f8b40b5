"""Putting a site where it is read from, with word of what that changes there."""

from filecmp import cmp
from pathlib import Path
from typing import NamedTuple

from configurator.cache.by_content import ByContent
from configurator.places import MANIFEST
from configurator.site.mkdocs.ahead import Watch, unwatched
from configurator.site.mkdocs.build import site_remembering
from configurator.site.mkdocs.manifest import own_files, read_manifest
from configurator.site.mkdocs.swap import FRESH, swap


class Changes(NamedTuple):
    """The files of a site, by their addresses: new, changed, gone, or as they were."""

    new: list[str]
    changed: list[str]
    gone: list[str]
    same: list[str]


def changes(out: Path, fresh: Path) -> Changes:
    """Return what comes of ``out`` when ``fresh`` takes its place; what others have put there is none of the site's."""
    told = Changes([], [], [], [])
    after = set(read_manifest(fresh) or {}) - {MANIFEST.as_posix()}
    before = {name for name in own_files(out, fresh) - {MANIFEST.as_posix()} if (out / name).is_file()}
    for name in sorted(before | after):
        if name not in before:
            told.new.append(name)
        elif name not in after:
            told.gone.append(name)
        elif cmp(out / name, fresh / name, shallow=False):
            told.same.append(name)
        else:
            told.changed.append(name)
    return told


def publish(memory: ByContent, out: Path, dry_run: bool, watch: Watch = unwatched) -> Changes:
    """Build the site of a content folder into ``out`` and return what that changes; on a dry run, change nothing.

    :raises: what :func:`configurator.site.mkdocs.build.site_beside` raises
    """
    with site_remembering(memory, out, watch) as folder:
        told = changes(out.resolve(), folder / FRESH)
        if not dry_run:
            swap(folder, out.resolve())
    return told
