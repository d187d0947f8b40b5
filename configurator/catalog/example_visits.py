"""A showroom's example visits: the files of ``visits/``, judged as any visit's file is, and against what is offered."""

import json
from collections.abc import Collection, Iterator, Mapping
from pathlib import Path
from typing import NamedTuple

import yaml

from configurator.catalog.files import ID, misnamed, shown
from configurator.catalog.former_ids import FormerIds
from configurator.catalog.located import LOADER, ContentFile, KeyPath, Spot, read_text, spot
from configurator.catalog.problem import Problem
from configurator.catalog.suggest import suggestion
from configurator.catalog.visit_json import kind_in_python, parsed
from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Family, Message
from configurator.kernel.tongue import wording
from configurator.kernel.visit.read_visit import NOT_JSON, TOO_DEEP, read_visit
from configurator.kernel.visit.visit_shapes import Opening, Proposal, Visit

VISITS = "visits"
ENDING = ".visit.json"
SAVE_ANEW = plain("save the visit as a file once more")
NO_SUCH = {
    "door": wording("there is no door '{name}'"),
    "handle": wording("there is no handle '{name}'"),
    "family": wording("there is no family '{name}'"),
}


class Offered(NamedTuple):
    """What a visit may name: ids of doors, handles and families, the sound families, and what had another id."""

    door: Collection[str]
    handle: Collection[str]
    family: Collection[str]
    families: Mapping[str, Family]
    formerly: FormerIds


def visit_files(folder: Path, problems: list[Problem]) -> dict[str, Path]:
    """Return the example visits of a content folder by name: none where it has no such folder."""
    found: dict[str, Path] = {}
    for path in sorted((folder / VISITS).glob("[!.]*.json")):
        name = path.name.removesuffix(ENDING)
        if not path.name.endswith(ENDING):
            problems.append(misnamed(path, path.stem + ENDING))
        elif not ID.fullmatch(name):
            cannot = message("'{name}' cannot be an id", {"name": [name, "name"]})
            advice = plain("name the file in small letters, digits and single hyphens")
            problems.append(Problem(shown(path), 1, 1, (cannot, advice)))
        else:
            found[name] = path
    return found


def example_visits(folder: Path, offered: Offered, problems: list[Problem]) -> dict[str, Visit]:
    """Return the sound ones of a content folder's visits by the names of their files; what is wrong is noted."""
    visits: dict[str, Visit] = {}
    for name, path in visit_files(folder, problems).items():
        file = ContentFile(shown(path))
        text = read_text(path, file)
        visit = visit_of(text, file) if text is not None else None
        if visit:
            check_named(visit, offered, file)
            visits[name] = visit
        problems.extend(file.problems)
    return visits


def visit_of(text: str, file: ContentFile) -> Visit | None:
    """Return the visit of a file's text, or None with what is wrong noted."""
    try:
        value = parsed(text)
    except json.JSONDecodeError as slip:
        file.problems.append(Problem(file.name, slip.lineno, slip.colno, (plain(NOT_JSON), SAVE_ANEW)))
        return None
    except ValueError:
        file.at_value((), plain(NOT_JSON), SAVE_ANEW)
        return None
    except RecursionError:
        file.at_value((), plain(TOO_DEEP), SAVE_ANEW)
        return None
    file.values = spots(text)
    read = read_visit(value, kind_in_python)
    for wrong in read["slips"]:
        file.at_value(key_path(wrong["at"]), wrong["says"])
    return None if read["slips"] else read["visit"]


def key_path(at: str) -> KeyPath:
    """Return where an entry stands, as the reader tells it (``openings.0.id``)."""
    return tuple(int(step) if step.isdigit() else step for step in at.split(".") if step)


def spots(text: str) -> dict[KeyPath, Spot]:
    """Return where each value of a JSON text stands; JSON is YAML too, but for a few signs: then nothing is known."""
    try:
        root = yaml.compose(text, Loader=LOADER)
    except (yaml.YAMLError, RecursionError):
        return {}
    return dict(spots_within(root, ())) if root else {}


def spots_within(node: yaml.Node, path: KeyPath) -> Iterator[tuple[KeyPath, Spot]]:
    """Yield where a value and all within it stand."""
    yield path, spot(node)
    if isinstance(node, yaml.MappingNode):
        for key, value in node.value:
            yield from spots_within(value, (*path, str(key.value)))
    elif isinstance(node, yaml.SequenceNode):
        for index, value in enumerate(node.value):
            yield from spots_within(value, (*path, index))


def check_named(visit: Visit, offered: Offered, file: ContentFile) -> None:
    """Note what a visit names that the content does not have; what was agreed is frozen, and may be of other days."""
    for at, opening in enumerate(visit["openings"]):
        here: KeyPath = ("openings", at)
        check_one("door", opening["preset"], (*here, "preset"), offered, file)
        check_leaves(opening, here, offered, file)
        for index, proposal in enumerate(opening["proposals"]):
            check_proposal(proposal, (*here, "proposals", index), offered, file)


def check_leaves(opening: Opening, here: KeyPath, offered: Offered, file: ContentFile) -> None:
    """Note handles that the content does not have; a leaf may be without one."""
    for index, leaf in enumerate(opening["leaves"]):
        if leaf["handle"]:
            check_one("handle", leaf["handle"], (*here, "leaves", index, "handle"), offered, file)


def check_one(kind: str, name: str, path: KeyPath, offered: Offered, file: ContentFile) -> None:
    """Note an id that nothing of its kind has, nor ever had."""
    known: Collection[str] = getattr(offered, kind)
    if name not in known and f"{kind}/{name}" not in offered.formerly:
        file.at_value(path, message(NO_SUCH[kind], {"name": [name, "name"]}), suggestion(name, known))


def check_proposal(proposal: Proposal, here: KeyPath, offered: Offered, file: ContentFile) -> None:
    """Note a family and picks that the content does not have."""
    check_one("family", proposal["family"], (*here, "family"), offered, file)
    family = offered.families.get(proposal["family"])
    if family is None:
        return
    for choice, option in proposal["choices"].items():
        unknown = unknown_pick(family, choice, option)
        if unknown and f"option/{proposal['family']}/{choice}/{option}" not in offered.formerly:
            file.at_value((*here, "choices", choice), *unknown)


def unknown_pick(family: Family, choice: str, option: str) -> tuple[Message, ...]:
    """Return that a family has no such choice or no such option of it, and what it has; nothing where it has both."""
    options = {one["id"]: [each["id"] for each in one["options"]] for one in family["choices"]}
    if choice not in options:
        return (message("it has no choice '{name}'", {"name": [choice, "name"]}), suggestion(choice, options))
    if option not in options[choice]:
        return (message("it has no option '{name}'", {"name": [option, "name"]}), suggestion(option, options[choice]))
    return ()
