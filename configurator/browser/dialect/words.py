"""The words of the dialect: what it refuses, and what to write instead. What it has is in ``emit.spelling``."""

import ast

from configurator.browser.emit.spelling import CALLS, METHODS


def words(text: str) -> frozenset[str]:
    """Return the words of a text."""
    return frozenset(text.split())


# Words that JavaScript keeps for itself or that the translation needs for its own ends.
RESERVED = words(
    "arguments await case catch const debugger default delete do enum eval export extends function implements"
    " instanceof interface let new null package private protected public self static super switch this throw typeof"
    " undefined var void window Array Astragal Boolean Error Infinity Math NaN Number Object String isFinite isNaN"
)
BUILTIN_NAMES = frozenset(name for name, _ in CALLS)
METHOD_NAMES = frozenset(name for name, _ in METHODS)
IMPORTS = ("typing", "collections.abc")
PORTABLE = ("configurator.kernel", "configurator.browser.link")

# What has no place of its own in a script, but stands within something that has.
WITHIN_OTHERS = (ast.arguments, ast.arg, ast.keyword, ast.Slice, ast.comprehension, ast.expr_context)
INSTEAD: dict[type[ast.AST], str] = {
    ast.Set: "a set; use a list, or a dict with the members as keys",
    ast.SetComp: "a set; use a list, or a dict with the members as keys",
    ast.DictComp: "a dict comprehension; fill a dict in a loop",
    ast.GeneratorExp: "a generator; write a list comprehension in square brackets",
    ast.Try: "try/except; test beforehand, nothing in the kernel throws",
    ast.Raise: "raise; return a plain reason in words",
    ast.Assert: "assert; return a plain reason in words",
    ast.Global: "global; return the value instead",
    ast.Nonlocal: "nonlocal; return the value instead",
    ast.NamedExpr: "the walrus; assign on a line of its own",
    ast.Starred: "a star; use append, extend or plain arguments",
    ast.Delete: "del; build a new dict or list",
    ast.With: "with; the kernel opens nothing",
}
