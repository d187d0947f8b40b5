"""Where the starter content and the themes lie."""

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent


def _find(name: str) -> Path:
    # A wheel carries the folder inside the package; in a checkout it lies beside it.
    inside = _PACKAGE / name
    return inside if inside.is_dir() else _PACKAGE.parent / name


CONTENT = _find("content")
THEMES = _find("themes")
