"""What a screw may go into: the wood of the leaf's stiles and rails, or the casing and wall round the opening.

Each is given as the plain rectangles in which the middle of a screw may stand.
"""

from typing import TypedDict

from configurator.kernel.door.hardware import handle_axis
from configurator.kernel.door.leaf import glass_box, leaf_box
from configurator.kernel.door.opening import opening_box
from configurator.kernel.shapes import Box, Door, Fit

# How far a lock case reaches past the spindle towards the hinges, and above and below it (common practice, no source).
LOCK_BACK = 27.0
LOCK_HALF = 95.0


class Ground(TypedDict):
    """A rectangle in which a screw's middle may stand, what it is fixed to there, and the z of its face."""

    plane: str
    z: float
    box: Box


def ground(plane: str, z: float, across: list[float], up: list[float]) -> Ground:
    """Return a rectangle of ground, which may be empty."""
    return {"plane": plane, "z": z, "box": {"x0": across[0], "x1": across[1], "y0": up[0], "y1": up[1]}}


def screw_clear(fit: Fit) -> float:
    """Return how far from the glass that shows a screw must stand: clear of the bead, and of the pane's hidden edge."""
    numbers = fit["numbers"]
    return max(fit["door"]["bead_width"] + numbers["bead_clear"], numbers["glass_clear"])


def lock_box(fit: Fit) -> Box:
    """Return where the handle's plate and the lock case behind it lie, out to the leaf's edge; all zero without one."""
    door = fit["door"]
    handle = fit["handle"]
    if len(handle) == 0:
        return {"x0": 0.0, "x1": 0.0, "y0": 0.0, "y1": 0.0}
    middle = door["handle_height"]
    box: Box = {
        "x0": handle_axis(door) - LOCK_BACK,
        "x1": leaf_box(door)["x1"],
        "y0": middle - LOCK_HALF,
        "y1": middle + LOCK_HALF,
    }
    for part in handle:
        if part["kind"] != "grip":
            box["x0"] = min(box["x0"], part["x0"])
            box["y0"] = min(box["y0"], part["y0"])
            box["y1"] = max(box["y1"], part["y1"])
    return box


def beside_lock(piece: Ground, lock: Box, edge: float) -> list[Ground]:
    """Return what a lock leaves of a ground: towards the hinges, above and below it."""
    box = piece["box"]
    x = lock["x0"] - edge
    low = lock["y0"] - edge
    high = lock["y1"] + edge
    if lock["x1"] <= lock["x0"] or x >= box["x1"] or low >= box["y1"] or high <= box["y0"]:
        return [piece]
    across = [box["x0"], box["x1"]]
    return [
        ground(piece["plane"], piece["z"], [box["x0"], x], [box["y0"], box["y1"]]),
        ground(piece["plane"], piece["z"], across, [box["y0"], low]),
        ground(piece["plane"], piece["z"], across, [high, box["y1"]]),
    ]


def leaf_ground(fit: Fit) -> list[Ground]:
    """Return the wood of the leaf round its glass: rails first, then stiles, clear of bead, edges and lock."""
    edge = fit["numbers"]["screw_edge"]
    leaf = leaf_box(fit["door"])
    glass = glass_box(fit["door"])
    clear = screw_clear(fit)
    across = [leaf["x0"] + edge, leaf["x1"] - edge]
    up = [leaf["y0"] + edge, leaf["y1"] - edge]
    wood = [
        ground("leaf", 0.0, across, [glass["y1"] + clear, up[1]]),
        ground("leaf", 0.0, across, [up[0], glass["y0"] - clear]),
        ground("leaf", 0.0, [across[0], glass["x0"] - clear], up),
        ground("leaf", 0.0, [glass["x1"] + clear, across[1]], up),
    ]
    lock = lock_box(fit)
    free: list[Ground] = []
    for piece in wood:
        free.extend(beside_lock(piece, lock, edge))
    return free


def opening_ground(fit: Fit) -> list[Ground]:
    """Return casing and wall above and beside the opening, as far as the covering reaches.

    A screw keeps off a casing's edges, which split; the wall takes it right up to the casing.
    """
    door = fit["door"]
    size = fit["size"]
    edge = fit["numbers"]["screw_edge"]
    hole = opening_box(door)
    wide = door["casing_width"]
    wall = door["reveal"]
    front = wall + door["casing_projection"]
    left = hole["x0"] - wide
    right = hole["x1"] + wide
    head = hole["y1"] + wide
    up = [edge, door["ceiling_height"] - edge]
    cased = [edge, head - edge]
    return [
        ground("wall", wall, [size["x0"], size["x1"]], [head, up[1]]),
        ground("casing", front, [left + edge, right - edge], [hole["y1"] + edge, head - edge]),
        ground("casing", front, [left + edge, hole["x0"] - edge], cased),
        ground("casing", front, [hole["x1"] + edge, right - edge], cased),
        ground("wall", wall, [size["x0"], left], up),
        ground("wall", wall, [right, size["x1"]], up),
    ]


def ground_for(fit: Fit) -> list[Ground]:
    """Return what a covering in its mount may be screwed to."""
    if fit["size"]["mount"] == "over-opening":
        return opening_ground(fit)
    return leaf_ground(fit)


def leaf_thread(door: Door, wanted: float, keep: float) -> float:
    """Return how much thread the leaf takes: what is wanted, or all that keeps so far off its far face."""
    return max(0.0, min(wanted, door["leaf_thickness"] - keep))
