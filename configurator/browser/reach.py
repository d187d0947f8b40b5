"""What of the kernel a script needs."""

import ast

from configurator.browser.dialect import defined


class WithoutTables(ast.NodeTransformer):
    """Leaves nothing of the tables of what a mechanism takes, which only the catalog reads."""

    def visit_Name(self, node: ast.Name) -> ast.expr:
        """Put an empty table for one that is mentioned."""
        return ast.Dict([], []) if is_table(node.id) else node


def without_tables(statements: list[ast.stmt]) -> list[ast.stmt]:
    """Return the statements without such tables."""
    kept = [node for node in statements if not any(is_table(name) for name in defined(node))]
    return [WithoutTables().visit(node) for node in kept]


def is_table(name: str) -> bool:
    """Return whether a constant is such a table."""
    return name.endswith("_TAKES")


def reached(statements: list[ast.stmt], entries: list[str]) -> list[ast.stmt]:
    """Return the statements that define what the entries need, in their order."""
    uses = {name: names_in(statement) for statement in statements for name in defined(statement)}
    wanted: set[str] = set()
    waiting = list(entries)
    while len(waiting) > 0:
        name = waiting.pop()
        if name in uses and name not in wanted:
            wanted.add(name)
            waiting.extend(uses[name])
    return [statement for statement in statements if wanted.intersection(defined(statement))]


def names_in(statement: ast.stmt) -> set[str]:
    """Return every name that a statement mentions."""
    return {node.id for node in ast.walk(statement) if isinstance(node, ast.Name)}
