"""Words that help after a slip of the pen."""

from collections.abc import Iterable
from difflib import get_close_matches

from configurator.kernel.message import message, plain, say_phrase
from configurator.kernel.shapes import Message
from configurator.kernel.tongue import ENGLISH


def one_of(known: Iterable[str]) -> str:
    """Return ``a, b or c``."""
    words = list(known)
    if len(words) < 2:
        return "".join(words)
    return f"{', '.join(words[:-1])} or {words[-1]}"


def nearest(written: str, known: Iterable[str]) -> str | None:
    """Return the known word that was probably meant, if one is near."""
    near = get_close_matches(written.lower(), list(known), n=1, cutoff=0.6)
    return near[0] if near else None


def suggestion(written: str, known: Iterable[str]) -> Message:
    """Return ``did you mean 'a'?`` where a known word is near, else the list of those that are known."""
    words = list(known)
    near = nearest(written, words)
    if near:
        return message("did you mean '{near}'?", {"near": [near, "name"]})
    if words:
        return message("known here: {known}", {"known": [", ".join(words), "name"]})
    return plain("none is known here")


def what_to_write(written: str, known: Iterable[str]) -> str:
    """Return :func:`suggestion` in English."""
    return say_phrase(suggestion(written, known), ENGLISH, "in")
