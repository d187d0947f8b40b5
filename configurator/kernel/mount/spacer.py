"""How far the covering must stand off what is behind it: beads, muntins, casing, wall and its own sweep.

Asked of the pieces over the whole travel: a piece must stand in front of whatever it comes before.
"""

from configurator.kernel.contact import SOLVED, air_across, air_up, clustered, level_samples, same_pieces
from configurator.kernel.numbers import step_down, step_up
from configurator.kernel.piece_kinds import kind_of
from configurator.kernel.shapes import Fit, Piece, Sample

# Air that moving cloth or louvers keep to a raised bead or muntin, or to the wall.
MOVING_AIR = 2.0


def air_kept(piece: Piece) -> float:
    """Return the air that a piece keeps to fixed things: none where it is fixed itself."""
    return 0.0 if kind_of(piece["kind"])["fixed"] else MOVING_AIR


def push_out(piece: Piece, part: Piece, air: float) -> float:
    """Return how much further out a piece must stand to be in front of a part; nothing where it is not before it.

    What moves keeps its ``air`` beside the part too; what is fixed may touch it.
    """
    out = part["z1"] + air - piece["z0"]
    if out <= 0:
        return 0.0
    beside = air if air > 0 else -SOLVED
    return out if air_up(piece, part) < beside and air_across(piece, part) < beside else 0.0


def most_push(piece: Piece, parts: list[Piece]) -> float:
    """Return how much further out a piece of the covering must stand to be in front of the parts."""
    need = 0.0
    if piece["part"] == "covering":
        air = air_kept(piece)
        for part in parts:
            # Told apart first by what is quick to see: this runs for every piece against every part.
            if part["z1"] + air - piece["z0"] > need:
                need = max(need, push_out(piece, part, air))
    return need


def push_in(sample: Sample, parts: list[Piece]) -> float:
    """Return how much further out the covering must stand at one place of its travel."""
    need = 0.0
    for piece in sample["pieces"]:
        need = max(need, most_push(piece, parts))
    return need


def stays(low: Piece, high: Piece) -> bool:
    """Return whether a piece stands alike at two samples."""
    if low["y0"] != high["y0"] or low["y1"] != high["y1"] or low["z0"] != high["z0"]:
        return False
    return low["x0"] == high["x0"] and low["x1"] == high["x1"]


def swept_box(low: Piece, high: Piece) -> Piece:
    """Return the box in which a piece moves between two samples."""
    return {
        **low,
        "x0": min(low["x0"], high["x0"]),
        "x1": max(low["x1"], high["x1"]),
        "y0": min(low["y0"], high["y0"]),
        "y1": max(low["y1"], high["y1"]),
        "z0": min(low["z0"], high["z0"]),
    }


def push_between(fit: Fit, low: Sample, high: Sample, parts: list[Piece]) -> float:
    """Return how much further out the covering must stand from one sample to the next, the first left out."""
    if not same_pieces(low, high):
        return push_in(high, parts)
    need = 0.0
    most = 0.0
    for i in range(len(high["pieces"])):
        if not stays(low["pieces"][i], high["pieces"][i]):
            need = max(need, most_push(high["pieces"][i], parts), most_push(low["pieces"][i], parts))
            most = max(most, most_push(swept_box(low["pieces"][i], high["pieces"][i]), parts))
    # Somewhere between, a piece may come before a part while it stands further back than at either end.
    if most > need + SOLVED:
        for found in level_samples(fit, low, high, clustered(parts), MOVING_AIR):
            need = max(need, push_in(found, parts))
    return need


def push_needed(fit: Fit, samples: list[Sample], parts: list[Piece]) -> float:
    """Return how much further out than now the covering must stand to be in front of the parts all along its travel."""
    if len(parts) == 0:
        return 0.0
    need = push_in(samples[0], parts)
    for i in range(1, len(samples)):
        if samples[i]["leg"] == samples[i - 1]["leg"]:
            need = max(need, push_between(fit, samples[i - 1], samples[i], parts))
        else:
            need = max(need, push_in(samples[i], parts))
    return need


def backmost(samples: list[Sample]) -> float:
    """Return the least z at which a piece of the covering stands over its travel."""
    back = samples[0]["pieces"][0]["z0"]
    for sample in samples:
        for piece in sample["pieces"]:
            if piece["part"] == "covering":
                back = min(back, piece["z0"])
    return back


def moving_back(samples: list[Sample]) -> float:
    """Return the least z at which a piece stands that moves, at most how far out the covering is fixed."""
    back = samples[0]["pieces"][0]["z0"]
    for sample in samples:
        for piece in sample["pieces"]:
            if piece["z0"] < back and not kind_of(piece["kind"])["fixed"]:
                back = piece["z0"]
    return back


def spacer_by_hand(numbers: dict[str, float]) -> float:
    """Return the stand-off that is set by hand, as far as stock spacers reach; 0 for none."""
    return min(numbers["spacer_wanted"], step_down(numbers["spacer_most"], numbers["spacer_step"]))


def spacer_thickness(numbers: dict[str, float], need: float) -> float:
    """Return the stack of stock spacers that gives at least ``need``."""
    if need <= 0:
        return 0.0
    return step_up(need, numbers["spacer_step"])
