"""The pictures of a content folder: whether each can be read and shown."""

import warnings
from collections.abc import Iterator
from pathlib import Path

from configurator.catalog.clauses import Clauses
from configurator.catalog.files import SHOWN_ENDINGS, shown
from configurator.catalog.line_drawing import note_drawing
from configurator.catalog.problem import Problem
from configurator.catalog.strays import everything
from configurator.kernel.message import message, plain

# More than a camera takes, less than would fill a memory.
SIDE_MOST = 12_000
PIXELS_MOST = 60_000_000
# A picture longer than this, in its own widths, is a slip of whoever cut it.
LONGEST = 20
UNREAD = (plain("no picture that can be read"), plain("a whole JPEG, PNG or WebP file is expected"))


def note_pictures(folder: Path, named: set[Path], problems: list[Problem]) -> None:
    """Note each picture that cannot be read to its end, is too large, or holds more than a drawing.

    Those that a file has ``named`` have been told of where they stand there.
    """
    for path in picture_files(folder):
        if path in named:
            continue
        if path.suffix.lower() == ".svg":
            note_drawing(path, problems)
        else:
            fault = picture_fault(path)
            if fault:
                problems.append(Problem(shown(path), 0, 0, fault))


def picture_files(folder: Path) -> Iterator[Path]:
    """Yield the pictures and drawings of a folder, wherever in it they lie; links that lead out of it left out."""
    home = folder.resolve()
    for path in everything(folder):
        if path.suffix.lower() in SHOWN_ENDINGS and path.is_file() and path.resolve().is_relative_to(home):
            yield path


def picture_fault(path: Path) -> Clauses:
    """Return what is wrong with a picture; nothing where it can be shown."""
    # A showroom without pictures does not wait for what reads them.
    from PIL import Image

    try:
        with warnings.catch_warnings():
            # How large is too large is said here.
            warnings.simplefilter("ignore", Image.DecompressionBombWarning)
            with Image.open(path) as opened:
                wide, high = opened.size
                if not is_of_size(wide, high):
                    return too_large(wide, high)
                opened.load()
    except (Image.DecompressionBombError, OSError, ValueError, SyntaxError):
        # Pillow raises one of these for a file that is far too large, cut short or spoiled.
        return UNREAD
    return ()


def is_of_size(wide: int, high: int) -> bool:
    """Return whether a picture of so many pixels can be shown."""
    long, short = max(wide, high), min(wide, high)
    return long <= SIDE_MOST and wide * high <= PIXELS_MOST and long <= LONGEST * short


def too_large(wide: int, high: int) -> Clauses:
    """Return that a picture is too large, or far too long for its width."""
    size = message("the picture is {width} x {height} pixels", {"width": [wide, "count"], "height": [high, "count"]})
    most = message(
        "at most {side} a side, and at most {times} times as long as wide, are expected",
        {"side": [SIDE_MOST, "count"], "times": [LONGEST, "count"]},
    )
    return size, most
