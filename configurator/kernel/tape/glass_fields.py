"""The glass: what a tape takes of it, of the beads around it and of the bars that divide it.

Unmeasured light, heat and U-value are those of clear uncoated double glazing.
"""

from typing import TypedDict

from configurator.kernel.tape.field import Field, Group
from configurator.kernel.tongue import wording


class GlassMeasures(TypedDict):
    """The numbers of a door's glass, by the ids of its fields."""

    glass_width: float
    glass_height: float
    bead_width: float
    bead_projection: float
    glass_recess: float
    muntin_width: float
    muntin_projection: float
    muntin_columns: int
    muntin_rows: int
    glass_light: float
    glass_solar: float
    glass_u: float


GLASS_FIELDS: list[Field] = [
    {
        "id": "glass_width",
        "path": "glass.width",
        "unit": "length",
        "limits": [100.0, 1500.0],
        "usual": [300.0, 800.0],
        "what": wording("a glass width"),
        "name": wording("Glass width"),
        "how": wording("From bead to bead, at top, middle and bottom. Write down the smallest."),
        "drawn": ["elevation", "right", "glass_hinge", "glass_low", "glass_low"],
        "decides": True,
    },
    {
        "id": "glass_height",
        "path": "glass.height",
        "unit": "length",
        "limits": [200.0, 3000.0],
        "usual": [800.0, 2100.0],
        "what": wording("a glass height"),
        "name": wording("Glass height"),
        "how": wording("From bead to bead, left, center and right. Write down the smallest."),
        "drawn": ["elevation", "down", "glass_top", "middle", "middle"],
        "decides": True,
    },
    {
        "id": "bead_width",
        "path": "bead.width",
        "unit": "length",
        "limits": [0.0, 80.0],
        "usual": [8.0, 60.0],
        "what": wording("a bead width"),
        "name": wording("Width of the glass molding"),
        "trade": wording("Bead width"),
        "how": wording("Across the molding around the glass, from the glass to the flat of the leaf."),
        "drawn": ["elevation", "right", "bead_hinge", "handle", "handle"],
    },
    {
        "id": "bead_projection",
        "path": "bead.projection",
        "unit": "length",
        "limits": [0.0, 40.0],
        "usual": [0.0, 20.0],
        "what": wording("a bead projection"),
        "name": wording("How far the glass molding stands out"),
        "trade": wording("Bead projection"),
        "how": wording("Lay a straight edge over the bead and measure from it to the leaf. 0 when flush."),
        "drawn": ["plan", "down", "face", "bead_hinge", "bead_hinge"],
        "decides": True,
    },
    {
        "id": "glass_recess",
        "path": "glass.recess",
        "unit": "length",
        "limits": [0.0, 80.0],
        "assumed": [10.0],
        "usual": [5.0, 40.0],
        "what": wording("a glass recess"),
        "name": wording("Depth back to the glass"),
        "trade": wording("Glass recess"),
        "how": wording("Lay a straight edge across the leaf and measure from it back to the glass."),
        "drawn": ["plan", "up", "face", "middle", "middle"],
    },
    {
        "id": "muntin_width",
        "path": "muntins.width",
        "unit": "length",
        "limits": [0.0, 80.0],
        "assumed": [0.0],
        "usual": [15.0, 40.0],
        "when": "divided",
        "when_new": 22.0,
        "what": wording("a muntin width"),
        "name": wording("Width of a bar across the glass"),
        "trade": wording("Muntin width"),
        "how": wording("Across one bar, where the glass is divided."),
        "drawn": ["elevation", "down", "muntin_top", "middle", "middle"],
    },
    {
        "id": "muntin_projection",
        "path": "muntins.projection",
        "unit": "length",
        "limits": [0.0, 40.0],
        "assumed": [0.0],
        "usual": [0.0, 20.0],
        "when": "divided",
        "what": wording("a muntin projection"),
        "name": wording("How far the bar stands out"),
        "trade": wording("Muntin projection"),
        "how": wording("From the leaf's face to the front of the bar. 0 when flush."),
        "drawn": ["plan", "down", "face", "middle", "middle"],
    },
    {
        "id": "muntin_columns",
        "path": "muntins.columns",
        "unit": "count",
        "limits": [1.0, 12.0],
        "assumed": [1.0],
        "usual": [1.0, 6.0],
        "what": wording("lites across"),
        "name": wording("Panes across"),
        "trade": wording("Lites across"),
        "how": "",
    },
    {
        "id": "muntin_rows",
        "path": "muntins.rows",
        "unit": "count",
        "limits": [1.0, 20.0],
        "assumed": [1.0],
        "usual": [1.0, 8.0],
        "what": wording("lites in height"),
        "name": wording("Panes in height"),
        "trade": wording("Lites up"),
        "how": "",
    },
    {
        "id": "glass_light",
        "path": "glass.light",
        "unit": "share",
        "limits": [0.0, 1.0],
        "assumed": [0.8],
        "what": wording("a share"),
    },
    {
        "id": "glass_solar",
        "path": "glass.solar",
        "unit": "share",
        "limits": [0.0, 1.0],
        "assumed": [0.75],
        "what": wording("a share"),
    },
    {
        "id": "glass_u",
        "path": "glass.u",
        "unit": "u-value",
        "limits": [0.3, 6.0],
        "assumed": [2.8],
        "what": wording("a U-value"),
    },
]
GLASS_GROUP: Group = {
    "id": "glass",
    "name": wording("The glass"),
    "fields": GLASS_FIELDS,
}
