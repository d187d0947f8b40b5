"""Where a covering comes nearest to fixed things over its travel: solved, not sampled.

Between two samples of a leg each piece's edges run nearly straight. So every place where an edge of a piece comes
level with an edge of an obstacle is found by interpolation and then solved on the pieces themselves; no narrow
part slips between two steps. Everything here holds for boxes: the air between two is that along the axis that
has most of it, negative where they lie within each other.
"""

from typing import TypedDict

from configurator.kernel.fit import made_at, made_round, still_pieces
from configurator.kernel.numbers import blend, distinct_between
from configurator.kernel.position import along, coarse, open_position
from configurator.kernel.shapes import Fit, Meeting, Piece, Sample

# Even steps of a leg, between which edges are taken to run straight; a leg that turns has its peaks beside them.
STEPS = 6
TURN_STEPS = 4
# Two lengths that differ by less than this, mm, are the same length; a solved place is within it.
SOLVED = 0.005
# Straight edges are solved at once, curved ones in a few rounds.
ROUNDS_MOST = 6
EDGE_ROUNDS = 18
FAR = 1e9


class Between(TypedDict):
    """Two neighboring samples, which piece is watched against which part between them, and the axis it moves along."""

    low: Sample
    high: Sample
    index: int
    part: Piece
    axis: str


class Cluster(TypedDict):
    """Fixed parts, and the box that bounds them all: what does not come near it comes near none of them."""

    hull: Piece
    parts: list[Piece]


def air_across(piece: Piece, part: Piece) -> float:
    """Return the air between two boxes along x (negative: they overlap along it)."""
    return max(part["x0"] - piece["x1"], piece["x0"] - part["x1"])


def air_up(piece: Piece, part: Piece) -> float:
    """Return the air between two boxes along y."""
    return max(part["y0"] - piece["y1"], piece["y0"] - part["y1"])


def air_out(piece: Piece, part: Piece) -> float:
    """Return the air between two boxes along z."""
    return max(part["z0"] - piece["z1"], piece["z0"] - part["z1"])


def air_past(piece: Piece, part: Piece, axis: str) -> float:
    """Return the air between two boxes as the one passes the other along ``axis``, ``x`` or ``y``."""
    return max(air_out(piece, part), air_up(piece, part) if axis == "x" else air_across(piece, part))


def air_between(piece: Piece, part: Piece) -> float:
    """Return the air between two boxes, along the axis that has most of it."""
    # Written out rather than called: this runs at every step of the travel of all that is tried.
    below = max(part["x0"] - piece["x1"], part["y0"] - piece["y1"], part["z0"] - piece["z1"])
    return max(below, piece["x0"] - part["x1"], max(piece["y0"] - part["y1"], piece["z0"] - part["z1"]))


def sample_at(fit: Fit, leg: int, at: float) -> Sample:
    """Return the pieces a share ``at`` of the way along a leg."""
    return {"leg": leg, "at": at, "pieces": made_at(fit, coarse(along(fit["legs"][leg], at)))}


def even_samples(fit: Fit) -> list[Sample]:
    """Return the covering at even steps of each leg and where a turning part reaches furthest; one where none moves."""
    samples: list[Sample] = []
    still = still_pieces(fit)
    for leg in range(len(fit["legs"])):
        steps = TURN_STEPS if fit["legs"][leg]["way"] == "turn" else STEPS
        shares = [i / steps for i in range(1, steps)]
        shares.extend(fit["legs"][leg]["peaks"])
        for at in distinct_between(shares, 0.0, 1.0):
            place = coarse(along(fit["legs"][leg], at))
            samples.append({"leg": leg, "at": at, "pieces": made_round(fit, still, place)})
    if len(samples) == 0:
        rest = made_round(fit, still, coarse(open_position(fit["numbers"])))
        samples.append({"leg": 0, "at": 0.0, "pieces": rest})
    return samples


def clustered(parts: list[Piece]) -> Cluster:
    """Return parts, of which there must be one, with the box that bounds them all."""
    hull: Piece = {
        **parts[0],
        "x0": min([part["x0"] for part in parts]),
        "x1": max([part["x1"] for part in parts]),
        "y0": min([part["y0"] for part in parts]),
        "y1": max([part["y1"] for part in parts]),
        "z0": min([part["z0"] for part in parts]),
        "z1": max([part["z1"] for part in parts]),
    }
    return {"hull": hull, "parts": parts}


