"""The covering and the door as pieces in the active leaf's space, seen from the room."""

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import leaf_pieces, leaf_width
from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.pieces import mirrored
from configurator.kernel.shapes import Door, Piece, Position, Size


def covering_pieces(mechanism: str, numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return the covering's pieces at a position, for a leaf hung on the left."""
    return MECHANISMS[mechanism]["pieces"](numbers, size, place)


def turned(door: Door, pieces: list[Piece]) -> list[Piece]:
    """Return the pieces as they stand on the leaf of this door's hand."""
    if door["hinge_side"] == "left":
        return pieces
    width = leaf_width(door)
    return [mirrored(piece, width) for piece in pieces]
