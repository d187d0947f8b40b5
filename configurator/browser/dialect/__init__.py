"""The portable dialect: the part of Python that means the same in a browser.

:func:`slips` names every place where a file leaves the dialect, with what to write instead.
The translator refuses such files, so a slip never reaches a client.
"""

import ast

from configurator.browser.dialect.check import Check
from configurator.browser.dialect.guess import Types, is_alias
from configurator.browser.dialect.slip import Slip
from configurator.browser.emit import Holders

__all__ = ["Slip", "defined", "slips", "slips_and_holders"]


def slips(sources: dict[str, str]) -> list[Slip]:
    """Return every slip in the given files (path to source), ordered by path and line.

    The files share one flat namespace once translated, so they are judged together.
    """
    return slips_and_holders({path: ast.parse(source) for path, source in sources.items()})[0]


def slips_and_holders(trees: dict[str, ast.Module]) -> tuple[list[Slip], Holders]:
    """Return every slip in the given files (path to what has been parsed), in the same order.

    Beside them what the emitter needs: which expressions are a list, a dict or a text, where that matters.
    """
    types = Types(list(trees.values()))
    found: list[Slip] = clashes(trees)
    holders: Holders = {}
    for path, tree in trees.items():
        check = Check(path, types)
        check.check(tree)
        found.extend(check.found)
        holders.update(check.holders)
    return sorted(set(found)), holders


def clashes(trees: dict[str, ast.Module]) -> list[Slip]:
    """Return the functions and constants whose name another file has too."""
    seen: dict[str, str] = {}
    found = []
    for path in sorted(trees):
        for node in trees[path].body:
            for name in defined(node):
                if name in seen:
                    text = f"{name} is defined in {seen[name]} too; give it another name"
                    found.append(Slip(path, node.lineno, text))
                seen[name] = path
    return found


def defined(node: ast.stmt) -> list[str]:
    """Return the names that a statement at the top of a file defines for the translation."""
    if isinstance(node, ast.FunctionDef):
        return [node.name]
    if is_alias(node):
        return []
    targets = node.targets if isinstance(node, ast.Assign) else [node.target] if isinstance(node, ast.AnnAssign) else []
    return [target.id for target in targets if isinstance(target, ast.Name)]
