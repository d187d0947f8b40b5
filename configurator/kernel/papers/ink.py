"""What of a drawing goes on a workroom's paper: lines, materials and folds' deepest shade; no garden, no light."""

from configurator.kernel.shapes import Drawing, Mark
from configurator.kernel.views.tones import SHADE, is_tone

# What is seen through the glass.
BEHIND_GLASS = ["sky", "hill", "lawn", "tree", "trunk", "path-stone"]
# Shade that hides more than this stands under a fold or in a crease, which nothing else on the paper tells.
DEEP = 0.2


def is_inked(mark: Mark) -> bool:
    """Return whether a mark tells whoever makes a covering something."""
    if is_tone(mark["role"]):
        return mark["role"] == SHADE and mark["fade"] > DEEP
    return mark["role"] not in BEHIND_GLASS


def inked(drawing: Drawing) -> Drawing:
    """Return the drawing without what only a client looks at."""
    return {**drawing, "marks": [mark for mark in drawing["marks"] if is_inked(mark)]}
