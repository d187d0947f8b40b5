"""A swatch of what an option is made of: lying flat, and at its right held against the daylight."""

from typing import TypedDict

from configurator.kernel.looks import is_hard, look_of
from configurator.kernel.pieces import cloth_optics
from configurator.kernel.resolve import resolve
from configurator.kernel.shapes import Family, Look, Mark
from configurator.kernel.views.glow import GLOW_MOST
from configurator.kernel.views.marks import rectangle, wash
from configurator.kernel.views.tones import GLOW

# A swatch's side, mm, in true size, and where the part begins that is held against the light.
SWATCH_SIDE = 52.0
AGAINST_LIGHT = 32.0
SWATCH_HORIZON = 34.0


class Swatch(TypedDict):
    """A square of a material, ``side`` mm wide."""

    side: float
    look: Look
    marks: list[Mark]


def swatch_of(family: Family, choices: dict[str, str]) -> Swatch:
    """Return the swatch of a family with the given picks."""
    side = SWATCH_SIDE
    look = look_of(family, choices)
    if is_hard(look):
        return {"side": side, "look": look, "marks": [rectangle("cloth", [0.0, 0.0, side, side])]}
    through = cloth_optics(resolve(family, choices))
    lit = [AGAINST_LIGHT, 0.0, side, side]
    marks = [
        rectangle("sky", lit),
        rectangle("lawn", [AGAINST_LIGHT, SWATCH_HORIZON, side, side]),
        rectangle("cloth", [0.0, 0.0, AGAINST_LIGHT, side]),
        wash("cloth", lit, 1.0 - through["view"]),
        wash(GLOW, lit, GLOW_MOST * through["light"]),
    ]
    return {"side": side, "look": look, "marks": marks}
