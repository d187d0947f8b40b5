"""How pages set plain words, printed and on the screen alike."""

import pytest

from configurator.kernel.typeset import typeset
from tests.words import SET


@pytest.mark.parametrize(("plain", "shown"), SET.items())
def test_words_are_set(plain: str, shown: str) -> None:
    assert typeset(plain) == shown.replace("~", "\u00a0")
