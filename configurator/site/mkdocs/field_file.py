"""The configurator in one file, to carry along: its page with style, scripts and catalog, asking for nothing else."""

import re
from base64 import b64encode
from pathlib import Path
from urllib.parse import urljoin

from configurator.browser.small_script import small_script
from configurator.site.face.themes import SHARED
from configurator.site.house import House, open_houses
from configurator.site.kinds.all_pages import plain_pages
from configurator.site.kinds.policy import policy_tag, without_policy
from configurator.site.mkdocs.asset_names import full_file
from configurator.site.mkdocs.assets import Files, icons, scripts, wordless
from configurator.site.mkdocs.kept_answers import known_answers
from configurator.site.mkdocs.page_html import page_html

PAGE = "try.html"
FIELD = SHARED / "scripts" / "field.js"
# Nothing may be fetched from anywhere, whatever a text in the file says.
MAY_COME_FROM = {
    "default-src": ["'none'"],
    "script-src": ["'unsafe-inline'"],
    "style-src": ["'unsafe-inline'"],
    "img-src": ["data:"],
    "font-src": ["data:"],
}
POLICY_TAG = policy_tag(MAY_COME_FROM)
STYLE = re.compile(r'<link rel="stylesheet" href="([^"]+)">')
ICON = re.compile(r'(<link rel="(?:icon|apple-touch-icon)" href=")([^"]+)(")')
# What runs as the page is read, and what waits until it has been.
SCRIPT = re.compile(r'<script( defer)? src="([^"]+)"></script>\n?')
PREVIEW = re.compile(r'<meta property="og:[^>]*>\n?')
LINK = re.compile(r'(<a\b[^>]*?) href="([^"#:]+(?:#[^"]*)?)"')


def field_file(content: Path) -> str:
    """Return the configurator of a content folder, in its first language, as one HTML file.

    What the page leads to lies where the showroom's site stands; where that is not said, it leads nowhere.

    :raises configurator.catalog.ContentProblems: with every problem of the content
    """
    house = open_houses(content, known_answers(content))
    page = next(page for page in plain_pages(house) if page.url == PAGE)
    assets = {**wordless(house), **scripts(house), **icons(house)}
    return in_one(page_html(house, page), assets, house)


def in_one(html: str, assets: Files, house: House) -> str:
    """Return a page with all that it asks for within it."""
    waiting = [text_of(assets, address) for defer, address in SCRIPT.findall(html) if defer]
    html = PREVIEW.sub("", without_policy(html))
    html = LINK.sub(lambda found: found[1] + led(found[2], house.address), html)
    html = STYLE.sub(lambda found: f"<style>{text_of(assets, found[1])}</style>", html)
    html = ICON.sub(lambda found: found[1] + data_address(assets[found[2]]) + found[3], html)
    html = SCRIPT.sub(lambda found: "" if found[1] else script(text_of(assets, found[2])), html)
    html = html.replace('<meta charset="utf-8">', f'<meta charset="utf-8">{POLICY_TAG}', 1)
    later = [held(later_name(address, assets), text_of(assets, address)) for address in assets if is_later(address)]
    own = small_script(FIELD.read_text(encoding="utf-8"))
    above, end, below = html.rpartition("</body>")
    return "".join([above, *later, *map(script, [own, *waiting]), end, below])


def text_of(assets: Files, address: str) -> str:
    """Return the text of an asset."""
    asset = assets[address]
    return asset.decode() if isinstance(asset, bytes) else asset


def is_later(address: str) -> bool:
    """Return whether an asset is a later script."""
    return address.startswith("assets/astragal-")


def later_name(address: str, assets: Files) -> str:
    """Return the name by which the page asks for a later script, as the catalog tells it."""
    return full_file(address.removeprefix("assets/"), assets[address])


def within_page(text: str) -> str:
    """Return a script whose text ends no element: ``</script`` and ``<!--`` stand in nothing but texts and patterns."""
    return re.sub(r"<(?=/script|!--|script)", r"\\x3C", text, flags=re.IGNORECASE)


def script(text: str) -> str:
    """Return a script in the page."""
    return f"<script>{within_page(text)}</script>"


def held(name: str, text: str) -> str:
    """Return a script that only lies in the page until it is asked for."""
    return f'<script type="text/plain" id="{name}">{within_page(text)}</script>'


def data_address(asset: str | bytes) -> str:
    """Return a picture as an address that holds it."""
    return f"data:image/png;base64,{b64encode(asset if isinstance(asset, bytes) else asset.encode()).decode()}"


def led(way: str, address: str) -> str:
    """Return where a link of the page leads, as an attribute: to the showroom's site, or nowhere."""
    return f' href="{urljoin(address, way)}"' if address else ""
