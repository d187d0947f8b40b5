"""What type an expression of the portable dialect has, as far as its annotations tell.

A type is the text of its annotation (``float``, ``list[Piece]``, ``dict[str, float]``); an
empty text means that it cannot be seen. Enough to notice a list where Python and JavaScript
would treat it differently; mypy does the real work.
"""

import ast

RETURNS = {"len": "int", "int": "int", "ord": "int", "str": "str", "float": "float", "chr": "str"}
WHOLE = ("floor", "ceil")
LITERALS: dict[type[ast.expr], str] = {
    ast.List: "list[]",
    ast.ListComp: "list[]",
    ast.Dict: "dict[]",
    ast.JoinedStr: "str",
}


class Types:
    """The functions' results, the constants and the fields of the TypedDicts, over all files."""

    def __init__(self, trees: list[ast.Module]) -> None:
        self.returns = dict(RETURNS)
        self.constants: dict[str, str] = {}
        self.fields: dict[str, dict[str, str]] = {}
        for tree in trees:
            for node in tree.body:
                self._learn(node)

    def _learn(self, node: ast.stmt) -> None:
        if isinstance(node, ast.FunctionDef) and node.returns is not None:
            self.returns[node.name] = ast.unparse(node.returns)
        elif isinstance(node, ast.AnnAssign) and isinstance(node.target, ast.Name):
            self.constants[node.target.id] = ast.unparse(node.annotation)
        elif isinstance(node, ast.ClassDef):
            self.fields[node.name] = {
                field.target.id: ast.unparse(field.annotation)
                for field in node.body
                if isinstance(field, ast.AnnAssign) and isinstance(field.target, ast.Name)
            }

    def of(self, node: ast.expr, names: dict[str, str]) -> str:
        """Return the type of an expression, given the types of the local names."""
        match node:
            case ast.Constant():
                return type(node.value).__name__
            case ast.Name():
                return names.get(node.id, self.constants.get(node.id, ""))
            case ast.List() | ast.ListComp() | ast.Dict() | ast.JoinedStr():
                return LITERALS[type(node)]
            case ast.Call():
                return self._of_call(node, names)
            case ast.Subscript():
                return self._of_part(node, names)
            case ast.BinOp():
                return self._of_sum(node, names)
            case ast.UnaryOp(op=ast.USub()):
                return self.of(node.operand, names)
            case ast.IfExp():
                return self.of(node.body, names)
        return ""

    def _of_call(self, node: ast.Call, names: dict[str, str]) -> str:
        if isinstance(node.func, ast.Name):
            if node.func.id in ("sorted", "reversed", "list") and len(node.args) > 0:
                return self.of(node.args[0], names) or "list[]"
            return self.returns.get(node.func.id, "")
        if isinstance(node.func, ast.Attribute) and ast.unparse(node.func.value) == "math":
            return "int" if node.func.attr in WHOLE else "float"
        return ""

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

    def holds(self, text: str) -> bool:
        """Return whether a type is a list or a dict."""
        return text.startswith(("list[", "tuple[")) or self.keyed(text)

    def keyed(self, text: str) -> bool:
        """Return whether a type is a dict."""
        return text.startswith("dict[") or text in self.fields


def part(whole: str) -> str:
    """Return the type of a list's elements or of a dict's values."""
    if whole.startswith("list[") and whole.endswith("]"):
        return whole[5:-1]
    if whole.startswith("dict[str, ") and whole.endswith("]"):
        return whole[10:-1]
    if whole == "str":
        return "str"
    return ""
