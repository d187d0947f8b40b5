"""The kernel as JavaScript: one classic script, made from the very files that Python runs."""

import ast
from collections.abc import Iterable
from functools import lru_cache
from pathlib import Path

from configurator.browser.dialect import Slip, defined, slips_and_holders
from configurator.browser.emit import Holders, Telling, script_of
from configurator.browser.reach import reached, without_tables
from configurator.browser.squeeze import squeezed

PACKAGE = Path(__file__).parent.parent


class NotPortableError(Exception):
    """Kernel files that leave the portable dialect; ``slips`` lists where."""

    def __init__(self, found: list[Slip]) -> None:
        super().__init__("\n".join(str(slip) for slip in found))
        self.slips = found


def kernel_sources() -> dict[str, str]:
    """Return every portable file, its path from the repository's root mapped to its source."""
    paths = sorted((PACKAGE / "kernel").rglob("*.py")) + sorted((PACKAGE / "browser" / "link").rglob("*.py"))
    return {path.relative_to(PACKAGE.parent).as_posix(): path.read_text(encoding="utf-8") for path in paths}


def kernel_js(entries: Iterable[str] | None = None) -> str:
    """Return the script that sets ``Astragal.kernel`` to the kernel's functions.

    With ``entries``, only the functions of these names are let out, and nothing is in the
    script that they do not need. Raises :class:`NotPortableError` when a file leaves the dialect.
    """
    return translate(tuple(kernel_sources().items()), None if entries is None else frozenset(entries))


@lru_cache(maxsize=1)
def kernel_functions() -> frozenset[str]:
    """Return the names of the functions that page scripts may call."""
    names = [node.name for node in portable()[0] if isinstance(node, ast.FunctionDef)]
    return frozenset(name for name in names if not name.startswith("_"))


@lru_cache(maxsize=8)
def translate(sources: tuple[tuple[str, str], ...], entries: frozenset[str] | None = None) -> str:
    """Return portable files, given as path and source, as one minified script."""
    statements, holders = read(sources)
    functions = [node.name for node in statements if isinstance(node, ast.FunctionDef)]
    let_out = sorted(functions if entries is None else entries.intersection(functions))
    return squeezed(script_of(reached(statements, let_out), Telling(holders), let_out))


def portable() -> tuple[list[ast.stmt], Holders]:
    """Return every function and constant of the kernel in order, and what is known of its expressions' types."""
    return read(tuple(kernel_sources().items()))


@lru_cache(maxsize=8)
def read(sources: tuple[tuple[str, str], ...]) -> tuple[list[ast.stmt], Holders]:
    """Return what portable files define; raises :class:`NotPortableError` when one leaves the dialect."""
    trees = {path: ast.parse(source) for path, source in sources}
    found, holders = slips_and_holders(trees)
    if len(found) > 0:
        raise NotPortableError(found)
    statements = [node for path in in_order(trees) for node in trees[path].body if len(defined(node)) > 0]
    return without_tables(statements), holders


def in_order(trees: dict[str, ast.Module]) -> list[str]:
    """Return the paths so that each file comes after those it imports from."""
    order: list[str] = []
    waiting: list[str] = []

    def place(path: str) -> None:
        if path in order or path in waiting or path not in trees:
            return
        waiting.append(path)
        for node in trees[path].body:
            if isinstance(node, ast.ImportFrom) and node.module is not None:
                stem = node.module.replace(".", "/")
                place(f"{stem}.py")
                place(f"{stem}/__init__.py")
        order.append(path)

    for path in trees:
        place(path)
    return order
