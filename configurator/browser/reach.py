"""What of the kernel a script needs."""

import ast
from functools import lru_cache

from configurator.browser.dialect import defined

# What of a field of the tape's table only content reads.
CONTENT_KEYS = ("path", "assumed", "what")


class WithoutTables(ast.NodeTransformer):
    """Leaves nothing of what only the catalog reads: what a mechanism takes, and what a file holds of a field."""

    def visit_Name(self, node: ast.Name) -> ast.expr:
        """Put an empty table for one that is mentioned."""
        return ast.Dict([], []) if is_table(node.id) else node

    def visit_AnnAssign(self, node: ast.AnnAssign) -> ast.AnnAssign:
        """Take out of a list of fields the keys that only content reads."""
        if ast.unparse(node.annotation) == "list[Field]" and isinstance(node.value, ast.List):
            rows = [row for row in node.value.elts if isinstance(row, ast.Dict)]
            node.value.elts = [slim_row(row) for row in rows]
        self.generic_visit(node)
        return node


def slim_row(row: ast.Dict) -> ast.Dict:
    """Return a field without what only content reads."""
    kept = [
        (key, value)
        for key, value in zip(row.keys, row.values, strict=True)
        if not (isinstance(key, ast.Constant) and key.value in CONTENT_KEYS)
    ]
    return ast.Dict([key for key, _ in kept], [value for _, value in kept])


def without_tables(statements: list[ast.stmt]) -> list[ast.stmt]:
    """Return the statements without such tables."""
    kept = [node for node in statements if not any(is_table(name) for name in defined(node))]
    return [WithoutTables().visit(node) for node in kept]


def is_table(name: str) -> bool:
    """Return whether a constant is such a table."""
    return name.endswith("_TAKES")


def reached(statements: list[ast.stmt], entries: list[str]) -> list[ast.stmt]:
    """Return the statements that define what the entries need, in their order."""
    uses = {name: statement for statement in statements for name in defined(statement)}
    wanted: set[str] = set()
    waiting = list(entries)
    while len(waiting) > 0:
        name = waiting.pop()
        if name in uses and name not in wanted:
            wanted.add(name)
            waiting.extend(names_in(uses[name]))
    return [statement for statement in statements if wanted.intersection(defined(statement))]


# Every script asks it of the whole kernel.
@lru_cache(maxsize=4096)
def names_in(statement: ast.stmt) -> frozenset[str]:
    """Return every name that a statement mentions."""
    return frozenset(node.id for node in ast.walk(statement) if isinstance(node, ast.Name))
