"""What type an expression of the portable dialect has, as far as its annotations tell.

A type is the text of its annotation (``float``, ``list[Piece]``, ``dict[str, float]``); an
empty text means that it cannot be seen. Enough to tell lists, dicts and texts apart, which
Python and JavaScript treat differently; mypy does the real work.
"""

import ast
from collections.abc import Callable

RETURNS = {"chr": "str", "len": "int", "int": "int", "ord": "int", "str": "str", "float": "float", "range": "list[int]"}
METHOD_RETURNS: dict[str, Callable[[str], str]] = {
    "copy": lambda whole: whole,
    "find": lambda whole: "int",
    "get": lambda whole: part(whole),
    "items": lambda whole: f"list[tuple[str, {part(whole)}]]",
    "join": lambda whole: "str",
    "keys": lambda whole: "list[str]",
    "lower": lambda whole: "str",
    "replace": lambda whole: "str",
    "split": lambda whole: "list[str]",
    "upper": lambda whole: "str",
    "values": lambda whole: f"list[{part(whole)}]",
}
WHOLE = ("floor", "ceil")


class Types:
    """The functions' results, the constants, the named types and the fields of the TypedDicts, over all files."""

    def __init__(self, trees: list[ast.Module]) -> None:
        self.returns = dict(RETURNS)
        self.constants: dict[str, str] = {}
        self.fields: dict[str, dict[str, str]] = {}
        self.aliases: dict[str, str] = {}
        statements = [node for tree in trees for node in tree.body]
        for node in statements:
            self._learn(node)
        for node in statements:
            if isinstance(node, ast.ClassDef):
                self._inherit(node)

    def _learn(self, node: ast.stmt) -> None:
        if isinstance(node, ast.FunctionDef) and node.returns is not None:
            self.returns[node.name] = ast.unparse(node.returns)
        elif isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name):
            self.constants[node.target.id] = ast.unparse(node.annotation)
        elif isinstance(node, ast.Assign) and isinstance(node.targets[0], ast.Name):
            known = self.aliases if is_alias(node) else self.constants
            known[node.targets[0].id] = ast.unparse(node.value) if is_alias(node) else self.of(node.value, {})
        elif isinstance(node, ast.ClassDef):
            self.fields[node.name] = {
                field.target.id: unwrapped(field.annotation)
                for field in node.body
                if isinstance(field, ast.AnnAssign) and isinstance(field.target, ast.Name)
            }

    def _inherit(self, node: ast.ClassDef) -> None:
        for base in node.bases:
            if isinstance(base, ast.Name):
                self.fields[node.name] = {**self.fields.get(base.id, {}), **self.fields[node.name]}

    def of(self, node: ast.expr, names: dict[str, str]) -> str:
        """Return the type of an expression, given the types of the local names."""
        found = self._of(node, names)
        return self.aliases.get(found, found)

    def _of(self, node: ast.expr, names: dict[str, str]) -> str:
        match node:
            case ast.Name():
                return names.get(node.id, self.constants.get(node.id, ""))
            case ast.Call():
                return self._of_call(node, names)
            case ast.Subscript():
                return self._of_part(node, names)
            case ast.BinOp():
                return self._of_sum(node, names)
            case ast.UnaryOp(op=ast.USub()):
                return self.of(node.operand, names)
            case ast.IfExp():
                return self.of(node.body, names) or self.of(node.orelse, names)
            case ast.BoolOp():
                return self.of(node.values[-1], names)
        return self._of_literal(node, names)

    def _of_literal(self, node: ast.expr, names: dict[str, str]) -> str:
        match node:
            case ast.Constant():
                return type(node.value).__name__
            case ast.List():
                return f"list[{self.of(node.elts[0], names) if len(node.elts) > 0 else ''}]"
            case ast.Dict(keys=[None, *_]):
                return self.of(node.values[0], names)
            case ast.Dict():
                return f"dict[str, {self.of(node.values[0], names) if len(node.values) > 0 else ''}]"
            case ast.ListComp():
                return f"list[{self._of_comprehended(node, names)}]"
            case ast.JoinedStr():
                return "str"
            case ast.Compare() | ast.UnaryOp(op=ast.Not()):
                return "bool"
        return ""

    def _of_comprehended(self, node: ast.ListComp, names: dict[str, str]) -> str:
        inside = dict(names)
        for loop in node.generators:
            inside.update(self.met(loop.target, loop.iter, inside))
        return self.of(node.elt, inside)

    def met(self, target: ast.expr, source: ast.expr, names: dict[str, str]) -> dict[str, str]:
        """Return the types of the names that a loop over an expression sets."""
        whole = self.of(source, names)
        one = "str" if self.keyed(whole) else part(whole)
        if isinstance(target, ast.Name):
            return {target.id: one}
        if not isinstance(target, ast.Tuple):
            return {}
        parts = one[len("tuple[") : -1].split(", ", 1) if one.startswith("tuple[") else ["", ""]
        return {ast.unparse(name): each for name, each in zip(target.elts, parts, strict=False)}

    def _of_call(self, node: ast.Call, names: dict[str, str]) -> str:
        first = self.of(node.args[0], names) if len(node.args) > 0 else ""
        match node.func:
            case ast.Name("sorted" | "list"):
                return "list[str]" if self.keyed(first) or first == "str" else first or "list[]"
            case ast.Name("max" | "min" | "abs"):
                return part(first) if self.holder(first) == "list" else first
            case ast.Name(name):
                return self.returns.get(name) or result(self.of(node.func, names))
            case ast.Attribute(ast.Name("math"), name):
                return "int" if name in WHOLE else "float"
            case ast.Attribute(whole, name):
                kind = self.of(whole, names)
                return METHOD_RETURNS[name](kind) if name in METHOD_RETURNS else ""
        return result(self.of(node.func, names))

    def _of_part(self, node: ast.Subscript, names: dict[str, str]) -> str:
        whole = self.of(node.value, names)
        if isinstance(node.slice, ast.Slice):
            return whole
        if isinstance(node.slice, ast.Constant) and isinstance(node.slice.value, str) and whole in self.fields:
            return self.fields[whole].get(node.slice.value, "")
        return part(whole)

    def _of_sum(self, node: ast.BinOp, names: dict[str, str]) -> str:
        left = self.of(node.left, names)
        right = self.of(node.right, names)
        if isinstance(node.op, ast.Div) or "float" in (left, right):
            return "float"
        return left if left == right else ""

    def holder(self, text: str) -> str:
        """Return whether a type is a ``list``, a ``dict`` or a ``str``; empty where it is none or cannot be seen."""
        text = text.removesuffix(" | None")
        if self.keyed(text):
            return "dict"
        return "list" if text.startswith(("list[", "tuple[")) else "str" if text == "str" else ""

    def holds(self, text: str) -> bool:
        """Return whether a type is a list or a dict."""
        return self.holder(text) in ("list", "dict")

    def keyed(self, text: str) -> bool:
        """Return whether a type is a dict."""
        return text.startswith("dict[") or text in self.fields


def is_alias(node: ast.stmt) -> bool:
    """Return whether a statement at the top of a file names a type, as ``Question = Callable[…]`` does."""
    target = node.targets[0] if isinstance(node, ast.Assign) else None
    return isinstance(target, ast.Name) and target.id[:1].isupper() and not target.id.isupper()


def unwrapped(node: ast.expr) -> str:
    """Return a field's type, whether or not the field must be there."""
    if isinstance(node, ast.Subscript) and ast.unparse(node.value) in ("NotRequired", "Required"):
        return ast.unparse(node.slice)
    return ast.unparse(node)


def result(text: str) -> str:
    """Return what a ``Callable[…]`` gives."""
    if not text.startswith("Callable["):
        return ""
    shape = ast.parse(text, mode="eval").body
    inner = shape.slice if isinstance(shape, ast.Subscript) else None
    return ast.unparse(inner.elts[1]) if isinstance(inner, ast.Tuple) else ""


def part(whole: str) -> str:
    """Return the type of a list's elements or of a dict's values."""
    if whole.startswith("list[") and whole.endswith("]"):
        return whole[5:-1]
    if whole.startswith("dict[str, ") and whole.endswith("]"):
        return whole[10:-1]
    if whole == "str":
        return "str"
    return ""
