"""The travel as a list of samples: the covering's pieces at every step of every leg."""

from typing import TypedDict

from configurator.kernel.mechanisms import MECHANISMS
from configurator.kernel.mount.hold_down import HOLD_DOWN_KIND, hold_down_pieces
from configurator.kernel.shapes import Leg, Piece, Position, Size
from configurator.kernel.travel import along, coarse, legs, open_position

# Enough that nothing of the travel is missed, few enough for a fit to stay quick.
FINE_STEPS = 12
ROUGH_STEPS = 4


class Sample(TypedDict):
    """One step of the travel: which leg, how far along it, and the pieces there (coarse)."""

    leg: int
    at: float
    pieces: list[Piece]


def covering_pieces(mechanism: str, numbers: dict[str, float], size: Size, place: Position) -> list[Piece]:
    """Return the covering's pieces at a position, its hold-downs included, for a leaf hung on the left."""
    pieces = MECHANISMS[mechanism]["pieces"](numbers, size, place)
    pieces.extend(hold_down_pieces(numbers, size))
    return pieces


def lowest_edge(pieces: list[Piece]) -> float:
    """Return the lowest y of the pieces that hang; hold-downs stay behind on the leaf."""
    low = pieces[0]["y0"]
    for piece in pieces:
        if piece["kind"] != HOLD_DOWN_KIND:
            low = min(low, piece["y0"])
    return low


def even_steps(steps: int) -> list[float]:
    """Return the shares that cut a leg into equal steps, both ends included."""
    return [i / steps for i in range(steps + 1)]


def tilt_steps(leg: Leg) -> list[float]:
    """Return the shares at which a tilt is sampled: a few, and level, where the blades reach furthest out."""
    shares = even_steps(ROUGH_STEPS)
    start = leg["start"]["tilt"]
    level = start / (start - leg["end"]["tilt"])
    if level > 0 and level < 1:
        shares.append(level)
    return sorted(shares)


def rail_steps(leg: Leg, steps: int, open_edge: float, size: Size, heights: list[float]) -> list[float]:
    """Return the shares at which a moving rail is sampled: evenly, and where it is at each of ``heights``."""
    shares = even_steps(steps)
    top = open_edge if leg["moves"] == "lower" else size["y1"]
    way = top - size["y0"]
    for height in heights:
        if height < top and height > size["y0"]:
            shares.append((top - height) / way)
    return sorted(shares)


def steps_of(leg: Leg, steps: int, open_edge: float, size: Size, heights: list[float]) -> list[float]:
    """Return the shares at which a leg is sampled."""
    if leg["moves"] == "tilt":
        return tilt_steps(leg)
    return rail_steps(leg, steps, open_edge, size, heights)


def travel_samples(
    mechanism: str, numbers: dict[str, float], size: Size, heights: list[float], steps: int
) -> list[Sample]:
    """Return the covering at every one of ``steps`` along each leg of its travel; one sample where nothing moves.

    ``heights`` are those of the handle's parts, so that no narrow part slips between two steps.
    """
    stretches = legs(numbers)
    rest = covering_pieces(mechanism, numbers, size, coarse(open_position(numbers)))
    edge = lowest_edge(rest)
    samples: list[Sample] = []
    for i in range(len(stretches)):
        for at in steps_of(stretches[i], steps, edge, size, heights):
            place = coarse(along(stretches[i], at))
            samples.append({"leg": i, "at": at, "pieces": covering_pieces(mechanism, numbers, size, place)})
    if len(samples) == 0:
        samples.append({"leg": 0, "at": 0.0, "pieces": rest})
    return samples
