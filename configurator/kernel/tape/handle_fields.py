"""The handle: what a tape takes of its place on the leaf, and of the handle itself, measured from its axis.

Unmeasured, it sits 36 in above the floor.
"""

from typing import TypedDict

from configurator.kernel.tape.field import Field, Group
from configurator.kernel.tongue import wording


class HandlePlace(TypedDict):
    """Where the handle sits on the leaf."""

    handle_height: float
    backset: float


HANDLE_FIELDS: list[Field] = [
    {
        "id": "handle_height",
        "path": "handle.height",
        "unit": "length",
        "limits": [700.0, 1300.0],
        "assumed": [914.4],
        "usual": [850.0, 1100.0],
        "what": wording("a handle height"),
        "name": wording("Handle height"),
        "how": wording("From the floor to the middle of the spindle or knob."),
        "drawn": ["elevation", "up", "floor", "axis", "axis"],
        "decides": True,
    },
    {
        "id": "backset",
        "path": "handle.backset",
        "unit": "length",
        "limits": [20.0, 150.0],
        "usual": [24.0, 75.0],
        "what": wording("a backset"),
        "name": wording("Handle to the edge of the door"),
        "trade": wording("Backset"),
        "how": wording("From the leaf's latch edge to the middle of the spindle or knob."),
        "drawn": ["elevation", "left", "latch_edge", "above_handle", "handle"],
    },
    {
        "id": "handle.gap",
        "path": "gap",
        "unit": "length",
        "limits": [1.0, 150.0],
        "usual": [15.0, 70.0],
        "what": wording("a free gap"),
        "name": wording("Gap behind the handle"),
        "how": wording("The free depth between the leaf and the back of the grip, at its tightest."),
        "drawn": ["plan", "down", "face", "grip_middle", "axis"],
        "decides": True,
    },
    {
        "id": "handle.projection",
        "path": "projection",
        "unit": "length",
        "limits": [5.0, 200.0],
        "usual": [25.0, 90.0],
        "what": wording("a projection"),
        "name": wording("How far the handle stands out"),
        "trade": wording("Handle projection"),
        "how": wording("From the leaf to the front of the grip."),
        "drawn": ["plan", "down", "face", "beyond_latch", "axis"],
    },
    {
        "id": "handle.grip_length",
        "unit": "length",
        "limits": [2.5, 300.0],
        "usual": [5.0, 150.0],
        "name": wording("Grip length"),
        "how": wording("A lever: from the spindle to its tip. A knob: half its diameter. A pull: half its width."),
        "drawn": ["elevation", "left", "axis", "above_handle", "handle"],
    },
    {
        "id": "handle.grip_height",
        "unit": "length",
        "limits": [5.0, 1200.0],
    },
    {
        "id": "handle.plate_width",
        "path": "plate.width",
        "unit": "length",
        "limits": [5.0, 200.0],
        "what": wording("a plate width"),
    },
    {
        "id": "handle.plate_height",
        "path": "plate.height",
        "unit": "length",
        "limits": [5.0, 1200.0],
        "what": wording("a plate height"),
    },
    {
        "id": "handle.plate_thickness",
        "path": "plate.thickness",
        "unit": "length",
        "limits": [0.0, 40.0],
        "what": wording("a plate thickness"),
    },
    {
        "id": "handle.plate_below",
        "path": "plate.below",
        "unit": "length",
        "limits": [-400.0, 400.0],
        "assumed": [0.0],
        "what": wording("a plate's place"),
    },
    {
        "id": "handle.neck",
        "path": "neck",
        "unit": "length",
        "limits": [3.0, 80.0],
        "what": wording("a neck"),
    },
    {
        "id": "handle.turn_above",
        "path": "turn.above",
        "unit": "length",
        "limits": [20.0, 400.0],
        "when": "turn",
        "what": wording("a thumb-turn's place"),
    },
    {
        "id": "handle.turn_width",
        "path": "turn.width",
        "unit": "length",
        "limits": [5.0, 120.0],
        "when": "turn",
        "what": wording("a thumb-turn width"),
    },
    {
        "id": "handle.turn_height",
        "path": "turn.height",
        "unit": "length",
        "limits": [5.0, 120.0],
        "when": "turn",
        "what": wording("a thumb-turn height"),
    },
    {
        "id": "handle.turn_projection",
        "path": "turn.projection",
        "unit": "length",
        "limits": [2.0, 120.0],
        "when": "turn",
        "what": wording("a thumb-turn projection"),
    },
]
HANDLE_GROUP: Group = {
    "id": "handle",
    "name": wording("The handle"),
    "fields": HANDLE_FIELDS,
}
