"""The portable dialect as JavaScript, written straight from Python's syntax tree."""

import ast
from collections.abc import Sequence
from dataclasses import dataclass, field

from configurator.browser.emit.expressions import Holders
from configurator.browser.emit.helpers import helpers_for
from configurator.browser.emit.statements import Statements
from configurator.kernel.tongue import ENGLISH, Words

__all__ = ["Holders", "Statements", "Telling", "script_of"]


@dataclass(frozen=True)
class Telling:
    """What the writing hangs on beside the text: of expressions whether they are a ``list``, a ``dict`` or a
    ``str``, as far as that matters, and the language in which words are put.
    """

    holders: Holders
    words: Words = field(default_factory=lambda: ENGLISH)
    written: dict[ast.stmt, str] = field(default_factory=dict, repr=False)

    def top(self, statement: ast.stmt) -> str:
        """Return a statement at the top of a file, a function or a constant, written once for all scripts that have
        it."""
        if statement not in self.written:
            text = Statements(self.holders, self.words).text(statement)
            self.written[statement] = f"{text}\n" if text.startswith("function ") else f"const {text}\n"
        return self.written[statement]


def script_of(statements: list[ast.stmt], told: Telling, let_out: list[str], taken: Sequence[str] = ()) -> str:
    """Return functions and constants as one script that adds those let out to ``Astragal.kernel``, whichever scripts
    have run before it; from these it has the names that are ``taken``.
    """
    body = "".join(told.top(statement) for statement in statements)
    head = f"const {{{', '.join(taken)}}} = Astragal.kernel;\n" if taken else ""
    inside = f'"use strict";\n{head}{helpers_for(body)}{body}return {{{", ".join(let_out)}}};'
    kernel = "var Astragal = Astragal || {};\nAstragal.kernel ||= {};\n"
    return f"{kernel}Object.assign(Astragal.kernel, (function () {{\n{inside}\n}})());\n"
