"""Small slips that a programmer might make, each made in a copy of one file."""

import ast
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

SWAPPED: dict[type[ast.AST], type[ast.AST]] = {
    ast.Lt: ast.LtE,
    ast.LtE: ast.Lt,
    ast.Gt: ast.GtE,
    ast.GtE: ast.Gt,
    ast.Eq: ast.NotEq,
    ast.NotEq: ast.Eq,
    ast.Add: ast.Sub,
    ast.Sub: ast.Add,
    ast.Mult: ast.Div,
    ast.Div: ast.Mult,
    ast.And: ast.Or,
    ast.Or: ast.And,
    ast.In: ast.NotIn,
    ast.NotIn: ast.In,
    ast.USub: ast.UAdd,
}
RENAMED = {"min": "max", "max": "min", "sin": "cos", "cos": "sin", "any": "all", "all": "any", "extend": "append"}
SWAPPED_KEYS = {
    "x0": "x1", "x1": "x0", "y0": "y1", "y1": "y0", "z0": "z1", "z1": "z0", "view": "light", "light": "view",
}  # fmt: skip


class Slip(NamedTuple):
    """One slip: which file, on which line, what it is, and the whole text of the file with it."""

    file: Path
    line: int
    what: str
    text: str


def _in_place(node: ast.AST) -> Iterator[str]:
    """Make each slip that a node allows, yield what it is while it stands, and take it back."""
    if isinstance(node, ast.Compare | ast.BinOp | ast.BoolOp | ast.UnaryOp):
        yield from _operator(node)
    elif isinstance(node, ast.Call) and isinstance(node.func, ast.Name | ast.Attribute):
        yield from _called(node.func)
    elif isinstance(node, ast.Constant):
        yield from _constant(node)
    elif isinstance(node, ast.If | ast.IfExp | ast.While):
        yield from _condition(node)


def _operator(node: ast.Compare | ast.BinOp | ast.BoolOp | ast.UnaryOp) -> Iterator[str]:
    before = node.ops[0] if isinstance(node, ast.Compare) else node.op
    after = SWAPPED.get(type(before))
    if after is None:
        return

    def put(operator: ast.AST) -> None:
        if isinstance(node, ast.Compare):
            node.ops[0] = operator  # type: ignore[call-overload]
        else:
            node.op = operator  # type: ignore[assignment]

    put(after())
    yield f"{type(before).__name__} to {after.__name__}"
    put(before)


def _called(func: ast.Name | ast.Attribute) -> Iterator[str]:
    name = func.id if isinstance(func, ast.Name) else func.attr
    if name not in RENAMED:
        return
    slot = "id" if isinstance(func, ast.Name) else "attr"
    setattr(func, slot, RENAMED[name])
    yield f"{name} to {RENAMED[name]}"
    setattr(func, slot, name)


def _constant(node: ast.Constant) -> Iterator[str]:
    before = node.value
    if isinstance(before, bool):
        node.value = not before
    elif isinstance(before, int | float):
        node.value = before + 1
    elif isinstance(before, str) and before in SWAPPED_KEYS:
        node.value = SWAPPED_KEYS[before]
    else:
        return
    yield f"{before!r} to {node.value!r}"
    node.value = before


def _condition(node: ast.If | ast.IfExp | ast.While) -> Iterator[str]:
    before = node.test
    if not isinstance(node, ast.While):
        node.test = ast.Constant(True)
        yield "always so"
    node.test = ast.Constant(False)
    yield "never so"
    node.test = before


def _annotations(tree: ast.AST) -> set[int]:
    """Return the nodes that only say a type, which no run can tell apart."""
    said: set[int] = set()
    for node in ast.walk(tree):
        for name in ("annotation", "returns"):
            told = getattr(node, name, None)
            if isinstance(told, ast.AST):
                said.update(id(part) for part in ast.walk(told))
    return said


def slips_in(file: Path) -> Iterator[Slip]:
    """Yield every slip that can be made in a file."""
    tree = ast.parse(file.read_text(encoding="utf-8"))
    types = _annotations(tree)
    for node in ast.walk(tree):
        if id(node) not in types:
            for what in _in_place(node):
                yield Slip(file, getattr(node, "lineno", 0), what, ast.unparse(tree))
