"""Photographs cut to what each place needs of them, with nothing in them but pixels."""

import io
from pathlib import Path
from typing import NamedTuple

from PIL import Image, ImageOps

# What is shown where nothing is known of the screen, px wide.
USUAL = 960
QUALITY = 70
# One step more takes three times as long for seven bytes in a hundred, and nothing that shows.
EFFORT = 2
# Of a picture that is only freed of what is noted in it.
NOTED_QUALITY = 92


class Cut(NamedTuple):
    """What a place needs of a photograph: the widths in px; its shape, width by height, or 0 for all that was taken."""

    name: str
    shape: float
    widths: tuple[int, ...]


# What a first page opens with; a picture on the page of what it shows; one of a row of tiles; one beside an option.
HERO = Cut("", 0.0, (480, 960, 1440))
FIGURE = Cut("", 0.0, (480, 960))
TILE = Cut("tile", 0.75, (240, 400))
SWATCH = Cut("swatch", 1.0, (104, 156))


def upright(path: Path) -> Image.Image:
    """Return a photograph the right way up, without place, camera or profile."""
    with Image.open(path) as opened:
        turned = ImageOps.exif_transpose(opened)
    return turned.convert("RGB")


def without_notes(path: Path) -> bytes:
    """Return a picture in its own format, the right way up, with nothing in it but pixels: no place, camera or text."""
    with Image.open(path) as opened:
        kind = opened.format
        turned = ImageOps.exif_transpose(opened)
        turned = turned.convert("RGBA" if turned.has_transparency_data else "RGB")
    pixels = Image.new(turned.mode, turned.size)
    pixels.paste(turned)
    out = io.BytesIO()
    pixels.save(out, kind, quality=NOTED_QUALITY)
    return out.getvalue()


def resized(image: Image.Image, width: int) -> Image.Image:
    """Return a photograph at a width; a smaller one stays as it is."""
    if image.width <= width:
        return image
    return image.resize((width, round(image.height * width / image.width)), Image.Resampling.HAMMING)


def encoded(image: Image.Image, kind: str) -> bytes:
    """Return a photograph as ``WEBP`` or ``JPEG``."""
    out = io.BytesIO()
    image.save(out, kind, quality=QUALITY, method=EFFORT) if kind == "WEBP" else image.save(out, kind, quality=QUALITY)
    return out.getvalue()


def size_of_cut(size: tuple[int, int], shape: float) -> tuple[int, int]:
    """Return the size of the largest part of a picture that has a shape, in px."""
    wide, high = size
    if shape == 0:
        return size
    return min(wide, max(1, round(high * shape))), min(high, max(1, round(wide / shape)))


def cut_out(image: Image.Image, shape: float, subject: tuple[float, float]) -> Image.Image:
    """Return the largest part of a picture that has a shape.

    The ``subject`` is as far across and down in the part, in shares, as it is in the whole (CSS ``object-position``).
    """
    wide, high = size_of_cut(image.size, shape)
    left, top = round((image.width - wide) * subject[0]), round((image.height - high) * subject[1])
    return image.crop((left, top, left + wide, top + high))


def widths_of(width: int, cut: Cut) -> list[int]:
    """Return the widths in which a picture of some width is shown in a place: none is wider than it is."""
    return [smaller for smaller in cut.widths if smaller <= width] or [width]


def usual_width(width: int, cut: Cut) -> int:
    """Return which of the widths of a picture is shown where nothing is known of the screen."""
    return max((one for one in widths_of(width, cut) if one <= USUAL), default=width)


def picture_sizes(image: Image.Image, cut: Cut) -> dict[str, bytes]:
    """Return a cut picture's files by the end of their names: ``-480.webp`` and so on."""
    return {f"-{width}.webp": encoded(resized(image, width), "WEBP") for width in widths_of(image.width, cut)}


def photo_sizes(path: Path, cut: Cut, subject: tuple[float, float]) -> dict[str, bytes]:
    """Return the files of a photograph for a place, as :func:`picture_sizes` does."""
    return picture_sizes(cut_out(upright(path), cut.shape, subject), cut)
