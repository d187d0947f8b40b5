"""What comes of the code alone is made once for each code, and never stale or spoilt."""

from collections.abc import Callable
from pathlib import Path

import pytest

from configurator.cache import by_code, stamps
from configurator.cache.by_code import once_for_code


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Where this test keeps what it makes."""
    monkeypatch.setattr(by_code, "FOLDER", tmp_path / "made")
    return tmp_path / "made"


def made(times: list[str], what: str = "scripts") -> Callable[[], list[str]]:
    """Return something that makes a value and notes that it was asked to."""

    def make() -> list[str]:
        times.append(what)
        return [what]

    return make


def test_what_the_code_gives_is_made_once_for_each_input(folder: Path) -> None:
    times: list[str] = []
    for _ in range(2):
        assert once_for_code(made(times, "English"), "scripts", "en") == ["English"]
        assert once_for_code(made(times, "Spanish"), "scripts", "es") == ["Spanish"]
    assert times == ["English", "Spanish"]


def test_another_code_makes_it_anew(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    once_for_code(made([]), "scripts")
    monkeypatch.setattr(by_code, "own_code", lambda: "another version")
    times: list[str] = []
    assert once_for_code(made(times, "newer"), "scripts") == ["newer"]
    assert times == ["newer"]


def test_nothing_is_kept_of_code_that_has_changed_while_it_ran(folder: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(stamps, "code_stamp", lambda: "changed meanwhile")
    times: list[str] = []
    for _ in range(2):
        once_for_code(made(times), "scripts")
    assert times == ["scripts", "scripts"]
    assert not folder.exists()


def test_what_is_spoilt_is_made_anew(folder: Path) -> None:
    once_for_code(made([]), "scripts")
    (entry,) = folder.iterdir()
    entry.write_bytes(entry.read_bytes()[:-1] + b"?")
    times: list[str] = []
    assert once_for_code(made(times), "scripts") == ["scripts"]
    assert times == ["scripts"]


def test_where_nothing_can_be_written_it_is_made_each_time(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    (tmp_path / "file").write_text("no folder")
    monkeypatch.setattr(by_code, "FOLDER", tmp_path / "file" / "made")
    times: list[str] = []
    for _ in range(2):
        assert once_for_code(made(times), "scripts") == ["scripts"]
    assert times == ["scripts", "scripts"]
