"""Which tests run which line of the house: what a slip there can first be noticed by."""

import json
import os
import subprocess
import sys
from collections import Counter, defaultdict
from pathlib import Path
from typing import Any, NamedTuple
from xml.etree import ElementTree

# Tests that need no browser, and begin no process that runs most of what they ask of.
QUICK = ("kernel", "reference", "drawing", "catalog", "browser_room", "papers", "visits", "tongues", "cache", "site")
SETTINGS = """
[run]
source = configurator
dynamic_context = test_function
data_file = {place}/reached
"""


class Reached(NamedTuple):
    """The tests that run each line, by file and line, and how long each takes, in seconds."""

    lines: dict[tuple[str, int], set[str]]
    seconds: dict[str, float]

    def tests(self, file: str, line: int) -> list[str]:
        """Return the tests that run a line, the quickest first, as pytest is given them."""
        return sorted(self.lines.get((file, line), ()), key=lambda test: self.seconds[test])


def reached(place: Path, world: dict[str, str]) -> Reached:
    """Run the quick tests in a copy of the house, and return what each runs."""
    settings, times, told = place / "coverage.ini", place / "times.xml", place / "reached.json"
    settings.write_text(SETTINGS.format(place=place), encoding="utf-8")
    coverage = [sys.executable, "-m", "coverage"]
    tests = [f"tests/{room}" for room in QUICK]
    run = [*coverage, "run", f"--rcfile={settings}", "-m", "pytest", "-q", f"--junitxml={times}", *tests]
    subprocess.run(run, cwd=place, env=world, check=True, stdout=subprocess.DEVNULL)
    listed = [*coverage, "json", f"--rcfile={settings}", "--show-contexts", "-o", str(told), "-q"]
    subprocess.run(listed, cwd=place, env=world, check=True)
    seconds = seconds_of(times)
    return Reached(lines_of(json.loads(told.read_text(encoding="utf-8")), set(seconds)), seconds)


def seconds_of(times: Path) -> dict[str, float]:
    """Return how long each test function took with all that it was given, by ``file::function``."""
    seconds: Counter[str] = Counter()
    for case in ElementTree.parse(times).iter("testcase"):
        file = case.attrib["classname"].replace(".", os.sep) + ".py"
        seconds[f"{file}::{case.attrib['name'].split('[')[0]}"] += float(case.attrib["time"])
    return dict(seconds)


def lines_of(told: dict[str, Any], known: set[str]) -> dict[tuple[str, int], set[str]]:
    """Return the tests that run each line; coverage tells them as ``module.function``."""
    lines: dict[tuple[str, int], set[str]] = defaultdict(set)
    for file, found in told["files"].items():
        for line, contexts in found["contexts"].items():
            for context in contexts:
                module, _, function = context.rpartition(".")
                test = f"{module.replace('.', os.sep)}.py::{function}"
                if test in known:
                    lines[file, int(line)].add(test)
    return lines
