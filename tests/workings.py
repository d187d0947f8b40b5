"""A figure's working, worked out: its terms put into its template."""

import math
import re

from configurator.kernel.shapes import Figure

# A multiple that floats miss by less than this is one.
SLACK = 1e-9
KNOWN = {
    "ceil": lambda value: math.ceil(value - SLACK),
    "floor": lambda value: math.floor(value + SLACK),
    "max": max,
    "min": min,
    "sqrt": math.sqrt,
    "abs": abs,
    "cos": lambda degrees: math.cos(math.radians(degrees)),
    "sin": lambda degrees: math.sin(math.radians(degrees)),
    "acos": lambda share: math.degrees(math.acos(share)),
    "asin": lambda share: math.degrees(math.asin(share)),
    "atan": lambda share: math.degrees(math.atan(share)),
    "atan2": lambda rise, run: math.degrees(math.atan2(rise, run)),
}


def arithmetic(template: str) -> str:
    """Return the part of a template that is worked out: what stands before a comma that is in no brackets."""
    depth = 0
    for place, sign in enumerate(template):
        depth += (sign == "(") - (sign == ")")
        if depth == 0 and sign in ",;":
            return template[:place]
    return template


def worked_out(figure: Figure) -> float:
    """Return what the arithmetic of a figure's working comes to."""
    text = re.sub(r"\bx\b", "*", arithmetic(figure["working"]["template"]))
    for name, (value, _) in figure["working"]["terms"].items():
        if "{" + name + "}" in text:
            text = text.replace("{" + name + "}", f"({float(value)!r})")
    return float(eval(text, {"__builtins__": {}}, KNOWN))
