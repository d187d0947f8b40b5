"""The forms of a sentence about a number of things, by the rule of each language."""

import pytest

from configurator.kernel.message import say, several
from configurator.kernel.say import say_value
from configurator.kernel.tongue import ENGLISH, FORMS, Words
from configurator.tongues.speech import locale_of, plural_places, regional, speech

ONE, MANY = "{count} brick", "{count} bricks"


def told(count: int, words: Words) -> str:
    return say(several(ONE, MANY, {"count": [count, "count"]}), words, "in")


@pytest.mark.parametrize(("count", "said"), [(0, "0 bricks"), (1, "1 brick"), (2, "2 bricks"), (101, "101 bricks")])
def test_english_has_a_form_for_one_and_one_for_any_other_number(count: int, said: str) -> None:
    assert told(count, ENGLISH) == said


@pytest.mark.parametrize(
    ("language", "forms", "expected"),
    [
        # From memory: French counts nothing as one; Polish has forms for one, for few and for many; Japanese one alone.
        ("fr", ["{count} brique", "{count} briques"], {0: "0 brique", 1: "1 brique", 2: "2 briques"}),
        (
            "pl",
            ["{count} cegła", "{count} cegły", "{count} cegieł"],
            {
                1: "1 cegła",
                2: "2 cegły",
                5: "5 cegieł",
                12: "12 cegieł",
                22: "22 cegły",
                102: "102 cegły",
                312: "312 cegieł",
            },
        ),
        ("ja", ["煉瓦 {count}"], {1: "煉瓦 1", 7: "煉瓦 7"}),
    ],
)
def test_each_language_has_forms_of_its_own(language: str, forms: list[str], expected: dict[int, str]) -> None:
    words: Words = {
        **ENGLISH,
        "said": {ONE + FORMS + MANY: FORMS.join(forms)},
        "plural": plural_places(locale_of(language)),
    }
    assert {count: told(count, words) for count in expected} == expected


def test_numbers_are_written_with_the_decimal_sign_of_the_language() -> None:
    assert speech("es")["decimal"] == ","
    assert speech("en-GB")["decimal"] == "."


def test_what_is_no_language_says_what_to_write() -> None:
    with pytest.raises(ValueError, match="xx-nowhere is no language's code; such as en, es or en-GB is expected"):
        speech("xx-nowhere")


@pytest.mark.parametrize(
    ("language", "said"),
    # From memory: Spanish and French part the sign from its number, English and Japanese do not, Turkish has it first.
    [("es", "45,5 %"), ("fr", "45,5 %"), ("en-GB", "45.5%"), ("ja", "45.5%"), ("tr", "%45,5")],
)
def test_shares_are_written_as_the_language_writes_them(language: str, said: str) -> None:
    assert say_value(0.455, "share", speech(language), "mm") == said


@pytest.mark.parametrize(
    ("language", "told"), [("en", "en_US"), ("en-GB", "en_GB"), ("es", "es_ES"), ("pt-BR", "pt_BR"), ("eo", "eo")]
)
def test_a_language_is_told_with_its_country(language: str, told: str) -> None:
    assert regional(language) == told
