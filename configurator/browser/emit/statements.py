"""Statements as JavaScript: one method for each kind of node."""

import ast

from configurator.browser.emit.expressions import Expressions, Holders
from configurator.browser.emit.spelling import WITHIN
from configurator.kernel.tongue import Words


class Statements(Expressions):
    """Writes statements that keep to the dialect.

    A function's names belong to the whole of it, as in Python: ``var`` says so wherever it first stands.
    """

    def __init__(self, holders: Holders, words: Words) -> None:
        super().__init__(holders, words)
        self.undeclared: set[str] = set()

    def block(self, body: list[ast.stmt]) -> str:
        """Return statements in braces."""
        return f"{{\n{self.lines(body)}}}"

    def lines(self, body: list[ast.stmt]) -> str:
        """Return statements, one a line, declarations in a row as one."""
        written: list[str] = []
        for text in map(self.text, body):
            if text.startswith("var ") and len(written) > 0 and written[-1].startswith("var "):
                written[-1] = f"{written[-1][:-1]}, {text[4:]}"
            else:
                written.append(text)
        return "".join(f"{text}\n" for text in written)

    def visit_FunctionDef(self, node: ast.FunctionDef) -> str:
        """Write a function."""
        args = [arg.arg for arg in node.args.args]
        outer, self.undeclared = self.undeclared, own_names(node.body).difference(args)
        written = f"function {node.name}({', '.join(args)}) {self.block(node.body)}"
        self.undeclared = outer
        return written

    def visit_Return(self, node: ast.Return) -> str:
        """Write a return; Python's nothing is null."""
        return f"return {'null' if node.value is None else self.text(node.value)};"

    def target(self, node: ast.expr) -> str:
        """Return what is set, declared where that has not been done."""
        names = {each.id for each in ast.walk(node) if isinstance(each, ast.Name)}
        new = not isinstance(node, ast.Subscript) and not names.isdisjoint(self.undeclared)
        self.undeclared -= names if new else set()
        return f"var {self.text(node)}" if new else self.text(node)

    def visit_Assign(self, node: ast.Assign) -> str:
        """Write an assignment."""
        return f"{self.target(node.targets[0])} = {self.text(node.value)};"

    def visit_AnnAssign(self, node: ast.AnnAssign) -> str:
        """Write an assignment, without the type."""
        return "" if node.value is None else f"{self.target(node.target)} = {self.text(node.value)};"

    def visit_AugAssign(self, node: ast.AugAssign) -> str:
        """Write an assignment that changes what was there."""
        return f"{self.text(node.target)} {WITHIN[type(node.op)]} {self.text(node.value)};"

    def visit_Expr(self, node: ast.Expr) -> str:
        """Write a call; leave out what is said to readers."""
        return "" if isinstance(node.value, ast.Constant) else f"{self.text(node.value)};"

    def visit_If(self, node: ast.If) -> str:
        """Write a choice of statements."""
        chosen = f"if ({self.text(node.test)}) {self.block(node.body)}"
        if len(node.orelse) == 0:
            return chosen
        again = len(node.orelse) == 1 and isinstance(node.orelse[0], ast.If)
        return f"{chosen} else {self.text(node.orelse[0]) if again else self.block(node.orelse)}"

    def visit_While(self, node: ast.While) -> str:
        """Write a loop that lasts as long as something holds."""
        return f"while ({self.text(node.test)}) {self.block(node.body)}"

    def visit_For(self, node: ast.For) -> str:
        """Write a loop: a range is counted, all else is met one by one."""
        steps = range_of(node)
        if steps is None:
            return f"for ({self.target(node.target)} of {self.each(node.iter)}) {self.block(node.body)}"
        return f"for ({self.counting(self.text(node.target), steps)}) {self.block(node.body)}"

    def counting(self, name: str, steps: list[ast.expr]) -> str:
        """Return the head of a loop over a range, whose end is worked out once."""
        start = "0" if len(steps) == 1 else self.text(steps[0])
        end = self.text(steps[min(1, len(steps) - 1)])
        step = self.text(steps[2]) if len(steps) == 3 else "1"
        sign = ">" if step.startswith("-") else "<"
        further = f"{name}++" if step == "1" else f"{name} += {step}"
        if isinstance(steps[min(1, len(steps) - 1)], ast.Constant):
            return f"let {name} = {start}; {name} {sign} {end}; {further}"
        return f"let {name} = {start}, $end = {end}; {name} {sign} $end; {further}"

    def visit_Break(self, node: ast.Break) -> str:
        """Write a break."""
        return "break;"

    def visit_Continue(self, node: ast.Continue) -> str:
        """Write a continue."""
        return "continue;"

    def visit_Pass(self, node: ast.Pass) -> str:
        """Write nothing."""
        return ""


def range_of(node: ast.For) -> list[ast.expr] | None:
    """Return what the range is made of that a loop counts through, or None."""
    source = node.iter
    ranged = isinstance(source, ast.Call) and isinstance(source.func, ast.Name) and source.func.id == "range"
    return source.args if ranged and isinstance(source, ast.Call) else None


def own_names(body: list[ast.stmt]) -> set[str]:
    """Return the names that statements set for the whole function, those that count a range left out."""
    names: set[str] = set()
    waiting: list[ast.AST] = list(body)
    while len(waiting) > 0:
        node = waiting.pop()
        if isinstance(node, ast.Name) and isinstance(node.ctx, ast.Store):
            names.add(node.id)
        elif isinstance(node, ast.For) and range_of(node) is not None:
            waiting.extend(node.body)
        elif not isinstance(node, ast.FunctionDef | ast.Lambda | ast.ListComp):
            waiting.extend(ast.iter_child_nodes(node))
    return names
