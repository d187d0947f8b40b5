"""The commands in another language: a made-up one, in which every text of ours stands between marks."""

import json
import re
from dataclasses import replace
from pathlib import Path

import pytest
from click.testing import CliRunner, Result

from configurator.catalog import Catalog, Wanted, load
from configurator.cli import main
from configurator.kernel.tongue import ENGLISH, FORMS, Words
from configurator.remembered import words_of
from configurator.translating.own_texts import own_texts

FIT = ("fit", "--door", "garden-pair", "--family", "banded-shade")
MARKED: Words = {
    **ENGLISH,
    "language": "qq",
    "decimal": ",",
    "said": {told.key: FORMS.join(f"⟦{form}⟧" for form in told.forms) for told in own_texts()},
}


def load_made_up(folder: Path, code: str | None, wanted: Wanted | None = None) -> Catalog:
    """Return a catalog, in the made-up language where that is asked for."""
    return replace(load(folder, None, wanted), words=MARKED) if code == "qq" else load(folder, code, wanted)


@pytest.fixture(autouse=True)
def made_up(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    """Know the made-up language, and work in an empty folder."""
    for reader in ("asked", "remembered"):
        monkeypatch.setattr(f"configurator.{reader}.load", load_made_up)
    monkeypatch.setattr("configurator.spoken_help.words_of", lambda code: MARKED if code == "qq" else words_of(code))
    monkeypatch.chdir(tmp_path)


def run(*arguments: str) -> Result:
    """Run a command."""
    return CliRunner().invoke(main, arguments)


@pytest.mark.parametrize("command", ["build", "check", "serve", "demo", "fit", "draw", "new"])
def test_the_help_is_spoken(command: str) -> None:
    told = run("--language", "qq", command, "--help").stdout
    assert told.startswith("⟦Usage:⟧")
    assert "⟦Options⟧" in told
    assert told.count("⟦") == told.count("⟧") > 3
    assert "⟦Show this message" in told


def test_the_list_of_commands_is_spoken() -> None:
    assert "⟦Commands⟧" in run("--language", "qq", "--help").stdout


def test_check_and_new_are_spoken() -> None:
    assert run("--language", "qq", "new", "mine").stdout.startswith("⟦Started mine.")
    told = run("--language", "qq", "check", "mine")
    assert re.search(r"⟦\d+ doors⟧, ⟦\d+ handles⟧", told.stdout)
    assert "⟦no problem found.⟧" in told.stdout


def test_a_fit_is_spoken() -> None:
    told = run("--language", "qq", *FIT, "--at", "open").stdout
    headings = [line for line in told.splitlines() if line and not line.startswith(" ")]
    assert all("⟦" in line for line in headings), headings
    # A choice's names are the content's; all other lines that are set in by two begin with a name of ours.
    figures = told.split("⟦Figures⟧")[1].split("⟦Cautions⟧")[0].splitlines()
    assert [line for line in figures if re.match("  [^ ⟦]", line)] == []


def test_json_has_the_same_keys_and_numbers_in_every_language() -> None:
    ours, theirs = json.loads(run(*FIT, "--json").stdout), json.loads(run("--language", "qq", *FIT, "--json").stdout)
    assert list(ours) == list(theirs)
    assert ours["pieces"] == theirs["pieces"]
    for name, figure in ours["figures"].items():
        assert figure["value"] == theirs["figures"][name]["value"]
        assert theirs["figures"][name]["name"].startswith("⟦")


@pytest.mark.parametrize(
    "slip",
    [
        ("fit", "--door", "garden-pairx", "--family", "banded-shade"),
        ("fit", "--door", "garden-pair"),
        (*FIT, "--choice", "head"),
        (*FIT, "--at", "half"),
        ("fit", "--all"),
        ("draw", *FIT[1:], "-o", "it.pdf"),
    ],
)
def test_a_slip_is_spoken_with_the_same_exit_code(slip: tuple[str, ...]) -> None:
    told = run("--language", "qq", *slip)
    assert told.exit_code == run(*slip).exit_code == 2
    assert "⟦" in told.stderr.split("Error: ")[1]


def test_a_drawing_is_spoken() -> None:
    assert run("--language", "qq", "draw", *FIT[1:], "-o", "it.svg").stdout == "⟦Drew it.svg.⟧\n"
    assert "⟦" in Path("it.svg").read_text()


def test_a_code_of_no_language_is_told_with_what_to_write() -> None:
    told = run("--language", "q1", "check")
    assert told.exit_code == 2
    assert "q1 is no language's code; such as en, es or en-GB is expected" in " ".join(told.stderr.split())


def test_a_language_without_translations_writes_its_decimals() -> None:
    assert re.search(r"\d,\d+ mm", run("--language", "es", *FIT, "--units", "mm").stdout)
