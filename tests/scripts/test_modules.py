"""The page's modules run on Node, on the translated kernel and the starter catalog."""

import subprocess
from pathlib import Path

import pytest

from configurator.browser import catalog_js, kernel_js
from configurator.catalog import Catalog
from tests.scripts.node import NODE

HERE = Path(__file__).parent


@pytest.fixture(scope="module")
def kernel(catalog: Catalog, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Return a module that sets ``Astragal`` as the page's scripts find it."""
    file = tmp_path_factory.mktemp("scripts") / "kernel.mjs"
    file.write_text(f"{kernel_js()}\n{catalog_js(catalog)}\nglobalThis.Astragal = Astragal;\n", encoding="utf-8")
    return file


@pytest.mark.parametrize("name", sorted(path.name for path in HERE.glob("*.test.mjs")))
def test_modules_do_as_they_should(name: str, kernel: Path) -> None:
    command = [NODE, "--import", kernel.as_uri(), "--test", "--test-reporter=spec", str(HERE / name)]
    done = subprocess.run(command, capture_output=True, text=True, timeout=120)
    assert done.returncode == 0, done.stdout + done.stderr
    # A file without a test would pass too.
    assert "pass 0" not in done.stdout
