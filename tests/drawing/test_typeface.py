"""Words on cards and pictures: no letter of a European language shows as a box."""

import pytest

from configurator.drawing.typeface import typeface

# Sentences and names that use the letters which each alphabet adds to the plain ones, and the signs of measures.
WRITTEN = [
    "Haus & Tür, Größe, ÄÖÜ",
    "Ça, œuvre, naïveté, août, señor, coração, perché, més",
    "Þórður æði, blåbær, smørrebrød, åäö, õhk, Ħġż",
    "zażółć gęślą jaźń, příliš žluťoučký kůň, ľúbi, đakovo, őrült űr, ștețul",
    "ģimenes ķēde, ņemt, ļoti, ąčęėįšųūž, ğüşıİ, ŵŷ",
    "Καλημέρα, πόρτα Άέήίόύώ, дверь, ґанок їжак, ђак љубав њива ћуран џеп, ў",
    "≈ × ÷ ± − ½ ¼ ¾ ⅛ ° ″ ′ – — … “ ” ‘ ’ « » € £",
]


def drawn(letter: str) -> bytes:
    """Return the letter's pixels."""
    return bytes(typeface(40).getmask(letter))


@pytest.mark.parametrize("written", WRITTEN)
def test_every_letter_is_drawn(written: str) -> None:
    box = drawn("\U000fffff")
    assert [letter for letter in written if letter != " " and drawn(letter) == box] == []
