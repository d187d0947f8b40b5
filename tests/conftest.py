"""What every test may use: the starter content, the demo site built from it, and where caches go."""

import fcntl
import os
import shutil
from collections.abc import Callable
from pathlib import Path

import hypothesis
import pytest
from hypothesis.configuration import set_hypothesis_home_dir

from configurator.cache.entries import keep
from configurator.catalog import Catalog, load
from configurator.kernel.tongue import Words
from configurator.places import CONTENT
from configurator.site.answers import Answers
from configurator.site.mkdocs.kept_answers import known_answers, pack_name

set_hypothesis_home_dir(Path(__file__).parent / ".cache" / "hypothesis")
# A slow machine is no failure. A desk explores; what lands is judged by the same cases every time.
hypothesis.settings.register_profile("project", deadline=None, derandomize="CI" in os.environ)
hypothesis.settings.load_profile("project")


@pytest.fixture(scope="session", autouse=True)
def own_cache(tmp_path_factory: pytest.TempPathFactory) -> None:
    """Have whatever runs keep what it works out in a folder of this run, not in that of whoever runs it."""
    os.environ["XDG_CACHE_HOME"] = str(tmp_path_factory.mktemp("caches"))


@pytest.fixture(scope="session")
def catalog() -> Catalog:
    """The starter content, read."""
    return load(CONTENT)


# More bytes than what is worked out for a site takes.
ENOUGH = 1_000_000_000


def built_once(
    factory: pytest.TempPathFactory, name: str, content: Callable[[Path], Path], answers: Callable[[], Answers]
) -> Path:
    """Return the folder with a site, built by whichever of the run's workers comes first; the others wait for it.

    What was worked out for it is a pack beside it.
    """
    # Imported here, so that a kernel's test runs while the site is being rebuilt.
    from configurator.site.mkdocs.build import build

    own = factory.getbasetemp()
    shared = own.parent if "PYTEST_XDIST_WORKER" in os.environ else own
    folder = shared / name
    with (shared / f"{name}.lock").open("w") as lock:
        fcntl.flock(lock, fcntl.LOCK_EX)
        if not folder.exists():
            worked_out = answers()
            build(content(shared / f"{name}-content"), folder, worked_out)
            folder.with_suffix(".pack").write_bytes(worked_out.pack(ENOUGH) or b"")
    return folder


@pytest.fixture(scope="session")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the site of the starter content, built for this run."""
    return built_once(tmp_path_factory, "demo", lambda _: CONTENT, Answers)


@pytest.fixture(scope="session")
def remember_demo(demo: Path, own_cache: None) -> Callable[[Path], None]:
    """A function by which whoever builds a content folder knows all that was worked out for the demo."""
    pack = demo.with_suffix(".pack").read_bytes()
    return lambda content: keep(pack_name(content), pack)


@pytest.fixture(scope="session")
def demo_answers(remember_demo: Callable[[Path], None]) -> Callable[[], Answers]:
    """A function that gives a memory of what was worked out for the demo: a build with it works out what differs."""
    remember_demo(CONTENT)
    return lambda: known_answers(CONTENT)


def small_content(folder: Path, family: str) -> Path:
    """Write a content of one door, one covering and one page, without price books and visits, which name others."""
    shutil.copytree(CONTENT, folder, ignore=shutil.ignore_patterns("prices", "visits"))
    for room, kept in (("doors", "garden-door"), ("families", family), ("pages", "privacy")):
        for file in (folder / room).iterdir():
            if file.stem != kept:
                file.unlink()
    return folder


def few_scripts(folder: Path, words: Words) -> dict[str, str]:
    """Return a script in place of those that take most of a small build's time, and are the same whatever is edited."""
    return {"astragal.js": f"// {folder.name} in {words['language']}"}


def other_content(folder: Path) -> Path:
    """Write a content in the theme that the demo has not: two doors, every family, no example of a visit."""
    shutil.copytree(CONTENT, folder, ignore=shutil.ignore_patterns("visits"))
    for door in (folder / "doors").iterdir():
        if door.stem not in ("garden-pair", "garden-door"):
            door.unlink()
    showroom = folder / "showroom.yaml"
    demo_theme, other = "  name: sheet\n", "  name: linen\n"
    written = showroom.read_text(encoding="utf-8")
    assert demo_theme in written
    showroom.write_text(written.replace(demo_theme, other), encoding="utf-8")
    return folder


@pytest.fixture(scope="session")
def other_theme(tmp_path_factory: pytest.TempPathFactory, demo_answers: Callable[[], Answers]) -> Path:
    """A folder with a small site in the other theme."""
    return built_once(tmp_path_factory, "other-theme", other_content, demo_answers)
