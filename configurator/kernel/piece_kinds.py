"""The kinds of piece: what each is called, and what it is made of.

One table for words and drawings alike. ``material`` is the class that a drawing goes by; cloth is drawn by what
comes through it. ``fixed`` kinds stay behind when the covering moves.
"""

from typing import TypedDict


class Kind(TypedDict):
    """A kind of piece: its name as a sentence says it, its material, and whether it stays where it is fixed."""

    name: str
    material: str
    fixed: bool


CLOTH = "cloth"


def moving_kind(name: str, material: str) -> Kind:
    """Return a kind that travels with the covering."""
    return {"name": name, "material": material, "fixed": False}


def fixed_kind(name: str, material: str) -> Kind:
    """Return a kind that is fixed to the leaf, the wall or the door itself."""
    return {"name": name, "material": material, "fixed": True}


KINDS: dict[str, Kind] = {
    "leaf": fixed_kind("the leaf itself", "leaf"),
    "other-leaf": fixed_kind("the other leaf", "leaf"),
    "other-covering": fixed_kind("the other leaf's covering", "leaf"),
    "sidelight": fixed_kind("the sidelight", "leaf"),
    "head": fixed_kind("the head of the opening", "leaf"),
    "casing": fixed_kind("the casing", "leaf"),
    "reveal": fixed_kind("the reveal", "wall"),
    "own-wall": fixed_kind("the wall beside the door", "wall"),
    "stile": fixed_kind("the leaf's own edge", "leaf"),
    "rail": fixed_kind("the leaf's rail", "leaf"),
    "astragal": fixed_kind("the astragal", "leaf"),
    "glass": fixed_kind("the glass", "glass"),
    "bead": fixed_kind("the glazing bead", "bead"),
    "muntin": fixed_kind("the muntin", "muntin"),
    "hinge": fixed_kind("the hinge", "hinge"),
    "stop": fixed_kind("the door stop", "leaf"),
    "wall": fixed_kind("the wall", "wall"),
    "side-wall": fixed_kind("the side wall", "wall"),
    "ceiling": fixed_kind("the ceiling", "wall"),
    "plate": fixed_kind("the handle's plate", "handle"),
    "neck": fixed_kind("the neck of the handle", "handle"),
    "grip": fixed_kind("the grip of the handle", "handle"),
    "thumb-turn": fixed_kind("the thumb-turn", "handle"),
    "headrail": fixed_kind("the headrail", "headrail"),
    "bracket": fixed_kind("the bracket", "headrail"),
    "hold-down": fixed_kind("the hold-down", "headrail"),
    "rod-holder": fixed_kind("the rod holder", "headrail"),
    "screw": fixed_kind("the screw", "headrail"),
    "roll": moving_kind("the roll", CLOTH),
    "rod": fixed_kind("the rod", "rod"),
    "louver": moving_kind("the louver", "louver"),
    "slat": moving_kind("the slat", "louver"),
    "vane": moving_kind("the vane", CLOTH),
    "frame": fixed_kind("the frame", "frame"),
    "panel-stile": fixed_kind("the panel's stile", "frame"),
    "panel-rail": fixed_kind("the panel's rail", "frame"),
    "bottom-rail": moving_kind("the bottom rail", "rail"),
    "upper-rail": moving_kind("the upper rail", "rail"),
    "cell": moving_kind("the cell", CLOTH),
    "fold": moving_kind("the fold", CLOTH),
    "pleat": moving_kind("the pleat", CLOTH),
    "fabric": moving_kind("the fabric", CLOTH),
    "sheer": moving_kind("the sheer", CLOTH),
    "band": moving_kind("the band", CLOTH),
    "ruffle": moving_kind("the ruffle", CLOTH),
    "return": fixed_kind("the return", CLOTH),
}

# A mechanism may name a kind of its own: it is cloth that travels with the covering, unless the table says otherwise.
OTHER_KIND = moving_kind("the covering", CLOTH)


def kind_of(kind: str) -> Kind:
    """Return what is known of a kind of piece."""
    return KINDS.get(kind, OTHER_KIND)


def kind_name(kind: str) -> str:
    """Return what a kind of piece is called in a sentence."""
    return kind_of(kind)["name"]


def is_cloth(kind: str) -> bool:
    """Return whether a kind of piece is cloth."""
    return kind_of(kind)["material"] == CLOTH
