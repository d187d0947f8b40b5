"""The house's rules: which room may know which, what the kernel may use, what lies at the top."""

import ast
import subprocess
from collections import Counter
from collections.abc import Iterator
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent
PACKAGE = ROOT / "configurator"
MAY_IMPORT = {
    "kernel": set(),
    "catalog": {"kernel", "places"},
    "drawing": {"kernel"},
    "browser": {"catalog", "kernel"},
    "site": {"browser", "catalog", "drawing", "kernel", "places"},
}
KERNEL_MAY_USE = {"math", "typing", "collections.abc"}
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


def rooms_entered(file: Path) -> set[str]:
    """Return the rooms, and the files beside them, from which a file imports."""
    parts = [name.split(".") for name in imported(file)]
    return {part[1] for part in parts if part[0] == "configurator" and len(part) > 1}


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
    listed = subprocess.run(["git", "ls-files"], cwd=ROOT, capture_output=True, text=True, check=True).stdout
    tops = {line.split("/")[0] for line in listed.splitlines()}
    assert {top for top in tops if not top.startswith(".")} <= TOP
