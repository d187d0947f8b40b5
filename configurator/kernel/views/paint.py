"""A look as paint: the name of its pattern, and the style by which a drawing's cloth, wood or metal takes it."""

from configurator.kernel.looks import is_dyed, is_hard
from configurator.kernel.shapes import Look

PAINT_PREFIX = "look-"
# The weave of which nothing but its color is seen.
SMOOTH = "paint"


def paint_name(look: Look) -> str:
    """Return the id of a look's pattern, from which color and weave are read back: ``look-d9cdb4-slub``."""
    return PAINT_PREFIX + look["color"].replace("#", "") + "-" + look["weave"]


def paint_style(look: Look) -> str:
    """Return the custom properties that a drawing needs for a look; nothing where the theme's colors serve.

    Where the pattern is not at hand, the plain color stands for it.
    """
    if not is_dyed(look):
        return ""
    paint = look["color"] if look["weave"] == SMOOTH else "url(#" + paint_name(look) + ") " + look["color"]
    style = "--cloth:" + paint + ";--crease:" + look["line"] + ";--rim:" + look["rim"]
    # What is hard goes with its rails and frames.
    return style + ";--louver:" + paint if is_hard(look) else style
