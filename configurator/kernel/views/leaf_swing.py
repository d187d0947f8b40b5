"""How the leaves swing, in plan: the arc of the latch edge, the leaf standing open, and the hinge pin."""

import math

from configurator.kernel.door.leaf import KNUCKLE, leaf_width
from configurator.kernel.shapes import Door, Mark
from configurator.kernel.views.draft import Draft
from configurator.kernel.views.marks import make_mark

ARC_STEPS = 24


def turned_about(point: list[float], pin: list[float], angle: float) -> list[float]:
    """Return a point (x, z) turned about a pin, x towards z."""
    dx = point[0] - pin[0]
    dz = point[1] - pin[1]
    return [
        pin[0] + dx * math.cos(angle) - dz * math.sin(angle),
        pin[1] + dx * math.sin(angle) + dz * math.cos(angle),
    ]


def swing_marks(draft: Draft, hinge: float, latch: float) -> list[Mark]:
    """Return the arc of a leaf's latch edge as far as it opens, the leaf standing open, and the hinge pin.

    The leaf is shown at a right angle at most, where its clear width is measured; the arc ends with the drawing.
    """
    door = draft["door"]
    frame = draft["frame"]
    inward = door["swing"] == "in"
    back = -door["leaf_thickness"]
    pin = [hinge, door["hinge_pin_out"] if inward else back - door["hinge_pin_out"]]
    near = 0.0 if inward else back
    sense = 1.0 if (latch > hinge) == inward else -1.0
    turn = sense * frame["turn"] * math.pi / 180
    stand = sense * min(frame["turn"], 90.0) * math.pi / 180
    arc: list[float] = []
    for i in range(ARC_STEPS + 1):
        point = turned_about([latch, near], pin, turn * i / ARC_STEPS)
        if point[0] < frame["out0"] - draft["size"] or point[0] > frame["out1"] + draft["size"]:
            break
        arc.extend(point)
    stood: list[float] = []
    for corner in [[hinge, 0.0], [latch, 0.0], [latch, back], [hinge, back]]:
        stood.extend(turned_about(corner, pin, stand))
    return [
        make_mark("polyline", "swing", arc),
        make_mark("polygon", "swing", stood),
        make_mark("circle", "hinge seen", [pin[0], pin[1], KNUCKLE]),
    ]


def leaf_swings(draft: Draft) -> list[Mark]:
    """Return the swing of each leaf that opens; the second leaf of a pair hangs on its far side."""
    door = draft["door"]
    marks: list[Mark] = []
    spans = draft["scene"]["leaf_x"]
    for i in range(len(spans)):
        if i > 0 and door["layout"] == "fixed-pair":
            continue
        hung_left = (door["hinge_side"] == "left") == (i == 0)
        hinge = spans[i][0] if hung_left else spans[i][1]
        latch = spans[i][1] if hung_left else spans[i][0]
        marks.extend(swing_marks(draft, hinge, latch))
    return marks


def arc_inset(door: Door, z: float) -> float:
    """Return how far the arc of a leaf that swings in has left the latch edge's line at a depth."""
    width = leaf_width(door)
    if door["swing"] == "out":
        return 0.0
    if z >= width:
        return width
    return width - math.sqrt(width * width - z * z)
