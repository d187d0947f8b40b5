"""The walk over one file that finds where it leaves the dialect."""

import ast
import builtins
from pathlib import Path
from typing import NamedTuple

from configurator.browser.dialect.guess import Types, part
from configurator.browser.dialect.words import ALLOWED, BUILTINS, IMPORTS, INSTEAD, MATH, METHODS, PORTABLE, RESERVED


class Slip(NamedTuple):
    """One place where a file leaves the dialect."""

    path: str
    line: int
    text: str

    def __str__(self) -> str:
        return f"{self.path}:{self.line}: {self.text}"


class Check(ast.NodeVisitor):
    """Walks one file and collects its slips."""

    def __init__(self, path: str, types: Types) -> None:
        self.path = path
        self.types = types
        self.found: list[Slip] = []
        self.names: dict[str, str] = {}
        self.speaks = Path(path).name == "say.py"

    def slip(self, node: ast.AST, text: str) -> None:
        """Note a slip at a node."""
        self.found.append(Slip(self.path, getattr(node, "lineno", 0), text))

    def kind(self, node: ast.expr) -> str:
        """Return the type of an expression as far as it can be seen."""
        return self.types.of(node, self.names)

    def visit(self, node: ast.AST) -> None:
        """Refuse what is not in the dialect; look closer at what is."""
        if not isinstance(node, ALLOWED):
            what = INSTEAD.get(type(node), f"{type(node).__name__}; write it with plain statements")
            self.slip(node, f"the dialect has no {what}")
            return
        super().visit(node)

    def visit_BinOp(self, node: ast.BinOp) -> None:
        """Refuse % on texts, sums and products of lists, and repeated texts."""
        if isinstance(node.op, ast.Mod) and self.kind(node.left) == "str":
            self.slip(node, "% on a text; write an f-string")
        elif not isinstance(node.op, ALLOWED):
            self.slip(node, f"the dialect has no {type(node.op).__name__}; use arithmetic")
        elif self.types.holds(self.kind(node.left)) or self.types.holds(self.kind(node.right)):
            self.slip(node, "arithmetic on a list; use extend or append")
        elif isinstance(node.op, ast.Mult) and "str" in (self.kind(node.left), self.kind(node.right)):
            self.slip(node, "a repeated string; join a list instead")
        self.visit(node.left)
        self.visit(node.right)

    def visit_AugAssign(self, node: ast.AugAssign) -> None:
        """Refuse += on a list."""
        if isinstance(node.op, ast.Mod | ast.Pow | ast.FloorDiv) or not isinstance(node.op, ALLOWED):
            self.slip(node, "an unportable operator; write the arithmetic out")
        if self.types.holds(self.kind(node.target)) or self.types.holds(self.kind(node.value)):
            self.slip(node, "arithmetic on a list; use extend or append")
        self.visit(node.target)
        self.visit(node.value)

    def visit_UnaryOp(self, node: ast.UnaryOp) -> None:
        """Watch ``not`` on lists and dicts."""
        if isinstance(node.op, ast.Not):
            self.judged(node.operand)
        self.generic_visit(node)

    def judged(self, test: ast.expr) -> None:
        """Refuse a list or dict where a truth value is wanted: empty ones are true in a browser."""
        if self.types.holds(self.kind(test)):
            self.slip(test, f"{ast.unparse(test)} as a condition; write len(…) > 0, or name a key that must be there")

    def visit_If(self, node: ast.If) -> None:
        """Watch the condition."""
        self.judged(node.test)
        self.generic_visit(node)

    def visit_IfExp(self, node: ast.IfExp) -> None:
        """Watch the condition."""
        self.judged(node.test)
        self.generic_visit(node)

    def visit_BoolOp(self, node: ast.BoolOp) -> None:
        """Watch each operand."""
        for value in node.values:
            self.judged(value)
        self.generic_visit(node)

    def visit_While(self, node: ast.While) -> None:
        """Watch the condition."""
        self.judged(node.test)
        if len(node.orelse) > 0:
            self.slip(node, "while/else; set a flag instead")
        self.generic_visit(node)

    def visit_Compare(self, node: ast.Compare) -> None:
        """Refuse chains, identity but with None, and comparing lists or dicts."""
        if len(node.ops) > 1:
            self.slip(node, "a chained comparison; write a <= b and b <= c")
        sides = [node.left, *node.comparators]
        nothing = any(isinstance(side, ast.Constant) and side.value is None for side in sides)
        for op in node.ops:
            if isinstance(op, ast.Is | ast.IsNot) and not nothing:
                self.slip(node, "is, other than with None; compare numbers and strings with ==")
            plain = not isinstance(op, ast.Is | ast.IsNot | ast.In | ast.NotIn)
            if plain and any(self.types.holds(self.kind(side)) for side in sides):
                self.slip(node, "comparing lists or dicts; compare their numbers and strings one by one")
        self.generic_visit(node)

    def visit_JoinedStr(self, node: ast.JoinedStr) -> None:
        """Refuse numbers with decimals, format specs and braces in text."""
        for value in node.values:
            if isinstance(value, ast.FormattedValue):
                if value.format_spec is not None or value.conversion != -1:
                    self.slip(node, "a format spec; format with say.py")
                self.spoken(value.value)
            elif isinstance(value, ast.Constant) and ("{" in str(value.value) or "}" in str(value.value)):
                self.slip(node, "a brace within an f-string; join the texts with +")
        self.generic_visit(node)

    def spoken(self, value: ast.expr) -> None:
        """Refuse a number with decimals as text: 2.0 reads 2 in a browser."""
        if self.kind(value) in ("float", "bool") and not self.speaks:
            self.slip(value, f"{ast.unparse(value)} as text; format it with say.py")

    def visit_Call(self, node: ast.Call) -> None:
        """Judge what is called and how."""
        if isinstance(node.func, ast.Name):
            self._called(node, node.func.id)
        elif isinstance(node.func, ast.Attribute):
            self._method(node, node.func)
        elif not isinstance(node.func, ast.Subscript):
            self.slip(node, "calling a result; give it a name first")
        for keyword in node.keywords:
            if keyword.arg is None:
                self.slip(node, "** unpacking; name every key")
            elif not (isinstance(node.func, ast.Name) and node.func.id == "sorted" and keyword.arg == "key"):
                self.slip(node, f"the keyword argument {keyword.arg}; pass it by place")
        self.generic_visit(node)

    def _called(self, node: ast.Call, name: str) -> None:
        if name == "round":
            self.slip(node, "round(); use nearest() of numbers.py")
        elif name not in BUILTINS and name in dir(builtins):
            self.slip(node, f"{name}(); the dialect has only {', '.join(sorted(BUILTINS))}")
        if name == "str" and len(node.args) == 1:
            self.spoken(node.args[0])
        if name == "len" and len(node.args) == 1 and self.types.keyed(self.kind(node.args[0])):
            self.slip(node, "len() of a dict; write len(list(d))")
        if name in ("all", "any") and len(node.args) == 1 and not isinstance(node.args[0], ast.ListComp | ast.List):
            self.slip(node, f"{name}() of something else than a list comprehension; write square brackets")

    def _method(self, node: ast.Call, func: ast.Attribute) -> None:
        if isinstance(func.value, ast.Name) and func.value.id == "math":
            return
        if func.attr not in METHODS:
            self.slip(node, f".{func.attr}(); the dialect has only {', '.join(sorted(METHODS))}")
        if func.attr == "split" and len(node.args) != 1:
            self.slip(node, "split() without a separator; name it")
        if func.attr in ("find", "startswith", "endswith") and len(node.args) != 1:
            self.slip(node, f"{func.attr}() from a place on; cut the text first")
        if func.attr == "replace" and len(node.args) != 2:
            self.slip(node, "replace() of so many; it replaces all")

    def visit_Attribute(self, node: ast.Attribute) -> None:
        """Refuse attributes but those of math and the known methods."""
        if isinstance(node.value, ast.Name) and node.value.id == "math":
            if node.attr not in MATH:
                self.slip(node, f"math.{node.attr}; the dialect has only {', '.join(sorted(MATH))}")
        elif node.attr not in METHODS:
            self.slip(node, f"the attribute {node.attr}; use a dict's key")
        self.generic_visit(node)

    def visit_Slice(self, node: ast.Slice) -> None:
        """Refuse a step."""
        if node.step is not None:
            self.slip(node, "a slice with a step; write a loop")
        self.generic_visit(node)

    def visit_Dict(self, node: ast.Dict) -> None:
        """Refuse ** and keys that are not strings."""
        for key in node.keys:
            if key is None:
                self.slip(node, "** unpacking; name every key")
            elif isinstance(key, ast.Constant) and not isinstance(key.value, str):
                self.slip(node, "a key that is not a string; JSON knows no other")
        for child in [*[key for key in node.keys if key is not None], *node.values]:
            self.visit(child)

    def visit_Import(self, node: ast.Import) -> None:
        """Allow math alone."""
        for alias in node.names:
            if alias.name != "math" or alias.asname is not None:
                self.slip(node, f"import {alias.name}; only `import math` and `from configurator.kernel… import name`")

    def visit_ImportFrom(self, node: ast.ImportFrom) -> None:
        """Allow names from the kernel and for annotations."""
        module = node.module or ""
        if node.level > 0 or not (module in IMPORTS or module.startswith(PORTABLE)):
            self.slip(node, f"import from {module or '.'}; the kernel knows only math, typing and itself")
        for alias in node.names:
            if alias.name == "*" or alias.asname is not None:
                self.slip(node, "import by another name; names are shared by all files")

    def visit_ClassDef(self, node: ast.ClassDef) -> None:
        """Allow TypedDicts alone."""
        bases = [ast.unparse(base) for base in node.bases]
        if bases != ["TypedDict"] and not (len(bases) == 1 and bases[0] in self.types.fields):
            self.slip(node, f"class {node.name}; only TypedDict shapes, everything else is functions")
        if len(node.decorator_list) > 0:
            self.slip(node, "a decorator; call the function plainly")

    def visit_FunctionDef(self, node: ast.FunctionDef) -> None:
        """Judge the head of a function, then its body with the names it knows."""
        if len(node.decorator_list) > 0:
            self.slip(node, "a decorator; call the function plainly")
        outer = self.names
        self.names = {**outer, **{arg.arg: annotation(arg.annotation) for arg in node.args.args}}
        self.named(node, node.name)
        self._arguments(node, node.args)
        if node.name[:1].isupper():
            self.slip(node, f"the function name {node.name}; begin with a small letter")
        for statement in node.body:
            self.visit(statement)
        self.names = outer

    def _arguments(self, node: ast.AST, arguments: ast.arguments) -> None:
        if arguments.vararg or arguments.kwarg or arguments.kwonlyargs or arguments.posonlyargs:
            self.slip(node, "star arguments; name each argument")
        for arg in arguments.args:
            self.named(arg, arg.arg)
        for default in arguments.defaults:
            self.visit(default)

    def visit_Lambda(self, node: ast.Lambda) -> None:
        """Refuse defaults, and keys that are lists."""
        if len(node.args.defaults) > 0:
            self.slip(node, "a lambda with defaults; write a function")
        if isinstance(node.body, ast.Tuple | ast.List):
            self.slip(node, "a list as a sort key; sort by one number or string")
        self._arguments(node, node.args)
        self.visit(node.body)

    def named(self, node: ast.AST, name: str) -> None:
        """Refuse a name that JavaScript or the translation needs."""
        if name in RESERVED:
            self.slip(node, f"the name {name}; a browser keeps it for itself")
        elif name in BUILTINS or name == "math":
            self.slip(node, f"the name {name}; it hides Python's own")
        elif name.startswith(("stub", "_py")):
            self.slip(node, f"the name {name}; the translator uses such names")

    def visit_Name(self, node: ast.Name) -> None:
        """Judge each name that is set."""
        if isinstance(node.ctx, ast.Store):
            self.named(node, node.id)

    def visit_Assign(self, node: ast.Assign) -> None:
        """Learn the type of what is assigned."""
        if len(node.targets) > 1:
            self.slip(node, "two assignments in one; write two lines")
        self.generic_visit(node)
        if isinstance(node.targets[0], ast.Name):
            self.names[node.targets[0].id] = self.kind(node.value)

    def visit_AnnAssign(self, node: ast.AnnAssign) -> None:
        """Learn the type that is written down."""
        self.visit(node.target)
        if isinstance(node.target, ast.Name):
            self.names[node.target.id] = annotation(node.annotation)
        if node.value is not None:
            self.visit(node.value)

    def visit_For(self, node: ast.For) -> None:
        """Learn the loop's names; refuse to change what a range was made of while it runs."""
        if len(node.orelse) > 0:
            self.slip(node, "for/else; set a flag instead")
        self.learn(node.target, node.iter)
        if isinstance(node.iter, ast.Call) and ast.unparse(node.iter.func) == "range":
            self._range(node, node.iter)
        if paired(node.iter) is not None and not isinstance(node.target, ast.Tuple):
            self.slip(node, "items() with one name; take the key and the value")
        self.generic_visit(node)

    def learn(self, target: ast.expr, source: ast.expr) -> None:
        """Note the types of the names that a loop sets."""
        if isinstance(target, ast.Name):
            whole = self.kind(source)
            ranged = isinstance(source, ast.Call) and ast.unparse(source.func) == "range"
            self.names[target.id] = "int" if ranged else "str" if self.types.keyed(whole) else part(whole)
        whole_dict = paired(source)
        if isinstance(target, ast.Tuple) and whole_dict is not None and len(target.elts) == 2:
            self.names[ast.unparse(target.elts[0])] = "str"
            self.names[ast.unparse(target.elts[1])] = part(self.kind(whole_dict))

    def _range(self, node: ast.For, source: ast.Call) -> None:
        names = {name.id for name in ast.walk(source) if isinstance(name, ast.Name)}
        names.update(name.id for name in ast.walk(node.target) if isinstance(name, ast.Name))
        for statement in node.body:
            for inner in ast.walk(statement):
                set_here = isinstance(inner, ast.Name) and isinstance(inner.ctx, ast.Store) and inner.id in names
                grown = (
                    isinstance(inner, ast.Attribute)
                    and inner.attr in ("append", "extend", "insert", "pop")
                    and isinstance(inner.value, ast.Name)
                    and inner.value.id in names
                )
                if set_here or grown:
                    self.slip(inner, "changing what the range counts while it runs; use other names")

    def visit_ListComp(self, node: ast.ListComp) -> None:
        """Learn the comprehension's names before its parts are judged."""
        for generator in node.generators:
            self.learn(generator.target, generator.iter)
            for condition in generator.ifs:
                self.judged(condition)
        self.generic_visit(node)

    def visit_Expr(self, node: ast.Expr) -> None:
        """Skip docstrings."""
        if not isinstance(node.value, ast.Constant):
            self.generic_visit(node)


def annotation(node: ast.expr | None) -> str:
    """Return an annotation as text."""
    return "" if node is None else ast.unparse(node)


def paired(node: ast.expr) -> ast.expr | None:
    """Return the dict whose ``items()`` an expression takes, or None."""
    if isinstance(node, ast.Call) and isinstance(node.func, ast.Attribute) and node.func.attr == "items":
        return node.func.value
    return None
