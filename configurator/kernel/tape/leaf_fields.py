"""The leaf around the glass: what a tape takes of it.

Unmeasured, a leaf is 1 3/4 in thick; its hinges' pins stand 8 mm in front of the face to which it opens.
"""

from typing import TypedDict

from configurator.kernel.tape.field import Field, Group
from configurator.kernel.tongue import wording

# A hinge's middle above the finished floor, and how many hinges a leaf has at most.
HINGE_LIMITS = [0.0, 3100.0]
HINGES_MOST = 6


class LeafMeasures(TypedDict):
    """The numbers of the leaf around the glass."""

    stile_hinge: float
    stile_latch: float
    rail_top: float
    rail_bottom: float
    leaf_thickness: float
    hinge_pin_out: float


LEAF_FIELDS: list[Field] = [
    {
        "id": "stile_hinge",
        "path": "stiles.hinge",
        "unit": "length",
        "limits": [30.0, 400.0],
        "usual": [60.0, 180.0],
        "what": wording("a hinge stile"),
        "name": wording("Beside the glass, hinge side"),
        "trade": wording("Hinge stile"),
        "how": wording("From the leaf's hinge edge to the outside of the bead."),
        "drawn": ["elevation", "right", "hinge_edge", "low", "low"],
    },
    {
        "id": "stile_latch",
        "path": "stiles.latch",
        "unit": "length",
        "limits": [30.0, 400.0],
        "usual": [60.0, 180.0],
        "what": wording("a latch stile"),
        "name": wording("Beside the glass, lock side"),
        "trade": wording("Latch stile"),
        "how": wording("From the outside of the bead to the edge with the lock."),
        "drawn": ["elevation", "left", "latch_edge", "low", "low"],
        "decides": True,
    },
    {
        "id": "rail_top",
        "path": "rails.top",
        "unit": "length",
        "limits": [30.0, 600.0],
        "usual": [70.0, 250.0],
        "what": wording("a top rail"),
        "name": wording("Above the glass"),
        "trade": wording("Top rail"),
        "how": wording("From the outside of the bead up to the leaf's top edge. Open the door to see it."),
        "drawn": ["elevation", "down", "top", "middle", "middle"],
    },
    {
        "id": "rail_bottom",
        "path": "rails.bottom",
        "unit": "length",
        "limits": [30.0, 2000.0],
        "usual": [90.0, 1200.0],
        "what": wording("a bottom rail"),
        "name": wording("Below the glass"),
        "trade": wording("Bottom rail"),
        "how": wording("From the leaf's bottom edge up to the outside of the bead."),
        "drawn": ["elevation", "up", "bottom", "middle", "middle"],
    },
    {
        "id": "leaf_thickness",
        "path": "leaf.thickness",
        "unit": "length",
        "limits": [25.0, 100.0],
        "assumed": [44.45],
        "usual": [35.0, 75.0],
        "what": wording("a leaf thickness"),
        "name": wording("Thickness of the door"),
        "trade": wording("Leaf thickness"),
        "how": wording("At the leaf's edge, with the door open."),
        "drawn": ["plan", "up", "face", "stile_middle", "stile_middle"],
    },
    {
        "id": "hinge_pin_out",
        "path": "hinges.pin",
        "unit": "length",
        "limits": [0.0, 60.0],
        "assumed": [8.0],
        "what": wording("a hinge pin"),
    },
]
LEAF_GROUP: Group = {
    "id": "leaf",
    "name": wording("The leaf"),
    "fields": LEAF_FIELDS,
}
