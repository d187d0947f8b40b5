"""What DEVELOPERS.md and the package promise to those who come after."""

import re
import subprocess
import sys
import tarfile
import tomllib
import zipfile
from pathlib import Path

from trove_classifiers import classifiers

from tests.conftest import small_content

ROOT = Path(__file__).resolve().parent.parent
PROJECT = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
GUIDE = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_the_guide_gives_a_reason_for_every_package() -> None:
    listed = [*PROJECT["dependencies"], *PROJECT["optional-dependencies"]["test"]]
    reasons = GUIDE.split("## Why each package is here")[1].lower()
    names = [re.split("[<>=~]", name)[0].lower() for name in listed]
    assert [name for name in names if not re.search(rf"\b{name}\b", reasons)] == []


def made(kind: str, folder: Path) -> Path:
    """Return the ``wheel`` or ``sdist`` of the project, built into a folder."""
    build = [sys.executable, "-m", "hatchling", "build", "-t", kind, "-d", str(folder)]
    subprocess.run(build, cwd=ROOT, check=True, capture_output=True)
    return next(file for file in folder.iterdir() if file.suffix in (".whl", ".gz"))


def test_a_wheel_finds_its_own_content_and_themes(tmp_path: Path) -> None:
    unpacked = tmp_path / "unpacked"
    zipfile.ZipFile(made("wheel", tmp_path)).extractall(unpacked)
    assert (unpacked / "configurator" / "py.typed").is_file()
    told = subprocess.run(
        [sys.executable, "-c", "from configurator.cli import main; main(['check'])"],
        cwd=tmp_path,
        env={"PYTHONPATH": str(unpacked)},
        capture_output=True,
        text=True,
    )
    assert told.returncode == 0, told.stderr
    assert str(unpacked) in told.stdout


def spanish_content(folder: Path) -> Path:
    """Write a small content in Spanish."""
    small_content(folder, "roller-shade")
    showroom = folder / "showroom.yaml"
    showroom.write_text(f"language: es\n{showroom.read_text(encoding='utf-8')}", encoding="utf-8")
    return folder


def test_a_wheel_builds_a_page_in_another_language(tmp_path: Path) -> None:
    unpacked = tmp_path / "unpacked"
    zipfile.ZipFile(made("wheel", tmp_path)).extractall(unpacked)
    catalogs = {path.name for path in (unpacked / "configurator" / "tongues").glob("*.po")}
    assert catalogs == {path.name for path in (ROOT / "configurator" / "tongues").glob("*.po")}
    command = f"from configurator.cli import main; main(['build', {str(spanish_content(tmp_path / 'own'))!r}, 'site'])"
    told = subprocess.run(
        [sys.executable, "-c", command],
        cwd=tmp_path,
        env={"PYTHONPATH": str(unpacked)},
        capture_output=True,
        text=True,
    )
    assert told.returncode == 0, told.stderr
    page = (tmp_path / "site" / "doors" / "garden-door" / "roller-shade.html").read_text(encoding="utf-8")
    assert '<html lang="es">' in page
    assert "Las cifras y cómo se obtienen" in page


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
