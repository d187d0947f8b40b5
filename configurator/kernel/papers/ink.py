"""What of a drawing goes on a workroom's paper: lines and materials, without the garden, light and shade."""

from configurator.kernel.shapes import Drawing
from configurator.kernel.views.tones import is_tone

# What is seen through the glass.
BEHIND_GLASS = ["sky", "hill", "lawn", "tree", "trunk", "path-stone"]


def inked(drawing: Drawing) -> Drawing:
    """Return the drawing without what only a client looks at."""
    marks = [mark for mark in drawing["marks"] if mark["role"] not in BEHIND_GLASS and not is_tone(mark["role"])]
    return {**drawing, "marks": marks}
