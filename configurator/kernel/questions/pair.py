"""How does the pair look? Both leaves to one size where possible, their rails at one height."""

from configurator.kernel.questions.figure import figure
from configurator.kernel.questions.reply import Reply, reply, standing_verdict
from configurator.kernel.say import say_both
from configurator.kernel.shapes import Figure, Size, Verdict

# Sizes closer than this are the same size on any tape.
SAME_SIZE = 0.5


def pair_width(size: Size) -> float:
    """Return the ordered width on one leaf; 0 where the covering cannot go on it."""
    return size["x1"] - size["x0"] if size["refusal"] == "" else 0.0


def pair_figure(key: str, name: str, value: float, rule: str, active: float, passive: float) -> Figure:
    """Return a figure that compares both leaves."""
    terms: dict[str, list[float | str]] = {"active": [active, "mm"], "passive": [passive, "mm"]}
    return figure(key, name, value, "mm", rule, "active leaf {active}, other leaf {passive}", terms)


def level(active: Size, passive: Size) -> bool:
    """Return whether both coverings' top and bottom edges are at the same heights."""
    return abs(active["y1"] - passive["y1"]) < SAME_SIZE and abs(active["y0"] - passive["y0"]) < SAME_SIZE


def pair_verdict(active: Size, passive: Size) -> Verdict:
    """Return ``clears`` where both leaves match as ordered, ``caution`` where something is given up for it."""
    name = "the pair as one"
    if active["refusal"] != "" or passive["refusal"] != "":
        why = "It cannot go on both leaves, so the pair will not match."
        return standing_verdict("pair", name, "blocked", why, ["a covering that both leaves take"])
    narrower = abs(pair_width(active) - pair_width(passive)) >= SAME_SIZE
    if narrower:
        loss = abs(pair_width(active) - pair_width(passive))
        why = "Ordered to the narrower size, both leaves match; the wider gives up " + say_both(loss) + " of overlap."
        if not level(active, passive):
            why = why + " Their heights differ: order both to the lower top and the higher bottom edge."
        return standing_verdict("pair", name, "caution", why, ["order both leaves to the common width"])
    if level(active, passive):
        return standing_verdict("pair", name, "clears", "Both leaves take one size, their rails level.", [])
    why = "Both leaves take one width, but their heights differ."
    return standing_verdict("pair", name, "caution", why, ["order both to the lower top and the higher bottom edge"])


def pair_answers(active: Size, passive: Size) -> Reply:
    """Answer whether both leaves can be ordered to one size, and what the wider loses by it."""
    wide = pair_width(active)
    other = pair_width(passive)
    common = min(wide, other)
    loss = max(wide, other) - common
    alone = "as ordered for this leaf alone"
    figures = [
        pair_figure("pair_width_active", "width on the active leaf", wide, alone, wide, other),
        pair_figure("pair_width_passive", "width on the other leaf", other, alone, wide, other),
        pair_figure("pair_width_common", "width common to both leaves", common, "the narrower of the two", wide, other),
        pair_figure("pair_loss", "width given up by the wider", loss, "the wider less the narrower", wide, other),
    ]
    return reply(figures, [pair_verdict(active, passive)], [])
