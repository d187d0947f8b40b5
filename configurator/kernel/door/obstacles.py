"""The fixed things that a covering may meet, as pieces, by mount; for a leaf hung on the left.

On the leaf: what stands proud of its face, and what laps or bounds its edges. Over the opening: all leaves, the
casing, the wall that they stand in, the side walls and the ceiling. Handles are asked for on their own.
"""

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import (
    KNUCKLE,
    bead_pieces,
    door_piece,
    hinge_pieces,
    leaf_box,
    leaf_width,
    muntin_pieces,
)
from configurator.kernel.door.opening import (
    CASING_BACK,
    across_pair,
    astragal_piece,
    has_passive,
    opening_box,
    opening_pieces,
)
from configurator.kernel.pieces import OPAQUE, box
from configurator.kernel.shapes import Box, Door, Piece

# Further than any covering reaches.
BEYOND = 10000.0
# How deep a stop is, which nobody measures: common practice, no source.
STOP_DEPTH = 12.0


def proud_pieces(door: Door) -> list[Piece]:
    """Return the beads and muntins that stand proud of the leaf's face."""
    pieces: list[Piece] = []
    if door["bead_projection"] > 0:
        pieces.extend(bead_pieces(door))
    if door["muntin_projection"] > 0:
        pieces.extend(muntin_pieces(door))
    return pieces


def stop_pieces(door: Door) -> list[Piece]:
    """Return the stops that lap an out-swing leaf's room face: at its hinges, its top and a single leaf's latch."""
    lap = door["stop_lap"]
    if lap <= 0:
        return []
    leaf = leaf_box(door)
    out = [0.0, STOP_DEPTH]
    up = [leaf["y0"], leaf["y1"]]
    stops = [
        door_piece("stop", [leaf["x0"], leaf["x0"] + lap], up, out),
        door_piece("stop", [leaf["x0"], leaf["x1"]], [leaf["y1"] - lap, leaf["y1"]], out),
    ]
    if not has_passive(door):
        stops.append(door_piece("stop", [leaf["x1"] - lap, leaf["x1"]], up, out))
    return stops


def edge_pieces(door: Door) -> list[Piece]:
    """Return what bounds a covering on the leaf's edges: hinges, stops and the astragal."""
    pieces = stop_pieces(door)
    if door["swing"] == "in":
        pieces.extend(hinge_pieces(door))
    if has_passive(door) and door["astragal_width"] > 0:
        pieces.append(astragal_piece(door))
    return pieces


def wall_piece(kind: str, across: list[float], up: list[float], out: list[float]) -> Piece:
    """Return a piece of the room that the door stands in."""
    return box("wall", kind, [across, up, out], OPAQUE)


def casing_inside(door: Door, opening: Box) -> list[float]:
    """Return the span along x between the inner edges of the casing's uprights."""
    back = door["head_gap"] + CASING_BACK
    return [opening["x0"] - back, opening["x1"] + back]


def has_casing(door: Door) -> bool:
    """Return whether a casing stands on the wall round the opening."""
    return door["casing_width"] > 0 and door["casing_projection"] > 0


def casing_pieces(door: Door) -> list[Piece]:
    """Return the casing round the opening, on the wall: both uprights, and the head between them."""
    if not has_casing(door):
        return []
    width = door["casing_width"]
    opening = opening_box(door)
    inside = casing_inside(door, opening)
    left = inside[0]
    right = inside[1]
    head = opening["y1"] + CASING_BACK
    out = [door["reveal"], door["reveal"] + door["casing_projection"]]
    up = [opening["y0"], head + width]
    return [
        wall_piece("casing", [left - width, left], up, out),
        wall_piece("casing", [right, right + width], up, out),
        wall_piece("casing", [left, right], [head, up[1]], out),
    ]


def side_wall_pieces(door: Door) -> list[Piece]:
    """Return the walls that stand into the room: at the hinges, and of a pair at the far hinges too."""
    up = [0.0, BEYOND]
    out = [door["reveal"], BEYOND]
    gap = door["wall_gap"]
    walls = [wall_piece("side-wall", [-gap - BEYOND, -gap], up, out)]
    if has_passive(door):
        far = opening_box(door)["x1"] + gap
        walls.append(wall_piece("side-wall", [far, far + BEYOND], up, out))
    return walls


def wall_pieces(door: Door) -> list[Piece]:
    """Return the wall that the opening stands in: to either side of it and above."""
    opening = opening_box(door)
    out = [-door["leaf_thickness"], door["reveal"]]
    low = opening["x0"] - BEYOND
    high = opening["x1"] + BEYOND
    return [
        wall_piece("wall", [low, opening["x0"]], [0.0, BEYOND], out),
        wall_piece("wall", [opening["x1"], high], [0.0, BEYOND], out),
        wall_piece("wall", [opening["x0"], opening["x1"]], [opening["y1"], BEYOND], out),
    ]


def leaf_obstacles(door: Door) -> list[Piece]:
    """Return all that a covering on the leaf may meet in front of the leaf's face, handles apart."""
    pieces = proud_pieces(door)
    pieces.extend(edge_pieces(door))
    return pieces


def behind_opening(door: Door) -> list[Piece]:
    """Return all that stands behind a covering hung over the opening: leaves, sidelights, casing and wall."""
    pieces = wall_pieces(door)
    pieces.extend(casing_pieces(door))
    pieces.extend(stop_pieces(door))
    pieces.extend(opening_pieces(door))
    return pieces


def stands_out_most(door: Door) -> float:
    """Return how far out anything stands at the most that a covering over the opening hangs in front of."""
    on_leaf = max(door["bead_projection"], door["muntin_projection"], door["astragal_projection"])
    at_edge = max(STOP_DEPTH, door["hinge_pin_out"] + KNUCKLE)
    return max(on_leaf, at_edge, door["reveal"] + door["casing_projection"])


def room_obstacles(door: Door) -> list[Piece]:
    """Return the room that a covering over the opening hangs in: wall, casing, side walls and ceiling."""
    pieces = wall_pieces(door)
    pieces.extend(casing_pieces(door))
    pieces.extend(side_wall_pieces(door))
    above = [door["ceiling_height"], door["ceiling_height"] + BEYOND]
    pieces.append(wall_piece("ceiling", [-BEYOND, BEYOND], above, [-BEYOND, BEYOND]))
    return pieces


def opening_obstacles(door: Door) -> list[Piece]:
    """Return all that a covering over the opening may meet, handles apart."""
    pieces = room_obstacles(door)
    pieces.extend(stop_pieces(door))
    pieces.extend(opening_pieces(door))
    return pieces


def over_joint(door: Door) -> list[Piece]:
    """Return the parts of the other leaf's handle that reach over the joint onto this leaf, were it to have one."""
    if not has_passive(door):
        return []
    parts = [across_pair(door, part) for part in handle_pieces(door)]
    return [part for part in parts if part["x0"] < leaf_width(door)]


def wall_face(door: Door, across: list[float]) -> float:
    """Return the z of what a covering beside the opening stands against over a span along x: casing or wall."""
    if not has_casing(door):
        return door["reveal"]
    inside = casing_inside(door, opening_box(door))
    beside = across[1] <= inside[0] - door["casing_width"] or across[0] >= inside[1] + door["casing_width"]
    return door["reveal"] + (0.0 if beside else door["casing_projection"])
