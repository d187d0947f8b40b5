"""How long it takes to build a site again, against a check of its content; and the table of all that is built.

Each is a process of its own, as whoever types it starts it, with a cache that is empty at first. The check of what
stays as it is has the cache too; that of an edited family is the first of it, as the build is. Only ratios are told:
seconds are a machine's own.
"""

import os
import re
import shutil
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import NamedTuple

import pytest

from configurator.places import CONTENT
from tests.benchmarks.peers import eleventy, hugo, mkdocs
from tests.benchmarks.test_build_ratio import plain_pages, seconds

# Each that is short is done this often, and its quickest counts: what else the machine does then weighs less.
ROUNDS = 5
# A full build is done this often.
TURNS = 3
FAMILY = Path("families") / "cellular-shade.yaml"
THICKNESS = "closed_thickness: 0.35"
# A build may take so many times its check. Measured: 1.2 to 2 and, of a quiet machine, 2.5.
TIMES_UNCHANGED = 2.5
TIMES_EDITED = 4.5


class Row(NamedTuple):
    """A line of the table: what took how many times as long as what."""

    name: str
    peer: str
    ratio: float


@pytest.fixture
def content(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The starter content, with a cache of its own."""
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "caches"))
    return Path(shutil.copytree(CONTENT, tmp_path / "content"))


def astragal(*arguments: str | Path) -> Callable[[], object]:
    """Return what runs a command in a process of its own."""
    command = [sys.executable, "-c", "from configurator.cli import main; main()", *map(str, arguments)]
    return lambda: subprocess.run(command, check=True, capture_output=True, env=os.environ)


def quickest(work: Callable[[], object]) -> float:
    """Return how long a short piece of work takes at its quickest."""
    return min(seconds(lambda: (work(), None)[1]) for _ in range(ROUNDS))


def full(content: Path, place: Path) -> tuple[float, float]:
    """Return how long a build with nothing kept and plain MkDocs given its pages take, by turns, at their quickest."""
    caches, site, docs = Path(os.environ["XDG_CACHE_HOME"]), place / "site", place / "docs"
    ours, theirs = [], []
    for turn in range(TURNS):
        shutil.rmtree(caches, ignore_errors=True)
        shutil.rmtree(site, ignore_errors=True)
        ours.append(seconds(astragal("build", "--quiet", content, site)))
        plain_pages(site, docs)
        theirs.append(seconds(mkdocs(docs, place / f"plain{turn}")))
    return min(ours), min(theirs)


def twice_as_much(content: Path, place: Path) -> Path:
    """Return content with each door and each family twice, the second under another name."""
    shutil.copytree(content, place)
    for file in [*(place / "doors").glob("*.yaml"), *(place / "families").glob("*.yaml")]:
        renamed = re.sub("^name: .*", r"\g<0> too", file.read_text(encoding="utf-8"), flags=re.MULTILINE)
        file.with_stem(f"{file.stem}-too").write_text(renamed, encoding="utf-8")
    return place


def edit(content: Path, number: int) -> None:
    """Change a family of the content, each time otherwise."""
    text = (CONTENT / FAMILY).read_text(encoding="utf-8")
    assert THICKNESS in text
    (content / FAMILY).write_text(text.replace(THICKNESS, f"{THICKNESS}{number}"), encoding="utf-8")


def edited(content: Path, site: Path) -> tuple[float, float]:
    """Return how long build and check take after an edit, each of an edit of its own, at their quickest."""
    builds, checks = [], []
    for number in range(0, 2 * ROUNDS, 2):
        edit(content, number)
        builds.append(seconds(astragal("build", "--quiet", content, site)))
        edit(content, number + 1)
        checks.append(seconds(astragal("check", content)))
    return min(builds), min(checks)


def test_a_site_is_built_again_in_a_few_checks_of_its_content(content: Path, tmp_path: Path) -> None:
    site, docs = tmp_path / "site", tmp_path / "docs"
    build, check = astragal("build", "--quiet", content, site), astragal("check", content)
    large, large_plain = full(twice_as_much(content, tmp_path / "twice"), tmp_path / "large")
    whole, plain = full(content, tmp_path)
    copied = seconds(lambda: shutil.copytree(site, tmp_path / "copy"))
    others = {"Hugo": hugo(docs, tmp_path / "hugo"), "Eleventy": eleventy(docs, tmp_path / "eleventy")}
    check()
    unchanged, checked = quickest(build), quickest(check)
    build_edited, check_edited = edited(content, site)
    rows = [
        Row("full build, nothing kept", "plain MkDocs given the finished pages", whole / plain),
        Row("the same of four times the pages", "plain MkDocs given the finished pages", large / large_plain),
        Row("four times the pages", "the full build of the content itself", large / whole),
        Row("nothing changed, new process", "check of the same content", unchanged / checked),
        Row("one family edited, new process", "check of the edited content", build_edited / check_edited),
        *(
            Row(f"{name} given the finished pages", "plain MkDocs given them", seconds(work) / plain)
            for name, work in others.items()
        ),
        Row("cp -r of the finished site", "plain MkDocs given the finished pages", copied / plain),
    ]
    for row in rows:
        print(f"{row.name:<32} {row.ratio:8.2f} x {row.peer}")
    assert unchanged < TIMES_UNCHANGED * checked
    assert build_edited < TIMES_EDITED * check_edited
