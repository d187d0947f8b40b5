"""The reach of a turning leaf, of its hardware and of its covering, by kind of piece."""

from typing import TypedDict

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import bead_box, leaf_width
from configurator.kernel.door.opening import astragal_piece, has_passive
from configurator.kernel.shapes import Door, Piece, Sample


class Outer(TypedDict):
    """The reach of all pieces of one kind over the travel: along the leaf, and out of its face."""

    kind: str
    x0: float
    x1: float
    z1: float


def widen(kinds: dict[str, Outer], pieces: list[Piece]) -> None:
    """Widen ``kinds`` (by kind of piece) so that it bounds the given pieces too."""
    for piece in pieces:
        kind = piece["kind"]
        if kind in kinds:
            known = kinds[kind]
            # Written out rather than with min and max: this runs for every piece at every step of the travel.
            if piece["x0"] < known["x0"]:
                known["x0"] = piece["x0"]
            if piece["x1"] > known["x1"]:
                known["x1"] = piece["x1"]
            if piece["z1"] > known["z1"]:
                known["z1"] = piece["z1"]
        else:
            kinds[kind] = {"kind": kind, "x0": piece["x0"], "x1": piece["x1"], "z1": piece["z1"]}


def own_outline(door: Door) -> list[Outer]:
    """Return the reach of the leaf, its handle and its astragal, without any covering."""
    kinds: dict[str, Outer] = {}
    width = leaf_width(door)
    bead = bead_box(door)
    kinds["stile"] = {"kind": "stile", "x0": 0.0, "x1": width, "z1": 0.0}
    kinds["bead"] = {"kind": "bead", "x0": bead["x0"], "x1": bead["x1"], "z1": door["bead_projection"]}
    widen(kinds, handle_pieces(door))
    if has_passive(door) and door["astragal_width"] > 0:
        widen(kinds, [astragal_piece(door)])
    return list(kinds.values())


def covering_outline(samples: list[Sample]) -> list[Outer]:
    """Return the covering's reach over its whole travel."""
    kinds: dict[str, Outer] = {}
    for sample in samples:
        widen(kinds, sample["pieces"])
    return list(kinds.values())


def deepest(outers: list[Outer]) -> float:
    """Return the farthest reach out of the leaf's face, at least 0."""
    most = 0.0
    for outer in outers:
        most = max(most, outer["z1"])
    return most
