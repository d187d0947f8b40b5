"""Which classes a piece is drawn with: its material, and whether it can be taken by the hand."""

from configurator.kernel.piece_kinds import CLOTH, kind_of
from configurator.kernel.shapes import Leg, Piece

# Cloth that lets at least this much of the view through is drawn as a veil.
VEIL_FROM = 0.2


def material(piece: Piece) -> str:
    """Return the class for what a piece is made of."""
    made_of = kind_of(piece["kind"])["material"]
    if made_of == CLOTH and piece["optics"]["view"] >= VEIL_FROM:
        return "sheer"
    return made_of


def held(piece: Piece, legs: list[Leg]) -> str:
    """Return the classes of a part that the hand moves, one for each leg, with a leading space, or nothing."""
    classes = ""
    for leg in legs:
        if piece["part"] == "covering" and piece["kind"] in leg["held"]:
            classes = classes + " part-" + leg["moves"]
    return classes


def hides(piece: Piece) -> float:
    """Return how much of the view a piece hides."""
    return 1.0 - piece["optics"]["view"]
