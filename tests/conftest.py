"""What every test may use: the starter content, the demo site built from it, and where caches go."""

import os
import shutil
from pathlib import Path

import hypothesis
import pytest
from hypothesis.configuration import set_hypothesis_home_dir

from configurator.catalog import Catalog, load
from configurator.places import CONTENT

set_hypothesis_home_dir(Path(__file__).parent / ".cache" / "hypothesis")
# A slow machine is no failure. A desk explores; what lands is judged by the same cases every time.
hypothesis.settings.register_profile("project", deadline=None, derandomize="CI" in os.environ)
hypothesis.settings.load_profile("project")


@pytest.fixture(scope="session")
def catalog() -> Catalog:
    """The starter content, read."""
    return load(CONTENT)


@pytest.fixture(scope="session")
def demo(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with the site of the starter content, built for this run."""
    # Imported here, so that a kernel's test runs while the site is being rebuilt.
    from configurator.site import build

    folder = tmp_path_factory.mktemp("demo") / "site"
    build(CONTENT, folder)
    return folder


@pytest.fixture(scope="session")
def other_theme(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A folder with a small site in the theme that the demo has not: two doors, every family."""
    from configurator.site import build

    content = tmp_path_factory.mktemp("other-theme") / "content"
    shutil.copytree(CONTENT, content)
    for door in (content / "doors").iterdir():
        if door.stem not in ("garden-pair", "garden-door"):
            door.unlink()
    showroom = content / "showroom.yaml"
    demo_theme, other = "  name: sheet\n", "  name: linen\n"
    written = showroom.read_text(encoding="utf-8")
    assert demo_theme in written
    showroom.write_text(written.replace(demo_theme, other), encoding="utf-8")
    folder = content.parent / "site"
    build(content, folder)
    return folder
