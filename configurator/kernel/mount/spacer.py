"""How far the covering must stand off the leaf's face: beads, muntins and its own sweep."""

from configurator.kernel.door.leaf import bead_box, glass_box
from configurator.kernel.kinds import kind_of
from configurator.kernel.numbers import step_down, step_up
from configurator.kernel.shapes import Box, Door, Fit, Piece, Sample

# Air that moving cloth or louvers keep to a raised bead or muntin.
MOVING_AIR = 2.0


def meets(piece: Piece, area: Box) -> bool:
    """Return whether a piece stands in front of an area of the leaf."""
    if piece["x0"] >= area["x1"] or piece["x1"] <= area["x0"]:
        return False
    return piece["y0"] < area["y1"] and piece["y1"] > area["y0"]


def stand_off_of(door: Door, piece: Piece, bead: Box, glass: Box) -> float:
    """Return the least stand-off that one piece needs, for a mounting plane at the leaf's face."""
    air = 0.0 if kind_of(piece["kind"])["fixed"] else MOVING_AIR
    need = -piece["z0"]
    if door["bead_projection"] > 0 and meets(piece, bead):
        need = max(need, door["bead_projection"] + air - piece["z0"])
    if door["muntin_projection"] > 0 and door["muntin_columns"] * door["muntin_rows"] > 1 and meets(piece, glass):
        need = max(need, door["muntin_projection"] + air - piece["z0"])
    return need


def stand_off_needed(fit: Fit, samples: list[Sample]) -> float:
    """Return the least stand-off at which nothing that is hung there meets the leaf over its whole travel."""
    door = fit["door"]
    bead = bead_box(door)
    glass = glass_box(door)
    need = 0.0
    for sample in samples:
        for piece in sample["pieces"]:
            if piece["part"] == "covering":
                need = max(need, stand_off_of(door, piece, bead, glass))
    return need


def spacer_by_hand(numbers: dict[str, float]) -> float:
    """Return the stand-off that is set by hand, as far as stock spacers reach; 0 for none."""
    return min(numbers["spacer_wanted"], step_down(numbers["spacer_most"], numbers["spacer_step"]))


def spacer_thickness(numbers: dict[str, float], need: float) -> float:
    """Return the stack of stock spacers that gives at least ``need``."""
    if need <= 0:
        return 0.0
    return step_up(need, numbers["spacer_step"])
