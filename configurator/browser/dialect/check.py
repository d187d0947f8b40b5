"""The walk over one file that finds where it leaves the dialect."""

import ast
from collections.abc import Iterator

from configurator.browser.dialect.guess import is_alias
from configurator.browser.dialect.values import Values
from configurator.browser.dialect.words import BUILTIN_NAMES, IMPORTS, PORTABLE, RESERVED
from configurator.browser.emit.spelling import EACH, WITHIN
from configurator.browser.emit.statements import range_of


class Check(Values):
    """Walks one file and collects its slips."""

    def check(self, tree: ast.Module) -> None:
        """Judge a file: imports, shapes, functions and constants."""
        for node in tree.body:
            if isinstance(node, ast.Import):
                self.imported(node)
            elif isinstance(node, ast.ImportFrom):
                self.imported_from(node)
            elif isinstance(node, ast.ClassDef):
                self.shape(node)
            elif isinstance(node, ast.FunctionDef | ast.Assign | ast.AnnAssign | ast.Expr):
                if not is_alias(node):
                    self.visit(node)
            else:
                self.slip(node, f"{type(node).__name__} at the top of a file; put it into a function")

    def imported(self, node: ast.Import) -> None:
        """Allow math alone."""
        for alias in node.names:
            if alias.name != "math" or alias.asname is not None:
                self.slip(node, f"import {alias.name}; only `import math` and `from configurator.kernel… import name`")

    def imported_from(self, node: ast.ImportFrom) -> None:
        """Allow names from the kernel and for annotations."""
        module = node.module or ""
        if node.level > 0 or not (module in IMPORTS or module.startswith(PORTABLE)):
            self.slip(node, f"import from {module or '.'}; the kernel knows only math, typing and itself")
        for alias in node.names:
            if alias.name == "*" or alias.asname is not None:
                self.slip(node, "import by another name; names are shared by all files")
        if module in IMPORTS:
            self.for_readers.update(alias.name for alias in node.names)

    def shape(self, node: ast.ClassDef) -> None:
        """Allow TypedDicts alone."""
        bases = [ast.unparse(base) for base in node.bases]
        if len(bases) == 0 or not all(base == "TypedDict" or base in self.types.fields for base in bases):
            self.slip(node, f"class {node.name}; only TypedDict shapes, everything else is functions")
        self.undecorated(node)

    def undecorated(self, node: ast.ClassDef | ast.FunctionDef) -> None:
        """Refuse decorators."""
        if len(node.decorator_list) > 0:
            self.slip(node, "a decorator; call the function plainly")

    def visit_FunctionDef(self, node: ast.FunctionDef) -> None:
        """Judge the head of a function, then its body with the names it knows."""
        self.undecorated(node)
        outer = self.names
        self.names = {**outer, **{arg.arg: annotation(arg.annotation) for arg in node.args.args}}
        self.named(node, node.name)
        self._arguments(node, node.args)
        if node.name[:1].isupper():
            self.slip(node, f"the function name {node.name}; begin with a small letter")
        self.visit_parts(*node.body)
        for loop in ast.walk(node):
            if isinstance(loop, ast.For) and isinstance(loop.target, ast.Name) and range_of(loop) is not None:
                self._counter(node, loop.target.id)
        self.names = outer

    def _counter(self, function: ast.FunctionDef, name: str) -> None:
        for node in beside(function, name):
            if (isinstance(node, ast.arg) and node.arg == name) or (isinstance(node, ast.Name) and node.id == name):
                self.slip(node, f"{name} beside the range that it counts; use another name")

    def _arguments(self, node: ast.AST, arguments: ast.arguments) -> None:
        if arguments.vararg or arguments.kwarg or arguments.kwonlyargs or arguments.posonlyargs:
            self.slip(node, "star arguments; name each argument")
        for arg in arguments.args:
            self.named(arg, arg.arg)
        if len(arguments.defaults) > 0:
            self.slip(node, "a default; give every argument")

    def visit_Lambda(self, node: ast.Lambda) -> None:
        """Refuse keys that are lists."""
        if isinstance(node.body, ast.Tuple | ast.List):
            self.slip(node, "a list as a sort key; sort by one number or string")
        self._arguments(node, node.args)
        outer = self.names
        self.names = {**outer, **{arg.arg: "" for arg in node.args.args}}
        self.visit(node.body)
        self.names = outer

    def named(self, node: ast.AST, name: str) -> None:
        """Refuse a name that JavaScript or the translation needs."""
        if name in RESERVED:
            self.slip(node, f"the name {name}; a browser keeps it for itself")
        elif name in BUILTIN_NAMES or name == "math":
            self.slip(node, f"the name {name}; it hides Python's own")

    def visit_Name(self, node: ast.Name) -> None:
        """Judge each name that is set."""
        if isinstance(node.ctx, ast.Store):
            self.named(node, node.id)
        else:
            super().visit_Name(node)

    def visit_Assign(self, node: ast.Assign) -> None:
        """Learn the type of what is assigned."""
        target = node.targets[0]
        if len(node.targets) > 1:
            self.slip(node, "two assignments in one; write two lines")
        if isinstance(target, ast.Tuple | ast.List):
            self.slip(node, "unpacking; take each part by its place")
        self.visit_parts(node.value, *node.targets)
        if isinstance(target, ast.Name):
            self.names[target.id] = self.kind(node.value)

    def visit_AnnAssign(self, node: ast.AnnAssign) -> None:
        """Learn the type that is written down."""
        if node.value is not None:
            self.visit(node.value)
        self.visit(node.target)
        if isinstance(node.target, ast.Name):
            self.names[node.target.id] = annotation(node.annotation)

    def visit_AugAssign(self, node: ast.AugAssign) -> None:
        """Refuse += on a list."""
        if type(node.op) not in WITHIN:
            self.slip(node, "an unportable operator; write the arithmetic out")
        if self.types.holds(self.kind(node.target)) or self.types.holds(self.kind(node.value)):
            self.slip(node, "arithmetic on a list; use extend or append")
        self.visit_parts(node.target, node.value)

    def visit_If(self, node: ast.If) -> None:
        """Watch the condition."""
        self.judged(node.test)
        self.generic_visit(node)

    def visit_While(self, node: ast.While) -> None:
        """Watch the condition."""
        self.judged(node.test)
        if len(node.orelse) > 0:
            self.slip(node, "while/else; set a flag instead")
        self.generic_visit(node)

    def visit_For(self, node: ast.For) -> None:
        """Learn the loop's names; refuse to change what a range counts while it runs."""
        if len(node.orelse) > 0:
            self.slip(node, "for/else; set a flag instead")
        steps = range_of(node)
        if steps is None:
            self.met(node)
        else:
            self._range(node, steps)
        self.visit_parts(node.iter, node.target)
        self.names.update(self.types.met(node.target, node.iter, self.names))
        self.visit_parts(*node.body)

    def met(self, loop: ast.For | ast.comprehension) -> None:
        """Note what a loop goes over."""
        self.note(loop.iter, EACH)
        if isinstance(loop.target, ast.Tuple) and not self.kind(loop.iter).startswith("list[tuple["):
            self.slip(loop.target, "unpacking; take each part by its place")

    def _range(self, node: ast.For, steps: list[ast.expr]) -> None:
        if len(steps) == 3 and not is_written(steps[2]):
            self.slip(node, "a range whose step is worked out; write the number")
        if not isinstance(node.target, ast.Name):
            self.slip(node, "a range that counts something else than a name; give it a name")
            return
        for inner in ast.walk(ast.Module(node.body, [])):
            if isinstance(inner, ast.Name) and isinstance(inner.ctx, ast.Store) and inner.id == node.target.id:
                self.slip(inner, "changing what the range counts while it runs; use other names")

    def visit_ListComp(self, node: ast.ListComp) -> None:
        """Learn the comprehension's names, which are its own, as its parts are judged."""
        outer = self.names
        self.names = dict(outer)
        for loop in node.generators:
            self.met(loop)
            self.visit_parts(loop.iter, loop.target)
            self.names.update(self.types.met(loop.target, loop.iter, self.names))
            for condition in loop.ifs:
                self.judged(condition)
                self.visit(condition)
        self.visit(node.elt)
        self.names = outer

    def visit_Expr(self, node: ast.Expr) -> None:
        """Skip docstrings."""
        if not isinstance(node.value, ast.Constant):
            self.visit(node.value)