def is_nearer(piece: Piece, part: Piece, air: float) -> bool:
    """Return whether the air between two boxes is less than ``air``."""
    # Written out rather than called: this runs for every piece at every step of the travel.
    if part["z0"] - piece["z1"] >= air or piece["z0"] - part["z1"] >= air:
        return False
    if part["y0"] - piece["y1"] >= air or piece["y0"] - part["y1"] >= air:
        return False
    return part["x0"] - piece["x1"] < air and piece["x0"] - part["x1"] < air


def nearer_at(sample: Sample, cluster: Cluster, best: Meeting) -> Meeting:
    """Return what comes nearest to a cluster of parts at one place of the travel; ``best`` where nothing is nearer."""
    for piece in sample["pieces"]:
        if is_nearer(piece, cluster["hull"], best["air"]):
            for part in cluster["parts"]:
                if is_nearer(piece, part, best["air"]):
                    air = air_between(piece, part)
                    best = {"air": air, "leg": sample["leg"], "at": sample["at"], "piece": piece, "part": part}
    return best


def nearest_among(samples: list[Sample], cluster: Cluster) -> Meeting:
    """Return what comes nearest to a cluster of parts at places of its travel, the first of those alike."""
    first = samples[0]
    part = cluster["parts"][0]
    best: Meeting = {"air": FAR, "leg": first["leg"], "at": first["at"], "piece": first["pieces"][0], "part": part}
    for sample in samples:
        best = nearer_at(sample, cluster, best)
    return best


def nearest_of(sample: Sample, cluster: Cluster) -> Meeting:
    """Return what comes nearest to a cluster of parts at one place of the travel."""
    return nearest_among([sample], cluster)


def before(piece: Piece, part: Piece, axis: str) -> float:
    """Return how far a piece still is from a part along an axis, coming from its low end (negative: past its edge)."""
    return part["x0"] - piece["x1"] if axis == "x" else part["y0"] - piece["y1"]


def beyond(piece: Piece, part: Piece, axis: str) -> float:
    """Return how far a piece has gone beyond a part along an axis (negative: not yet)."""
    return piece["x0"] - part["x1"] if axis == "x" else piece["y0"] - part["y1"]


def measure_at(sample: Sample, between: Between, what: int) -> float:
    """Return one of the three lengths that are nothing where a piece comes level with a part.

    0 and 1: where its edge has come so near that what counts is how it passes the part, not that it is before or
    beyond it; 2: where both have their middles level.
    """
    piece = sample["pieces"][between["index"]]
    part = between["part"]
    axis = between["axis"]
    if what == 2:
        return beyond(piece, part, axis) - before(piece, part, axis)
    edge = before(piece, part, axis) if what == 0 else beyond(piece, part, axis)
    return edge - air_past(piece, part, axis)


def solved_between(fit: Fit, between: Between, what: int) -> list[Sample]:
    """Return the places, each nearer than the last, at which a length becomes nothing; none if it does not."""
    low = between["low"]
    high = between["high"]
    below = measure_at(low, between, what)
    above = measure_at(high, between, what)
    found: list[Sample] = []
    if (below > 0) == (above > 0):
        return found
    for _ in range(ROUNDS_MOST):
        at = blend(low["at"], high["at"], below / (below - above))
        middle = sample_at(fit, low["leg"], at)
        if len(middle["pieces"]) <= between["index"]:
            return found
        found.append(middle)
        value = measure_at(middle, between, what)
        if abs(value) < SOLVED:
            return found
        if (value > 0) == (below > 0):
            low = middle
            below = value
        else:
            high = middle
            above = value
    return found


