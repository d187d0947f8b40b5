"""How does the pair look? Both leaves to one size where possible, their rails at one height."""

from configurator.kernel.message import is_said, message, plain
from configurator.kernel.shapes import Household, Message, Reply, Size, Travel, Verdict
from configurator.kernel.telling import figure, length, reply, verdict, working
from configurator.kernel.tongue import wording

# Sizes closer than this are the same size on any tape.
SAME_SIZE = 0.5


def pair_width(size: Size) -> float:
    """Return the ordered width on one leaf; 0 where the covering cannot go on it."""
    return 0.0 if is_said(size["refusal"]) else size["x1"] - size["x0"]


def level(active: Size, passive: Size) -> bool:
    """Return whether both coverings' top and bottom edges are at the same heights."""
    return abs(active["y1"] - passive["y1"]) < SAME_SIZE and abs(active["y0"] - passive["y0"]) < SAME_SIZE


def pair_why(active: Size, passive: Size) -> Message:
    """Return in words how far both leaves' coverings are of one size."""
    wide = max(pair_width(active), pair_width(passive))
    narrow = min(pair_width(active), pair_width(passive))
    terms: dict[str, list[float | str]] = {"loss": [wide - narrow, "mm"], "common": [narrow, "mm"]}
    if wide - narrow < SAME_SIZE:
        if level(active, passive):
            return plain("Both leaves take one size, their rails level.")
        return plain("Both leaves take one width, but their heights differ.")
    if level(active, passive):
        return message(
            "Each leaf takes a size of its own, and their widths differ by {loss}. "
            "Ordered to the narrower, {common}, "
            "both match, and the wider gives up as much of its overlap.",
            terms,
        )
    return message(
        "Each leaf takes a size of its own, and their widths differ by {loss}. Ordered "
        "to the narrower, {common}, both "
        "match, and the wider gives up as much of its overlap. Their heights differ too: "
        "order both to the lower top and "
        "the higher bottom edge.",
        terms,
    )


def pair_verdict(active: Size, passive: Size) -> Verdict:
    """Return ``clears`` where both leaves match as ordered, ``caution`` where something is given up for it."""
    name = wording("the pair as one")
    if is_said(active["refusal"]) or is_said(passive["refusal"]):
        return verdict("pair", name, "blocked", plain("It cannot go on both leaves, so the pair will not match."))
    alike = abs(pair_width(active) - pair_width(passive)) < SAME_SIZE and level(active, passive)
    return verdict("pair", name, "clears" if alike else "caution", pair_why(active, passive))


def pair_question(travel: Travel, household: Household) -> Reply:
    """Answer whether both leaves of a pair take one size, and what the wider loses by it."""
    if len(travel["leaves"]) < 2:
        return reply([], [], [])
    active = travel["fit"]["size"]
    passive = travel["leaves"][1]["size"]
    wide = pair_width(active)
    other = pair_width(passive)
    terms: dict[str, list[float | str]] = {"active": [wide, "mm"], "other": [other, "mm"]}
    alone = wording("as ordered for this leaf alone, beside its own handle")
    narrower = working("the narrower of the two", "min({active}, {other})", terms)
    loss = working("the wider less the narrower", "max({active}, {other}) - min({active}, {other})", terms)
    figures = [
        figure("pair_width_active", "width on the active leaf", length(wide), working(alone, "{active}", terms)),
        figure("pair_width_passive", "width on the other leaf", length(other), working(alone, "{other}", terms)),
        figure("pair_width_common", "width common to both leaves", length(min(wide, other)), narrower),
        figure("pair_loss", "width given up by the wider", length(max(wide, other) - min(wide, other)), loss),
    ]
    return reply(figures, [pair_verdict(active, passive)], [])