def annotation(node: ast.expr | None) -> str:
    """Return an annotation as text."""
    return "" if node is None else ast.unparse(node)


def is_written(node: ast.expr) -> bool:
    """Return whether a number stands there as it is."""
    return isinstance(node.operand if isinstance(node, ast.UnaryOp) else node, ast.Constant)


def beside(function: ast.FunctionDef, name: str) -> Iterator[ast.AST]:
    """Yield what is in a function, but for the ranges that count a name and what has that name for itself."""
    waiting: list[ast.AST] = [function.args, *function.body]
    while len(waiting) > 0:
        node = waiting.pop()
        if not binds(node, name):
            yield node
            waiting.extend(ast.iter_child_nodes(node))


def binds(node: ast.AST, name: str) -> bool:
    """Return whether a loop over a range, a comprehension or a function within has a name of its own."""
    if isinstance(node, ast.For):
        return range_of(node) is not None and name in names_in(node.target)
    if isinstance(node, ast.ListComp):
        return any(name in names_in(loop.target) for loop in node.generators)
    if isinstance(node, ast.FunctionDef | ast.Lambda):
        return any(arg.arg == name for arg in node.args.args)
    return False


def names_in(node: ast.AST) -> set[str]:
    """Return every name that is mentioned."""
    return {each.id for each in ast.walk(node) if isinstance(each, ast.Name)}
