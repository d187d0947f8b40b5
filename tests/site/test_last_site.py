"""A new site takes over what the last one has, and nothing that is not just the same."""

import shutil
from pathlib import Path

import pytest

from configurator.site.mkdocs import assets
from configurator.site.mkdocs.build import build
from tests.conftest import few_scripts, small_content
from tests.site.test_build import edited, files

PAGE = "privacy.html"


@pytest.fixture
def content(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A content of one door and one covering, whose site stands in ``site`` beside it."""
    monkeypatch.setattr(assets, "configurator_scripts", few_scripts)
    folder = small_content(tmp_path / "content", "cellular-shade")
    build(folder, tmp_path / "site")
    return folder


def places(site: Path) -> dict[str, int]:
    """Return where each file of a site lies on the disk."""
    return {name: (site / name).stat().st_ino for name in files(site)}


def built_anew(content: Path) -> dict[str, bytes]:
    """Return the files of a site that takes no other's place."""
    build(content, content.parent / "anew")
    return files(content.parent / "anew")


def test_what_an_edit_leaves_the_same_is_not_written_again(content: Path) -> None:
    site = content.parent / "site"
    before, held = places(site), files(site)
    edited(content, f"pages/{Path(PAGE).stem}.md", "# ", "# Our ")
    build(content, site)
    same = {name for name, content_now in files(site).items() if held.get(name) == content_now}
    stayed = {name for name, place in places(site).items() if before.get(name) == place}
    # The list and the worker are told of each build anew.
    assert same - stayed <= {"assets/built.json", "sw.js"}
    assert len(stayed) > 20
    assert PAGE not in stayed
    assert files(site) == built_anew(content)


def test_what_was_changed_in_the_last_site_is_whole_in_the_new_one(content: Path) -> None:
    site = content.parent / "site"
    page, other = site / PAGE, site / "index.html"
    page.write_bytes(page.read_bytes()[:-1] + b"?")
    shutil.copy(other, content.parent / "elsewhere.html")
    other.unlink()
    other.symlink_to(content.parent / "elsewhere.html")
    build(content, site)
    assert files(site) == built_anew(content)
    assert not other.is_symlink()


def test_a_site_that_was_put_elsewhere_by_links_stays_as_it_was(content: Path) -> None:
    site, copy = content.parent / "site", content.parent / "copy"
    held = files(site)
    shutil.copytree(site, copy, copy_function=lambda one, other: Path(other).hardlink_to(one))
    edited(content, f"pages/{Path(PAGE).stem}.md", "# ", "# Our ")
    build(content, site)
    assert files(copy) == held
    assert files(site) == built_anew(content)
