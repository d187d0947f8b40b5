"""A sentence added to the kernel in a copy of the house, with its translation, is said by Python and by the scripts."""

import json
import os
import shutil
import subprocess
import sys
from pathlib import Path
from typing import Any

import pytest

HOUSE = Path(__file__).resolve().parents[2]
FILE = "configurator/kernel/questions/child.py"
BEFORE = "No cord and no loop is left within reach."
ADDED = "Whatever raises it stays inside, so nothing hangs down."
SPANISH = "Lo que la sube queda dentro, así que nada cuelga."
SAYS = """\
import json
from configurator.kernel.message import say
from configurator.kernel.questions.child import child_verdict
from configurator.kernel.tongue import ENGLISH
from configurator.tongues.speech import speech
from configurator.translating.own_texts import own_texts

spanish = speech("es")
why = child_verdict({"cord_length": 0, "loop_length": 0})["why"]
missing = sorted({told.key for told in own_texts()} - set(spanish["said"]))
print(json.dumps({"says": [say(why, words, "mm") for words in (ENGLISH, spanish)], "missing": missing}))
"""
SCRIPTS = """\
import json
from configurator.browser.script import configurator_scripts
from configurator.kernel.tongue import ENGLISH
from configurator.places import THEMES
from configurator.tongues.speech import speech

print(json.dumps({words["language"]: "".join(configurator_scripts(THEMES / "shared" / "js", words).values())
    for words in (ENGLISH, speech("es"))}))
"""


@pytest.fixture(scope="module")
def house(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A copy of the house in which one sentence of the kernel is another."""
    folder = tmp_path_factory.mktemp("house")
    for room in ("configurator", "themes"):
        shutil.copytree(HOUSE / room, folder / room, ignore=shutil.ignore_patterns("__pycache__"))
    source = (folder / FILE).read_text(encoding="utf-8")
    assert source.count(BEFORE) == 1
    (folder / FILE).write_text(source.replace(BEFORE, ADDED), encoding="utf-8")
    return folder


def told_by(house: Path, asked: str) -> dict[str, Any]:
    """Return what the copy answers to :data:`SAYS` or :data:`SCRIPTS`."""
    run = [sys.executable, "-c", asked]
    env = {**os.environ, "PYTHONPATH": str(house)}
    done = subprocess.run(run, cwd=house, env=env, capture_output=True, text=True, check=False)
    assert done.returncode == 0, done.stderr
    found: dict[str, Any] = json.loads(done.stdout)
    return found


def test_an_added_sentence_is_missed_until_it_is_translated_and_then_said_everywhere(house: Path) -> None:
    before = told_by(house, SAYS)
    assert before["missing"] == [ADDED]
    assert before["says"] == [ADDED, ADDED]
    with (house / "configurator" / "tongues" / "es.po").open("a", encoding="utf-8") as catalog:
        catalog.write(f'\nmsgid "{ADDED}"\nmsgstr "{SPANISH}"\n')
    after = told_by(house, SAYS)
    assert after["missing"] == []
    assert after["says"] == [ADDED, SPANISH]
    scripts = told_by(house, SCRIPTS)
    for language, own, other in (("en", ADDED, SPANISH), ("es", SPANISH, ADDED)):
        assert own in scripts[language]
        assert other not in scripts[language]
