"""A language made up for tests: every text of the program between marks, and half as long again."""

import re
from collections.abc import Callable

from configurator.kernel.tongue import ENGLISH, FORMS, Words
from configurator.translating.own_texts import own_texts

OPENED, CLOSED = "⟦", "⟧"


def marked(form: str) -> str:
    """Return a text between the marks."""
    return f"{OPENED}{form}{CLOSED}"


def longer(form: str) -> str:
    """Return a text with half as many letters again, in words of its own length; its terms stay as they are."""
    words = re.findall(r"[A-Za-z]+", re.sub(r"\{\w+\}", "", form))
    return form + "".join(f" {word}" for word in words[::2])


def made_up(change: Callable[[str], str]) -> Words:
    """Return the language in which every text of the program is changed."""
    said = {told.key: FORMS.join(change(form) for form in told.forms) for told in own_texts()}
    return {**ENGLISH, "language": "qq", "said": said}
