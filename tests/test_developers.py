"""What DEVELOPERS.md and the package promise to those who come after."""

import re
import shutil
import subprocess
import sys
import tarfile
import tomllib
import zipfile
from pathlib import Path
from urllib.request import urlopen

import pytest
from trove_classifiers import classifiers

from tests.catalog.test_problems import FAULTS, WHOLE_FILES
from tests.site.test_check_tells_all import FAULTS as TOLD

ROOT = Path(__file__).resolve().parent.parent
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
GUIDE = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_the_guide_gives_a_reason_for_every_package() -> None:
    listed = [*PROJECT["dependencies"], *PROJECT["optional-dependencies"]["test"]]
    reasons = GUIDE.split("## Why each package is here")[1].lower()
    names = [re.split("[<>=~]", name)[0].lower() for name in listed]
    assert [name for name in names if not re.search(rf"\b{name}\b", reasons)] == []


def pinned(name: str) -> dict[str, str]:
    """Return the version of each package of a list under ``.ci``, by its name as indexes have it."""
    lines = (ROOT / ".ci" / name).read_text(encoding="utf-8").splitlines()
    found = [re.match(r"([\w.-]+)==([^\s;]+)", line) for line in lines]
    return {re.sub(r"[-_.]+", "-", told[1]).lower(): told[2] for told in found if told}


def unhashed(name: str) -> list[str]:
    """Return the packages of a list under ``.ci`` that any file would do for."""
    packages = re.split(r"\n(?=\w)", (ROOT / ".ci" / name).read_text(encoding="utf-8"))
    return [package.split("==")[0] for package in packages if "--hash=sha256:" not in package]


def asked_for(lines: list[str]) -> set[str]:
    """Return the names of packages as indexes have them."""
    return {re.sub(r"[-_.]+", "-", re.split("[<>=~]", line)[0]).lower() for line in lines}


def test_every_package_is_pinned_and_has_its_hashes() -> None:
    pins = pinned("constraints.txt")
    needed = asked_for([*PROJECT["dependencies"], "hatchling"])
    tested = asked_for(PROJECT["optional-dependencies"]["test"])
    for name, wanted in (("packages.txt", needed), ("packages-test.txt", needed | tested)):
        listed = pinned(name)
        renew = f"run sh .ci/renew: {name}"
        assert wanted - listed.keys() == set(), renew
        assert {each: pins[each] for each in listed if each in pins} == {
            each: version for each, version in listed.items() if each in pins
        }, renew
        assert wanted - pins.keys() == set(), "pin it in .ci/constraints.txt"
        assert unhashed(name) == [], renew
    assert pins.keys() - pinned("packages-test.txt").keys() == set(), "take it out of .ci/constraints.txt"


def test_the_set_up_takes_nothing_without_a_hash() -> None:
    fetched = [
        line for line in (ROOT / ".ci" / "setup").read_text(encoding="utf-8").splitlines() if "pip install" in line
    ]
    assert len(fetched) == 2
    assert "--require-hashes --requirement" in fetched[0]
    assert "--no-deps --no-build-isolation --editable ." in fetched[1]


def made(kind: str, folder: Path, source: Path = ROOT) -> Path:
    """Return the ``wheel`` or ``sdist`` of the project, built into a folder."""
    build = [sys.executable, "-m", "hatchling", "build", "-t", kind, "-d", str(folder)]
    subprocess.run(build, cwd=source, check=True, capture_output=True)
    return next(file for file in folder.iterdir() if file.suffix in (".whl", ".gz"))


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """What a wheel holds that was made of the files that are kept and of nothing else."""
    place = tmp_path_factory.mktemp("wheel")
    kept = subprocess.run(["git", "ls-files", "-z"], cwd=ROOT, check=True, capture_output=True, text=True).stdout
    for name in kept.split("\0"):
        if name.startswith(("configurator/", "content/", "themes/", "pyproject.toml", "README.md")):
            (place / "tree" / name).parent.mkdir(parents=True, exist_ok=True)
            shutil.copy(ROOT / name, place / "tree" / name)
    zipfile.ZipFile(made("wheel", place, place / "tree")).extractall(place / "unpacked")
    return place / "unpacked"


def astragal(*words: str) -> list[str]:
    """Return the command line that runs Astragal from a wheel alone."""
    return [sys.executable, "-c", f"from configurator.cli import main; main({list(words)!r})"]


