"""Swatches: a small square of cloth, wood or metal in a color."""

import io
from collections.abc import Callable
from functools import cache

from PIL import Image

from configurator.drawing.png import rgb

SIDE = 104
MIDDLE = 128
Texture = Callable[[int, int], float]


def woven(x: int, y: int) -> float:
    """Return the shade of a plain weave: each thread passes over one and under the next."""
    over = (x // 3 + y // 3) % 2 == 0
    across = x % 3 if over else y % 3
    return (0.02, 0.05, -0.07)[across] + (0.015 if over else -0.015)


def grained(x: int, y: int) -> float:
    """Return the shade of straight-grained wood, its rings some way apart."""
    ring = (x + (y * y) // 900) * 7 % 23
    return (-0.09 if ring < 3 else -0.03 if ring < 7 else 0.02) + (0.02 if (y * 5 + x) % 41 == 0 else 0.0)


def brushed(x: int, y: int) -> float:
    """Return the shade of brushed metal: fine level strokes and one soft light."""
    stroke = (y * 13) % 7
    return (stroke - 3) * 0.012 + max(0.0, 0.12 - abs(x - SIDE / 3) / SIDE * 0.3)


TEXTURES: dict[str, Texture] = {"cloth": woven, "wood": grained, "metal": brushed}


@cache
def relief(material: str) -> Image.Image:
    """Return a material's shades as gray levels around the middle one."""
    texture = TEXTURES[material]
    image = Image.new("L", (SIDE, SIDE))
    image.putdata([MIDDLE + round(texture(x, y) * 255) for y in range(SIDE) for x in range(SIDE)])
    return image


def shaded(part: int) -> list[int]:
    """Return what each gray level makes of one part of a color."""
    return [max(0, min(255, part + level - MIDDLE)) for level in range(256)]


def swatch_png(color: str, material: str) -> bytes:
    """Return a swatch of ``#rrggbb`` as PNG; ``material`` is ``cloth``, ``wood`` or ``metal``."""
    parts = [relief(material).point(shaded(part)) for part in rgb(color)]
    image = Image.merge("RGB", parts)
    out = io.BytesIO()
    image.quantize(16, Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE).save(out, "PNG", compress_level=9)
    return out.getvalue()
