"""What of the kernel a script needs, and names that are right wherever they are used."""

import ast

from configurator.browser.dialect import defined


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


def part_comprehensions(function: ast.FunctionDef) -> None:
    """Give comprehensions names of their own, as they do in Python but not in PScript."""
    count = 0
    for node in reversed(list(ast.walk(function))):
        if isinstance(node, ast.ListComp):
            count += 1
            own = {name.id for loop in node.generators for name in ast.walk(loop.target) if isinstance(name, ast.Name)}
            outside = {id(name) for name in ast.walk(node.generators[0].iter)}
            for name in ast.walk(node):
                if isinstance(name, ast.Name) and name.id in own and id(name) not in outside:
                    name.id = f"{name.id}_{count}"
