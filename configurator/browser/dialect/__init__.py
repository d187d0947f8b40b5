"""The portable dialect: the part of Python that means the same in a browser.

:func:`slips` names every place where a file leaves the dialect, with what to write instead.
The translator refuses such files, so a slip never reaches a client.
"""

import ast

from configurator.browser.dialect.check import Check, Slip
from configurator.browser.dialect.guess import Types

__all__ = ["Slip", "defined", "slips", "slips_in"]


def slips(sources: dict[str, str]) -> list[Slip]:
    """Return every slip in the given files (path to source), ordered by path and line.

    The files share one flat namespace once translated, so they are judged together.
    """
    return slips_in({path: ast.parse(source) for path, source in sources.items()})


def slips_in(trees: dict[str, ast.Module]) -> list[Slip]:
    """Return every slip in the given files (path to what has been parsed), in the same order."""
    types = Types(list(trees.values()))
    found: list[Slip] = clashes(trees)
    for path, tree in trees.items():
        check = Check(path, types)
        check.visit(tree)
        found.extend(check.found)
    return sorted(set(found))


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
    targets = node.targets if isinstance(node, ast.Assign) else [node.target] if isinstance(node, ast.AnnAssign) else []
    return [target.id for target in targets if isinstance(target, ast.Name)]
