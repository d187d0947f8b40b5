"""What DEVELOPERS.md and the package promise to those who come after."""

import re
import subprocess
import sys
import tomllib
import zipfile
from pathlib import Path

import pytest

from configurator.catalog import Catalog
from configurator.kernel.answer import ask
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.position import position_at
from configurator.kernel.scene import scene

ROOT = Path(__file__).resolve().parent.parent
GUIDE = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")


def test_the_guide_gives_a_reason_for_every_package() -> None:
    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    listed = [*project["dependencies"], *project["optional-dependencies"]["test"]]
    reasons = GUIDE.split("## Why each package is here")[1].lower()
    names = [re.split("[<>=~]", name)[0].lower() for name in listed]
    assert [name for name in names if not re.search(rf"\b{name}\b", reasons)] == []


def test_the_guides_mechanism_works_as_printed(catalog: Catalog, monkeypatch: pytest.MonkeyPatch) -> None:
    code = GUIDE.split("```python\n")[1].split("```")[0]
    made: dict[str, object] = {}
    exec(compile(code, "DEVELOPERS.md", "exec"), made)
    monkeypatch.setitem(MECHANISMS, "drop-cloth", {"pieces": made["drop_cloth"], "takes": made["DROP_CLOTH_TAKES"]})
    family = next(family for family in catalog.families.values() if family["mechanism"] == "accordion")
    family = family | {"mechanism": "drop-cloth", "numbers": family["numbers"] | {"cloth_depth": 2.0}}
    door = catalog.doors["garden-pair"]
    answer = ask(door, family, {}, catalog.household)
    assert answer["figures"]["visible_glass_open"]["value"] > answer["figures"]["visible_glass_closed"]["value"]
    halfway = scene(door, family, {}, position_at(family["numbers"], 0.5))
    assert {piece["kind"] for piece in halfway["covering"]} == {"headrail", "fabric"}


def test_a_wheel_finds_its_own_content_and_themes(tmp_path: Path) -> None:
    build = [sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", str(tmp_path)]
    subprocess.run(build, cwd=ROOT, check=True, capture_output=True)
    unpacked = tmp_path / "unpacked"
    zipfile.ZipFile(next(tmp_path.glob("*.whl"))).extractall(unpacked)
    told = subprocess.run(
        [sys.executable, "-c", "from configurator.cli import main; main(['check'])"],
        cwd=tmp_path,
        env={"PYTHONPATH": str(unpacked)},
        capture_output=True,
        text=True,
    )
    assert told.returncode == 0, told.stderr
    assert str(unpacked) in told.stdout
