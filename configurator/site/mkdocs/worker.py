"""The service worker of a built site: the list of its files with what they hold, and what it says to readers."""

import json
from base64 import b64encode
from hashlib import sha256
from html import escape
from pathlib import Path
from urllib.parse import quote

from configurator.browser.small_script import small_script
from configurator.catalog.site_addresses import WORKER
from configurator.kernel.message import plain
from configurator.site.face.themes import SHARED
from configurator.site.house import House
from configurator.site.kinds.policy import POLICY

# Link previews are for others' pages, robots.txt for engines; the page for an address that leads nowhere is a server's
# own answer.
NEVER_KEPT = ("cards/", "404.html", "robots.txt", WORKER)


def sum_of(content: bytes) -> str:
    """Return the first 48 bits of a file's SHA-256, as the worker works them out too."""
    return b64encode(sha256(content).digest()[:6]).decode()


def kept_files(site: Path) -> dict[str, str]:
    """Return what the worker may keep of a built site: each file's address below the site's with its sum."""
    paths = sorted(path.relative_to(site).as_posix() for path in site.rglob("*") if path.is_file())
    return {quote(path): sum_of((site / path).read_bytes()) for path in paths if not path.startswith(NEVER_KEPT)}


def is_late(path: str, roots: list[str]) -> bool:
    """Tell whether a file is kept only when it is read or asked for: the fitted pages, of which a reader opens few."""
    steps = [path.removeprefix(root).split("/") for root in roots if path.startswith(root)]
    return any(step[0] == "doors" and len(step) > 2 for step in steps)


def said(house: House) -> dict[str, str]:
    """Return what worker and page say of it in a language."""
    texts = {
        "newer": plain("A newer version of this site is here."),
        "show": plain("Show the newer version"),
        "keep": plain("Keep the whole site on this device"),
        "keeping": plain("The site is being kept on this device."),
        "kept": plain("The whole site is kept on this device and opens without a signal."),
        "failed": plain("Not everything could be kept: try again with a signal."),
        "unkept": plain("This page is not kept on this device"),
        "later": plain("It opens when there is a signal again."),
        "home": plain("Home"),
        "door": plain("Your door"),
    }
    return {"root": house.root, **{name: escape(house.phrase(text)) for name, text in texts.items()}}


def worker_js(house: House, site: Path, style: str) -> str:
    """Return the worker of a site as it lies built in a folder, with the style sheet of what it says itself; its
    version is that of every file that it lists."""
    files = kept_files(site)
    roots = [tongue.root for tongue in house.tongues]
    own = small_script((SHARED / "scripts" / "worker.js").read_text(encoding="utf-8"))
    listed = {
        "files": files,
        "late": [place for place, path in enumerate(files) if is_late(path, roots)],
        "policy": POLICY,
        "style": style,
        "first": house.words["language"],
        "words": {tongue.words["language"]: said(tongue) for tongue in house.tongues},
    }
    text = json.dumps(listed, ensure_ascii=False, separators=(",", ":"))
    version = sum_of((text + own).encode())
    return f'self.astragal={text};self.astragal.version="{version}";\n{own}'


def aside_js() -> str:
    """Return the worker of a site that is being changed, which takes an earlier one's place and keeps nothing."""
    return small_script((SHARED / "scripts" / "aside.js").read_text(encoding="utf-8"))
