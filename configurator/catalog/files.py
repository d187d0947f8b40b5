"""Which files a content folder holds."""

import re
from pathlib import Path

from configurator.catalog.problem import Problem
from configurator.kernel.message import message, plain
from configurator.kernel.tongue import wording

# Ids stand in links and addresses.
ID = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")
YAML_ENDING = ".yaml"
# What browsers show of what Pillow reads; and with drawings, of what a showroom has.
PICTURE_ENDINGS = (".png", ".jpg", ".jpeg", ".webp")
SHOWN_ENDINGS = (".svg", *PICTURE_ENDINGS)
# Where those stand that a file may name.
PICTURES = "pictures"
# What MkDocs takes for Markdown, the usual one first.
MARKDOWN_ENDINGS = (".md", ".markdown", ".mdown", ".mkdn", ".mkd")
# A folder of this name among the pages is one of templates to MkDocs, which takes no page out of it.
TEMPLATES = "templates"
# What is named so stands in the address of the page that lists all of its kind.
LISTING = "index"
LISTED = {
    "doors": wording("'{name}' is the page of all doors"),
    "families": wording("'{name}' is the page of all families"),
    "pages": wording("'{name}' is the page of all guides"),
}


def shown(path: Path) -> str:
    """Return a path as problems show it."""
    return path.as_posix()


def yaml_files(folder: Path, kind: str, problems: list[Problem]) -> dict[str, Path]:
    """Return the YAML files of one kind by id (the name without its ending), in the order of their names."""
    place = folder / kind
    found: dict[str, Path] = {}
    for path in sorted(path for path in place.glob("[!.]*") if path.suffix in (YAML_ENDING, ".yml")):
        if path.suffix != YAML_ENDING:
            problems.append(misnamed(path, f"{path.stem}.yaml"))
        elif not ID.fullmatch(path.stem):
            cannot = message("'{name}' cannot be an id", {"name": [path.stem, "name"]})
            advice = plain("name the file in small letters, digits and single hyphens")
            problems.append(Problem(shown(path), 1, 1, (cannot, advice)))
        elif path.stem == LISTING and kind in LISTED:
            problems.append(taken(path, kind))
        else:
            found[path.stem] = path
    if not found:
        none = (plain("there is no file here"), plain("at least one .yaml file is expected"))
        problems.append(Problem(shown(place), 0, 0, none))
    return found


def page_files(folder: Path, problems: list[Problem]) -> list[Path]:
    """Return the Markdown pages of the content, in the order of their names."""
    place = folder / "pages"
    every = [path for path in place.rglob("[!.]*") if path.suffix in MARKDOWN_ENDINGS]
    found = sorted(path for path in every if not any(part.startswith(".") for part in path.relative_to(place).parts))
    if not found:
        none = (plain("there is no page here"), plain("at least one .md file is expected"))
        problems.append(Problem(shown(place), 0, 0, none))
    problems.extend(taken(path, "pages") for path in found if path.stem == LISTING)
    return found


def photograph_files(folder: Path) -> list[Path]:
    """Return the files of the content's photographs, in the order of their names; hidden ones are other programs'."""
    found = (folder / PICTURES).glob("[!.]*")
    return sorted(path for path in found if path.suffix.lower() in PICTURE_ENDINGS and path.is_file())


def misnamed(path: Path, name: str) -> Problem:
    """Return the problem of a file that nothing reads, because of its name."""
    advice = message("name it {file}", {"file": [name, "name"]})
    return Problem(shown(path), 1, 1, (plain("the file is not read"), advice))


def taken(path: Path, kind: str) -> Problem:
    """Return the problem of a file whose page would stand where that of all of its kind does."""
    why = message(LISTED[kind], {"name": [LISTING, "name"]})
    return Problem(shown(path), 1, 1, (why, plain("name the file otherwise")))
