"""A number added to the table of what a tape takes, in a copy of the house, is found wherever such numbers are."""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, expect

from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import encode, fresh_state
from configurator.catalog import load
from tests.browser.trying import open_page, to_step
from tests.conftest import small_content

HOUSE = Path(__file__).resolve().parents[2]
TABLE = "configurator/kernel/tape/around_fields.py"
ROW = """\
    {
        "id": "threshold",
        "path": "gaps.threshold",
        "unit": "length",
        "limits": [0.0, 60.0],
        "assumed": [6.0],
        "usual": [0.0, 30.0],
        "what": "a threshold height",
        "name": "Threshold",
        "how": "From the floor to the top of the sill.",
        "drawn": ["elevation", "up", "floor", "middle", "middle"],
    },
]
"""
ASK = """\
import json, sys
from pathlib import Path
from configurator.browser.catalog_json import page_catalog
from configurator.browser.link import decode, encode, fresh_state
from configurator.catalog import ContentProblems, load
from configurator.site.mkdocs.build import build

content, door, old = Path("content"), Path("content/doors/garden-door.yaml"), sys.argv[1]
told = {"assumed": load(content).doors["garden-door"]["threshold"]}
stock = page_catalog(load(content))
told["old"] = [decode(old, stock)[part] for part in ("problems", "changes")]
state = fresh_state(stock)
state["configurations"][0]["door"]["threshold"] = 19.05
told["link"] = encode(state, stock)
told["opened"] = decode(told["link"], stock)["state"]["configurations"][0]["door"]["threshold"]
sound = door.read_text()
for key, length in (("written", "3/4 in"), ("refused", "3 in")):
    door.write_text(sound.replace("head: 1/8 in", "head: 1/8 in, threshold: " + length))
    try:
        told[key] = load(content).doors["garden-door"]["threshold"]
        build(content, Path("site"))
    except ContentProblems as found:
        told[key] = [str(problem) for problem in found.problems]
print(json.dumps(told))
"""


def with_threshold(text: str) -> str:
    """Return the table's file with a row more, and its number in the shape of a door beside it."""
    before = "    stop_lap: float\n"
    assert before in text
    head, end = text.replace(before, f"{before}    threshold: float\n").split("    },\n]\n")
    return f"{head}    }},\n{ROW}{end}"


@pytest.fixture(scope="module")
def house(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of the house in which doors have a threshold."""
    folder = tmp_path_factory.mktemp("house")
    for room in ("configurator", "themes"):
        shutil.copytree(HOUSE / room, folder / room, ignore=shutil.ignore_patterns("__pycache__"))
    small_content(folder / "content", "cellular-shade")
    table = folder / TABLE
    table.write_text(with_threshold(table.read_text(encoding="utf-8")), encoding="utf-8")
    return folder


@pytest.fixture(scope="module")
def told(house: Path) -> dict[str, Any]:
    """What the copy tells of thresholds, and its site, built."""
    stock = page_catalog(load(house / "content"))
    old = encode(fresh_state(stock), stock)
    run = [sys.executable, "-c", ASK, old]
    env = {**os.environ, "PYTHONPATH": str(house)}
    done = subprocess.run(run, cwd=house, env=env, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    found: dict[str, Any] = json.loads(done.stdout.splitlines()[-1])
    return found


def test_content_may_hold_it_within_its_limits(told: dict[str, Any]) -> None:
    assert told["assumed"] == 6
    assert told["written"] == 19.05
    place = "content/doors/garden-door.yaml:18:60"
    assert told["refused"] == [
        f"{place}: gaps.threshold is 3 in; a threshold height between 0 in and 2 1/4 in is expected"
    ]


def test_links_carry_it_and_older_links_stay_silent(told: dict[str, Any]) -> None:
    assert "threshold=0.75in" in told["link"]
    assert told["opened"] == 19.05
    assert told["old"] == [[], []]


def test_the_form_asks_for_it_and_shows_its_place(house: Path, told: dict[str, Any], browser: Browser) -> None:
    assert told
    page = browser.new_page()
    open_page(page, (house / "site" / "try.html").as_uri())
    to_step(page, "Door")
    page.locator(".more-lengths").evaluate_all("all => all.forEach((one) => { one.open = true; })")
    field = page.get_by_label("Threshold", exact=True)
    expect(field).to_have_value("3/4")
    field.fill("3")
    expect(page.locator("#field-threshold-note")).to_contain_text("Threshold must lie between")
    field.fill("1 1/2")
    expect(page.locator("#field-threshold-note")).to_contain_text("Unusual: most are between")
    field.fill("1/2")
    expect(page.locator(".in-focus text")).to_have_text("1/2 in")
    field.blur()
    page.wait_for_url("**threshold=0.5in**")
    page.close()


def test_the_measuring_guide_and_the_doors_page_tell_of_it(house: Path, told: dict[str, Any]) -> None:
    assert told
    guide = (house / "site" / "measure.html").read_text(encoding="utf-8")
    assert "Threshold" in guide
    assert "From the floor to the top of the sill." in guide
    assert "Threshold" in (house / "site" / "doors" / "garden-door.html").read_text(encoding="utf-8")
