"""A look as paint: the name by which a drawing says which it is in, and its pattern is found."""

from configurator.kernel.looks import is_dyed
from configurator.kernel.shapes import Look

PAINT_PREFIX = "look-"


def paint_name(look: Look) -> str:
    """Return a look's name, from which color and weave are read back: ``look-d9cdb4-slub``.

    Nothing where the theme's colors serve.
    """
    return PAINT_PREFIX + look["color"].replace("#", "") + "-" + look["weave"] if is_dyed(look) else ""
