"""The words of the dialect: what it allows, what it refuses, and what to write instead."""

import ast


def words(text: str) -> frozenset[str]:
    """Return the words of a text."""
    return frozenset(text.split())


# Words that JavaScript keeps for itself or that the translation needs for its own ends.
RESERVED = words(
    "arguments await case catch const debugger default delete do enum eval export extends function implements"
    " instanceof interface let new null package private protected public self static super switch this throw typeof"
    " undefined var void window Array Astragal Boolean Error Infinity Math NaN Number Object String"
)
BUILTINS = words("abs all any bool chr dict enumerate float int len list max min ord range reversed sorted str sum zip")
METHODS = words(
    "append copy endswith extend find get insert items join keys lower pop replace split startswith strip upper values"
)
MATH = words("acos asin atan atan2 ceil cos e exp fabs floor hypot inf isfinite isnan log pi pow sin sqrt tan")
IMPORTS = ("typing", "collections.abc")
PORTABLE = ("configurator.kernel", "configurator.browser.link")

ALLOWED: tuple[type[ast.AST], ...] = (
    *(ast.Module, ast.Import, ast.ImportFrom, ast.ClassDef, ast.FunctionDef, ast.arguments, ast.arg, ast.alias),
    *(ast.Return, ast.Assign, ast.AnnAssign, ast.AugAssign, ast.If, ast.For, ast.While, ast.Break, ast.Continue),
    *(ast.Pass, ast.Expr, ast.Constant, ast.Name, ast.Attribute, ast.Subscript, ast.Slice, ast.Call, ast.keyword),
    *(ast.BinOp, ast.UnaryOp, ast.BoolOp, ast.Compare, ast.IfExp, ast.List, ast.Tuple, ast.Dict, ast.ListComp),
    *(ast.comprehension, ast.Lambda, ast.JoinedStr, ast.FormattedValue, ast.expr_context, ast.boolop),
    *(ast.Add, ast.Sub, ast.Mult, ast.Div, ast.FloorDiv, ast.Mod, ast.Pow, ast.USub, ast.Not, ast.cmpop),
)
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
