"""A grip as it is worked: how far a lever turns before it meets a piece, and what room fingers have round it.

A lever is a bar that turns about its axis in the plane of the leaf; all of it is solved, nothing is stepped.
"""

import math
from typing import TypedDict

from configurator.kernel.door.hardware import LEVER_TURN
from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.numbers import about
from configurator.kernel.shapes import Door, Piece

# Fingers round a grip or a thumb-turn: 3/4 in, common practice, no source.
FINGER_ROOM = 19.05
# How far a lever must turn either way, in degrees.
FULL_TURN = LEVER_TURN * 180 / math.pi
TURN_SLACK = 1e-6


class Grip(TypedDict):
    """What a hand takes: its place at rest, what it sweeps round itself, and for a lever its bar.

    ``toward`` is the side along x to which a lever points, 1 or -1; 0 for what does not turn. ``reach`` runs from its
    axis to its tip, ``half`` is half of the bar's height.
    """

    piece: Piece
    toward: float
    axis: float
    height: float
    reach: float
    half: float


def still_grip(piece: Piece) -> Grip:
    """Return a grip that is taken as it stands."""
    return {"piece": piece, "toward": 0.0, "axis": 0.0, "height": 0.0, "reach": 0.0, "half": 0.0}


def lever_grip(door: Door, piece: Piece) -> Grip:
    """Return a lever: it points to its own leaf's hinges, which are on the left of the active leaf."""
    half = (piece["y1"] - piece["y0"]) / 2
    own = (piece["x0"] + piece["x1"]) / 2 < leaf_width(door)
    return {
        "piece": piece,
        "toward": -1.0 if own else 1.0,
        "axis": piece["x1"] - half if own else piece["x0"] + half,
        "height": piece["y0"] + half,
        "reach": piece["x1"] - piece["x0"] - half,
        "half": half,
    }


def thumb_turn_grip(piece: Piece) -> Grip:
    """Return a thumb-turn, as large as it is when turned by a quarter."""
    across = (piece["x0"] + piece["x1"]) / 2
    up = (piece["y0"] + piece["y1"]) / 2
    side = max(piece["x1"] - piece["x0"], piece["y1"] - piece["y0"])
    spans = [about(across, side), about(up, side)]
    turned: Piece = {**piece, "x0": spans[0][0], "x1": spans[0][1], "y0": spans[1][0], "y1": spans[1][1]}
    return still_grip(turned)


def worked_grips(door: Door, handle: list[Piece]) -> list[Grip]:
    """Return what a hand works of the hardware: grips and thumb-turns."""
    grips: list[Grip] = []
    for part in handle:
        if part["kind"] == "thumb-turn":
            grips.append(thumb_turn_grip(part))
        elif part["kind"] == "grip" and door["handle"]["kind"] == "lever":
            grips.append(lever_grip(door, part))
        elif part["kind"] == "grip":
            grips.append(still_grip(part))
    return grips


def lever_spans(grip: Grip, piece: Piece, way: float) -> list[list[float]]:
    """Return a piece's spans along a lever and to the side to which it turns: up for ``way`` 1, down for -1."""
    along = [(piece["x0"] - grip["axis"]) * grip["toward"], (piece["x1"] - grip["axis"]) * grip["toward"]]
    across = [(piece["y0"] - grip["height"]) * way, (piece["y1"] - grip["height"]) * way]
    return [[min(along[0], along[1]), max(along[0], along[1])], [min(across[0], across[1]), max(across[0], across[1])]]


def circle_points(spans: list[list[float]], reach: float) -> list[list[float]]:
    """Return where the circle of a radius about the origin cuts the edges of a rectangle."""
    points: list[list[float]] = []
    for side in [0, 1]:
        along = spans[side]
        across = spans[1 - side]
        for edge in along:
            if abs(edge) < reach:
                far = math.sqrt(reach * reach - edge * edge)
                for value in [far, -far]:
                    if value >= across[0] and value <= across[1]:
                        points.append([edge, value] if side == 0 else [value, edge])
    return points


def turn_to_point(grip: Grip, point: list[float]) -> float:
    """Return the angle in degrees at which a bar that turns about the origin comes to a point beside it or off its tip.

    All of the turn for a point on the other side: that is met as the bar turns the other way.
    """
    half = grip["half"]
    far = math.sqrt(point[0] * point[0] + point[1] * point[1])
    if far <= half:
        return 0.0
    towards = math.atan2(point[1], point[0])
    if point[1] >= half:
        return (towards - math.asin(half / far)) * 180 / math.pi
    if point[1] > -half and point[0] >= grip["reach"]:
        return (towards + math.acos(grip["reach"] / far)) * 180 / math.pi
    return FULL_TURN


def turn_one_way(grip: Grip, piece: Piece, way: float) -> float:
    """Return how far a lever turns up (``way`` 1) or down (-1) before it meets a piece, in degrees.

    A bar that turns first meets a rectangle at one of its corners, or, at the bar's tip, where the tip's circle cuts
    the rectangle's edge.
    """
    spans = lever_spans(grip, piece, way)
    half = grip["half"]
    if spans[0][0] < grip["reach"] and spans[0][1] > -half and spans[1][0] < half and spans[1][1] > -half:
        return 0.0
    tip = math.sqrt(grip["reach"] * grip["reach"] + half * half)
    points = circle_points(spans, tip)
    for u in spans[0]:
        for v in spans[1]:
            if u * u + v * v <= tip * tip:
                points.append([u, v])
    least = FULL_TURN
    for point in points:
        least = min(least, max(turn_to_point(grip, point), 0.0))
    return least


def beside_depth(grip: Grip, piece: Piece) -> bool:
    """Return whether a piece stands at the depth at which a grip moves."""
    return piece["z0"] < grip["piece"]["z1"] - TURN_SLACK and piece["z1"] > grip["piece"]["z0"] + TURN_SLACK


def free_turn(grip: Grip, piece: Piece) -> float:
    """Return how far, up and down, a lever turns before it meets a piece, in degrees; all of it where it meets none."""
    if grip["toward"] == 0 or not beside_depth(grip, piece):
        return FULL_TURN
    return min(turn_one_way(grip, piece, 1.0), turn_one_way(grip, piece, -1.0))


def hides_grip(grip: Grip, piece: Piece) -> bool:
    """Return whether a piece stands in front of a grip, so that no hand comes to it."""
    held = grip["piece"]
    if piece["z0"] < held["z1"] - TURN_SLACK or piece["x0"] >= held["x1"] or piece["x1"] <= held["x0"]:
        return False
    return piece["y0"] < held["y1"] and piece["y1"] > held["y0"]
