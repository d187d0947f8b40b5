"""How far the covering must stand off what is behind it: beads, muntins, casing, wall and its own sweep.

Asked of the pieces over the whole travel: a piece must stand in front of whatever it comes before.
"""

from configurator.kernel.contact import SOLVED, air_across, air_up, level_samples, same_pieces
from configurator.kernel.kinds import kind_of
from configurator.kernel.numbers import step_up
from configurator.kernel.shapes import Fit, Piece, Sample

# Air that moving cloth or louvers keep to a raised bead or muntin, or to the wall.
MOVING_AIR = 2.0


def air_kept(piece: Piece) -> float:
    """Return the air that a piece keeps to fixed things: none where it is fixed itself."""
    return 0.0 if kind_of(piece["kind"])["fixed"] else MOVING_AIR


def push_out(piece: Piece, part: Piece) -> float:
    """Return how much further out a piece must stand to be in front of a part; nothing where it is not before it."""
    air = air_kept(piece)
    out = part["z1"] + air - piece["z0"]
    # A piece that only touches is not before the part: what moves keeps its air beside it too.
    beside = air if air > 0 else -SOLVED
    if out <= 0 or air_up(piece, part) >= beside or air_across(piece, part) >= beside:
        return 0.0
    return out


def push_in(sample: Sample, parts: list[Piece]) -> float:
    """Return how much further out the covering must stand at one place of its travel."""
    need = 0.0
    for piece in sample["pieces"]:
        if piece["part"] == "covering":
            for part in parts:
                if part["z1"] + MOVING_AIR - piece["z0"] > need:
                    need = max(need, push_out(piece, part))
    return need


def swept_box(low: Piece, high: Piece) -> Piece:
    """Return the box in which a piece moves between two samples."""
    return {
        **low,
        "x0": min(low["x0"], high["x0"]),
        "x1": max(low["x1"], high["x1"]),
        "y0": min(low["y0"], high["y0"]),
        "y1": max(low["y1"], high["y1"]),
        "z0": min(low["z0"], high["z0"]),
        "z1": max(low["z1"], high["z1"]),
    }


def may_push_more(low: Sample, high: Sample, part: Piece, need: float) -> bool:
    """Return whether between two samples a piece may have to stand further out of a part's way than ``need``."""
    for i in range(len(low["pieces"])):
        one = low["pieces"][i]
        other = high["pieces"][i]
        most = part["z1"] + MOVING_AIR - min(one["z0"], other["z0"])
        # Told apart first by what is quick to see: this runs for every piece against every part.
        if most <= need + SOLVED or one["part"] != "covering":
            continue
        if push_out(swept_box(one, other), part) > need + SOLVED:
            return True
    return False


def push_needed(fit: Fit, samples: list[Sample], parts: list[Piece]) -> float:
    """Return how much further out than now the covering must stand to be in front of the parts all along its travel."""
    need = 0.0
    for sample in samples:
        need = max(need, push_in(sample, parts))
    for i in range(1, len(samples)):
        low = samples[i - 1]
        high = samples[i]
        if not same_pieces(low, high):
            continue
        for part in parts:
            if may_push_more(low, high, part, need):
                for found in level_samples(fit, low, high, [part], MOVING_AIR):
                    need = max(need, push_in(found, [part]))
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


def spacer_thickness(numbers: dict[str, float], need: float) -> float:
    """Return the stack of stock spacers that gives at least ``need``."""
    if need <= 0:
        return 0.0
    return step_up(need, numbers["spacer_step"])
