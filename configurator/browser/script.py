"""The configurator's two classic scripts: what it knows (the catalog), and what it does (kernel and page)."""

import re
from pathlib import Path

from configurator.browser.catalog_json import catalog_json
from configurator.browser.squeeze import squeezed
from configurator.browser.translate import kernel_js
from configurator.catalog import Catalog


def page_sources(folder: Path) -> str:
    """Return the page's scripts in a folder, joined in the order of their names."""
    return "\n".join(path.read_text(encoding="utf-8") for path in sorted(folder.glob("*.js")))


def configurator_js(folder: Path) -> str:
    """Return the script for ``assets/astragal.js``: the kernel, and the page's scripts of a folder.

    Only the kernel functions that the page's scripts call as ``kernel.name`` are in it.
    """
    page = page_sources(folder)
    kernel = kernel_js(re.findall(r"\bkernel\.(\w+)", page))
    return kernel + squeezed(f'(function(){{\n"use strict";\n{page}\n}})();\n')


def catalog_js(catalog: Catalog) -> str:
    """Return the script for ``assets/catalog.js``, which goes before the other: it sets ``Astragal.catalog``."""
    return f"var Astragal=Astragal||{{}};Astragal.catalog={catalog_json(catalog)};\n"
