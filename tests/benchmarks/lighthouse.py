"""Lighthouse with its phone settings on every kind of page. It takes minutes: ``python -m tests.benchmarks``."""

import gzip
import json
import os
import subprocess
import sys
from collections.abc import Iterator
from functools import partial
from http.server import ThreadingHTTPServer
from pathlib import Path

import pytest
from playwright.sync_api import sync_playwright

from configurator.local import HOST, QuietHandler
from tests.browser.conftest import CHROMIUM, FLAGS, serving
from tests.site.kinds import KINDS

ASKED = ("performance", "accessibility", "best-practices", "seo")
LEAST = 95
# Search engines are told to leave it out, which costs it their points.
UNLISTED = "a page that is not there"


class PackingHandler(QuietHandler):
    """Serves files packed, as hosts of static pages do."""

    def do_GET(self) -> None:  # noqa: N802 - the base class names it so
        """Answer with the packed file."""
        file = Path(self.translate_path(self.path))
        if not file.is_file():
            self.send_error(404)
            return
        packed = gzip.compress(file.read_bytes())
        self.send_response(200)
        self.send_header("Content-Type", self.guess_type(str(file)))
        self.send_header("Content-Encoding", "gzip")
        self.send_header("Content-Length", str(len(packed)))
        self.end_headers()
        self.wfile.write(packed)


@pytest.fixture(scope="module")
def address(demo: Path) -> Iterator[str]:
    """The address at which the demo is served."""
    server = ThreadingHTTPServer((HOST, 0), partial(PackingHandler, directory=str(demo)))
    with serving(server) as found:
        yield found


@pytest.fixture(scope="module")
def chromium() -> str:
    """The browser that the other tests use."""
    with sync_playwright() as playwright:
        return CHROMIUM or playwright.chromium.executable_path


def scores(url: str, chromium: str) -> dict[str, int]:
    """Return Lighthouse's score of a page in each category, 0 to 100."""
    tool = Path(sys.prefix) / "lighthouse" / "node_modules" / "lighthouse" / "cli" / "index.js"
    assert tool.is_file(), "Lighthouse is missing: sh .ci/setup benchmarks"
    done = subprocess.run(
        [
            *(str(Path(sys.prefix) / "bin" / "node"), str(tool), url),
            *("--quiet", "--no-enable-error-reporting", "--output=json", "--form-factor=mobile"),
            f"--only-categories={','.join(ASKED)}",
            f"--chrome-flags={' '.join(['--headless', *FLAGS])}",
        ],
        env=os.environ | {"CHROME_PATH": chromium},
        capture_output=True,
        text=True,
        check=True,
    )
    categories = json.loads(done.stdout)["categories"]
    return {name: round(100 * categories[name]["score"]) for name in ASKED}


@pytest.mark.parametrize("kind", KINDS)
def test_lighthouse_finds_little_to_better(address: str, chromium: str, kind: str) -> None:
    found = scores(address + KINDS[kind], chromium)
    print(f"{kind}: {found}")
    asked = [name for name in ASKED if (kind, name) != (UNLISTED, "seo")]
    assert {name: found[name] for name in asked if found[name] < LEAST} == {}
