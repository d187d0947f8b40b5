"""What the commands say in Spanish where they are called wrongly or the content is wrong, click's own words too."""

import ast
import re
from pathlib import Path

import click
import pytest
from click.testing import CliRunner, Result

from configurator.cli import main
from configurator.places import CONTENT
from configurator.spoken_click import CLICK_SAYS

ENGLISH = re.compile(
    r"\b(?:is|are|the|an|and|or|no such|missing|invalid|expected|usage|try|options|did you|default)\b", re.I
)
SLIPS = {
    "an unknown option": ("check", "--bogus"),
    "an option that is nearly one": ("fit", "--familly", "x"),
    "an unknown option of all": ("--bogus", "check"),
    "an unknown command": ("chek",),
    "no command": (),
    "a missing argument": ("new",),
    "a missing option": ("draw",),
    "a missing value": ("fit", "--door"),
    "too many arguments": ("build", str(CONTENT), "out", "more"),
    "a value that is none of a few": ("draw", "--view", "cube", "-o", "it.svg"),
    "a value that is no number": ("serve", "--port", "many"),
    "a value out of its range": ("serve", "--port", "70000"),
    "a folder that is not there": ("check", "nowhere"),
    "a file for a folder": ("check", "file.txt"),
    "a folder for a file": ("draw", "-o", "."),
    "a position that is none": ("fit", "--at", "half"),
    "a door that is none": ("fit", "--family", "roller-shade", "--door", "gate"),
    "no family": ("fit",),
    "a choice that is none": ("fit", "--family", "roller-shade", "--door", "garden-pair", "--choice", "x"),
    "a language that is none": ("words", "english"),
    "a folder that is full": ("new", "full"),
    "a site where something else is": ("build", str(CONTENT), "full"),
    "a name that is too long": ("draw", "--family", "roller-shade", "--door", "garden-pair", "-o", "n" * 300 + ".svg"),
    "a file where none can be": ("draw", "--family", "roller-shade", "--door", "garden-pair", "-o", "lost/it.svg"),
}
# What click can say and no command of ours comes to: prompts, other kinds of value, and what programmers meet.
UNHEARD = re.compile(
    r"deprecated|Deprecat|defined twice|env var|dynamic|confirm|continue|Could not open|unknown error|Missing param"
    r"|Missing \{|Invalid start|takes \{nargs\}|Value must|Takes \{nargs\}|Choose from|Choice\(|UUID|does not match"
    r"|float range|writable|executable|Positional|version|boolean|^(?:file|directory|path)$|on the command line"
    r"|Show (?:this message|the version)|be combined|cannot be used|not iterable|Name '|Arguments take"
    r"|Could not determine|declare an argument|values are required",
    re.I,
)


@pytest.fixture(autouse=True)
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Work in a folder that holds a file, and a folder with something in it."""
    (tmp_path / "file.txt").write_text("", encoding="utf-8")
    (tmp_path / "full").mkdir()
    (tmp_path / "full" / "letter.txt").write_text("", encoding="utf-8")
    monkeypatch.chdir(tmp_path)
    return tmp_path


def run(*arguments: str) -> Result:
    """Run a command, its lines so wide that none is broken."""
    return CliRunner().invoke(main, arguments, terminal_width=1000)


def words_of(told: str, *written: str) -> str:
    """Return what a command said without what was written to it, what stands in quotes and the ids that it lists."""
    plain = re.sub(r"'[^']*'|--[\w-]+|(?<=conocen: ).*", "", told)
    for word in (*written, str(CONTENT)):
        plain = plain.replace(word, "")
    return plain


@pytest.mark.parametrize("slip", SLIPS.values(), ids=SLIPS.keys())
def test_a_slip_is_told_in_spanish_wherever_the_language_stands(slip: tuple[str, ...]) -> None:
    first, last, english = run("--language", "es", *slip), run(*slip, "--language=es"), run(*slip)
    assert first.stderr == last.stderr
    assert first.exit_code == last.exit_code == english.exit_code > 0
    assert first.stderr != english.stderr
    assert ENGLISH.findall(words_of(first.stderr, *slip)) == []


def test_wrong_content_is_told_in_spanish_when_asked_and_when_it_is_spanish(folder: Path) -> None:
    assert run("--language", "es", "new", "mine").stdout.startswith("Se creó mine.")
    showroom = folder / "mine" / "showroom.yaml"
    sound = showroom.read_text(encoding="utf-8")
    showroom.write_text(sound.replace("units: in", "units: yd"), encoding="utf-8")
    assert run("check", "mine").stderr.endswith("units is 'yd'; in or mm is expected\n")
    assert run("check", "mine", "--language", "es").stderr.endswith("units es 'yd'; se espera in o mm\n")
    text = re.sub(r"^languages?:.*\n", "", sound, flags=re.M).replace("units: in", "language: es\nunits: yd")
    showroom.write_text(text, encoding="utf-8")
    for command in ("check", "build"):
        assert run(command, "mine").stderr.endswith("units es 'yd'; se espera in o mm\n")


def test_what_a_command_speaks_is_forgotten_by_the_next() -> None:
    assert "Uso:" in run("--language", "es", "check", "--bogus").stderr
    assert "Usage:" in run("check", "--bogus").stderr


def gettext_texts(path: Path) -> set[str]:
    """Return each text that a file of click looks up with gettext."""
    calls = [node for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))) if isinstance(node, ast.Call)]
    lookups = [call for call in calls if isinstance(call.func, ast.Name) and call.func.id in ("_", "ngettext")]
    texts = [argument.value for call in lookups for argument in call.args if isinstance(argument, ast.Constant)]
    return {str(text) for text in texts}


def test_every_text_of_click_that_a_command_may_say_is_ours_to_translate() -> None:
    place = Path(click.__file__).parent
    names = ("core", "exceptions", "types", "parser", "formatting")
    said = set().union(*(gettext_texts(place / f"{name}.py") for name in names))
    ours = {form for text in CLICK_SAYS for form in text.split("\0")}
    assert {text for text in said - ours if not UNHEARD.search(text)} == set()
    assert ours - said == {"required"}
