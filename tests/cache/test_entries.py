"""What is kept comes back as it was, or not at all."""

from pathlib import Path

import pytest

from configurator.cache import entries
from configurator.cache.entries import keep, kept

CONTENT = b'{"counts":[15,9,15,7]}'


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The folder of a cache of this test's own."""
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path))
    return tmp_path / "astragal"


def test_what_is_kept_comes_back_until_the_folder_is_deleted(folder: Path) -> None:
    assert kept("check-1") is None
    keep("check-1", CONTENT)
    assert kept("check-1") == CONTENT
    keep("check-1", b"newer")
    assert kept("check-1") == b"newer"
    (folder / "check-1").unlink()
    folder.rmdir()
    assert kept("check-1") is None
    keep("check-1", CONTENT)
    assert kept("check-1") == CONTENT


def test_an_entry_that_is_spoilt_in_any_byte_is_as_none(folder: Path) -> None:
    keep("check-1", CONTENT)
    whole = (folder / "check-1").read_bytes()
    for place, byte in enumerate(whole):
        for other in {byte ^ 1, byte ^ 0x80, 0} - {byte}:
            (folder / "check-1").write_bytes(whole[:place] + bytes([other]) + whole[place + 1 :])
            assert kept("check-1") is None, place
    (folder / "check-1").write_bytes(whole)
    assert kept("check-1") == CONTENT


def test_an_entry_that_was_cut_short_or_grew_is_as_none(folder: Path) -> None:
    keep("check-1", CONTENT)
    whole = (folder / "check-1").read_bytes()
    for length in range(len(whole)):
        (folder / "check-1").write_bytes(whole[:length])
        assert kept("check-1") is None, length
    (folder / "check-1").write_bytes(whole + b" ")
    assert kept("check-1") is None


def test_an_entry_under_another_s_name_is_as_none(folder: Path) -> None:
    keep("check-1", CONTENT)
    (folder / "check-1").rename(folder / "check-2")
    assert kept("check-2") is None


@pytest.mark.parametrize("home", ["file", "/proc/nowhere", "relative"])
def test_where_nothing_can_be_kept_nothing_is_said(home: str, tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "file").write_text("no folder")
    monkeypatch.chdir(tmp_path)
    monkeypatch.setenv("HOME", str(tmp_path / "file"))
    monkeypatch.setenv("XDG_CACHE_HOME", home if home.startswith(("/", "rel")) else str(tmp_path / home))
    keep("check-1", CONTENT)
    assert kept("check-1") is None
    assert [path.name for path in tmp_path.iterdir()] == ["file"]


def test_nothing_is_read_from_a_folder_that_others_may_write(folder: Path) -> None:
    keep("check-1", CONTENT)
    folder.chmod(0o777)
    assert kept("check-1") is None
    folder.chmod(0o700)
    assert kept("check-1") == CONTENT


def test_what_was_used_longest_ago_makes_way(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(entries, "MOST", 3 * (len(CONTENT) + entries.CHECKSUM))
    for name in ("a", "b", "c"):
        keep(name, CONTENT)
    assert kept("a") == CONTENT
    keep("d", CONTENT)
    assert [name for name in "abcd" if kept(name) is None] == ["b"]


def test_what_a_killed_run_left_unfinished_is_cleared_away_in_time(
    folder: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    keep("a", CONTENT)
    (folder / "unfinished-x").write_bytes(b"half")
    monkeypatch.setattr(entries, "MOST", len(CONTENT) + entries.CHECKSUM)
    keep("b", CONTENT)
    assert [path.name for path in folder.iterdir()] == ["b"]