def may_be_nearer(low: Piece, high: Piece, part: Piece, axis: str, air: float) -> bool:
    """Return whether a piece that moves along the axis may come nearer to a part than ``air`` between two samples."""
    # First along z and written out: this runs for every piece, part and step, and most are told apart by it.
    near = part["z0"] - low["z1"] < air and low["z0"] - part["z1"] < air
    if not near and (part["z0"] - high["z1"] >= air or high["z0"] - part["z1"] >= air):
        return False
    if air_past(low, part, axis) >= air and air_past(high, part, axis) >= air:
        return False
    stays_before = before(low, part, axis) >= air and before(high, part, axis) >= air
    stays_beyond = beyond(low, part, axis) >= air and beyond(high, part, axis) >= air
    return not stays_before and not stays_beyond


def moves_along(low: Piece, high: Piece) -> list[str]:
    """Return the axes across the view along which an edge of a piece moves between two samples."""
    axes: list[str] = []
    if low["y0"] != high["y0"] or low["y1"] != high["y1"]:
        axes.append("y")
    if low["x0"] != high["x0"] or low["x1"] != high["x1"]:
        axes.append("x")
    return axes


def same_pieces(one: Sample, other: Sample) -> bool:
    """Return whether two samples hold the same pieces, so that each can be watched from one to the other."""
    if one["leg"] != other["leg"] or len(one["pieces"]) != len(other["pieces"]):
        return False
    for i in range(len(one["pieces"])):
        if one["pieces"][i]["kind"] != other["pieces"][i]["kind"]:
            return False
    return True


def level_samples(fit: Fit, low: Sample, high: Sample, cluster: Cluster, air: float) -> list[Sample]:
    """Return the places between two samples at which a piece comes level with a part and may be nearer than ``air``."""
    found: list[Sample] = []
    if not same_pieces(low, high):
        return found
    for index in range(len(low["pieces"])):
        one = low["pieces"][index]
        other = high["pieces"][index]
        for axis in moves_along(one, other):
            if may_be_nearer(one, other, cluster["hull"], axis, air):
                for part in cluster["parts"]:
                    if may_be_nearer(one, other, part, axis, air):
                        between: Between = {"low": low, "high": high, "index": index, "part": part, "axis": axis}
                        for what in range(3):
                            found.extend(solved_between(fit, between, what))
    return found


def tightest(fit: Fit, samples: list[Sample], parts: list[Piece]) -> Meeting:
    """Return the tightest place of the travel; what was solved on the way is added to the samples.

    ``parts`` must not be empty.
    """
    cluster = clustered(parts)
    best = nearest_among(samples, cluster)
    solved: list[Sample] = []
    for i in range(1, len(samples)):
        for found in level_samples(fit, samples[i - 1], samples[i], cluster, best["air"]):
            solved.append(found)
            best = nearer_at(found, cluster, best)
    samples.extend(solved)
    return best


def comes_within(fit: Fit, samples: list[Sample], part: Piece, air: float) -> bool:
    """Return whether anything of the covering comes nearer to a part than ``air`` anywhere on its travel."""
    for sample in samples:
        for piece in sample["pieces"]:
            if is_nearer(piece, part, air):
                return True
    cluster = clustered([part])
    for i in range(1, len(samples)):
        for found in level_samples(fit, samples[i - 1], samples[i], cluster, air):
            if nearest_of(found, cluster)["air"] < air:
                return True
    return False


def in_order(samples: list[Sample]) -> list[Sample]:
    """Return the samples leg by leg, each from its start to its end."""
    return sorted(samples, key=lambda sample: sample["leg"] * 2 + sample["at"])


def edge_of_trouble(fit: Fit, parts: list[Piece], ends: list[Sample], limit: float) -> float:
    """Return the share of the leg at which the air falls below ``limit``, between a free sample and a tight one."""
    free = ends[0]["at"]
    tight = ends[1]["at"]
    cluster = clustered(parts)
    over = nearest_of(ends[0], cluster)["air"] - limit
    under = nearest_of(ends[1], cluster)["air"] - limit
    for turn in range(EDGE_ROUNDS):
        # By the slope, and every third time by halves, so that a bend cannot hold it up.
        at = blend(free, tight, 0.5 if turn % 3 == 2 else over / (over - under))
        air = nearest_of(sample_at(fit, ends[0]["leg"], at), cluster)["air"] - limit
        if abs(air) < SOLVED:
            return at
        if air > 0:
            free = at
            over = air
        else:
            tight = at
            under = air
    return tight
