"""The showroom's own pictures: photographs for the pages and the logo for the masthead."""

import base64
import re
from pathlib import Path
from typing import NamedTuple

from PIL import ExifTags, Image

from configurator.catalog.files import photograph_files
from configurator.catalog.schema.showroom import Colors
from configurator.drawing.photo import without_notes
from configurator.site.face.own_styles import without_own_styles

TYPES = {".png": "image/png", ".jpg": "image/jpeg", ".jpeg": "image/jpeg", ".webp": "image/webp"}

# How a camera says that it was held on its side (EXIF 2.32, 4.6.4).
ON_ITS_SIDE = (5, 6, 7, 8)


class Photo(NamedTuple):
    """A photograph: its file, the name of what is made of it, and its size in pixels, the right way up."""

    path: Path
    name: str
    width: int
    height: int


def photographs(folder: Path) -> dict[str, Photo]:
    """Return the photographs of a content folder by the names of their files.

    They are sound: what cannot be shown has been told as the content was read.
    """
    found: dict[str, Photo] = {}
    for path in photograph_files(folder):
        with Image.open(path) as opened:
            lies = opened.getexif().get(ExifTags.Base.Orientation, 1) in ON_ITS_SIDE
            wide, high = reversed(opened.size) if lies else opened.size
        found[path.name] = Photo(path, path.stem, wide, high)
    return found


def logo_markup(path: Path, colors: Colors) -> str:
    """Return a logo as markup: an SVG in the page itself, so that the showroom's colors in it follow the theme."""
    if path.suffix.lower() != ".svg":
        data = base64.b64encode(without_notes(path)).decode()
        return f'<img src="data:{TYPES[path.suffix.lower()]};base64,{data}" alt="">'
    text = path.read_text(encoding="utf-8")
    text = re.sub(r"<\?xml.*?\?>|<!--.*?-->|<title>.*?</title>", "", text, flags=re.DOTALL)
    for name in ("paper", "ink", "warm", "cool"):
        text = re.sub(re.escape(getattr(colors, name)), f"var(--{name})", text, flags=re.IGNORECASE)
    # Within a page a drawing needs no name space, and its lines no ends.
    text = re.sub(r">\s+<", "><", without_own_styles(text).replace(' xmlns="http://www.w3.org/2000/svg"', "", 1))
    return text.replace("<svg", '<svg aria-hidden="true"', 1).replace(' role="img"', "", 1).strip()
