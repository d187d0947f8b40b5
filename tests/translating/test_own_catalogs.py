"""Our own translations: whole, with every term, and of nothing that is no longer said."""

import re
from pathlib import Path

import pytest

from configurator.places import CONTENT
from configurator.tongues.speech import FOLDER, forms_of, key_of, own_catalog, read_catalog, speech
from configurator.translating.own_texts import own_texts, python_texts

CATALOGS = sorted(FOLDER.glob("*.po"))
SAID = {told.key: told for told in own_texts()}


def terms(text: str) -> set[str]:
    """Return the terms that a text names."""
    return set(re.findall(r"\{(\w+)(?:!r)?\}", text))


@pytest.mark.parametrize("path", [*CATALOGS, CONTENT / "words" / "es.po"], ids=lambda path: path.stem)
def test_a_translation_names_the_terms_of_its_sentence(path: Path) -> None:
    entries = [entry for entry in read_catalog(path) if entry.id]
    assert len(entries) > 10
    for entry in entries:
        known = set().union(*(terms(form) for form in forms_of(entry.id)))
        for form in forms_of(entry.string):
            assert terms(form) <= known, entry.id
            english = [terms(one) for one in forms_of(entry.id)]
            assert known - terms(form) <= {"count"} or terms(form) in english or form == "", entry.id


@pytest.mark.parametrize("path", CATALOGS, ids=lambda path: path.stem)
def test_nothing_is_translated_that_is_not_said(path: Path) -> None:
    assert {key_of(entry.id) for entry in read_catalog(path) if entry.id} - SAID.keys() == set()


def test_spanish_is_complete() -> None:
    assert SAID.keys() - speech("es")["said"].keys() == set()


def test_british_english_differs_only_where_it_is_spelled_otherwise() -> None:
    said = speech("en-GB")["said"]
    assert said["the louver"] == "the louvre"
    assert all(one.casefold() != other.casefold() for one, other in said.items())


def test_there_is_no_catalog_of_a_language_that_nobody_has_translated() -> None:
    assert not own_catalog("fr").exists()
    assert speech("fr")["said"] == {}


def test_a_sentence_that_is_added_is_found_with_its_forms() -> None:
    source = 'told = several("one {x}", "{count} of {x}", terms)\nname = wording("a hem" if thin else "a rail")\n'
    found = [told.forms for told in python_texts(source, "added.py")]
    assert found == [("one {x}", "{count} of {x}"), ("a hem",), ("a rail",)]


def test_a_formula_without_words_is_not_to_be_translated() -> None:
    assert list(python_texts('working("", "max(0, {most} - {least})", terms)\n', "added.py")) == []
