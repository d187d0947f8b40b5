"""The answers that are kept are those that the kernel gives today."""

import pytest

from configurator.catalog import load
from configurator.places import CONTENT
from tests.kernel.starter_answers import FOLDER, answers_of, kept_answers

CATALOG = load(CONTENT)


@pytest.mark.parametrize("name", CATALOG.families)
def test_a_kept_answer_has_not_moved(name: str) -> None:
    now = answers_of(CATALOG, list(CATALOG.families).index(name), CATALOG.families[name])
    kept = (FOLDER / f"{name}.txt").read_text(encoding="utf-8")
    assert now.splitlines() == kept.splitlines(), "if it is meant, `python -m tests.kernel.starter_answers`"


def test_every_family_s_answers_are_kept_and_no_others() -> None:
    assert {file.name for file in FOLDER.iterdir()} == set(kept_answers(CATALOG))
