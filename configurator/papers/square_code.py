"""An address as a QR code (ISO/IEC 18004): runs of dark squares, to be filled by whoever draws them."""

from itertools import groupby
from typing import NamedTuple

import segno

# Mm of paper, the quiet zone included.
CODE_WIDE = 34.0
# The clear squares that the standard wants on each side.
QUIET = 4
# A larger code no longer reads well from a sheet of paper.
LARGEST = 25


class SquareCode(NamedTuple):
    """How many squares it is wide, quiet zone included, and its dark runs: the first square, the row, how many."""

    size: int
    runs: list[tuple[int, int, int]]


def square_code(address: str) -> SquareCode | None:
    """Return the code of a web address; nothing of what is none, such as a bare link, or is too long to be read."""
    if not address.startswith(("https://", "http://")):
        return None
    try:
        drawn = segno.make_qr(address, error="m", boost_error=False)
    except segno.DataOverflowError:
        return None
    if int(drawn.version) > LARGEST:
        return None
    rows = list(drawn.matrix)
    runs = [(start, down + QUIET, long) for down, row in enumerate(rows) for start, long in dark_runs(row)]
    return SquareCode(len(rows) + 2 * QUIET, runs)


def dark_runs(row: bytearray) -> list[tuple[int, int]]:
    """Return where each run of dark squares begins, behind the quiet zone, and how long it is."""
    runs: list[tuple[int, int]] = []
    at = QUIET
    for dark, squares in groupby(row):
        long = len(list(squares))
        if dark:
            runs.append((at, long))
        at += long
    return runs
