"""The kernel as JavaScript: one classic script, made from the very files that Python runs.

PScript does the translation. Before it, everything that only mypy and readers need is taken
out; after it, what PScript adds for general Python but the dialect rules out.
"""

import ast
from collections.abc import Iterable
from functools import lru_cache
from pathlib import Path

from pscript.parser3 import Parser3

from configurator.browser.dialect import Slip, defined, slips_in
from configurator.browser.reach import part_comprehensions, reached
from configurator.browser.squeeze import squeezed
from configurator.browser.stdlib import helpers
from configurator.browser.tidy import tidied

PACKAGE = Path(__file__).parent.parent
MATH_NAMES = {"pi": "Math.PI", "e": "Math.E", "inf": "Infinity", "isfinite": "isFinite", "isnan": "isNaN"}
MATH_NAMES["fabs"] = "Math.abs"


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


@lru_cache(maxsize=8)
def translate(sources: tuple[tuple[str, str], ...], entries: frozenset[str] | None = None) -> str:
    """Return portable files, given as path and source, as one minified script."""
    trees = {path: ast.parse(source) for path, source in sources}
    found = slips_in(trees)
    if len(found) > 0:
        raise NotPortableError(found)
    tree = ast.Module(body=[], type_ignores=[])
    for path in in_order(trees):
        tree.body.extend(Plain().visit(trees[path]).body)
    functions = [node.name for node in tree.body if isinstance(node, ast.FunctionDef)]
    let_out = sorted(functions if entries is None else entries.intersection(functions))
    tree.body = reached(tree.body, let_out)
    parser = PortableParser(ast.unparse(tree), docstrings=False, inline_stdlib=False)
    library = helpers(parser._std_functions, parser._std_methods)
    return wrapped(tidied(parser.dump()), library, let_out)


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


class PortableParser(Parser3):  # type: ignore[misc]
    """PScript without its guesses at what +, *, == and conditions mean: in the dialect they are plain."""

    _pscript_overload = False


class Plain(ast.NodeTransformer):
    """Takes out what has no meaning in a browser and spells the rest as PScript wants it."""

    def visit_Module(self, node: ast.Module) -> ast.Module:
        """Keep functions and constants."""
        kept = [n for n in node.body if isinstance(n, ast.FunctionDef | ast.Assign | ast.AnnAssign)]
        node.body = [self.visit(statement) for statement in kept if not is_table(statement)]
        return node

    def visit_FunctionDef(self, node: ast.FunctionDef) -> ast.FunctionDef:
        """Take out docstring and annotations."""
        if ast.get_docstring(node) is not None:
            node.body = node.body[1:] or [ast.Pass()]
        node.returns = None
        for arg in node.args.args:
            arg.annotation = None
        self.generic_visit(node)
        part_comprehensions(node)
        return node

    def visit_AnnAssign(self, node: ast.AnnAssign) -> ast.stmt | None:
        """Keep the assignment alone."""
        self.generic_visit(node)
        if node.value is None:
            return None
        return ast.copy_location(ast.Assign([node.target], node.value), node)

    def visit_Attribute(self, node: ast.Attribute) -> ast.expr:
        """Name a function of math as JavaScript does."""
        if isinstance(node.value, ast.Name) and node.value.id == "math":
            return ast.parse(MATH_NAMES.get(node.attr, f"Math.{node.attr}"), mode="eval").body
        self.generic_visit(node)
        return node

    def visit_BinOp(self, node: ast.BinOp) -> ast.expr:
        """Give % the sign it has in Python."""
        self.generic_visit(node)
        if isinstance(node.op, ast.Mod):
            return ast.Call(ast.Name("_mod", ast.Load()), [node.left, node.right], [])
        return node

    def visit_Dict(self, node: ast.Dict) -> ast.Dict:
        """Leave out what refers to the catalog's tables."""
        kept = [
            i for i, value in enumerate(node.values) if not (isinstance(value, ast.Name) and is_table_name(value.id))
        ]
        node.keys = [node.keys[i] for i in kept]
        node.values = [self.visit(node.values[i]) for i in kept]
        return node

    def visit_JoinedStr(self, node: ast.JoinedStr) -> ast.expr:
        """Write an f-string as a sum of texts."""
        text: ast.expr = ast.Constant("")
        for value in node.values:
            part = self.visit(value.value) if isinstance(value, ast.FormattedValue) else value
            text = ast.BinOp(text, ast.Add(), part)
        return text


def is_table_name(name: str) -> bool:
    """Return whether a constant is a table of what a mechanism takes, which only the catalog reads."""
    return name.endswith("_TAKES")


def is_table(statement: ast.stmt) -> bool:
    """Return whether a statement defines such a table."""
    return any(is_table_name(name) for name in defined(statement))


def wrapped(script: str, library: str, let_out: list[str]) -> str:
    """Return the script in a scope of its own, made small, with the named functions let out."""
    inside = f'"use strict";\n{library}\n{script}\nreturn {{{",".join(let_out)}}};'
    return squeezed(f"var Astragal=Astragal||{{}};\nAstragal.kernel=(function(){{\n{inside}\n}})();\n")
