"""Where a hand takes hold of a moving part, on the drawing as on the door."""

from configurator.kernel.fit import pieces_at
from configurator.kernel.position import coarse
from configurator.kernel.scene import turned
from configurator.kernel.shapes import Box, Fit, Leg, Piece, Position

# How wide a strip of what draws to the side is taken at its leading edge, mm: about a hand.
HAND_STRIP = 60.0


class Hold(Box):
    """The box of the part that is taken hold of; see :class:`configurator.kernel.shapes.Piece` for its axes."""

    z0: float
    z1: float


def held_parts(fit: Fit, place: Position, leg: Leg) -> list[Piece]:
    """Return the active leaf's pieces that a hand moves along a leg: of what draws to both sides, the first half."""
    middle = (fit["size"]["x0"] + fit["size"]["x1"]) / 2
    parts: list[Piece] = []
    for piece in pieces_at(fit, coarse(place)):
        first_half = (piece["x0"] + piece["x1"]) / 2 < middle
        if piece["part"] == "covering" and piece["kind"] in leg["held"] and (leg["halves"] == 1 or first_half):
            parts.append(piece)
    return parts


def around(parts: list[Piece]) -> Hold:
    """Return the box that holds all the parts, of which there must be one."""
    return {
        "x0": min([piece["x0"] for piece in parts]),
        "x1": max([piece["x1"] for piece in parts]),
        "y0": min([piece["y0"] for piece in parts]),
        "y1": max([piece["y1"] for piece in parts]),
        "z0": min([piece["z0"] for piece in parts]),
        "z1": max([piece["z1"] for piece in parts]),
    }


def leading_edge(parts: list[Piece]) -> list[Piece]:
    """Return the strip of what draws to the side that a hand takes: that of the part that goes furthest."""
    best = parts[0]
    for piece in parts:
        if piece["x1"] > best["x1"]:
            best = piece
    return [{**best, "x0": max(best["x0"], best["x1"] - HAND_STRIP)}]


def holds_at(fit: Fit, place: Position, leg: Leg) -> list[Hold]:
    """Return where a hand takes hold of what a leg moves, as it stands on this door; none where it is not to be had."""
    parts = held_parts(fit, place, leg)
    if len(parts) == 0:
        return []
    if leg["way"] == "aside":
        parts = leading_edge(parts)
    return [around(turned(fit["door"], parts))]
