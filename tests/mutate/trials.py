"""Whether the tests of a room notice a slip: they run in a copy of the house in which it was made."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

from tests.mutate.reached import Reached
from tests.mutate.slips import Slip

ROOT = Path(__file__).resolve().parents[2]
KEPT = ("configurator", "content", "themes", "tests", "pyproject.toml", "DEVELOPERS.md", "README.md", "site_demo")
# What a slip in the kernel may only show in; the longest last.
BEYOND = {"kernel": ["tests/reference", "tests/drawing", "tests/site/test_glance.py"]}
# A slip that lets a loop run for ever is noticed by that.
PATIENCE = 900


def copied_house(place: Path) -> None:
    """Copy what the tests need, caches left out."""
    for name in KEPT:
        if (ROOT / name).is_dir():
            shutil.copytree(ROOT / name, place / name, ignore=shutil.ignore_patterns(".cache", "__pycache__"))
        else:
            shutil.copy(ROOT / name, place / name)


def rooms_of(slip: Slip) -> list[str]:
    """Return the rooms from the innermost out, such as ``kernel/questions`` and ``kernel``."""
    within = slip.file.relative_to(ROOT / "configurator").parent
    return [str(room) for room in (within, *within.parents) if str(room) != "."]


def tests_for(slip: Slip) -> list[list[str]]:
    """Return the tests that are run one after the other until one fails: the nearest first."""
    steps: list[list[str]] = []
    for room in rooms_of(slip):
        for folder in (f"tests/{room}", f"tests/{room}_room"):
            if (ROOT / folder).is_dir():
                steps.append([folder])
    top = slip.file.relative_to(ROOT / "configurator").parts[0]
    steps.append(BEYOND.get(top, ["tests/test_cli.py"]))
    return steps


def world_of(place: Path) -> dict[str, str]:
    """Return the environment in which a copy of the house is what tests import."""
    return {**os.environ, "PYTHONPATH": str(place), "PYTHONDONTWRITEBYTECODE": "1", "CI": "1"}


def passes(place: Path, tests: list[str]) -> bool:
    """Return whether the tests pass in a copy of the house."""
    command = [sys.executable, "-m", "pytest", "-x", "-q", *tests]
    try:
        run = subprocess.run(command, cwd=place, env=world_of(place), capture_output=True, timeout=PATIENCE)
    except subprocess.TimeoutExpired:
        return False
    return run.returncode == 0


def is_noticed(place: Path, slip: Slip, known: Reached) -> bool:
    """Return whether some test fails when the slip is made in the copy of the house: of those that run its line first,
    then of all that are there for its room."""
    file = place / slip.file.relative_to(ROOT)
    before = file.read_text(encoding="utf-8")
    file.write_text(slip.text, encoding="utf-8")
    try:
        nearest = known.tests(str(slip.file.relative_to(ROOT)), slip.line)
        return not all(passes(place, tests) for tests in [nearest, *tests_for(slip)] if tests)
    finally:
        file.write_text(before, encoding="utf-8")
