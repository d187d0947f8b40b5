"""A showroom's own files that stand in the site as they are: hidden ones too, as hosts ask for them."""

import shutil
from pathlib import Path

from configurator.catalog import ContentProblems, Problem
from configurator.catalog.static import STATIC
from configurator.kernel.message import message, plain
from configurator.kernel.tongue import Words
from configurator.site.mkdocs.manifest import entries, is_leaf


def add_static(content: Path, site: Path, words: Words) -> None:
    """Copy the files of a content's folder ``static`` into a site, each to the same address.

    :raises ContentProblems: where the site has a page or a file of its own at an address
    """
    home = content / STATIC
    files = [path for path in sorted(entries(home)) if is_leaf(home / path)]
    problems = [taken(home / path, path) for path in files if (site / path).exists()]
    if problems:
        raise ContentProblems(problems, words)
    for path in files:
        (site / path).parent.mkdir(parents=True, exist_ok=True)
        shutil.copyfile(home / path, site / path)


def taken(file: Path, address: Path) -> Problem:
    """Return the problem of a file whose address is that of one of the site's own."""
    told = message(
        "the file would stand at {address}, where the site has its own", {"address": [address.as_posix(), "name"]}
    )
    return Problem(file.as_posix(), 1, 1, (told, plain("rename it")))
