"""The files beside the pages: style, scripts, icons, swatches, cards and pictures."""

from configurator.site.house import House
from configurator.site.themes import SHARED, style_sheet

Files = dict[str, str | bytes]


def page_script() -> str:
    """Return the script of the static pages."""
    return (SHARED / "scripts" / "page.js").read_text(encoding="utf-8")


def asset_files(house: House) -> Files:
    """Return every asset by its address."""
    files: Files = {
        "assets/site.css": style_sheet(house.showroom.theme),
        "assets/page.js": page_script(),
    }
    return files
