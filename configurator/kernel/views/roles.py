"""Which classes a piece is drawn with: its material, its weight, and whether it can be taken by the hand."""

from configurator.kernel.shapes import Piece

MATERIALS = {
    "stile": "leaf",
    "rail": "leaf",
    "astragal": "leaf",
    "glass": "glass",
    "bead": "bead",
    "muntin": "muntin",
    "hinge": "hinge",
    "headrail": "headrail",
    "bracket": "headrail",
    "hold-down": "headrail",
    "rod": "rod",
    "louver": "louver",
    "slat": "louver",
    "frame": "frame",
    "panel-stile": "frame",
    "panel-rail": "frame",
    "bottom-rail": "rail",
    "upper-rail": "rail",
}
HELD = {
    "bottom-rail": " part-lower",
    "upper-rail": " part-upper",
    "louver": " part-tilt",
    "slat": " part-tilt",
    "vane": " part-tilt",
}


# Cloth that lets at least this much of the view through is drawn as a veil.
VEIL_FROM = 0.2


def material(piece: Piece) -> str:
    """Return the class for what a piece is made of; whatever is not known to be hard is cloth."""
    if piece["part"] == "handle":
        return "handle"
    if piece["kind"] in MATERIALS:
        return MATERIALS[piece["kind"]]
    return "sheer" if piece["view"] >= VEIL_FROM else "cloth"


def held(piece: Piece) -> str:
    """Return the class of a part that the hand moves, with a leading space, or nothing."""
    if piece["part"] == "covering" and piece["kind"] in HELD:
        return HELD[piece["kind"]]
    return ""


def hides(piece: Piece) -> float:
    """Return how much of the view a piece hides."""
    return 1.0 - piece["view"]
