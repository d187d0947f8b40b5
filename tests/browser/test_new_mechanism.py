"""A mechanism added just as DEVELOPERS.md says: words, hold, drag and figures follow without another line."""

import os
import shutil
import subprocess
import sys
from pathlib import Path

import pytest
from playwright.sync_api import Page, expect

from configurator.places import CONTENT
from tests.browser.trying import grip, open_page, slider

ROOT = Path(__file__).resolve().parent.parent.parent
FAMILY = """\
name: Drop cloth
summary: One cloth, let down by its hem.
description: A cloth behind a headrail.
moves: The hem goes up and down.
good_at: Hides the glass.
bad_at: Its hem swings.
care: Wash it.
safety: It has no cord.
source: invented
mechanism: drop-cloth
numbers:
  cloth_view: 5 %
  cloth_light: 30 %
  headrail_height: 30 mm
  headrail_depth: 25 mm
  overlap_side: 40 mm
  overlap_bottom: 40 mm
choices:
  cloth:
    name: cloth
    options:
      plain: {name: plain}
"""


def blocks_of_the_guide() -> tuple[str, str]:
    """Return the guide's mechanism file and its entry in the list of mechanisms."""
    guide = (ROOT / "DEVELOPERS.md").read_text(encoding="utf-8")
    code = guide.split("```python\n")[1].split("```")[0]
    entry = guide.split("and in `MECHANISMS`: `")[1].split("`")[0]
    return code, entry


def package_with_it(folder: Path) -> None:
    """Write a copy of the package in which the mechanism is a file and an entry."""
    for name in ("configurator", "themes", "content"):
        shutil.copytree(ROOT / name, folder / name, ignore=shutil.ignore_patterns("__pycache__"))
    code, entry = blocks_of_the_guide()
    mechanisms = folder / "configurator" / "kernel" / "mechanisms"
    (mechanisms / "drop_cloth.py").write_text(code, encoding="utf-8")
    listing = mechanisms / "__init__.py"
    module = "configurator.kernel.mechanisms.drop_cloth"
    text = listing.read_text(encoding="utf-8").replace(
        "from configurator.kernel.mechanisms.draw import",
        f"from {module} import DROP_CLOTH_TAKES, drop_cloth, drop_cloth_legs\n"
        "from configurator.kernel.mechanisms.draw import",
    )
    table = "MECHANISMS: dict[str, Mechanism] = {\n"
    text = text.replace(table, f"{table}    {entry}\n")
    listing.write_text(text, encoding="utf-8")


def content_with_it(folder: Path) -> Path:
    """Write a showroom of one door and two coverings, one of them of the new kind."""
    content = folder / "showroom"
    shutil.copytree(CONTENT, content, ignore=shutil.ignore_patterns("prices", "visits"))
    for kind, kept in (("doors", "garden-door"), ("families", "cellular-shade")):
        for file in (content / kind).iterdir():
            if file.stem != kept:
                file.unlink()
    (content / "families" / "drop-cloth.yaml").write_text(FAMILY, encoding="utf-8")
    for page in (content / "pages").iterdir():
        if "```drawing" in page.read_text(encoding="utf-8"):
            page.unlink()
    return content


@pytest.fixture(scope="module")
def site(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The site of that showroom, built by that package."""
    folder = tmp_path_factory.mktemp("new-mechanism")
    package_with_it(folder)
    built = folder / "site"
    told = subprocess.run(
        [sys.executable, "-c", "from configurator.cli import main; main()", "build", content_with_it(folder), built],
        env={**os.environ, "PYTHONPATH": str(folder)},
        cwd=folder,
        capture_output=True,
        text=True,
    )
    assert told.returncode == 0, told.stderr
    return built


def test_a_new_mechanism_is_worded_held_dragged_and_answered(page: Page, site: Path) -> None:
    open_page(page, f"{(site / 'try.html').as_uri()}")
    page.locator(".shelf-card", has_text="Drop cloth").click()
    hem = slider(page, "Hem")
    page.get_by_role("button", name="Open", exact=True).click()
    expect(hem).to_have_attribute("aria-valuetext", "put up")
    page.get_by_role("button", name="Closed", exact=True).click()
    expect(hem).to_have_attribute("aria-valuetext", "let down")
    x, y = grip(page, "lower")
    page.mouse.move(x, y)
    page.mouse.down()
    page.mouse.move(x, y - 120, steps=6)
    page.mouse.up()
    expect(hem).to_have_attribute("aria-valuetext", page_words(page))
    assert 0 < int(page_words(page).split("%")[0]) < 100
    figures = page.locator("#panel-figures ~ div .figure")
    expect(figures.filter(has_text="Order width").first).to_be_visible()
    expect(page.locator(".verdicts li").first).to_contain_text("Passing the handle")


def page_words(page: Page) -> str:
    """Return what the slider says of where the hem stands."""
    return slider(page, "Hem").get_attribute("aria-valuetext") or ""
