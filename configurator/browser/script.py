"""The pages' classic scripts: what they know (the catalog), and what they do (kernel and page)."""

import ast
import json
from collections.abc import Mapping
from functools import partial
from pathlib import Path
from typing import cast

from configurator.browser.catalog_json import catalog_json, money_json, prices_json
from configurator.browser.emit import Telling
from configurator.browser.join import FIRST, PAGES, before, scripts_of, text_of
from configurator.browser.kernel_scripts import kernel_scripts
from configurator.browser.page_module import PageModule, PageProblem, page_modules
from configurator.browser.squeeze import squeezed
from configurator.browser.translate import kernel_functions, portable
from configurator.cache.by_code import once_for_code
from configurator.catalog import Catalog
from configurator.kernel.tongue import Words


def configurator_scripts(folder: Path, words: Words) -> dict[str, str]:
    """Return the scripts of a folder of modules by their file names: ``astragal.js``, those that come later, and those
    of the other pages that begin with a module of the folder.

    They speak the language of ``words``. Of the kernel each has only what its modules call as ``kernel.name``.
    Raises :class:`PageProblem` with file and line where a module calls one that there is not, or where two pages have
    a script of one name.
    """
    sources = [part for path in sorted(folder.glob("*.js")) for part in (path.name, path.read_text(encoding="utf-8"))]
    made = once_for_code(partial(made_scripts, folder, words), "scripts", json.dumps(words), *sources)
    return cast(dict[str, str], made)


def made_scripts(folder: Path, words: Words) -> dict[str, str]:
    """Return what :func:`configurator_scripts` does, made anew."""
    modules = page_modules(folder, words)
    statements, holders = portable()
    told = Telling(holders, words)
    made: dict[str, str] = {}
    for page in PAGES:
        if page == FIRST or page in modules:
            scripts = page_scripts(page, modules, statements, told)
            for name in made.keys() & scripts.keys():
                raise PageProblem(f"{folder}: {name} would be a script of two pages; ask for it from one of them")
            made.update(scripts)
    return made


def page_scripts(
    page: str, modules: dict[str, PageModule], statements: list[ast.stmt], told: Telling
) -> dict[str, str]:
    """Return the scripts of one page by their file names, with what they need of the kernel's ``statements``."""
    scripts = scripts_of(modules, page)
    calls = {name: kernel_calls(script.modules) for name, script in scripts.items()}
    after = {name: [] if script.first else [page, *before(name, scripts)] for name, script in scripts.items()}
    kernel = kernel_scripts(calls, after, statements, told)
    return {file_name(name): kernel[name] + squeezed(text_of(name, scripts)) for name in scripts}


def file_name(start: str) -> str:
    """Return the file of the script that begins with a module."""
    return "astragal.js" if start == FIRST else f"astragal-{start}.js"


def late_js(files: Mapping[str, str]) -> str:
    """Return what goes behind the catalog: ``Astragal.late``, the full name of each script by the module that it begins
    with; ``files`` has it by the plain name."""
    named = {file.removeprefix("astragal-").removesuffix(".js"): full for file, full in files.items()}
    named[FIRST] = named.pop("astragal")
    return f"Astragal.late={json.dumps(named, separators=(',', ':'))};\n"


def kernel_calls(modules: list[PageModule]) -> set[str]:
    """Return the kernel functions that modules call."""
    wishes = [wish for module in modules for wish in module.asks]
    known = kernel_functions()
    for wish in wishes:
        if wish.name not in known:
            raise PageProblem(f"{wish.place}: the kernel has no function {wish.name}")
    return {wish.name for wish in wishes}


def catalog_js(catalog: Catalog) -> str:
    """Return the script for ``assets/catalog.js``, which goes before the other: it sets ``Astragal.catalog``."""
    return f"var Astragal=Astragal||{{}};Astragal.catalog={catalog_json(catalog)};\n"


def prices_js(catalog: Catalog) -> str:
    """Return what goes before the script of the part that tells prices: ``Astragal.prices`` and ``Astragal.money``."""
    return f"Astragal.prices={prices_json(catalog)};Astragal.money={money_json(catalog)};\n"
