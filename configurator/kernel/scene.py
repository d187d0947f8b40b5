"""The covering and the door as pieces in the active leaf's space, seen from the room."""

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import leaf_pieces, leaf_width
from configurator.kernel.door.opening import across_pair, has_passive, opening_hardware, opening_pieces
from configurator.kernel.fit import over_opening, pieces_at
from configurator.kernel.looks import look_of
from configurator.kernel.mount.hung import dressed_leaves
from configurator.kernel.pieces import mirrored
from configurator.kernel.shapes import Door, Fit, Piece, Position, Scene


def turned(door: Door, pieces: list[Piece]) -> list[Piece]:
    """Return the pieces as they stand on a door of this door's hand."""
    if door["hinge_side"] == "left":
        return pieces
    width = leaf_width(door)
    return [mirrored(piece, width) for piece in pieces]


def door_scene(door: Door) -> list[Piece]:
    """Return all the leaves of the opening and their handles."""
    pieces: list[Piece] = []
    pieces.extend(opening_pieces(door))
    pieces.extend(opening_hardware(door))
    return turned(door, pieces)


def leaf_spans(door: Door) -> list[list[float]]:
    """Return the span of each leaf along x, the active one first."""
    width = leaf_width(door)
    spans = [[0.0, width]]
    if has_passive(door):
        start = width + door["meeting_gap"]
        if door["hinge_side"] == "left":
            spans.append([start, start + width])
        else:
            spans.append([-door["meeting_gap"] - width, -door["meeting_gap"]])
    return spans


def covering_scene(leaves: list[Fit], place: Position) -> list[Piece]:
    """Return the coverings of the given leaves, the active one first; nothing where one cannot go on its leaf."""
    door = leaves[0]["door"]
    pieces: list[Piece] = []
    pieces.extend(pieces_at(leaves[0], place))
    for other in leaves[1:]:
        pieces.extend([across_pair(door, piece) for piece in pieces_at(other, place)])
    return turned(door, pieces)


def scene_at(fit: Fit, place: Position) -> Scene:
    """Return the whole opening with the covering at a position."""
    door = fit["door"]
    return {
        "door": door_scene(door),
        "covering": covering_scene(dressed_leaves(fit), place),
        "leaf_x": leaf_spans(door),
        "legs": fit["legs"],
        "look": look_of(fit["family"], fit["choices"]),
    }


def asked_scene(fit: Fit, place: Position) -> Scene:
    """Return what the figures speak of: the active leaf alone on-leaf, the whole opening over it."""
    door = fit["door"]
    if over_opening(fit) or not has_passive(door):
        return scene_at(fit, place)
    pieces: list[Piece] = []
    pieces.extend(leaf_pieces(door))
    pieces.extend(handle_pieces(door))
    return {
        "door": turned(door, pieces),
        "covering": turned(door, pieces_at(fit, place)),
        "leaf_x": [[0.0, leaf_width(door)]],
        "legs": fit["legs"],
        "look": look_of(fit["family"], fit["choices"]),
    }
