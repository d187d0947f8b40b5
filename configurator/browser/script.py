"""The configurator's one classic script: kernel, catalog and the page's own scripts."""

import re
from pathlib import Path

from configurator.browser.catalog_json import catalog_json
from configurator.browser.squeeze import squeezed
from configurator.browser.translate import kernel_js
from configurator.catalog import Catalog


def page_sources(folder: Path) -> str:
    """Return the page's scripts in a folder, joined in the order of their names."""
    return "\n".join(path.read_text(encoding="utf-8") for path in sorted(folder.glob("*.js")))


def configurator_js(catalog: Catalog, folder: Path) -> str:
    """Return the script for ``assets/astragal.js`` from the catalog and the page's scripts in a folder.

    Only the kernel functions that the page's scripts call as ``kernel.name`` are in it.
    """
    page = page_sources(folder)
    kernel = kernel_js(re.findall(r"\bkernel\.(\w+)", page))
    small = squeezed(f'(function(){{\n"use strict";\n{page}\n}})();\n')
    return f"{kernel}\nAstragal.catalog={catalog_json(catalog)};\n{small}\n"
