"""A showroom's languages: every text of the content in them, and what is refused."""

from pathlib import Path
from typing import Annotated, Any, get_args

import pytest

from configurator.catalog import ContentProblems, load
from configurator.catalog.fields import Field
from configurator.catalog.own_language import first_language
from configurator.catalog.page_blocks import page_texts, told_page
from configurator.catalog.schema.door import DoorFile
from configurator.catalog.schema.family import FamilyFile
from configurator.catalog.schema.handle import HandleFile
from configurator.catalog.schema.showroom import ShowroomFile
from configurator.catalog.schema_check import inner_schema

HEAD = 'msgid ""\nmsgstr "Content-Type: text/plain; charset=utf-8\\n"\n\n'
PAGE = "# Head {#a}\n\nOne\nline.  \nTwo.\n\n- item\n\n```drawing\ndoor: x\n```\n\n| a | b |\n|---|---|\n| c | d |\n"


def words(content: Path, text: str, name: str = "es.po") -> Path:
    (content / "words").mkdir(exist_ok=True)
    path = content / "words" / name
    path.write_text(HEAD + text, encoding="utf-8")
    return path


def showroom(content: Path, line: str) -> None:
    path = content / "showroom.yaml"
    path.write_text(line + "\n" + path.read_text(encoding="utf-8"), encoding="utf-8")


def refused(content: Path) -> str:
    with pytest.raises(ContentProblems) as found:
        load(content)
    return str(found.value)


def unmarked(model: Any) -> list[str]:
    found: list[str] = []
    for name, field in model.model_fields.items():
        inner = inner_schema(field.annotation)
        if inner:
            found += unmarked(inner)
        elif holds_text(field.annotation) and not marked([*field.metadata, field.annotation]):
            found.append(f"{model.__name__}.{name}")
    return found


def holds_text(kind: Any) -> bool:
    return kind is str or any(holds_text(part) for part in get_args(kind))


def marked(parts: list[Any]) -> bool:
    return any(isinstance(part, Field) or marked(list(get_args(part))) for part in parts)


@pytest.mark.parametrize("model", [ShowroomFile, DoorFile, HandleFile, FamilyFile])
def test_every_text_field_says_what_it_holds(model: Any) -> None:
    # The numbers of a family hang on its mechanism and are checked after the schema.
    assert [name for name in unmarked(model) if not name.endswith(".numbers")] == []
    assert marked([Annotated[str, Field]]) is False


def test_texts_are_told_and_ids_stay(content: Path) -> None:
    words(content, 'msgid "Garden pair"\nmsgstr "Pareja"\n\nmsgid "Dust it."\nmsgstr "Quitar el polvo."\n')
    told = load(content, "es")
    assert told.words["language"] == "es"
    assert told.doors["garden-pair"]["name"] == told.door_notes["garden-pair"].name == "Pareja"
    assert told.family_notes["cells"].care == ["Quitar el polvo."]
    assert told.family_notes["cells"].summary == "A cellular shade."
    assert load(content).doors["garden-pair"]["name"] == "Garden pair"
    assert [text.text for text in load(content).texts] == [text.text for text in told.texts]


def test_the_first_language_is_that_of_the_site(content: Path) -> None:
    showroom(content, "languages: [en-GB, es]")
    assert load(content).words["language"] == "en-GB"


def test_a_language_that_cannot_be_is_refused(content: Path) -> None:
    showroom(content, "language: en_GB")
    told = refused(content)
    assert "showroom.yaml:1:11: language is 'en_GB'" in told
    assert "did you mean 'en-GB'?" in told


def test_both_keys_and_one_language_twice_are_refused(content: Path) -> None:
    showroom(content, "language: es\nlanguages: [en, es, en]")
    told = refused(content)
    assert "showroom.yaml:2:1: language and languages both stand here" in told
    assert "showroom.yaml:2:21: languages has en twice; keep one" in told


def test_no_language_at_all_is_refused(content: Path) -> None:
    showroom(content, "languages: []")
    assert first_language(content) == "en"
    assert "showroom.yaml:1:12: languages is empty; at least one such as [en, es] is expected" in refused(content)


def test_the_first_language_is_known_before_the_content_is_sound(content: Path) -> None:
    showroom(content, "languages: [es, en]\nunits: yd")
    assert first_language(content) == "es"
    with pytest.raises(ContentProblems) as found:
        load(content)
    assert found.value.words["language"] == "en"
    assert first_language(content / "nowhere") == "en"


def test_a_translation_with_other_terms_is_refused(content: Path) -> None:
    words(content, 'msgid "The {part} stays"\nmsgstr "Queda {parte}"\n')
    assert "es.po:4:1: the translation lacks {part} and has {parte}" in refused(content)


DOORS = 'msgid "{count} door with {part}"\nmsgid_plural "{count} doors with {part}"\n'


def test_the_form_for_one_may_leave_out_the_number_and_nothing_else(content: Path) -> None:
    words(content, f'{DOORS}msgstr[0] "Una puerta con {{part}}"\nmsgstr[1] "{{count}} puertas con {{part}}"\n')
    assert load(content).words["language"] == "en"
    words(content, f'{DOORS}msgstr[0] "Una puerta"\nmsgstr[1] "{{count}} puertas con {{part}}"\n')
    assert "es.po:4:1: the translation lacks {count} and {part}" in refused(content)
    words(content, f'{DOORS}msgstr[0] "Una {{parte}} con {{part}}"\nmsgstr[1] "{{count}} puertas con {{part}}"\n')
    assert "es.po:4:1: the translation lacks {count} and has {parte}" in refused(content)


def test_a_broken_catalog_is_refused_at_its_line(content: Path) -> None:
    words(content, 'msgid "One"\nmsgstr "Uno"\nnonsense\n')
    assert "es.po:6:1: the file is no sound gettext catalog here" in refused(content)


def test_a_misspelt_catalog_is_refused(content: Path) -> None:
    words(content, "", "en-GB.po")
    words(content, "", "spanish.po")
    told = refused(content)
    assert "en-GB.po:1:1: the file is not read; name it en_GB.po" in told
    assert "spanish.po:1:1: the file's name is no language's code" in told


def test_a_page_is_told_block_by_block() -> None:
    texts = ["Head", "One line.\nTwo.", "item", "| a | b |", "| c | d |"]
    assert [text for text, _ in page_texts(PAGE)] == texts
    assert [line for _, line in page_texts(PAGE)] == [1, 3, 7, 13, 15]
    assert told_page(PAGE, lambda text: text) == PAGE
    assert told_page(PAGE, str.upper).startswith("# HEAD {#a}\n\nONE LINE.  \nTWO.\n\n- ITEM\n\n```drawing\ndoor: x")


def test_the_head_of_a_page_is_told_of_with_its_lines() -> None:
    assert list(page_texts("---\ntitle: A\nlede: B\n---\n\nText.\n")) == [("A", 2), ("B", 3), ("Text.", 6)]
