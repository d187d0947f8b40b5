"""The typeface of cards and pictures, the same on every machine."""

from functools import cache
from importlib.resources import as_file, files

from PIL import ImageFont


@cache
def typeface(size: float) -> ImageFont.FreeTypeFont:
    """Return the typeface at a size in pixels; it has the Latin, Greek and Cyrillic letters of Europe."""
    with as_file(files("font_source_sans_pro") / "files" / "SourceSansPro-Regular.ttf") as path:
        return ImageFont.truetype(path, size)
