"""Does the covering pass the handle, beside and behind, at every step of its travel?"""

from typing import TypedDict

from configurator.kernel.mount.sideways import PASSING_AIR
from configurator.kernel.numbers import step_up
from configurator.kernel.questions.figure import figure, verdict
from configurator.kernel.questions.reply import Reply, reply
from configurator.kernel.sampling import Sample, covering_pieces
from configurator.kernel.say import say_both
from configurator.kernel.shapes import Figure, Leg, Piece, Size, Verdict
from configurator.kernel.travel import along, coarse, legs

# Two lengths that differ by less than this are the same length.
SAME = 1e-6
# From a twelfth of the travel down to about a tenth of a millimetre of it.
BISECTIONS = 10


class Meeting(TypedDict):
    """The tightest place: the air there (negative: in the way), where on which leg, between what.

    ``way`` is how the piece passes the part there: ``beside``, ``above or below``, ``behind`` or ``in front of``.
    """

    air: float
    leg: int
    at: float
    way: str
    piece: Piece
    part: Piece


def air_across(piece: Piece, part: Piece) -> float:
    """Return the air between two boxes along x (negative: they overlap along it)."""
    return max(part["x0"] - piece["x1"], piece["x0"] - part["x1"])


def air_up(piece: Piece, part: Piece) -> float:
    """Return the air between two boxes along y."""
    return max(part["y0"] - piece["y1"], piece["y0"] - part["y1"])


def air_out(piece: Piece, part: Piece) -> float:
    """Return the air between two boxes along z."""
    return max(part["z0"] - piece["z1"], piece["z0"] - part["z1"])


def air_between(piece: Piece, part: Piece) -> float:
    """Return the air between two boxes, along the axis that has most of it."""
    return max(air_up(piece, part), air_across(piece, part), air_out(piece, part))


def way_past(piece: Piece, part: Piece) -> str:
    """Return in words how a piece passes a part, by the axis with the most air."""
    across = air_across(piece, part)
    up = air_up(piece, part)
    out = air_out(piece, part)
    if across >= up and across >= out:
        return "beside"
    if up >= out:
        return "above or below"
    return "behind" if part["z0"] - piece["z1"] >= piece["z0"] - part["z1"] else "in front of"


def least_air(pieces: list[Piece], handle: list[Piece]) -> float:
    """Return the least air between any piece and any part of the handle."""
    least = 1e9
    for piece in pieces:
        for part in handle:
            # Written out rather than called: this runs for every piece at every step of the travel.
            if part["y0"] - piece["y1"] < least and piece["y0"] - part["y1"] < least:
                least = min(least, air_between(piece, part))
    return least


def tightest(samples: list[Sample], airs: list[float], handle: list[Piece]) -> Meeting:
    """Return the tightest place over all samples, of which ``airs`` is the least air; ``handle`` must not be empty."""
    place = 0
    for i in range(len(samples)):
        if airs[i] < airs[place]:
            place = i
    sample = samples[place]
    best: Meeting = {
        "air": 1e9,
        "leg": sample["leg"],
        "at": sample["at"],
        "way": "",
        "piece": sample["pieces"][0],
        "part": handle[0],
    }
    for piece in sample["pieces"]:
        for part in handle:
            air = air_between(piece, part)
            if air < best["air"]:
                best["air"] = air
                best["piece"] = piece
                best["part"] = part
    best["way"] = way_past(best["piece"], best["part"])
    return best


def edge_of_trouble(
    mechanism: str,
    numbers: dict[str, float],
    size: Size,
    handle: list[Piece],
    leg: Leg,
    free: float,
    tight: float,
    limit: float,
) -> float:
    """Return the position between a free one and a tight one at which the air falls below ``limit``."""
    low = free
    high = tight
    for _ in range(BISECTIONS):
        middle = (low + high) / 2
        pieces = covering_pieces(mechanism, numbers, size, coarse(along(leg, middle)))
        if least_air(pieces, handle) < limit:
            high = middle
        else:
            low = middle
    return high


def tight_span(samples: list[Sample], airs: list[float], leg: int, limit: float) -> list[float]:
    """Return the first and last sampled position of a leg below ``limit``, and the free ones next to them.

    The free neighbours come second and third; -1 and 2 where the leg ends tight.
    """
    first = 2.0
    last = -1.0
    for i in range(len(samples)):
        if samples[i]["leg"] == leg and airs[i] < limit:
            first = min(first, samples[i]["at"])
            last = max(last, samples[i]["at"])
    before = -1.0
    after = 2.0
    for sample in samples:
        if sample["leg"] == leg and sample["at"] < first:
            before = max(before, sample["at"])
        if sample["leg"] == leg and sample["at"] > last:
            after = min(after, sample["at"])
    return [first, before, after, last]


def trouble_span(
    mechanism: str,
    numbers: dict[str, float],
    size: Size,
    samples: list[Sample],
    airs: list[float],
    handle: list[Piece],
    stretches: list[Leg],
    place: Meeting,
    limit: float,
) -> list[float]:
    """Return the first and last position on the tightest leg at which the air is below ``limit``."""
    if len(stretches) == 0:
        return [0.0, 1.0]
    span = tight_span(samples, airs, place["leg"], limit)
    first = span[0]
    last = span[3]
    leg = stretches[place["leg"]]
    if span[1] >= 0:
        first = edge_of_trouble(mechanism, numbers, size, handle, leg, span[1], first, limit)
    if span[2] <= 1:
        last = edge_of_trouble(mechanism, numbers, size, handle, leg, span[2], last, limit)
    return [first, last]


