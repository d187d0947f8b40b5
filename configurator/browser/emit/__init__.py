"""The portable dialect as JavaScript, written straight from Python's syntax tree."""

import ast

from configurator.browser.emit.expressions import Holders
from configurator.browser.emit.helpers import helpers_for
from configurator.browser.emit.statements import Statements

__all__ = ["Holders", "Statements", "script_of"]


def script_of(statements: list[ast.stmt], holders: Holders, let_out: list[str]) -> str:
    """Return functions and constants as one script that sets ``Astragal.kernel`` to the functions let out.

    ``holders`` tells of expressions whether they are a ``list``, a ``dict`` or a ``str``, as far as that matters.
    """
    write = Statements(holders)
    body = "".join(top(write.text(statement)) for statement in statements)
    inside = f'"use strict";\n{helpers_for(body)}{body}return {{{", ".join(let_out)}}};'
    return f"var Astragal = Astragal || {{}};\nAstragal.kernel = (function () {{\n{inside}\n}})();\n"


def top(statement: str) -> str:
    """Return a statement at the top of a file: a function, or a constant."""
    return f"{statement}\n" if statement.startswith("function ") else f"const {statement}\n"
