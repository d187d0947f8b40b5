"""The reach of a turning leaf, of its hardware and of its covering, by kind of piece."""

from configurator.kernel.door.hardware import handle_pieces
from configurator.kernel.door.leaf import bead_box, leaf_box
from configurator.kernel.door.opening import astragal_piece, has_passive
from configurator.kernel.shapes import Door, Outer, Piece, Sample


def outer_of(piece: Piece) -> Outer:
    """Return the reach of one piece."""
    return {
        "kind": piece["kind"],
        "x0": piece["x0"],
        "x1": piece["x1"],
        "y0": piece["y0"],
        "y1": piece["y1"],
        "z0": piece["z0"],
        "z1": piece["z1"],
    }


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
            if piece["y0"] < known["y0"]:
                known["y0"] = piece["y0"]
            if piece["y1"] > known["y1"]:
                known["y1"] = piece["y1"]
            if piece["z0"] < known["z0"]:
                known["z0"] = piece["z0"]
            if piece["z1"] > known["z1"]:
                known["z1"] = piece["z1"]
        else:
            kinds[kind] = outer_of(piece)


def leaf_outline(door: Door) -> list[Outer]:
    """Return the reach of the leaf itself and of its beads; a pair's astragal turns with an in-swing leaf."""
    leaf = leaf_box(door)
    bead = bead_box(door)
    back = -door["leaf_thickness"]
    outers: list[Outer] = [
        {**leaf, "kind": "leaf", "z0": back, "z1": 0.0},
        {**bead, "kind": "bead", "z0": back, "z1": door["bead_projection"]},
    ]
    if has_passive(door) and door["astragal_width"] > 0:
        outers.append(outer_of(astragal_piece(door)))
    return outers


def handle_outline(door: Door) -> list[Outer]:
    """Return the reach of the active leaf's handle."""
    kinds: dict[str, Outer] = {}
    widen(kinds, handle_pieces(door))
    return list(kinds.values())


def own_outline(door: Door) -> list[Outer]:
    """Return the reach of the leaf, its handle and its astragal, without any covering."""
    outers = leaf_outline(door)
    outers.extend(handle_outline(door))
    return outers


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
