"""The handle as pieces, on a leaf hung on the left: plate, neck, grip and thumb-turn."""

import math

from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.numbers import about
from configurator.kernel.pieces import OPAQUE, box
from configurator.kernel.shapes import Door, Handle, Piece

# How far a lever turns, down to open or up to lock: 45 degrees in radians; common practice, no source.
LEVER_TURN = math.pi / 4


def handle_axis(door: Door) -> float:
    """Return the x of the handle's axis."""
    return leaf_width(door) - door["backset"]


def grip_span(handle: Handle, axis: float) -> list[float]:
    """Return the grip's span along x: a lever points to the hinges, a knob or pull is centered."""
    if handle["kind"] == "lever":
        return [axis - handle["grip_length"], axis + handle["grip_height"] / 2]
    return [axis - handle["grip_length"], axis + handle["grip_length"]]


def worked_reach(handle: Handle, beyond: float) -> float:
    """Return how far above and below its axis a grip comes when worked, as seen further than ``beyond`` from the axis.

    A lever turns about its axis; a knob or a pull stays where it is.
    """
    half = handle["grip_height"] / 2
    length = handle["grip_length"]
    if handle["kind"] != "lever" or beyond >= length:
        return half
    inside = max(beyond, 0.0)
    return half + min(math.sqrt(length * length - inside * inside), length * math.sin(LEVER_TURN))


def hardware_piece(kind: str, across: list[float], up: list[float], out: list[float]) -> Piece:
    """Return one opaque piece of the handle."""
    return box("handle", kind, [across, up, out], OPAQUE)


def neck_pieces(handle: Handle, axis: float, height: float) -> list[Piece]:
    """Return what joins the grip to the leaf: a spindle neck, or a pull's two posts."""
    neck = handle["neck"]
    out = [handle["plate_thickness"], handle["gap"]]
    if handle["kind"] != "pull":
        return [hardware_piece("neck", about(axis, neck), about(height, neck), out)]
    across = about(axis, handle["grip_length"] * 2)
    ends = about(height, handle["grip_height"])
    return [
        hardware_piece("neck", across, [ends[0], ends[0] + neck], out),
        hardware_piece("neck", across, [ends[1] - neck, ends[1]], out),
    ]


def handle_pieces(door: Door) -> list[Piece]:
    """Return the active leaf's handle as pieces."""
    handle = door["handle"]
    axis = handle_axis(door)
    height = door["handle_height"]
    plate_across = about(axis, handle["plate_width"])
    plate_up = about(height - handle["plate_below"], handle["plate_height"])
    pieces = [hardware_piece("plate", plate_across, plate_up, [0.0, handle["plate_thickness"]])]
    pieces.extend(neck_pieces(handle, axis, height))
    grip_up = about(height, handle["grip_height"])
    pieces.append(hardware_piece("grip", grip_span(handle, axis), grip_up, [handle["gap"], handle["projection"]]))
    if handle["turn_above"] > 0:
        across = about(axis, handle["turn_width"])
        up = about(height + handle["turn_above"], handle["turn_height"])
        pieces.append(hardware_piece("thumb-turn", across, up, [0.0, handle["turn_projection"]]))
    return pieces