def part_words(part: Piece) -> str:
    """Return a part of the handle or covering in plain words."""
    return part["kind"].replace("-", " ")


def spacer_fixes(numbers: dict[str, float], size: Size, place: Meeting) -> list[str]:
    """Return the stock spacers that hang it in front of the handle, if there are so thick ones."""
    if place["part"]["kind"] == "plate" or size["mount"] != "on-leaf" or numbers["draws_aside"] > 0:
        return []
    forward = place["part"]["z1"] + numbers["handle_clear"] - place["piece"]["z0"]
    thick = step_up(size["spacer"] + forward, numbers["spacer_step"])
    if thick > numbers["spacer_most"]:
        return []
    return ["Spacers of " + say_both(thick) + " hang it in front of the handle, which it then covers when down."]


def handle_fixes(numbers: dict[str, float], size: Size, place: Meeting) -> list[str]:
    """Return what would let it pass, and by how much."""
    piece = place["piece"]
    part = place["part"]
    fixes: list[str] = []
    narrower = piece["x1"] - (part["x0"] - numbers["handle_clear"])
    if narrower > 0 and size["mount"] == "on-leaf":
        spare = 0.0
        for limit in size["limits"]:
            if limit["side"] == "latch":
                spare = limit["overlap"]
        text = "Order it " + say_both(narrower) + " narrower on the latch side"
        if narrower > spare:
            text = text + "; " + say_both(narrower - spare) + " of the glass then stays uncovered there"
        fixes.append(text + ".")
    if part["kind"] == "grip":
        needed = piece["z1"] + PASSING_AIR
        fixes.append(
            "A handle with a free gap of " + say_both(needed) + " or more; this one has " + say_both(part["z0"]) + "."
        )
    fixes.extend(spacer_fixes(numbers, size, place))
    if numbers.get("louver_width", 0.0) > 0 and numbers["cutout_clear"] == 0:
        fixes.append("A cut-out round the handle.")
    return fixes


def passing_words(place: Meeting, state: str) -> str:
    """Return in plain words where it is tightest."""
    piece = part_words(place["piece"])
    part = part_words(place["part"])
    if state == "blocked":
        return "The " + piece + " meets the " + part + " of the handle by " + say_both(-place["air"]) + "."
    return (
        "At its tightest the "
        + piece
        + " is "
        + place["way"]
        + " the "
        + part
        + " of the handle with "
        + say_both(place["air"])
        + " to spare."
    )


def gap_figures(place: Meeting) -> list[Figure]:
    """Return the free gap at the tightest place, and how far the covering is in the way there."""
    gap_rule = "the least air between the covering and any part of the handle over the whole travel"
    overlap_rule = "how far the covering and the handle lie within each other where there is no air; else nothing"
    template = "air {air} ({piece} to {part}, {way}), not less than 0"
    inside = "0 less the air {air} ({piece} to {part}, {way}), not less than 0"
    terms: dict[str, list[float | str]] = {
        "piece": [part_words(place["piece"]), "text"],
        "part": [part_words(place["part"]), "text"],
        "way": [place["way"], "text"],
        "air": [place["air"], "mm"],
    }
    return [
        figure("handle_gap", "free gap at the handle", max(0.0, place["air"]), "mm", gap_rule, template, terms),
        figure("handle_overlap", "overlap with the handle", max(0.0, -place["air"]), "mm", overlap_rule, inside, terms),
    ]


def passing_verdict(
    mechanism: str,
    numbers: dict[str, float],
    size: Size,
    samples: list[Sample],
    airs: list[float],
    handle: list[Piece],
    stretches: list[Leg],
    place: Meeting,
) -> Verdict:
    """Return whether the covering passes the handle, and if not by itself, between which positions."""
    state = "clears"
    if place["air"] < PASSING_AIR - SAME and len(stretches) > 0:
        state = "guide by hand"
    if place["air"] < -SAME:
        state = "blocked"
    why = passing_words(place, state)
    if state == "clears":
        return verdict("pass_through", "passing the handle", state, "", 0.0, 0.0, why, [])
    limit = -SAME if state == "blocked" else PASSING_AIR - SAME
    span = trouble_span(mechanism, numbers, size, samples, airs, handle, stretches, place, limit)
    moves = stretches[place["leg"]]["moves"] if len(stretches) > 0 else ""
    fixes = handle_fixes(numbers, size, place)
    return verdict("pass_through", "passing the handle", state, moves, span[0], span[1], why, fixes)


def pass_reply(
    mechanism: str, numbers: dict[str, float], size: Size, samples: list[Sample], handle: list[Piece]
) -> Reply:
    """Return the free gap at the handle and the verdict on passing it."""
    stretches = legs(numbers)
    airs = [least_air(sample["pieces"], handle) for sample in samples]
    place = tightest(samples, airs, handle)
    found = passing_verdict(mechanism, numbers, size, samples, airs, handle, stretches, place)
    return reply(gap_figures(place), [found], [])