def ran(wheel: Path, folder: Path, *words: str) -> str:
    """Return what a command prints, run from a wheel alone in a folder."""
    told = subprocess.run(astragal(*words), cwd=folder, env={"PYTHONPATH": str(wheel)}, capture_output=True, text=True)
    assert told.returncode == 0, told.stderr
    return told.stdout


def test_a_wheel_holds_what_is_needed_and_finds_its_own_content(wheel: Path, tmp_path: Path) -> None:
    assert (wheel / "configurator" / "py.typed").is_file()
    catalogs = {path.name for path in (wheel / "configurator" / "tongues").glob("*.po")}
    assert catalogs == {path.name for path in (ROOT / "configurator" / "tongues").glob("*.po")}
    assert str(wheel) in ran(wheel, tmp_path, "check")


def in_spanish(folder: Path) -> None:
    """Leave one door, one covering and one page of a started content, in Spanish, so that it is soon built."""
    shutil.rmtree(folder / "prices")
    shutil.rmtree(folder / "visits")
    for room, kept in (("doors", "garden-door"), ("families", "roller-shade"), ("pages", "privacy")):
        for file in (folder / room).iterdir():
            if file.stem != kept:
                file.unlink()
    showroom = folder / "showroom.yaml"
    showroom.write_text(f"language: es\n{showroom.read_text(encoding='utf-8')}", encoding="utf-8")


def test_a_wheel_alone_starts_checks_builds_and_serves_a_showroom(wheel: Path, tmp_path: Path) -> None:
    assert "own" in ran(wheel, tmp_path, "new", "own")
    in_spanish(tmp_path / "own")
    assert ran(wheel, tmp_path, "check", "own").startswith("own: 1 ")
    ran(wheel, tmp_path, "build", "own", "site")
    page = (tmp_path / "site" / "doors" / "garden-door" / "roller-shade.html").read_text(encoding="utf-8")
    assert '<html lang="es">' in page
    assert "Las cifras y cómo se obtienen" in page
    env = {"PYTHONPATH": str(wheel), "PYTHONUNBUFFERED": "1"}
    with subprocess.Popen(
        astragal("serve", "own", "--port", "0"), cwd=tmp_path, env=env, stderr=subprocess.PIPE, text=True
    ) as server:
        try:
            assert server.stderr
            told = next(line for line in server.stderr if "http://" in line)
            address = re.search(r"http://[^\s;]+", told)
            assert address
            with urlopen(f"{address[0].rstrip('/')}/doors/garden-door/roller-shade.html") as answer:
                assert "Las cifras y cómo se obtienen" in answer.read().decode()
        finally:
            # Whatever was wrong is told, and not waited for.
            server.terminate()


def test_an_sdist_carries_what_is_kept_and_no_cache(tmp_path: Path) -> None:
    cached = ROOT / "tests" / ".cache" / "kept"
    cached.parent.mkdir(exist_ok=True)
    cached.touch()
    with tarfile.open(made("sdist", tmp_path)) as packed:
        names = {name.partition("/")[2] for name in packed.getnames()}
    assert {"README.md", "configurator/cli.py", "tests/conftest.py", "content/showroom.yaml"} <= names
    assert {"configurator/tongues/es.po", "configurator/tongues/en_GB.po", "content/words/es.po"} <= names
    assert [name for name in names if {".cache", "__pycache__"} & {*Path(name).parts}] == []


def test_the_project_is_described_in_the_index_s_own_words() -> None:
    assert [word for word in PROJECT["classifiers"] if word not in classifiers] == []


def test_what_a_new_main_version_may_break_is_bounded() -> None:
    bounded = [re.split("[<>]", name)[0] for name in PROJECT["dependencies"] if "<" in name]
    reasons = GUIDE.split("## Why each package is here")[1]
    told = next(line for line in reasons.splitlines() if line.startswith("Bounded from above"))
    assert [name for name in bounded if name not in told] == []


PROMISES = GUIDE.split("## What is promised")[1].split("\n## ")[0]


def test_every_promise_is_tried_where_it_says() -> None:
    named = re.findall(r"`(tests/[\w./]+)`", PROMISES)
    assert len(named) > 20
    assert [path for path in named if not (ROOT / path).exists()] == []


@pytest.mark.parametrize(
    "told",
    [
        f"{len(FAULTS)} faults in a line",
        f"{len(WHOLE_FILES)} whole files",
        f"{len(TOLD)} bad contents",
    ],
)
def test_the_counts_of_what_is_tried_are_those_of_the_tests(told: str) -> None:
    assert told in PROMISES
