"""Swatches: small squares of cloth, wood or metal, in the paint of the drawings."""

from svgwrite.container import SVG

from configurator.drawing.look_rules import LOOK_ATTRIBUTE
from configurator.drawing.pen import Pen
from configurator.drawing.svg import SHEET_CLASS, TRUE_SIZE, UNCHECKED, markup, put_on
from configurator.kernel.views.paint import paint_name
from configurator.kernel.views.swatch import Swatch


def swatch_svg(swatch: Swatch) -> str:
    """Return a swatch for a page that has the pattern of its look; its name stands beside it."""
    side = f"{swatch['side']:g}"
    paper = SVG(factory=UNCHECKED, class_=" ".join(("swatch", SHEET_CLASS)), viewBox=f"0 0 {side} {side}")
    paper.attribs.update({"aria-hidden": "true", LOOK_ATTRIBUTE: paint_name(swatch["look"])})
    paper.elements.remove(paper.defs)
    put_on(paper, swatch["marks"], Pen(TRUE_SIZE))
    return markup(paper)
