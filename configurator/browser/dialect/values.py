"""Where an expression leaves the dialect."""

import ast
import builtins
from pathlib import Path

from configurator.browser.dialect.guess import Types, part
from configurator.browser.dialect.slip import Slip
from configurator.browser.dialect.words import BUILTIN_NAMES, INSTEAD, METHOD_NAMES, WITHIN_OTHERS
from configurator.browser.emit import Holders, Statements
from configurator.browser.emit.spelling import CALLS, COPY, EACH, HAS, MATH, METHODS, OPERATORS


class Values(ast.NodeVisitor):
    """Judges expressions, and notes what those are whose spelling hangs on it."""

    def __init__(self, path: str, types: Types) -> None:
        self.path = path
        self.types = types
        self.found: list[Slip] = []
        self.holders: Holders = {}
        self.names: dict[str, str] = {}
        self.for_readers: set[str] = set()
        self.speaks = Path(path).name == "say.py"

    def slip(self, node: ast.AST, text: str) -> None:
        """Note a slip at a node."""
        self.found.append(Slip(self.path, getattr(node, "lineno", 0), text))

    def kind(self, node: ast.expr) -> str:
        """Return the type of an expression as far as it can be seen."""
        return self.types.of(node, self.names)

    def holder(self, node: ast.expr) -> str:
        """Return whether an expression is a ``list``, a ``dict`` or a ``str``."""
        return self.types.holder(self.kind(node))

    def visit(self, node: ast.AST) -> None:
        """Refuse what no script has; look closer at what is."""
        if not hasattr(Statements, f"visit_{type(node).__name__}") and not isinstance(node, WITHIN_OTHERS):
            what = INSTEAD.get(type(node), f"{type(node).__name__}; write it with plain statements")
            self.slip(node, f"the dialect has no {what}")
            return
        super().visit(node)

    def visit_parts(self, *nodes: ast.AST) -> None:
        """Judge several nodes."""
        for node in nodes:
            self.visit(node)

    def note(self, node: ast.expr, spellings: dict[str, str]) -> None:
        """Note what an expression is, on which its spelling hangs."""
        self.holders[node] = self.holder(node)
        if self.holders[node] not in spellings:
            what = f"{ast.unparse(node)}, of which nobody sees that it is a {' or a '.join(spellings)}"
            self.slip(node, f"{what}; give it a name with its type")

    def operator(self, node: ast.AST, op: ast.AST) -> None:
        """Refuse an operator that a browser has not."""
        if type(op) not in OPERATORS:
            self.slip(node, f"the dialect has no {type(op).__name__}; use arithmetic")

    def visit_BinOp(self, node: ast.BinOp) -> None:
        """Refuse % on texts, sums and products of lists, and repeated texts."""
        kinds = (self.kind(node.left), self.kind(node.right))
        self.operator(node, node.op)
        if isinstance(node.op, ast.Mod) and kinds[0] == "str":
            self.slip(node, "% on a text; write an f-string")
        elif any(self.types.holds(kind) for kind in kinds):
            self.slip(node, "arithmetic on a list; use extend or append")
        elif isinstance(node.op, ast.Mult) and "str" in kinds:
            self.slip(node, "a repeated string; join a list instead")
        self.visit_parts(node.left, node.right)

    def visit_UnaryOp(self, node: ast.UnaryOp) -> None:
        """Watch ``not`` on lists and dicts."""
        self.operator(node, node.op)
        if isinstance(node.op, ast.Not):
            self.judged(node.operand)
        self.visit(node.operand)

    def judged(self, test: ast.expr) -> None:
        """Refuse a list or dict where a truth value is wanted: empty ones are true in a browser."""
        if self.types.holds(self.kind(test)):
            self.slip(test, f"{ast.unparse(test)} as a condition; write len(…) > 0, or name a key that must be there")

    def visit_IfExp(self, node: ast.IfExp) -> None:
        """Watch the condition."""
        self.judged(node.test)
        self.generic_visit(node)

    def visit_BoolOp(self, node: ast.BoolOp) -> None:
        """Watch each operand."""
        for value in node.values:
            self.judged(value)
        self.visit_parts(*node.values)

    def visit_Compare(self, node: ast.Compare) -> None:
        """Refuse chains, identity but with None, and comparing lists or dicts."""
        if len(node.ops) > 1:
            self.slip(node, "a chained comparison; write a <= b and b <= c")
        sides = [node.left, *node.comparators]
        nothing = any(isinstance(side, ast.Constant) and side.value is None for side in sides)
        for op, right in zip(node.ops, node.comparators, strict=True):
            if isinstance(op, ast.In | ast.NotIn):
                self.note(right, HAS)
            elif isinstance(op, ast.Is | ast.IsNot):
                if not nothing:
                    self.slip(node, "is, other than with None; compare numbers and strings with ==")
            else:
                self.compared(node, {self.kind(side) for side in sides})
        self.visit_parts(*sides)

    def compared(self, node: ast.Compare, kinds: set[str]) -> None:
        """Refuse to compare lists, dicts, or a truth value with a number."""
        if any(self.types.holds(kind) for kind in kinds):
            self.slip(node, "comparing lists or dicts; compare their numbers and strings one by one")
        elif "bool" in kinds and not kinds.isdisjoint(("int", "float", "str")):
            self.slip(node, "a truth value compared with something else; test it by itself")

    def visit_JoinedStr(self, node: ast.JoinedStr) -> None:
        """Refuse numbers with decimals and format specs in text."""
        for value in node.values:
            if isinstance(value, ast.FormattedValue):
                if value.format_spec is not None or value.conversion != -1:
                    self.slip(node, "a format spec; format with say.py")
                self.spoken(value.value)
                self.visit(value.value)

    def spoken(self, value: ast.expr) -> None:
        """Refuse a number with decimals as text: 2.0 reads 2 in a browser; and what no reader wants to see."""
        kind = self.kind(value)
        if (kind in ("float", "bool", "NoneType") and not self.speaks) or self.types.holds(kind):
            self.slip(value, f"{ast.unparse(value)} as text; format it with say.py")

    def visit_Call(self, node: ast.Call) -> None:
        """Judge what is called and how."""
        for keyword in node.keywords:
            if keyword.arg is None:
                self.slip(node, "** unpacking; name every key")
            elif not (isinstance(node.func, ast.Name) and node.func.id == "sorted" and keyword.arg == "key"):
                self.slip(node, f"the keyword argument {keyword.arg}; pass it by place")
        if isinstance(node.func, ast.Name):
            self._called(node, node.func.id)
        elif isinstance(node.func, ast.Attribute):
            self._method(node, node.func)
        elif isinstance(node.func, ast.Subscript):
            self.visit(node.func)
        else:
            self.slip(node, "calling a result; give it a name first")
        self.visit_parts(*node.args, *node.keywords)

    def _called(self, node: ast.Call, name: str) -> None:
        count = len(node.args) + len(node.keywords)
        if name == "round":
            self.slip(node, "round(); use nearest() of numbers.py")
        elif name not in BUILTIN_NAMES and name in dir(builtins):
            self.slip(node, f"{name}(); the dialect has only {', '.join(sorted(BUILTIN_NAMES))}")
        elif name not in BUILTIN_NAMES:
            self.visit(node.func)
        elif (name, count) not in CALLS:
            self.slip(node, f"{name}() of {count}; the dialect has {counts(CALLS, name)}")
        else:
            self._builtin(node, name, CALLS[name, count])

    def _builtin(self, node: ast.Call, name: str, spelling: str) -> None:
        first = node.args[0]
        if "{each}" in spelling:
            self.note(first, EACH)
        if name == "str":
            self.spoken(first)
        elif name == "len" and self.holder(first) == "dict":
            self.slip(node, "len() of a dict; write len(list(d))")
        elif name in ("max", "min") and "str" in (self.kind(first), part(self.kind(first))):
            self.slip(node, f"{name}() of texts; take the first or last of them sorted")

    def _method(self, node: ast.Call, func: ast.Attribute) -> None:
        if isinstance(func.value, ast.Name) and func.value.id == "math":
            self.visit(func)
            if func.attr == "log" and len(node.args) != 1:
                self.slip(node, "math.log with a base; divide by the base's own")
            return
        key = (func.attr, len(node.args))
        if func.attr not in METHOD_NAMES:
            self.slip(node, f".{func.attr}(); the dialect has only {', '.join(sorted(METHOD_NAMES))}")
        elif key == ("split", 0):
            self.slip(node, "split() without a separator; name it")
        elif key not in METHODS:
            self.slip(node, f".{func.attr}() of {key[1]}; the dialect has {counts(METHODS, func.attr)}")
        elif func.attr == "copy":
            self.note(func.value, COPY)
        elif func.attr == "extend" and self.holder(node.args[0]) in ("dict", "str"):
            self.slip(node, "extend() by something else than a list; write list(…)")
        self.visit(func.value)

    def visit_Attribute(self, node: ast.Attribute) -> None:
        """Refuse attributes but those of math."""
        if not (isinstance(node.value, ast.Name) and node.value.id == "math"):
            self.slip(node, f"the attribute {node.attr}; use a dict's key")
        elif node.attr not in MATH:
            self.slip(node, f"math.{node.attr}; the dialect has only {', '.join(sorted(MATH))}")

    def visit_Subscript(self, node: ast.Subscript) -> None:
        """Refuse a step, and setting what is counted from the end."""
        if isinstance(node.slice, ast.Slice) and node.slice.step is not None:
            self.slip(node, "a slice with a step; write a loop")
        if isinstance(node.ctx, ast.Store) and isinstance(node.slice, ast.Slice | ast.UnaryOp):
            self.slip(node, "setting a slice, or a place from the end; count the place from the start")
        self.generic_visit(node)

    def visit_Dict(self, node: ast.Dict) -> None:
        """Refuse keys that are not strings."""
        for key in node.keys:
            if isinstance(key, ast.Constant) and not isinstance(key.value, str):
                self.slip(node, "a key that is not a string; JSON knows no other")
        self.visit_parts(*[key for key in node.keys if key is not None], *node.values)

    def visit_Name(self, node: ast.Name) -> None:
        """Refuse as a value what only can be called, or read."""
        if node.id in self.for_readers:
            self.slip(node, f"{node.id} outside an annotation; a browser knows no types")
        elif node.id not in self.names and node.id in dir(builtins):
            self.slip(node, f"{node.id} as a value; write a lambda that calls it")


def counts(table: dict[tuple[str, int], str], name: str) -> str:
    """Return with how many arguments a name may be called."""
    return f"{name}() of {' or '.join(str(count) for each, count in table if each == name)}"
