"""The handle as pieces, on a leaf hung on the left: plate, neck, grip and thumb-turn."""

import math

from configurator.kernel.door.leaf import leaf_width
from configurator.kernel.pieces import box
from configurator.kernel.shapes import Door, Handle, Piece

# How far a lever turns, down to open or up to lock: 45 degrees in radians; common practice, no source.
LEVER_TURN = math.pi / 4


def handle_axis(door: Door) -> float:
    """Return the x of the handle's axis."""
    return leaf_width(door) - door["backset"]


def grip_span(handle: Handle, axis: float) -> list[float]:
    """Return the grip's span along x: a lever points to the hinges, a knob or pull is centred."""
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


def hardware_piece(kind: str, x0: float, x1: float, y0: float, y1: float, z0: float, z1: float) -> Piece:
    """Return one opaque piece of the handle."""
    return box("handle", kind, x0, x1, y0, y1, z0, z1, 0.0, 0.0)


def neck_pieces(handle: Handle, axis: float, height: float) -> list[Piece]:
    """Return what joins the grip to the leaf: a spindle neck, or a pull's two posts."""
    half = handle["neck"] / 2
    z0 = handle["plate_thickness"]
    z1 = handle["gap"]
    if handle["kind"] != "pull":
        return [hardware_piece("neck", axis - half, axis + half, height - half, height + half, z0, z1)]
    reach = handle["grip_height"] / 2
    x0 = axis - handle["grip_length"]
    x1 = axis + handle["grip_length"]
    return [
        hardware_piece("neck", x0, x1, height - reach, height - reach + handle["neck"], z0, z1),
        hardware_piece("neck", x0, x1, height + reach - handle["neck"], height + reach, z0, z1),
    ]


def handle_pieces(door: Door) -> list[Piece]:
    """Return the active leaf's handle as pieces."""
    handle = door["handle"]
    axis = handle_axis(door)
    height = door["handle_height"]
    middle = height - handle["plate_below"]
    span = grip_span(handle, axis)
    reach = handle["grip_height"] / 2
    pieces = [
        hardware_piece(
            "plate",
            axis - handle["plate_width"] / 2,
            axis + handle["plate_width"] / 2,
            middle - handle["plate_height"] / 2,
            middle + handle["plate_height"] / 2,
            0.0,
            handle["plate_thickness"],
        )
    ]
    pieces.extend(neck_pieces(handle, axis, height))
    pieces.append(
        hardware_piece("grip", span[0], span[1], height - reach, height + reach, handle["gap"], handle["projection"])
    )
    if handle["turn_above"] > 0:
        centre = height + handle["turn_above"]
        pieces.append(
            hardware_piece(
                "thumb-turn",
                axis - handle["turn_width"] / 2,
                axis + handle["turn_width"] / 2,
                centre - handle["turn_height"] / 2,
                centre + handle["turn_height"] / 2,
                0.0,
                handle["turn_projection"],
            )
        )
    return pieces
