"""The covering and the door as pieces in the active leaf's space, seen from the room."""

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import leaf_pieces, leaf_width
from configurator.kernel.door.opening import across_pair, has_passive, opening_pieces
from configurator.kernel.mount.cutout import without_cutout
from configurator.kernel.mount.mounted import mounted
from configurator.kernel.pieces import mirrored
from configurator.kernel.resolve import resolve
from configurator.kernel.sampling import covering_pieces
from configurator.kernel.shapes import Door, Family, Piece, Position, Scene, Size


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
    handle = handle_pieces(door)
    pieces.extend(handle)
    if has_passive(door) and door["passive_handle"]:
        for piece in handle:
            pieces.append(across_pair(door, piece))
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


def covering_scene(door: Door, mechanism: str, numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return the covering on every leaf that it dresses; nothing where it cannot go on the door."""
    pieces: list[Piece] = []
    if size["refusal"] != "":
        return pieces
    own = covering_pieces(mechanism, numbers, size, place)
    pieces.extend(own)
    if has_passive(door) and size["mount"] == "on-leaf":
        for piece in passive_covering(door, mechanism, numbers, size, place):
            pieces.append(across_pair(door, piece))
    return turned(door, pieces)


def passive_covering(door: Door, mechanism: str, numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return the second leaf's covering, ordered to the active one's size; without a handle it needs no cut-out."""
    if door["passive_handle"] or size["cutout"]["x1"] == 0:
        return covering_pieces(mechanism, numbers, size, place)
    return covering_pieces(mechanism, numbers, without_cutout(size), place)


def size_of(door: Door, family: Family, choices: dict[str, str]) -> Size:
    """Return how a family with its choices sits on the active leaf or over the opening."""
    numbers = resolve(family, choices)
    return mounted(door, family["mechanism"], numbers, family["cassettes"], handle_pieces(door))


def scene(door: Door, family: Family, choices: dict[str, str], place: Position) -> Scene:
    """Return the whole opening with the covering at a position."""
    return sized_scene(door, family, choices, size_of(door, family, choices), place)


def sized_scene(door: Door, family: Family, choices: dict[str, str], size: Size, place: Position) -> Scene:
    """Return the whole opening with the covering at a position, where its size is known, as an answer has it."""
    covering = covering_scene(door, family["mechanism"], resolve(family, choices), size, place)
    return {"door": door_scene(door), "covering": covering, "leaf_x": leaf_spans(door)}


def answer_pieces(door: Door, family: Family, choices: dict[str, str], place: Position) -> Scene:
    """Return what the figures speak of: the active leaf alone on-leaf, the whole opening over it."""
    size = size_of(door, family, choices)
    if size["mount"] == "over-opening" or not has_passive(door):
        return scene(door, family, choices, place)
    pieces: list[Piece] = []
    pieces.extend(leaf_pieces(door))
    pieces.extend(handle_pieces(door))
    covering: list[Piece] = []
    if size["refusal"] == "":
        covering.extend(covering_pieces(family["mechanism"], resolve(family, choices), size, place))
    return {"door": turned(door, pieces), "covering": turned(door, covering), "leaf_x": [[0.0, leaf_width(door)]]}
