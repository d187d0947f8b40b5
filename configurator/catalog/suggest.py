"""Words that help after a slip of the pen."""

from collections.abc import Iterable
from difflib import get_close_matches

from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Message


def nearest(written: str, known: Iterable[str]) -> str | None:
    """Return the known word that was probably meant, if one is near."""
    near = get_close_matches(written.lower(), list(known), n=1, cutoff=0.6)
    return near[0] if near else None


def did_you_mean(near: str) -> Message:
    """Return the clause that offers a known word."""
    return message("did you mean '{near}'?", {"near": [near, "name"]})


def suggestion(written: str, known: Iterable[str]) -> Message:
    """Return ``did you mean 'a'?`` where a known word is near, else the list of those that are known."""
    words = list(known)
    near = nearest(written, words)
    if near:
        return did_you_mean(near)
    if words:
        return message("known here: {known}", {"known": [", ".join(words), "name"]})
    return plain("none is known here")
