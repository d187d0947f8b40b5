"""The house's rules: which room may know which, what the kernel may use, what lies at the top."""

import ast
import re
import subprocess
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.mechanisms.common import COMMON_TAKES

ROOT = Path(__file__).resolve().parent.parent
PACKAGE = ROOT / "configurator"
MAY_IMPORT = {
    "cache": {"places"},
    "kernel": set(),
    "tongues": {"kernel"},
    "catalog": {"kernel", "places", "tongues"},
    "drawing": {"kernel"},
    "papers": {"drawing", "kernel", "places"},
    "browser": {"cache", "catalog", "kernel", "places", "tongues"},
    "site": {"browser", "cache", "catalog", "drawing", "kernel", "places", "tongues"},
    "translating": {"browser", "catalog", "kernel", "places", "tongues"},
}
# The rooms within the site: each may know those before it.
WITHIN_SITE = ["answers", "site_page", "face", "house", "drawings", "kinds", "mkdocs"]
KERNEL_MAY_USE = {"math", "typing", "collections.abc"}
# Names that tools look for; and those of two rooms that are told apart where they are used.
GIVEN_NAMES = {"__init__.py", "__main__.py", "conftest.py", "theme.css", "tokens.yaml"}
SHARED_NAMES = {"check.py", "reach.py", "shapes.py", "words.py"}
TOP = {"README.md", "DEVELOPERS.md", "pyproject.toml", "configurator", "content", "themes", "tests", "site_demo"}


def imported(file: Path) -> Iterator[str]:
    """Yield the dotted name of every module that a file imports, and of every name it takes from one."""
    for node in ast.walk(ast.parse(file.read_text(encoding="utf-8"))):
        if isinstance(node, ast.Import):
            yield from (name.name for name in node.names)
        elif isinstance(node, ast.ImportFrom):
            assert node.level == 0, f"{file} imports relatively"
            yield node.module or ""
            yield from (f"{node.module}.{name.name}" for name in node.names if node.module == "configurator")


def rooms_entered(file: Path, house: str = "configurator") -> set[str]:
    """Return the rooms of a package, and the files beside them, from which a file imports."""
    within = f"{house}."
    return {name.removeprefix(within).split(".")[0] for name in imported(file) if name.startswith(within)}


def listed() -> list[Path]:
    """Return every file that is kept, by its path from the top."""
    told = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True).stdout
    return [Path(line) for line in told.splitlines()]


def own_names(file: Path) -> list[str]:
    """Return the functions and constants that a file defines at its top."""
    names: list[str] = []
    for node in ast.parse(file.read_text(encoding="utf-8")).body:
        if isinstance(node, ast.FunctionDef):
            names.append(node.name)
        elif isinstance(node, ast.Assign):
            names.extend(target.id for target in node.targets if isinstance(target, ast.Name))
        elif isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name):
            names.append(node.target.id)
    return names


@pytest.mark.parametrize("room", MAY_IMPORT)
def test_a_room_imports_only_what_lies_to_its_left(room: str) -> None:
    strays = {
        str(file.relative_to(ROOT)): stray
        for file in (PACKAGE / room).rglob("*.py")
        if (stray := rooms_entered(file) - MAY_IMPORT[room] - {room})
    }
    assert strays == {}


@pytest.mark.parametrize("room", WITHIN_SITE)
def test_a_room_of_the_site_imports_only_those_before_it(room: str) -> None:
    place = PACKAGE / "site" / room
    files = place.rglob("*.py") if place.is_dir() else [place.with_suffix(".py")]
    may = set(WITHIN_SITE[: WITHIN_SITE.index(room) + 1])
    assert {file.name: stray for file in files if (stray := rooms_entered(file, "configurator.site") - may)} == {}


def test_every_part_of_the_site_has_its_place_in_the_order() -> None:
    within = list((PACKAGE / "site").iterdir())
    parts = {part.stem for part in within if part.suffix == ".py" or (part / "__init__.py").exists()}
    assert parts - {"__init__"} == set(WITHIN_SITE)


def test_mkdocs_is_known_in_one_room_only() -> None:
    knowing = {
        file.relative_to(PACKAGE).parts[:2]
        for file in PACKAGE.rglob("*.py")
        if any(name.split(".")[0] == "mkdocs" for name in imported(file))
    }
    assert knowing == {("site", "mkdocs")}


def test_a_file_s_name_tells_its_room() -> None:
    names = Counter(path.name for path in listed() if path.parts[0] != "site_demo")
    shared = {name for name, times in names.items() if times > 1 and name.endswith((".py", ".css", ".js", ".yaml"))}
    assert shared - GIVEN_NAMES <= SHARED_NAMES


def test_the_kernel_uses_nothing_but_arithmetic_and_types() -> None:
    strays = {
        (file.name, name)
        for file in (PACKAGE / "kernel").rglob("*.py")
        for name in imported(file)
        if name not in KERNEL_MAY_USE and not name.startswith("configurator.kernel")
    }
    assert strays == set()


def test_a_kernel_name_is_defined_once() -> None:
    # Translated, all files of the kernel share one name space.
    names = Counter(name for file in (PACKAGE / "kernel").rglob("*.py") for name in own_names(file))
    assert [name for name, times in names.items() if times > 1] == []


def test_nothing_strays_to_the_top_of_the_house() -> None:
    tops = {path.parts[0] for path in listed()}
    assert {top for top in tops if not top.startswith(".")} <= TOP


def numbers_read(file: Path) -> set[str]:
    """Return the family's numbers that a file reads by name."""
    text = file.read_text(encoding="utf-8")
    return set(re.findall(r"""numbers(?:"\])?(?:\[|\.get\()"(\w+)\"""", text))


def test_what_only_one_mechanism_has_is_asked_for_by_mechanisms_alone() -> None:
    elsewhere = [
        file
        for room in ("kernel", "browser", "site")
        for file in (PACKAGE / room).rglob("*.py")
        if "mechanisms" not in file.parts
    ]
    own = {name for row in MECHANISMS.values() for name in row["takes"]} - set(COMMON_TAKES)
    assert own
    assert {(file.name, name) for file in elsewhere for name in numbers_read(file) & own} == set()


def test_no_mechanism_is_asked_for_by_its_name() -> None:
    files = [file for file in (PACKAGE / "kernel").rglob("*.py") if "mechanisms" not in file.parts]
    files += [*(ROOT / "themes").rglob("*.js"), *(ROOT / "themes").rglob("*.html")]
    named = re.compile("|".join(f"""['"]{name}['"]""" for name in MECHANISMS))
    assert [file.name for file in files if named.search(file.read_text(encoding="utf-8"))] == []


def test_no_function_of_the_house_takes_more_than_five() -> None:
    files = list(PACKAGE.rglob("*.py"))
    wide = [
        f"{file.relative_to(PACKAGE)}: {node.name}"
        for file in files
        for node in ast.walk(ast.parse(file.read_text(encoding="utf-8")))
        if isinstance(node, ast.FunctionDef) and len(node.args.args) > 5
    ]
    assert wide == []
