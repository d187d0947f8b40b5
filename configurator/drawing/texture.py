"""A look as a bitmap: its color with the tile of its weave, as fine as the picture can show."""

from functools import lru_cache
from itertools import pairwise
from typing import cast

from PIL import Image, ImageDraw

from configurator.drawing.rgb import Color, rgb
from configurator.kernel.shapes import Mark
from configurator.kernel.views.tones import SHADE
from configurator.kernel.views.weaves import weave_tile

# A tile is drawn this many times as large as it is wanted and made small, so that its edges are soft.
FINER = 4
# What a weave's largest figure must measure in pixels, at its narrowest and in all, to be more than a speckle.
FIGURE_ACROSS, FIGURE_AREA = 6, 20
BLACK, WHITE = (0, 0, 0), (255, 255, 255)


def toned(image: Image.Image, marks: list[Mark], scale: float) -> None:
    """Lay a tile's light and shade over an image, ``scale`` pixels to a millimeter."""
    glaze = ImageDraw.Draw(image, "RGBA")
    for mark in marks:
        flat = mark["points"]
        points = [(flat[at] * scale, flat[at + 1] * scale) for at in range(0, len(flat), 2)]
        glaze.polygon(points, fill=(*(BLACK if mark["role"] == SHADE else WHITE), round(mark["fade"] * 255)))


def shows(mark: Mark, pixels: float) -> bool:
    """Return whether a mark of a tile is large enough to be told as a figure."""
    across, down = mark["points"][::2], mark["points"][1::2]
    corners = list(zip(across, down, strict=True))
    area = sum(x0 * y1 - x1 * y0 for (x0, y0), (x1, y1) in pairwise([*corners, corners[0]])) / 2
    narrow = min(max(across) - min(across), max(down) - min(down))
    return narrow * pixels >= FIGURE_ACROSS and abs(area) * pixels * pixels >= FIGURE_AREA


@lru_cache(maxsize=64)
def tile_image(color: str, weave: str, pixels: float) -> Image.Image:
    """Return one repeat of a weave in ``#rrggbb``, ``pixels`` to a millimeter; one pixel where that is too small."""
    tile = weave_tile(weave)
    across = max(1, round(tile["width"] * pixels))
    down = max(1, round(tile["height"] * pixels))
    large = (across * FINER, down * FINER)
    image = Image.new("RGB", large, rgb(color))
    toned(image, tile["marks"], large[0] / tile["width"])
    small = (across, down) if any(shows(mark, pixels) for mark in tile["marks"]) else (1, 1)
    return image.resize(small, Image.Resampling.BOX)


class Texture:
    """A surface as large as a picture, covered with a weave from its upper left corner, once it is wanted."""

    def __init__(self, color: str, weave: str, pixels: float) -> None:
        self.tile = tile_image(color, weave, pixels)
        # The one color of what is too fine or too smooth to show; None where there is more to see.
        self.even = cast(Color, self.tile.getpixel((0, 0))) if self.tile.size == (1, 1) else None

    def crop(self, box: tuple[int, int, int, int]) -> Image.Image:
        """Return what of the surface lies in a box of the picture."""
        left, top, right, foot = box
        wide, high = self.tile.size
        surface = Image.new("RGB", (right - left, foot - top))
        for y in range(top - top % high, foot, high):
            for x in range(left - left % wide, right, wide):
                surface.paste(self.tile, (x - left, y - top))
        return surface
