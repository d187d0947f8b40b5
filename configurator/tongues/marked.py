"""How the source marks words to be translated: as text written out in a call that tells them.

``wording`` marks a text where it is only named. The finder serves both those who gather the texts and the
translation to JavaScript, which puts a page's language in their place.
"""

import ast
from collections.abc import Iterator

# Where the texts stand among the arguments of a function or method of this name.
MARKS: dict[str, tuple[int, ...]] = {
    "wording": (0,),
    "in_words": (0,),
    "message": (0,),
    "plain": (0,),
    "several": (0, 1),
    "working": (0, 1),
    "measured": (1, 2),
    "named": (1,),
    "share_figure": (1,),
    "projection_figure": (1,),
    "turning_leg": (1,),
    "moving_kind": (0,),
    "fixed_kind": (0,),
    "figure": (1,),
    "verdict": (1,),
    "caution": (1, 2),
    "caution_with": (2,),
    "guidance": (2,),
}


def marked_as(func: ast.expr) -> str:
    """Return the name by which a call marks its texts; empty where it marks none."""
    name = func.id if isinstance(func, ast.Name) else func.attr if isinstance(func, ast.Attribute) else ""
    return name if name in MARKS else ""


def marked_arguments(call: ast.Call) -> list[ast.expr]:
    """Return the arguments of a call that hold words to be translated."""
    return [call.args[place] for place in MARKS.get(marked_as(call.func), ()) if place < len(call.args)]


def written_out(argument: ast.expr) -> Iterator[ast.Constant]:
    """Yield the texts that are written out in an argument, whichever of them is chosen when it runs."""
    if isinstance(argument, ast.Constant) and isinstance(argument.value, str) and argument.value != "":
        yield argument
    if isinstance(argument, ast.IfExp):
        yield from written_out(argument.body)
        yield from written_out(argument.orelse)
