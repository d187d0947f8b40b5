"""A stamp differs wherever what is kept under it may differ."""

import os
import shutil
from collections.abc import Callable
from pathlib import Path

import pytest

from configurator.cache import stamps
from configurator.cache.stamps import Unstamped, code_stamp, content_stamp


@pytest.fixture
def folder(tmp_path: Path) -> Path:
    """A small content folder."""
    place = tmp_path / "content"
    for name in ("showroom.yaml", "doors/a.yaml", "static/.well-known/proof", "pages/in/guide.md"):
        (place / name).parent.mkdir(parents=True, exist_ok=True)
        (place / name).write_text(f"{name}\n")
    return place


def other_byte(folder: Path) -> None:
    """Change one byte and leave the file's size and time as they were."""
    path = folder / "doors" / "a.yaml"
    before = path.stat()
    path.write_text(path.read_text().replace("d", "D", 1))
    os.utime(path, ns=(before.st_atime_ns, before.st_mtime_ns))


CHANGES: dict[str, Callable[[Path], object]] = {
    "one byte": other_byte,
    "another name": lambda folder: (folder / "doors" / "a.yaml").rename(folder / "doors" / "b.yaml"),
    "a file more": lambda folder: (folder / "doors" / "b.yaml").touch(),
    "a folder more": lambda folder: (folder / "familes").mkdir(),
    "a file less": lambda folder: (folder / "doors" / "a.yaml").unlink(),
    "a hidden file that is carried over": lambda folder: (folder / "static" / ".well-known" / "proof").write_text("x"),
    "a file moved down": lambda folder: (folder / "pages" / "in" / "guide.md").rename(folder / "pages" / "guide.md"),
    "a file that takes over what stood in its neighbor": lambda folder: (
        (folder / "doors" / "a.yaml").write_text(""),
        (folder / "showroom.yaml").write_text("doors/a.yaml\nshowroom.yaml\n"),
    ),
}


@pytest.mark.parametrize("change", CHANGES)
def test_a_content_s_stamp_differs_with_all_that_it_holds(change: str, folder: Path) -> None:
    before = content_stamp(folder)
    assert content_stamp(folder) == before
    CHANGES[change](folder)
    assert content_stamp(folder) != before


def test_a_content_s_stamp_is_that_of_a_copy_elsewhere(folder: Path, tmp_path: Path) -> None:
    assert content_stamp(Path(shutil.copytree(folder, tmp_path / "copy"))) == content_stamp(folder)


def test_what_is_no_content_leaves_the_stamp_alone(folder: Path) -> None:
    before = content_stamp(folder)
    for name in (".git/HEAD", "site/assets/built.json", "site/index.html"):
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_text("{}")
    assert content_stamp(folder) == before


def test_where_content_may_change_unseen_there_is_no_stamp(
    folder: Path, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    (tmp_path / "elsewhere").write_text("name: Elsewhere\n")
    (folder / "doors" / "b.yaml").symlink_to(tmp_path / "elsewhere")
    with pytest.raises(Unstamped):
        content_stamp(folder)
    (folder / "doors" / "b.yaml").unlink()
    os.mkfifo(folder / "doors" / "b.yaml")
    with pytest.raises(Unstamped):
        content_stamp(folder)
    (folder / "doors" / "b.yaml").unlink()
    monkeypatch.setattr(stamps, "LARGEST", 10)
    with pytest.raises(Unstamped):
        content_stamp(folder)
    with pytest.raises(Unstamped):
        content_stamp(tmp_path / "nowhere")


@pytest.mark.parametrize("place", ["PACKAGE", "THEMES"])
def test_the_code_s_stamp_differs_with_every_byte_of_code_and_themes(
    place: str, folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(stamps, place, folder)
    before = code_stamp()
    (folder / "__pycache__").mkdir()
    (folder / "__pycache__" / "a.pyc").write_bytes(b"compiled")
    assert code_stamp() == before
    other_byte(folder)
    assert code_stamp() != before


def test_the_code_s_stamp_differs_with_the_packages_beside_it(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.syspath_prepend(str(tmp_path))
    before = code_stamp()
    (tmp_path / "pydantic-99.0.dist-info").mkdir()
    assert code_stamp() != before
