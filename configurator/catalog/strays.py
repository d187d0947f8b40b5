"""What lies in a content folder and cannot be taken for content: files that nobody reads, and what is no file in it."""

import os
from collections.abc import Iterator
from pathlib import Path

from configurator.catalog.clauses import listed
from configurator.catalog.files import MARKDOWN_ENDINGS, SHOWN_ENDINGS, TEMPLATES, YAML_ENDING, misnamed, shown
from configurator.catalog.problem import Problem
from configurator.catalog.static import STATIC
from configurator.catalog.suggest import did_you_mean, nearest
from configurator.kernel.message import message, plain
from configurator.places import MANIFEST

# The folders of a content folder, and how what is read there ends.
READ = {
    "doors": (YAML_ENDING,),
    "families": (YAML_ENDING,),
    "handles": (YAML_ENDING,),
    "pages": MARKDOWN_ENDINGS,
    "prices": (YAML_ENDING,),
    "visits": (".json",),
    "words": (".po",),
    "pictures": SHOWN_ENDINGS,
}
# Of these the folders within are read as well.
NESTED = ("pages",)
# What people write for the endings of content, and what is expected instead.
MEANT = {".yaml": YAML_ENDING, ".yml": YAML_ENDING, ".md": ".md", ".po": ".po"}
OUTSIDE = (plain("this leads out of the content folder"), plain("put the file itself here"))
NO_FILE = (plain("this is neither a file nor a folder"), plain("take it out"))


def note_strays(folder: Path, named: set[Path], problems: list[Problem]) -> None:
    """Note what is no part of a content folder, and every file that looks as if it should be read and is not.

    Pictures that a file has ``named`` have been told of where they stand there.
    """
    home = folder.resolve()
    for path in everything(folder):
        if path.relative_to(folder).parts[0] == STATIC:
            continue
        if path.is_symlink() and not path.resolve().is_relative_to(home):
            problems.append(Problem(shown(path), 1, 1, OUTSIDE))
        elif not path.is_file() and not path.is_dir():
            problems.append(Problem(shown(path), 1, 1, NO_FILE))
        elif path.is_dir():
            note_folder(folder, path, problems)
        elif path not in named:
            note_file(folder, path, problems)


def everything(folder: Path) -> Iterator[Path]:
    """Yield all that a folder holds, in order, hidden things and built sites left out; links are not followed."""
    for place, folders, files in os.walk(folder):
        folders[:] = sorted(name for name in folders if is_content(Path(place) / name))
        yield from (Path(place) / name for name in [*folders, *sorted(files)] if not name.startswith("."))


def is_content(folder: Path) -> bool:
    """Return whether a folder can hold content: a hidden one cannot, nor can a built site."""
    return not folder.name.startswith(".") and not (folder / MANIFEST).is_file()


def note_folder(folder: Path, path: Path, problems: list[Problem]) -> None:
    """Note a folder at the top whose name is nearly that of one that is read."""
    if path.parent == folder and path.name not in READ:
        near = nearest(path.name, [*READ, STATIC])
        if near:
            problems.append(Problem(shown(path), 0, 0, (plain("the folder is not read"), did_you_mean(near))))


def note_file(folder: Path, path: Path, problems: list[Problem]) -> None:
    """Note a file that nothing reads because of its name or because of the folder in which it lies."""
    kind = path.relative_to(folder).parts[0]
    if kind not in READ:
        return
    nested = path.parent != folder / kind
    if nested and (kind not in NESTED or path.relative_to(folder / kind).parts[0] == TEMPLATES):
        put = message("put it into {folder}", {"folder": [shown(folder / kind), "name"]})
        problems.append(Problem(shown(path), 1, 1, (plain("the file is not read"), put)))
    elif kind == "pictures" and path.suffix.lower() not in READ[kind]:
        expected = message("a file that ends in {endings} is expected", {"endings": listed(READ[kind], "or")})
        problems.append(Problem(shown(path), 1, 1, (plain("the file is not read"), expected)))
    elif kind != "pictures" and path.suffix not in (*READ[kind], ".yml"):
        name = meant_name(path.name, READ[kind][0])
        if name:
            problems.append(misnamed(path, name))


def meant_name(written: str, ending: str) -> str:
    """Return the name that a file of its folder was probably meant to have; nothing where it is no slip."""
    stem, dot, rest = written.partition(".")
    endings = [f".{part}" for part in rest.lower().split(".")]
    return stem + ending if dot and ending in [MEANT.get(part) for part in endings] else ""
