"""The showroom's own pictures: photographs for the pages and the logo for the masthead."""

import base64
import re
from pathlib import Path
from typing import NamedTuple

from PIL import Image

from configurator.catalog import ContentProblems
from configurator.catalog.problem import Problem
from configurator.catalog.schema.showroom import Colors
from configurator.catalog.theme import PICTURE_ENDINGS
from configurator.kernel.tongue import Words, in_words, wording

UNREAD = wording("no picture that can be read; a whole JPEG, PNG or WebP file is expected")
TYPES = {".png": "image/png", ".jpg": "image/jpeg", ".jpeg": "image/jpeg", ".webp": "image/webp"}


class Photo(NamedTuple):
    """A photograph: its file, its name, and its size in pixels."""

    path: Path
    name: str
    width: int
    height: int


def photographs(folder: Path, words: Words) -> dict[str, Photo]:
    """Return the photographs of a folder by name; a folder that is not there has none.

    ``words`` is the language in which a problem is told.

    :raises configurator.catalog.ContentProblems: when one cannot be read to its end
    """
    found: dict[str, Photo] = {}
    unread: list[Problem] = []
    for path in sorted(folder.glob("*")):
        if path.suffix.lower() not in PICTURE_ENDINGS:
            continue
        try:
            with Image.open(path) as opened:
                opened.load()
                found[path.stem] = Photo(path, path.stem, *opened.size)
        except OSError:
            unread.append(Problem(str(path), 0, 0, in_words(UNREAD, words)))
    if unread:
        raise ContentProblems(unread)
    return found


def logo_markup(path: Path, colors: Colors) -> str:
    """Return a logo as markup: an SVG in the page itself, so that the showroom's colors in it follow the theme."""
    if path.suffix.lower() != ".svg":
        data = base64.b64encode(path.read_bytes()).decode()
        return f'<img src="data:{TYPES[path.suffix.lower()]};base64,{data}" alt="">'
    text = path.read_text(encoding="utf-8")
    text = re.sub(r"<\?xml.*?\?>|<!--.*?-->|<title>.*?</title>", "", text, flags=re.DOTALL)
    for name in ("paper", "ink", "warm", "cool"):
        text = re.sub(re.escape(getattr(colors, name)), f"var(--{name})", text, flags=re.IGNORECASE)
    return text.replace("<svg", '<svg aria-hidden="true" focusable="false"', 1).replace(' role="img"', "", 1).strip()
