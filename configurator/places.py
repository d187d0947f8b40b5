"""Where the starter content and the themes lie, and what marks a content folder and a built site."""

from pathlib import Path

_PACKAGE = Path(__file__).resolve().parent


def _find(name: str) -> Path:
    # A wheel carries the folder inside the package; in a checkout it lies beside it.
    inside = _PACKAGE / name
    return inside if inside.is_dir() else _PACKAGE.parent / name


CONTENT = _find("content")
THEMES = _find("themes")
SHOWROOM = "showroom.yaml"
# Lists the files of a built site.
MANIFEST = Path("assets") / "built.json"


def usual_content() -> Path:
    """Return the content that a command means where none is named: the folder it stands in, or the starter content."""
    return Path() if Path(SHOWROOM).is_file() else CONTENT
