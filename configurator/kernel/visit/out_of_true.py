"""Is a leaf square and flat? The spread of three readings, the lean that two diagonals show, and the twist.

Where the glass leans by s over its height, its diagonals are those of width + s and of width - s: their squares differ
by four times width times s, and make together twice the squares of width, height and s.
"""

import math

from configurator.kernel.message import message, plain
from configurator.kernel.shapes import Message
from configurator.kernel.visit.finding import are_read, finding, read_mm, slip_found
from configurator.kernel.visit.visit_fields import SPOT_WORDS, spots_of
from configurator.kernel.visit.visit_shapes import Finding, Reading, Used

# An eighth of an inch is seen beside a straight edge; half an inch along one edge is a slip, and an inch of lean; two
# diagonals are read to within a quarter (common practice, no source).
SEEN_FROM = 3.2
SLIP_FROM = 12.8
LEAN_SLIP_FROM = 25.5
DIAGONALS_WITHIN = 6.4
TWIST_FROM = 3.2


def odd_one(taken: list[Reading]) -> Reading:
    """Return of several readings the one that lies furthest from the middle one."""
    ordered = sorted(taken, key=lambda each: each["mm"])
    middle = ordered[len(ordered) // 2]["mm"]
    low = middle - ordered[0]["mm"]
    high = ordered[len(ordered) - 1]["mm"] - middle
    return ordered[0] if low > high else ordered[len(ordered) - 1]


def again_at(taken: list[Reading]) -> Message:
    """Return what to measure again of readings that differ."""
    odd = odd_one(taken)
    if len(taken) < 3 or odd["spot"] not in SPOT_WORDS:
        return plain("Measure it again at every place.")
    return message("Measure it again: {spot}.", {"spot": [SPOT_WORDS[odd["spot"]], "text"]})


def spread_found(leaf: str, used: Used) -> list[Finding]:
    """Return that the readings of a field differ by more than a straight edge would show, or nothing."""
    lengths = [reading["mm"] for reading in used["taken"]]
    spread = max(lengths) - min(lengths)
    if len(spots_of(used["field"])) < 3 or spread <= SEEN_FROM:
        return []
    terms: dict[str, list[float | str]] = {
        "spread": [spread, "mm"],
        "least": [min(lengths), "mm"],
        "most": [max(lengths), "mm"],
    }
    if spread > SLIP_FROM:
        says = message(
            "The readings differ by {spread}, from {least} to {most}: more than any door is out of true.", terms
        )
        return [slip_found(leaf, used["field"], says, again_at(used["taken"]))]
    says = message("The readings differ by {spread}, from {least} to {most}: the edges are not parallel.", terms)
    return [finding(leaf, used["field"], says, again_at(used["taken"]))]


def diagonal_at(used: Used, spot: str) -> list[float]:
    """Return one diagonal, or nothing where it has not been read."""
    return [reading["mm"] for reading in used["taken"] if reading["spot"] == spot]


def lean_found(leaf: str, width: float, falling: float, rising: float) -> list[Finding]:
    """Return that two diagonals show the glass to lean, or nothing."""
    lean = abs(falling * falling - rising * rising) / (4 * width)
    terms: dict[str, list[float | str]] = {"lean": [lean, "mm"], "falling": [falling, "mm"], "rising": [rising, "mm"]}
    again = plain("Measure both diagonals again.")
    if lean > LEAN_SLIP_FROM:
        says = message(
            "By its diagonals, {falling} and {rising}, the glass would lean by {lean} over its height: one is misread.",
            terms,
        )
        return [slip_found(leaf, "glass_diagonal", says, again)]
    if lean > SEEN_FROM:
        says = message(
            "By its diagonals, {falling} and {rising}, the glass leans by {lean} over its height: a covering that "
            "hangs plumb will show it.",
            terms,
        )
        return [finding(leaf, "glass_diagonal", says, again)]
    return []


def diagonal_findings(leaf: str, used: dict[str, Used]) -> list[Finding]:
    """Return what the two diagonals show, against one another and against the glass's width and height."""
    found: list[Finding] = []
    if not are_read(used, ["glass_diagonal", "glass_width", "glass_height"]):
        return found
    falling = diagonal_at(used["glass_diagonal"], spots_of("glass_diagonal")[0])
    rising = diagonal_at(used["glass_diagonal"], spots_of("glass_diagonal")[1])
    width = read_mm(used, "glass_width")
    if len(falling) == 0 or len(rising) == 0 or width <= 0:
        return found
    due = math.hypot(width, read_mm(used, "glass_height"))
    read = (falling[0] + rising[0]) / 2
    if abs(due - read) > DIAGONALS_WITHIN:
        says = message(
            "Width and height make a diagonal of {due}, but the mean of the two is {read}: {off} apart.",
            {"due": [due, "mm"], "read": [read, "mm"], "off": [abs(due - read), "mm"]},
        )
        again = plain("Measure both diagonals again, then the width and the height of the glass.")
        found.append(slip_found(leaf, "glass_diagonal", says, again))
    found.extend(lean_found(leaf, width, falling[0], rising[0]))
    return found


def twist_found(leaf: str, used: dict[str, Used]) -> list[Finding]:
    """Return that a leaf is twisted, or nothing."""
    if not are_read(used, ["leaf_twist"]) or read_mm(used, "leaf_twist") <= TWIST_FROM:
        return []
    says = message(
        "The leaf is twisted by {twist}: what is fixed to all its corners will not lie flat.",
        {"twist": [read_mm(used, "leaf_twist"), "mm"]},
    )
    return [finding(leaf, "leaf_twist", says, plain("Measure it again with the latch drawn in, at all four corners."))]


def true_findings(leaf: str, used: dict[str, Used]) -> list[Finding]:
    """Return everything that shows a leaf out of true, or readings of it at odds with one another."""
    found: list[Finding] = []
    for one in used.values():
        found.extend(spread_found(leaf, one))
    found.extend(diagonal_findings(leaf, used))
    found.extend(twist_found(leaf, used))
    return found
