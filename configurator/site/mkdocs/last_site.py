"""The site that a new one is to take the place of: what is the same in both to the byte is one file.

Of a few hundred files hardly any change with an edit, and writing them is half of what a build then takes.
"""

from collections.abc import Callable
from pathlib import Path
from stat import S_ISREG

from mkdocs.structure.files import Files, InclusionLevel

from configurator.site.mkdocs.manifest import as_it_is


class LastSite:
    """Puts the files of a new site, in the folder ``fresh``, as they stand in the last one or else as they are made."""

    def __init__(self, last: Path, fresh: Path) -> None:
        self.last = last
        self.fresh = fresh

    def put(self, content: bytes, address: str) -> None:
        """Put a file into the new site, where nothing stands at its address yet."""
        target = self.fresh / address
        target.parent.mkdir(parents=True, exist_ok=True)
        if holds(self.last / address, content):
            as_it_is(self.last / address, target)
        else:
            with target.open("xb") as file:
                file.write(content)


def holds(path: Path, content: bytes) -> bool:
    """Return whether there is a file, no link, that holds some content and nothing else."""
    try:
        found = path.lstat()
        return S_ISREG(found.st_mode) and found.st_size == len(content) and path.read_bytes() == content
    except OSError:
        return False


class PutFiles(Files):
    """MkDocs' files, of which those that are no pages are put where the last site has them."""

    def __init__(self, files: Files, put: Callable[[bytes, str], None]) -> None:
        super().__init__(files)
        self._put = put

    def copy_static_files(
        self,
        dirty: bool = False,
        *,
        inclusion: Callable[[InclusionLevel], bool] = InclusionLevel.is_included,
    ) -> None:
        """Put all files that are no pages."""
        for file in self:
            if not file.is_documentation_page() and inclusion(file.inclusion):
                self._put(file.content_bytes, file.dest_uri)
