"""A picture of few colors is the same picture as a file, whatever its width and of however many strips it is made."""

import io
import random
import struct
import zlib
from itertools import pairwise

import pytest
from PIL import Image

from configurator.drawing.flat_png import MOST_COLORS, flat_png, strip_of

COLORS = [random.Random(5).randrange(256) for _ in range(3 * MOST_COLORS)]


def speckled(size: tuple[int, int]) -> Image.Image:
    """Return a picture of all colors; the same size gives the same picture."""
    dice = random.Random(3)
    image = Image.new("P", size)
    image.putpalette(COLORS)
    image.putdata([dice.randrange(MOST_COLORS) for _ in range(size[0] * size[1])])
    return image


def opened(file: bytes) -> Image.Image:
    """Return the picture of a file, of which no part is damaged."""
    Image.open(io.BytesIO(file)).verify()
    image = Image.open(io.BytesIO(file))
    image.load()
    return image


@pytest.mark.parametrize("cuts", [(0, 30), (0, 1, 17, 30)])
@pytest.mark.parametrize("wide", [40, 41, 1])
def test_a_flat_picture_comes_back_pixel_for_pixel(wide: int, cuts: tuple[int, ...]) -> None:
    image = speckled((wide, cuts[-1]))
    strips = [strip_of(image.crop((0, top, wide, foot))) for top, foot in pairwise(cuts)]
    shown = opened(flat_png(strips, COLORS))
    assert shown.format == "PNG"
    assert shown.size == image.size
    assert shown.convert("RGB").tobytes() == image.convert("RGB").tobytes()


def test_strips_are_packed_whole_however_often_they_come() -> None:
    strip = strip_of(speckled((600, 200)))
    file = flat_png([strip] * 4, COLORS)
    at = file.index(b"IDAT")
    (length,) = struct.unpack(">I", file[at - 4 : at])
    # Pillow takes what it needs and compares no sum; this does.
    assert zlib.decompress(file[at + 4 : at + 4 + length]) == strip.rows * 4
    shown = opened(file)
    assert [shown.crop((0, top, 600, top + 200)).tobytes() for top in range(0, 800, 200)] == [
        speckled((600, 200)).tobytes()
    ] * 4


def test_nothing_but_pixels_is_in_the_file() -> None:
    image = speckled((4, 4))
    image.info["Comment"] = "not for others"
    assert opened(flat_png([strip_of(image)], COLORS)).info == {}
