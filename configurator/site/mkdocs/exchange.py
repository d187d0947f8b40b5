"""Two folders trade places at one stroke, where the system can do that."""

import ctypes
import os
import sys
from pathlib import Path

# From the systems' own headers: <fcntl.h> and <linux/fs.h> of Linux, <sys/stdio.h> of macOS.
AT_FDCWD = -100
RENAME_EXCHANGE = 2
RENAME_SWAP = 2


def exchanged(one: Path, other: Path) -> bool:
    """Have two folders that are there trade places; return whether they did."""
    system = ctypes.CDLL(None)
    first, second = os.fsencode(one), os.fsencode(other)
    try:
        if sys.platform == "darwin":
            return bool(system.renamex_np(first, second, RENAME_SWAP) == 0)
        return bool(system.renameat2(AT_FDCWD, first, AT_FDCWD, second, RENAME_EXCHANGE) == 0)
    except AttributeError:
        # A system library without it.
        return False
