"""What a command says from memory is what it says without."""

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest
from click.testing import CliRunner

from configurator import remembered
from configurator.cache import by_content
from configurator.catalog import Reading, load
from configurator.cli import main
from configurator.remembered import as_data
from tests.catalog.conftest import content

__all__ = ["content"]
COMMANDS = {
    "check": ("check", "content"),
    "check in Spanish": ("--language", "es", "check", "content"),
    "fit": ("fit", "--door", "garden-pair", "--family", "cells", "--content", "content"),
    "fit in Spanish": ("fit", "--door", "garden-pair", "--family", "cells", "--content", "content", "--language", "es"),
    "table": ("fit", "--all", "--csv", "--content", "content"),
}
SPOILT = {
    "sound": lambda folder: None,
    "of two languages": lambda folder: (folder / "showroom.yaml").write_text(
        (folder / "showroom.yaml").read_text() + "languages: [es, en]\n"
    ),
    "unsound": lambda folder: (folder / "doors/garden-pair.yaml").write_text(
        (folder / "doors/garden-pair.yaml").read_text().replace("width: 36 in", "width: 3 in") + "sky: blue\n"
    ),
    "without a door": lambda folder: (folder / "doors/garden-pair.yaml").unlink(),
    "of no language": lambda folder: (folder / "showroom.yaml").write_text("language: tlh-x\n"),
    "with a stray": lambda folder: (folder / "familys").mkdir(),
}


@pytest.fixture(autouse=True)
def cache(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """The folder of a cache of this test's own."""
    monkeypatch.setenv("XDG_CACHE_HOME", str(tmp_path / "caches"))
    return tmp_path / "caches" / "astragal"


def said(*arguments: str) -> tuple[int, str, str]:
    """Return what a command says, and how it ends."""
    told = CliRunner().invoke(main, arguments)
    assert told.exception is None or isinstance(told.exception, SystemExit)
    return told.exit_code, told.stdout, told.stderr


@pytest.mark.parametrize("state", SPOILT)
@pytest.mark.parametrize("command", COMMANDS)
def test_from_memory_a_command_says_the_same(
    command: str, state: str, content: Path, cache: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    SPOILT[state](content)
    with monkeypatch.context() as without:
        without.setenv("XDG_CACHE_HOME", "/proc/nowhere")
        plainly = said(*COMMANDS[command])
    assert said(*COMMANDS[command]) == plainly
    assert list(cache.iterdir()) != []
    monkeypatch.setattr(remembered, "load", lambda *_: pytest.fail("the content is read again"))
    assert said(*COMMANDS[command]) == plainly


def test_a_remembered_check_serves_a_fit(content: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    plainly = said(*COMMANDS["fit"])
    (content / "showroom.yaml").write_text((content / "showroom.yaml").read_text() + "\n")
    said(*COMMANDS["check"])
    monkeypatch.setattr(remembered, "load", lambda *_: pytest.fail("the content is read again"))
    assert said(*COMMANDS["fit"]) == plainly


def test_what_is_wrong_elsewhere_does_not_keep_a_fit_from_its_door(content: Path) -> None:
    plainly = said(*COMMANDS["fit"])
    (content / "doors" / "other.yaml").write_text("name: nothing more\n")
    assert said(*COMMANDS["check"])[0] == 1
    assert said(*COMMANDS["fit"]) == plainly


def test_after_an_edit_the_new_content_is_told(content: Path) -> None:
    assert said("check", "content")[0] == 0
    door = content / "doors" / "garden-pair.yaml"
    before = door.stat()
    door.write_text(door.read_text().replace("width: 36 in", "width: 36 im"))
    os.utime(door, ns=(before.st_atime_ns, before.st_mtime_ns))
    told = said("check", "content")
    assert told[0] == 1
    assert "36 im" in told[2]


def test_after_a_change_of_the_code_nothing_is_remembered(content: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    assert said("check", "content")[0] == 0
    read: list[Path] = []
    monkeypatch.setattr(remembered, "load", lambda folder, *more: (read.append(folder), load(folder, *more))[1])
    assert said("check", "content")[0] == 0
    assert read == []
    monkeypatch.setattr(by_content, "own_code", lambda: "another version")
    assert said("check", "content")[0] == 0
    assert read == [content]


def test_content_that_changes_while_it_is_read_is_not_remembered(
    content: Path, cache: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def load_and_edit(folder: Path, *more: str | None) -> object:
        found = load(folder, *more)
        (folder / "doors" / "other.yaml").write_text("name: nothing more\n")
        return found

    monkeypatch.setattr(remembered, "load", load_and_edit)
    assert said("check", "content")[0] == 0
    assert [path.name.partition("-")[0] for path in cache.iterdir()] == ["first"]


def test_json_keeps_all_that_was_read(content: Path) -> None:
    read = load(content)
    assert Reading(read.folder, **json.loads(json.dumps(as_data(read)))) == Reading(read.folder, **as_data(read))


def test_a_remembered_check_waits_for_no_schema(content: Path) -> None:
    told = f"import sys; from configurator.cli import main; main({['check', 'content']!r}, standalone_mode=False)"
    asked = f"{told}; print(sorted({{'pydantic', 'yaml', 'babel', 'PIL'}} & set(sys.modules)))"
    last = [
        subprocess.run([sys.executable, "-c", asked], capture_output=True, text=True, check=True).stdout.splitlines()[
            -1
        ]
        for _ in range(2)
    ]
    assert "pydantic" in last[0]
    assert last[1] == "[]"
