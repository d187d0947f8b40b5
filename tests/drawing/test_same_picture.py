"""PNG and SVG are one picture: what Pillow paints of a drawing is what a renderer of SVG makes of its file."""

import io
import re

import numpy as np
import pytest
import resvg_py
from numpy.typing import NDArray
from PIL import Image

from configurator.catalog import Catalog
from configurator.drawing.drawing_palette import colors
from configurator.drawing.png import to_image
from configurator.drawing.svg import to_svg
from configurator.kernel.shapes import Drawing
from tests.drawing.kept_drawings import KEPT
from tests.drawing.starter_drawings import Shown, drawn

ACROSS = 400
# Compared in blocks so large that smoothed edges do not count, px.
BLOCK = 10
# A printed leaf is larger than a block, and pile as dense; in SVG a repeat starts elsewhere.
FIGURED = {"leaf-print", "velvet-moss"}
# How far two pictures may lie apart, of 255: a block at a strong edge, and all blocks in the mean.
MOST, MEAN = 30.0, 1.3


def blocks(image: Image.Image) -> NDArray[np.float64]:
    """Return the colors of a picture, block by block."""
    return np.asarray(image.resize((ACROSS // BLOCK, image.height // BLOCK), Image.Resampling.BOX), dtype=float)


def painted(drawing: Drawing, height: int) -> Image.Image:
    """Return what a renderer makes of a drawing's file, on the ground of our PNG."""
    sizeless = re.sub(r' (width|height)="[0-9.]+mm"', "", to_svg(drawing), count=2)
    found = resvg_py.svg_to_bytes(svg_string=sizeless, width=2 * ACROSS, background=colors()["ground"])
    return Image.open(io.BytesIO(bytes(found))).convert("RGB").resize((ACROSS, height), Image.Resampling.BOX)


@pytest.mark.parametrize("shown", [one for one in KEPT if one.option not in FIGURED], ids=lambda shown: shown.name)
def test_a_drawing_is_one_picture_as_png_and_as_svg(catalog: Catalog, shown: Shown) -> None:
    drawing = drawn(catalog, shown)
    ours = to_image(drawing, ACROSS)
    apart = np.abs(blocks(ours) - blocks(painted(drawing, ours.height)))
    assert apart.max() < MOST
    assert apart.mean() < MEAN
