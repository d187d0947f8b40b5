"""Which tests run which line of the house: what a slip there can first be noticed by."""

import json
import os
import subprocess
import sys
from collections import Counter, defaultdict
from pathlib import Path
from typing import Any, NamedTuple
from xml.etree import ElementTree

from tests.mutate.contexts import FIXTURE, GIVEN

# Tests that need no browser, and begin no process that runs most of what they ask of.
QUICK = (
    "kernel", "reference", "drawing", "catalog", "browser_room", "papers", "tongues", "cache", "site", "test_cli.py",
)  # fmt: skip
SETTINGS = """
[run]
source = configurator
data_file = {place}/reached
"""


class Reached(NamedTuple):
    """The tests that run each line, by file and line, and how long each takes, in seconds."""

    lines: dict[tuple[str, int], set[str]]
    seconds: dict[str, float]

    def tests(self, file: str, line: int) -> list[str]:
        """Return the tests that run a line, the quickest first, as pytest is given them.

        What runs as a file is loaded, such as a table, is for whoever runs anything of that file.
        """
        own = self.lines.get((file, line)) or {
            test for (other, _), tests in self.lines.items() if other == file for test in tests
        }
        return sorted(own, key=lambda test: self.seconds[test])


def reached(place: Path, world: dict[str, str]) -> Reached:
    """Run the quick tests in a copy of the house, all of which must pass there, and return what each runs."""
    settings, times, told = place / "coverage.ini", place / "times.xml", place / "reached.json"
    settings.write_text(SETTINGS.format(place=place), encoding="utf-8")
    coverage = [sys.executable, "-m", "coverage"]
    tests = [f"tests/{room}" for room in QUICK]
    pytest = ["-m", "pytest", "-q", "-p", "tests.mutate.contexts", f"--junitxml={times}", *tests]
    run = [*coverage, "run", f"--rcfile={settings}", *pytest]
    subprocess.run(run, cwd=place, env=world, check=True, stdout=subprocess.DEVNULL)
    listed = [*coverage, "json", f"--rcfile={settings}", "--show-contexts", "-o", str(told), "-q"]
    subprocess.run(listed, cwd=place, env=world, check=True)
    seconds = seconds_of(times)
    given = json.loads((place / GIVEN).read_text(encoding="utf-8"))
    return Reached(lines_of(json.loads(told.read_text(encoding="utf-8")), given), seconds)


def seconds_of(times: Path) -> dict[str, float]:
    """Return how long each test function took with all that it was given, by ``file::function``."""
    seconds: Counter[str] = Counter()
    for case in ElementTree.parse(times).iter("testcase"):
        file = case.attrib["classname"].replace(".", os.sep) + ".py"
        seconds[f"{file}::{case.attrib['name'].split('[')[0]}"] += float(case.attrib["time"])
    return dict(seconds)


def lines_of(told: dict[str, Any], given: dict[str, list[str]]) -> dict[tuple[str, int], set[str]]:
    """Return the tests that run each line, themselves or in a fixture; ``given`` says which fixtures each is given."""
    users: dict[str, set[str]] = defaultdict(set)
    for test, fixtures in given.items():
        for name in (test, *(FIXTURE + fixture for fixture in fixtures)):
            users[name].add(test)
    lines: dict[tuple[str, int], set[str]] = defaultdict(set)
    for file, found in told["files"].items():
        for line, contexts in found["contexts"].items():
            for context in contexts:
                lines[file, int(line)] |= users.get(context, set())
    return lines
