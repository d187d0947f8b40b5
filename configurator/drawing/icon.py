"""Icons of a site: the showroom's logo where it is a bitmap, else a lit door in the showroom's colors."""

import io
from pathlib import Path

from PIL import Image, ImageDraw

from configurator.drawing.rgb import Color, rgb

OVERSAMPLING = 4
# The door in parts of the icon's side: frame, glass and the covering over its upper third.
FRAME = (0.22, 0.1, 0.78, 0.92)
GLASS = (0.33, 0.21, 0.67, 0.72)
COVERING = (0.33, 0.21, 0.67, 0.38)
LINE = 0.06


def icon(side: int, paper: Color, ink: Color, warm: Color, cool: Color) -> Image.Image:
    """Return the door as a square picture."""
    whole = side * OVERSAMPLING
    image = Image.new("RGB", (whole, whole), paper)
    brush = ImageDraw.Draw(image)
    line = max(1, round(LINE * whole))

    def at(box: tuple[float, float, float, float]) -> tuple[int, int, int, int]:
        left, top, right, bottom = (round(part * whole) for part in box)
        return left, top, right, bottom

    brush.rectangle(at(FRAME), outline=ink, width=line)
    brush.rectangle(at(GLASS), fill=warm)
    brush.rectangle(at(COVERING), fill=cool)
    brush.line((round(0.1 * whole), round(0.92 * whole), round(0.9 * whole), round(0.92 * whole)), fill=ink, width=line)
    return image.reduce(OVERSAMPLING)


def logo_icon(logo: Path, side: int, paper: Color) -> Image.Image:
    """Return a bitmap logo in the middle of a square of paper."""
    square = Image.new("RGB", (side, side), paper)
    with Image.open(logo) as opened:
        picture = opened.convert("RGBA")
    picture.thumbnail((side, side), Image.Resampling.LANCZOS)
    square.paste(picture, ((side - picture.width) // 2, (side - picture.height) // 2), picture)
    return square


def icon_png(side: int, logo: Path | None, colors: tuple[str, str, str, str]) -> bytes:
    """Return an icon as PNG; ``colors`` are paper, ink, warm and cool as ``#rrggbb``."""
    paper, ink, warm, cool = (rgb(color) for color in colors)
    bitmap = logo is not None and logo.suffix.lower() != ".svg"
    image = logo_icon(logo, side, paper) if logo and bitmap else icon(side, paper, ink, warm, cool)
    out = io.BytesIO()
    image.quantize(64, Image.Quantize.FASTOCTREE, dither=Image.Dither.NONE).save(out, "PNG", compress_level=9)
    return out.getvalue()
