"""The style of drawings outside a page: that of ``drawing.css`` with its custom properties put in."""

import re
from functools import cache
from pathlib import Path

from configurator.drawing.look_rules import look_properties
from configurator.kernel.shapes import Drawing

STYLE_SHEET = Path(__file__).with_name("drawing.css")
# Line weights and letters on paper, mm: see DEVELOPERS.md.
PAPER_WEIGHTS = {"cut": 0.5, "main": 0.35, "seen": 0.25, "hair": 0.13}
PAPER_LETTERS = 2.8
# A drawing without letters is taken to fill this much paper, mm.
PAPER_ACROSS = 180.0


@cache
def colors() -> dict[str, str]:
    """Return the default colors by name, as ``#rrggbb``."""
    first_block = STYLE_SHEET.read_text(encoding="utf-8").split("}", 1)[0]
    return dict(re.findall(r"--([a-z-]+): (#[0-9a-f]{6});", first_block))


def paper_scale(drawing: Drawing) -> float:
    """Return how many model millimeters one millimeter of paper stands for, going by the letters."""
    for mark in drawing["marks"]:
        if mark["shape"] == "text":
            return mark["points"][2] / PAPER_LETTERS
    return max(drawing["width"], drawing["height"]) / PAPER_ACROSS


def standalone_style(drawing: Drawing) -> str:
    """Return style rules without custom properties, with line weights in the drawing's own millimeters."""
    scale = paper_scale(drawing)
    weights = {name: f"{weight * scale:.2f}" for name, weight in PAPER_WEIGHTS.items()}
    values = colors() | look_properties(drawing["look"]) | weights
    rules = STYLE_SHEET.read_text(encoding="utf-8").split("}", 1)[1].split("@media print")[0]
    rules = re.sub(r"/\*.*?\*/", "", rules, flags=re.DOTALL)
    rules = re.sub(r"var\(--([a-z-]+)\)", lambda found: values[found[1]], rules)
    rules = rules.replace("vector-effect: non-scaling-stroke;", "")
    rules = re.sub(r"stroke-dasharray: ([0-9. ]+)", lambda found: dashes(found[1], scale), rules)
    return re.sub(r"\s*([{};:,])\s+", r"\1", rules).strip()


def dashes(pattern: str, scale: float) -> str:
    """Return a dash pattern given in screen pixels as one in the drawing's millimeters."""
    lengths = [float(length) * PAPER_WEIGHTS["seen"] * scale for length in pattern.split()]
    return "stroke-dasharray: " + " ".join(f"{length:.2f}" for length in lengths)
