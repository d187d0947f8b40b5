"""A picture of few colors is the same picture as a file, whatever its width."""

import io
import random

import pytest
from PIL import Image

from configurator.drawing.flat_png import MOST_COLORS, flat_png


@pytest.mark.parametrize("size", [(40, 30), (41, 30), (1, 1)])
def test_a_flat_picture_comes_back_pixel_for_pixel(size: tuple[int, int]) -> None:
    dice = random.Random(3)
    image = Image.new("P", size)
    image.putpalette([dice.randrange(256) for _ in range(3 * MOST_COLORS)])
    image.putdata([dice.randrange(MOST_COLORS) for _ in range(size[0] * size[1])])
    with Image.open(io.BytesIO(flat_png(image))) as opened:
        # A damaged part of a file is one that a reader refuses.
        opened.verify()
    with Image.open(io.BytesIO(flat_png(image))) as opened:
        assert opened.format == "PNG"
        assert list(opened.convert("RGB").get_flattened_data()) == list(image.convert("RGB").get_flattened_data())


def test_nothing_but_pixels_is_in_the_file() -> None:
    image = Image.new("P", (4, 4))
    image.putpalette([10, 20, 30])
    image.info["Comment"] = "not for others"
    with Image.open(io.BytesIO(flat_png(image))) as opened:
        opened.load()
        assert opened.info == {}
