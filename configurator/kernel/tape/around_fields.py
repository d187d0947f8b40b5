"""What is around the leaf: what a tape takes of gaps, walls, casing, stop, joint and sidelights.

Unmeasured, a casing is 2 1/4 in wide and a stop laps the leaf by 1/2 in.
"""

from typing import TypedDict

from configurator.kernel.tape.field import Field, Group
from configurator.kernel.tongue import wording


class SurroundMeasures(TypedDict):
    """The numbers of what is around the leaf."""

    wall_gap: float
    head_gap: float
    floor_gap: float
    ceiling_height: float
    reveal: float
    casing_width: float
    casing_projection: float
    meeting_gap: float
    astragal_width: float
    astragal_projection: float
    sidelight_width: float
    sidelight_glass_width: float
    stop_lap: float


AROUND_FIELDS: list[Field] = [
    {
        "id": "wall_gap",
        "path": "gaps.wall",
        "unit": "length",
        "limits": [0.0, 5000.0],
        "assumed": [100.0],
        "usual": [30.0, 3000.0],
        "what": wording("a gap to the side wall"),
        "name": wording("Side wall"),
        "how": wording("From the leaf's hinge edge to the wall or furniture beside it."),
        "drawn": ["plan", "left", "hinge_edge", "before_face", "face"],
    },
    {
        "id": "head_gap",
        "path": "gaps.head",
        "unit": "length",
        "limits": [0.0, 30.0],
        "assumed": [3.0],
        "usual": [2.0, 15.0],
        "what": wording("a head gap"),
        "name": wording("Gap at the head"),
        "how": wording("Between the leaf's top edge and the frame."),
        "drawn": ["elevation", "up", "top", "middle", "middle"],
    },
    {
        "id": "floor_gap",
        "path": "gaps.floor",
        "unit": "length",
        "limits": [0.0, 60.0],
        "assumed": [10.0],
        "usual": [3.0, 30.0],
        "what": wording("a floor gap"),
        "name": wording("Gap at the floor"),
        "how": wording("Between the leaf's bottom edge and the floor."),
        "drawn": ["elevation", "up", "floor", "middle", "middle"],
    },
    {
        "id": "ceiling_height",
        "path": "room.ceiling",
        "unit": "length",
        "limits": [1800.0, 8000.0],
        "assumed": [2440.0],
        "usual": [2300.0, 3500.0],
        "what": wording("a ceiling height"),
        "name": wording("Ceiling height"),
        "how": wording("From floor to ceiling, beside the door."),
        "drawn": ["elevation", "up", "floor", "middle", "middle"],
    },
    {
        "id": "reveal",
        "path": "room.reveal",
        "unit": "length",
        "limits": [0.0, 500.0],
        "assumed": [0.0],
        "usual": [0.0, 200.0],
        "what": wording("a reveal"),
        "name": wording("How far the leaf lies behind the wall"),
        "trade": wording("Reveal"),
        "how": wording("How far the leaf lies behind the face of the wall. 0 when level with it."),
        "drawn": ["plan", "down", "face", "jamb", "jamb"],
    },
    {
        "id": "casing_width",
        "path": "room.casing.width",
        "unit": "length",
        "limits": [0.0, 300.0],
        "assumed": [57.15],
        "usual": [0.0, 120.0],
        "what": wording("a casing width"),
        "name": wording("Width of the trim"),
        "trade": wording("Casing width"),
        "how": wording("Across the trim around the opening. 0 when there is none."),
        "drawn": ["elevation", "left", "hinge_edge", "low", "low"],
    },
    {
        "id": "casing_projection",
        "path": "room.casing.projection",
        "unit": "length",
        "limits": [0.0, 80.0],
        "assumed": [17.5],
        "usual": [0.0, 30.0],
        "what": wording("a casing projection"),
        "name": wording("How far the trim stands out"),
        "trade": wording("Casing projection"),
        "how": wording("How far that trim stands out of the wall."),
        "drawn": ["plan", "down", "wall_face", "beyond_casing", "jamb"],
    },
    {
        "id": "meeting_gap",
        "path": "pair.meeting_gap",
        "unit": "length",
        "limits": [0.0, 30.0],
        "assumed": [3.0],
        "usual": [2.0, 10.0],
        "when": "pair",
        "when_new": 3.0,
        "what": wording("a meeting gap"),
        "name": wording("Gap between the leaves"),
        "how": wording("On a pair: between the two closed leaves."),
        "drawn": ["elevation", "right", "latch_edge", "low", "low"],
    },
    {
        "id": "astragal_width",
        "path": "pair.astragal.width",
        "unit": "length",
        "limits": [0.0, 150.0],
        "assumed": [44.0],
        "usual": [0.0, 70.0],
        "when": "pair",
        "what": wording("an astragal width"),
        "name": wording("Width of the molding over the joint"),
        "trade": wording("Astragal width"),
        "how": wording("On a pair: across the molding over the joint. 0 when there is none."),
        "drawn": ["elevation", "right", "astragal", "low", "low"],
    },
    {
        "id": "astragal_projection",
        "path": "pair.astragal.projection",
        "unit": "length",
        "limits": [0.0, 60.0],
        "assumed": [12.0],
        "usual": [0.0, 25.0],
        "when": "pair",
        "what": wording("an astragal projection"),
        "name": wording("How far that molding stands out"),
        "trade": wording("Astragal projection"),
        "how": wording("On a pair: how far that molding stands out of the leaf."),
        "drawn": ["plan", "down", "face", "latch_edge", "latch_edge"],
    },
    {
        "id": "sidelight_width",
        "path": "sidelight.width",
        "unit": "length",
        "limits": [100.0, 1500.0],
        "usual": [250.0, 600.0],
        "when": "sidelights",
        "when_new": 356.0,
        "what": wording("a sidelight width"),
        "name": wording("Width of a side panel"),
        "trade": wording("Sidelight width"),
        "how": wording("With sidelights: one side panel, frame included."),
        "drawn": ["elevation", "right", "latch_edge", "low", "low"],
    },
    {
        "id": "sidelight_glass_width",
        "path": "sidelight.glass",
        "unit": "length",
        "limits": [50.0, 1400.0],
        "usual": [120.0, 450.0],
        "when": "sidelights",
        "when_new": 203.0,
        "what": wording("a sidelight glass width"),
        "name": wording("Glass of a side panel"),
        "trade": wording("Sidelight glass"),
        "how": wording("With sidelights: the clear glass in one side panel."),
        "drawn": ["elevation", "right", "sidelight_glass", "handle", "handle"],
    },
    {
        "id": "stop_lap",
        "path": "stop.lap",
        "unit": "length",
        "limits": [0.0, 60.0],
        "assumed": [12.7],
        "usual": [8.0, 25.0],
        "when": "out",
        "when_new": 12.0,
        "what": wording("a stop's lap"),
        "name": wording("How far the frame laps the leaf"),
        "trade": wording("Stop"),
        "how": wording("On a leaf that opens outwards: how far the stop laps the leaf's room face."),
        "drawn": ["elevation", "right", "hinge_edge", "low", "low"],
    },
]
AROUND_GROUP: Group = {
    "id": "around",
    "name": wording("Around the door"),
    "fields": AROUND_FIELDS,
}
