"""Sentences in a language: forms for a number of things, terms that are looked up or said as they are."""

import pytest

from configurator.kernel.lengths import write_length, written_length
from configurator.kernel.message import message, say, several
from configurator.kernel.say import say_length
from configurator.kernel.tongue import ENGLISH, FORMS, Words
from configurator.tongues.speech import speech


@pytest.mark.parametrize(
    ("language", "forms", "told"),
    [
        ("ja", ["{count} k"], ["0 k", "1 k", "2 k", "5 k"]),
        ("es", ["{count} a", "{count} b"], ["0 b", "1 a", "2 b", "5 b"]),
        ("pl", ["{count} a", "{count} b", "{count} c"], ["0 c", "1 a", "2 b", "5 c"]),
    ],
)
def test_a_number_of_things_has_the_forms_of_its_language(language: str, forms: list[str], told: list[str]) -> None:
    english = ["{count} rail", "{count} rails"]
    words: Words = {**speech(language), "said": {FORMS.join(english): FORMS.join(forms)}}
    assert [say(several(*english, {"count": [n, "count"]}), words, "mm") for n in (0, 1, 2, 5)] == told


def test_a_name_is_said_as_it_is_and_a_text_in_the_language() -> None:
    words: Words = {**ENGLISH, "said": {"hem": "x"}}
    assert say(message("{name}, {text}", {"name": ["hem", "name"], "text": ["hem", "text"]}), words, "mm") == "Hem, x"


def test_lengths_have_the_decimal_sign_of_their_language() -> None:
    assert say_length(571.5, speech("es"), "mm") == "571,5 mm"
    assert write_length(571.5, speech("es"), "mm") == "571,5"
    assert written_length("571,5", "mm")["mm"] == 571.5
