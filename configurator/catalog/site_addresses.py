"""Which address of a site is whose: two things never share one, whichever files of the content they are made from."""

from collections.abc import Collection, Iterable, Iterator
from pathlib import Path
from typing import NamedTuple

from configurator.catalog.files import LISTING, MARKDOWN_ENDINGS, TEMPLATES, photograph_files, shown
from configurator.catalog.former_ids import FormerIds
from configurator.catalog.problem import Problem
from configurator.catalog.static import STATIC
from configurator.catalog.strays import everything
from configurator.kernel.message import message, plain

# The pages of which there is one in each language, and the folders that hold nothing but the site's own files.
ONE_EACH = (
    *("index.html", "coverings/index.html", "doors/index.html", "guides/index.html"),
    *("measure.html", "try.html", "visits.html", "proposals.html", "404.html"),
)
OWN_FOLDERS = ("assets", "cards")
WORKER = "sw.js"
# What a public address has written for engines; a showroom's own in ``static`` stand in their place.
FOR_ENGINES = ("robots.txt", "sitemap.xml")
# These Markdown pages stand at the root of a site; every other one is a guide.
ROOT_PAGES = ("imprint", "privacy")
# The one name that has a Markdown file listed as what its folder opens with.
OPENS_FOLDER = "README"
RENAME = plain("rename it")


class Shelf(NamedTuple):
    """What a showroom's pages are made from: ids of doors and of families that are shown, former ids, the
    languages, and whether it has a public address."""

    doors: Iterable[str]
    families: Iterable[str]
    formerly: FormerIds
    languages: list[str]
    public: bool


def guide_url(name: str) -> str:
    """Return the address of a Markdown page by its file's name: guides stand in their own folder."""
    return f"{name}.html" if name in ROOT_PAGES else f"guides/{name}.html"


def thing_urls(shelf: Shelf) -> Iterator[str]:
    """Yield the addresses of doors, families and each on each, of today's ids and of former ones."""
    doors = [*shelf.doors, *former(shelf.formerly, "door", shelf.doors)]
    families = [*shelf.families, *former(shelf.formerly, "family", shelf.families)]
    yield from (f"coverings/{family}.html" for family in families)
    for door in doors:
        yield f"doors/{door}.html"
        yield from (f"doors/{door}/{family}.html" for family in families)


def former(formerly: FormerIds, kind: str, today: Iterable[str]) -> list[str]:
    """Return the former ids of those things of a kind that have pages today."""
    shown_today = set(today)
    return [
        key.removeprefix(f"{kind}/")
        for key, now in formerly.items()
        if key.startswith(f"{kind}/") and now in shown_today
    ]


def own_urls(shelf: Shelf) -> list[str]:
    """Return every address that the site's own pages take from its root, in the first language."""
    return [*ONE_EACH, *thing_urls(shelf)]


class Register:
    """The addresses that are taken: by which file of the content, or by nothing but the site itself."""

    def __init__(self, shelf: Shelf) -> None:
        self.roots = ["", *(f"{code}/" for code in shelf.languages[1:])]
        self.folders = {f"{root}{folder}" for root in self.roots for folder in OWN_FOLDERS}
        self.taken: dict[str, str] = {WORKER: ""}
        self.problems: list[Problem] = []
        for root in self.roots:
            self.taken.update(dict.fromkeys((root + url for url in own_urls(shelf)), ""))

    def claim(self, address: str, file: Path, barred: Collection[str] = ()) -> None:
        """Give a file's page or copy its address; a problem of the file where it is another's already, or ``barred``.

        Small and capital letters are the same to many disks.
        """
        wanted = address.lower()
        other = self.holder(wanted, barred)
        if other is None:
            self.taken[wanted] = shown(file)
            return
        at: dict[str, list[float | str]] = {"address": [address, "name"], "other": [other, "name"]}
        if other:
            told = message("the file would stand at {address}, where {other} stands already", at)
        else:
            told = message("the file would stand at {address}, where the site has its own", {"address": at["address"]})
        self.problems.append(Problem(shown(file), 1, 1, (told, RENAME)))

    def holder(self, wanted: str, barred: Collection[str]) -> str | None:
        """Return whose an address is: a file's, nothing for the site's own; None where it is free.

        A file cannot stand where a folder is, nor within a file.
        """
        ways = [parent.as_posix() for parent in Path(wanted).parents]
        if self.folders.union(barred).intersection([wanted, *ways]):
            return ""
        found = [self.taken[way] for way in (wanted, *ways) if way in self.taken]
        found += [other for address, other in self.taken.items() if address.startswith(f"{wanted}/")]
        return found[0] if found else None


def note_addresses(folder: Path, pages: Iterable[Path], shelf: Shelf, problems: list[Problem]) -> None:
    """Note each file of the content that wants an address which is another's already."""
    register = Register(shelf)
    # In every language alike, so the first tells of all. A page of all guides has been told of by its name.
    for page in sorted(page for page in pages if page.stem != LISTING):
        register.claim(guide_url(LISTING if page.stem == OPENS_FOLDER else page.stem), page)
    for path in beside_pages(folder):
        register.claim(path.relative_to(folder / "pages").as_posix(), path, FOR_ENGINES if shelf.public else ())
    for path in carried(folder / STATIC):
        register.claim(path.relative_to(folder / STATIC).as_posix(), path)
    problems.extend(register.problems)
    note_photographs(folder, problems)


def beside_pages(folder: Path) -> Iterator[Path]:
    """Yield the files that lie beside the Markdown pages and stand in the site as they are."""
    home = folder / "pages"
    for path in everything(home):
        if path.is_file() and path.suffix not in MARKDOWN_ENDINGS and path.relative_to(home).parts[0] != TEMPLATES:
            yield path


def carried(home: Path) -> Iterator[Path]:
    """Yield the files of the folder of what a site carries as it is, hidden ones too."""
    yield from (path for path in sorted(home.rglob("*")) if path.is_file() and not path.is_symlink())


def note_photographs(folder: Path, problems: list[Problem]) -> None:
    """Note photographs of one name, of which only one could be had under it."""
    named: dict[str, Path] = {}
    for path in photograph_files(folder):
        other = named.setdefault(path.stem.lower(), path)
        if other is not path:
            told = message("{other} has the same name but for its ending", {"other": [shown(other), "name"]})
            problems.append(Problem(shown(path), 1, 1, (told, RENAME)))
