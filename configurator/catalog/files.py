"""Which files a content folder holds."""

import re
from pathlib import Path

from configurator.catalog.problem import Problem

# Ids stand in links and addresses.
ID = re.compile(r"[a-z0-9]+(-[a-z0-9]+)*")
# What is named so stands in the address of the page that lists all of its kind.
LISTING = "index"
LISTED = ("doors", "families")


def shown(path: Path) -> str:
    """Return a path as problems show it."""
    return path.as_posix()


def yaml_files(folder: Path, kind: str, problems: list[Problem]) -> dict[str, Path]:
    """Return the YAML files of one kind by id (the name without its ending), in the order of their names."""
    place = folder / kind
    found: dict[str, Path] = {}
    for path in sorted(place.glob("[!.]*.y*ml")):
        if path.suffix != ".yaml":
            problems.append(Problem(shown(path), 1, 1, f"the file is not read; name it {path.stem}.yaml"))
        elif not ID.fullmatch(path.stem):
            words = f"'{path.stem}' cannot be an id; name the file in small letters, digits and single hyphens"
            problems.append(Problem(shown(path), 1, 1, words))
        elif path.stem == LISTING and kind in LISTED:
            problems.append(
                Problem(shown(path), 1, 1, f"'{LISTING}' is the page of all {kind}; name the file otherwise")
            )
        else:
            found[path.stem] = path
    if not found:
        problems.append(Problem(shown(place), 0, 0, "there is no file here; at least one .yaml file is expected"))
    return found


def page_files(folder: Path, problems: list[Problem]) -> list[Path]:
    """Return the Markdown pages of the content, in the order of their names."""
    place = folder / "pages"
    found = sorted(place.glob("*.md"))
    if not found:
        problems.append(Problem(shown(place), 0, 0, "there is no page here; at least one .md file is expected"))
    for path in found:
        if path.stem == LISTING:
            problems.append(
                Problem(shown(path), 1, 1, f"'{LISTING}' is the page of all guides; name the file otherwise")
            )
    return found
