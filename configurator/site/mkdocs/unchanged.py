"""A site that lies where a build of the same content by the same code has left it, untouched: it need not be built."""

import os
from hashlib import blake2b
from pathlib import Path

from configurator.cache.by_content import ByContent
from configurator.places import MANIFEST
from configurator.site.mkdocs.manifest import file_hash, read_manifest

# What of a site is remembered with its content: the sum of the list of its files.
BUILT = "built"


def sum_of_list(site: Path) -> str:
    """Return the sum of the list of a site's files; nothing where there is none."""
    try:
        return blake2b((site / MANIFEST).read_bytes()).hexdigest()
    except OSError:
        return ""


def stands(memory: ByContent, out: Path) -> bool:
    """Return whether ``out`` is, to the byte, what a build of the content would leave there."""
    if Path.cwd().is_relative_to(out.resolve()):
        # Whoever stands in it is told so by the build.
        return False
    built = memory.found(BUILT)
    return built is not None and built == sum_of_list(out) and is_as_listed(out)


def is_as_listed(site: Path) -> bool:
    """Return whether each listed file of a site is there and holds what it held as the site was built."""
    listed = read_manifest(site) or {}
    try:
        return all(
            not os.path.islink(path) and file_hash(path) == noted  # noqa: PTH114 - of hundreds, and each time
            for path, noted in ((os.path.join(site, name), noted) for name, noted in listed.items() if noted)  # noqa: PTH118
        )
    except OSError:
        return False


def remember_site(memory: ByContent, out: Path) -> None:
    """Remember what a site is that has just been built of the content."""
    memory.remember(sum_of_list(out), BUILT)
