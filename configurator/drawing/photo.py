"""Photographs in the sizes that screens need, with nothing in them but pixels."""

import io
from pathlib import Path

from PIL import Image, ImageOps

WIDTHS = (480, 960, 1440)
FALLBACK = 960
QUALITY = 78
# Of a picture that is only freed of what is noted in it.
NOTED_QUALITY = 92


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
    return image.resize((width, round(image.height * width / image.width)), Image.Resampling.LANCZOS)


def encoded(image: Image.Image, kind: str) -> bytes:
    """Return a photograph as ``WEBP`` or ``JPEG``."""
    out = io.BytesIO()
    image.save(out, kind, quality=QUALITY, method=6) if kind == "WEBP" else image.save(out, kind, quality=QUALITY)
    return out.getvalue()


def widths_of(width: int) -> list[int]:
    """Return the widths in which a picture of some width is shown."""
    return [smaller for smaller in WIDTHS if smaller <= width] or [width]


def usual_width(width: int) -> int:
    """Return which of the widths of a picture is shown where nothing is known of the screen."""
    return max((one for one in widths_of(width) if one <= FALLBACK), default=width)


def picture_sizes(image: Image.Image) -> dict[str, bytes]:
    """Return a picture's files by the end of their names: ``-480.webp`` and so on."""
    return {f"-{width}.webp": encoded(resized(image, width), "WEBP") for width in widths_of(image.width)}


def photo_sizes(path: Path) -> dict[str, bytes]:
    """Return the files of a photograph, as :func:`picture_sizes` does, and ``.jpg`` for what shows no others."""
    image = upright(path)
    return picture_sizes(image) | {".jpg": encoded(resized(image, FALLBACK), "JPEG")}
