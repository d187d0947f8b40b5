"""How a browser spells what Python has built in.

These tables are the dialect: what has no spelling here is refused by ``dialect``. In a spelling ``{0}``, ``{1}`` …
are the operands, the receiver of a method first; ``{each}`` is the first argument as a list of what a loop over it
meets. Names that begin with ``$`` are in ``helpers.py``; no name of Python's can hide them.
"""

import ast

OPERATORS: dict[type[ast.AST], str] = {
    ast.Add: "{0} + {1}",
    ast.Sub: "{0} - {1}",
    ast.Mult: "{0} * {1}",
    ast.Div: "{0} / {1}",
    ast.FloorDiv: "$whole({0}, {1})",
    ast.Mod: "$mod({0}, {1})",
    ast.Pow: "{0} ** {1}",
    ast.USub: "-{0}",
    ast.Not: "!{0}",
    ast.And: " && ",
    ast.Or: " || ",
    ast.Eq: "{0} === {1}",
    ast.NotEq: "{0} !== {1}",
    ast.Is: "{0} === {1}",
    ast.IsNot: "{0} !== {1}",
    ast.Lt: "{0} < {1}",
    ast.LtE: "{0} <= {1}",
    ast.Gt: "{0} > {1}",
    ast.GtE: "{0} >= {1}",
    ast.In: "{has}",
    ast.NotIn: "!{has}",
}
# What an assignment may do on its way.
WITHIN: dict[type[ast.AST], str] = {ast.Add: "+=", ast.Sub: "-=", ast.Mult: "*=", ast.Div: "/="}

# By name and number of arguments.
CALLS = {
    ("abs", 1): "Math.abs({0})",
    ("chr", 1): "String.fromCodePoint({0})",
    ("float", 1): "Number({0})",
    ("int", 1): "Math.trunc({0})",
    ("len", 1): "{0}.length",
    ("list", 1): "[...{each}]",
    ("max", 1): "Math.max(...{each})",
    ("max", 2): "Math.max({0}, {1})",
    ("max", 3): "Math.max({0}, {1}, {2})",
    ("min", 1): "Math.min(...{each})",
    ("min", 2): "Math.min({0}, {1})",
    ("min", 3): "Math.min({0}, {1}, {2})",
    ("ord", 1): "{0}.codePointAt(0)",
    ("range", 1): "$range(0, {0}, 1)",
    ("range", 2): "$range({0}, {1}, 1)",
    ("range", 3): "$range({0}, {1}, {2})",
    ("sorted", 1): "$sorted({each}, (one) => one)",
    ("sorted", 2): "$sorted({each}, {1})",
    ("str", 1): "String({0})",
}
METHODS = {
    ("append", 1): "{0}.push({1})",
    ("copy", 0): "{copy}",
    ("endswith", 1): "{0}.endsWith({1})",
    ("extend", 1): "{0}.push(...{1})",
    ("find", 1): "{0}.indexOf({1})",
    ("get", 1): "$get({0}, {1}, null)",
    ("get", 2): "$get({0}, {1}, {2})",
    ("items", 0): "Object.entries({0})",
    ("join", 1): "{1}.join({0})",
    ("keys", 0): "Object.keys({0})",
    ("lower", 0): "{0}.toLowerCase()",
    ("replace", 2): "{0}.split({1}).join({2})",
    ("split", 1): "{0}.split({1})",
    ("startswith", 1): "{0}.startsWith({1})",
    ("upper", 0): "{0}.toUpperCase()",
    ("values", 0): "Object.values({0})",
}
ALIKE = ("acos", "asin", "atan", "atan2", "ceil", "cos", "exp", "floor", "hypot", "log", "pow", "sin", "sqrt", "tan")
MATH = {
    **{name: f"Math.{name}" for name in ALIKE},
    "inf": "Infinity",
    "isfinite": "isFinite",
    "isnan": "isNaN",
    "pi": "Math.PI",
}
# By what holds the members: a list, a dict or a text.
EACH = {"list": "{0}", "dict": "Object.keys({0})", "str": "Array.from({0})"}
HAS = {"list": "{1}.includes({0})", "dict": "Object.hasOwn({1}, {0})", "str": "{1}.includes({0})"}
COPY = {"list": "{0}.slice()", "dict": "{{...{0}}}"}
