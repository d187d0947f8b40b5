"""Where a content folder says that its site will stand."""

from pathlib import Path

from configurator.catalog.located import read_content
from configurator.places import SHOWROOM


def public_address(folder: Path) -> str:
    """Return the address that a content folder gives its site, sound or not; nothing where it gives none."""
    return read_content(folder / SHOWROOM, "").written(("public_address",))
