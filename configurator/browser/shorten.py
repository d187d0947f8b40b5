"""Less to send: short names, and nothing that no page can reach.

Within one outer function every name that it or a function in it sets gets a short name of its
own, so nothing can come to mean something else. The functions and constants that all files
share get names with an underscore before them, which no local name has.
"""

import ast
import keyword
import string
from collections.abc import Iterator
from itertools import product

from configurator.browser.dialect import defined
from configurator.browser.dialect.words import RESERVED


def shorten(function: ast.FunctionDef) -> ast.FunctionDef:
    """Return an outer function with short names for its arguments, variables and inner functions."""
    part_comprehensions(function)
    inner = [node for node in ast.walk(function) if isinstance(node, ast.FunctionDef) and node is not function]
    names = [node for node in ast.walk(function) if isinstance(node, ast.Name)]
    arguments = [node for node in ast.walk(function) if isinstance(node, ast.arg)]
    bound = [node.arg for node in arguments] + [node.name for node in inner]
    bound += [node.id for node in names if isinstance(node.ctx, ast.Store)]
    free = short_names({node.id for node in names}.difference(bound))
    short = {name: next(free) for name in dict.fromkeys(bound)}
    for name in names:
        name.id = short.get(name.id, name.id)
    for argument in arguments:
        argument.arg = short[argument.arg]
    for part in inner:
        part.name = short[part.name]
    return function


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


def short_names(taken: set[str]) -> Iterator[str]:
    """Yield a, b, c … aa, ab … but for names that are taken or that a language keeps for itself."""
    for length in (1, 2):
        for letters in product(string.ascii_lowercase, repeat=length):
            name = "".join(letters)
            if name not in taken and name not in RESERVED and not keyword.iskeyword(name):
                yield name


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


def shorten_shared(tree: ast.Module) -> dict[str, str]:
    """Give short names to all that the files share; return the short name of each."""
    names = [name for statement in tree.body for name in defined(statement)]
    short = {name: f"_{letters}" for name, letters in zip(names, short_names(set()), strict=False)}
    for node in ast.walk(tree):
        if isinstance(node, ast.Name):
            node.id = short.get(node.id, node.id)
    for statement in tree.body:
        if isinstance(statement, ast.FunctionDef):
            statement.name = short[statement.name]
    return short
