"""A figure's working, worked out: its terms put into its template."""

import math

from configurator.kernel.shapes import Figure

# A multiple that floats miss by less than this is one.
SLACK = 1e-9
KNOWN = {
    "ceil": lambda value: math.ceil(value - SLACK),
    "floor": lambda value: math.floor(value + SLACK),
    "max": max,
    "min": min,
    "sqrt": math.sqrt,
}


def worked_out(figure: Figure) -> float:
    """Return what the arithmetic of a figure's working comes to."""
    text = figure["working"]["template"].replace(" x ", " * ")
    for name, (value, _) in figure["working"]["terms"].items():
        text = text.replace("{" + name + "}", repr(float(value)))
    return float(eval(text, {"__builtins__": {}}, KNOWN))
