"""The photographs that files name: whether each is one of the content's pictures and can be shown."""

from collections.abc import Iterator
from pathlib import Path

from pydantic import BaseModel

from configurator.catalog.clauses import Term, listed
from configurator.catalog.files import PICTURE_ENDINGS, PICTURES, photograph_files
from configurator.catalog.located import ContentFile, KeyPath, dotted
from configurator.catalog.picture_check import picture_fault
from configurator.catalog.schema.photograph import Photograph
from configurator.catalog.suggest import suggestion
from configurator.kernel.message import message


def photographs_in(section: BaseModel, path: KeyPath = ()) -> Iterator[tuple[KeyPath, Photograph]]:
    """Yield every photograph of a section of a file, with where it stands."""
    for name, value in section:
        held = value.items() if isinstance(value, dict) else [(None, value)]
        for key, item in held:
            place: KeyPath = (*path, name) if key is None else (*path, name, key)
            if isinstance(item, Photograph):
                yield place, item
            elif isinstance(item, BaseModel):
                yield from photographs_in(item, place)


def check_photographs(file: ContentFile, section: BaseModel, folder: Path) -> set[Path]:
    """Note each photograph of a file that is not among the content's pictures, or cannot be shown.

    Return the pictures that were looked at, so that nobody tells of them again.
    """
    named = list(photographs_in(section))
    for path, photo in named:
        check_photo(file, (*path, "file"), photo.file, folder)
    return {folder / PICTURES / photo.file for _, photo in named}


def check_photo(file: ContentFile, path: KeyPath, name: str, folder: Path) -> None:
    """Check one photograph, which a file names at a path."""
    known = [each.name for each in photograph_files(folder)]
    beside = [each.name for each in (folder / PICTURES).glob("[!.]*") if each.is_file()]
    terms: dict[str, Term] = {"path": [dotted(path), "name"], "file": [name, "name"]}
    if name in known:
        fault = picture_fault(folder / PICTURES / name)
        if fault:
            file.at_value(path, message("{path} is '{file}', which cannot be shown", terms), *fault)
    elif name in beside:
        kinds = message("a file that ends in {endings} is expected", {"endings": listed(PICTURE_ENDINGS, "or")})
        file.at_value(path, message("{path} is '{file}', which is no photograph", terms), kinds)
    else:
        lost = message("{path} is '{file}', but there is no such photograph in pictures", terms)
        file.at_value(path, lost, suggestion(name, known))
