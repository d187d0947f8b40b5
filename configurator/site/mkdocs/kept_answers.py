"""What a build has worked out, kept for the next process that builds the same showroom with the same code."""

from pathlib import Path

from configurator.cache.entries import MOST, keep
from configurator.cache.pack import Pack
from configurator.cache.stamps import Unstamped, is_own_code, own_code, stamp_of
from configurator.site.answers import Answers

# Of bytes: beyond that, what a build has not used is dropped.
ENOUGH = MOST // 3


def pack_name(content: Path) -> str:
    """Return under which name a showroom's answers are kept: that of its place, and of our code; nothing where none can
    be told. Each answer in it is kept under what it was worked out from."""
    try:
        return f"answers-{stamp_of(own_code(), str(content.resolve()))}"
    except Unstamped:
        return ""


def known_answers(content: Path) -> Answers:
    """Return a memory of what an earlier process has worked out for a showroom."""
    return Answers(Pack(pack_name(content)))


def keep_answers(answers: Answers, content: Path) -> None:
    """Keep what has been worked out, unless our code has changed since this process began."""
    name = pack_name(content)
    if name and is_own_code():
        pack = answers.pack(ENOUGH)
        if pack is not None:
            keep(name, pack)
