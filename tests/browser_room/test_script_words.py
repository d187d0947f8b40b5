"""What page scripts say is put into a language where it stands."""

import json
import re

import pytest

from configurator.browser.script_words import in_language
from configurator.kernel.tongue import ENGLISH, FORMS, Words, in_form

MANY = '_several("{count} door", "{count} doors", { count: 2 })'
MANY_KEY = FORMS.join(["{count} door", "{count} doors"])


def language(said: dict[str, str], plural: list[int]) -> Words:
    """Return a made-up language."""
    return {**ENGLISH, "language": "x-made", "said": said, "plural": plural}


def written(source: str, words: Words) -> str:
    """Return a script in a language."""
    return in_language(source.encode(), words).decode()


def test_what_is_translated_is_replaced_and_all_else_is_kept() -> None:
    words = language({"Take care": "Gib acht", "Close": "Zu"}, [0])
    source = 'const a = _("Take care", { b: _("Close") }) + "Close" + _("Open"); // über'
    assert written(source, words) == 'const a = _("Gib acht", { b: _("Zu") }) + "Close" + _("Open"); // über'


@pytest.mark.parametrize("text", ['say "no"', "it's", "back\\slash", "two\nlines", "„Tür“ 門"])
def test_any_text_survives_its_quotes(text: str) -> None:
    found = re.fullmatch(r"_\((.*)\)", written('_("Take care")', language({"Take care": text}, [0])))
    assert found
    assert json.loads(found[1]) == text


def test_a_key_in_either_quotes_is_found() -> None:
    words = language({"It's": "Es ist", 'A "b"': "Ein b"}, [0])
    assert written("""_("It's") + _('A "b"') + _("A \\"b\\"")""", words) == '_("Es ist") + _("Ein b") + _("Ein b")'


@pytest.mark.parametrize(
    ("forms", "plural", "told"),
    [
        (["{count} a"], [0], ["{count} a", "{count} a", "{count} a"]),
        (["{count} a", "{count} b"], [1, 0, 1], ["{count} a", "{count} b", "{count} b"]),
        (["{count} a", "{count} b", "{count} c"], [2, 0, 1, 1, 1, 2], ["{count} a", "{count} b", "{count} c"]),
    ],
)
def test_as_many_forms_as_the_language_has(forms: list[str], plural: list[int], told: list[str]) -> None:
    words = language({MANY_KEY: FORMS.join(forms)}, plural)
    texts = re.fullmatch(r'_several\((".*?"), (".*?"), \{ count: 2 \}\)', written(MANY, words))
    assert texts
    joined = FORMS.join([json.loads(texts[1]), json.loads(texts[2])])
    assert [in_form(joined, count, {**words, "said": {}}) for count in (1, 2, 5)] == told


def test_english_stays_as_it_is() -> None:
    assert written(MANY, ENGLISH) == MANY
