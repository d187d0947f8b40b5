"""What size to order, and what limited it."""

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.door.opening import opening_box
from configurator.kernel.fit import over_opening
from configurator.kernel.mount.spacer import spacer_by_hand
from configurator.kernel.numbers import step_down
from configurator.kernel.shapes import Box, Figure, Fit, Household, Reply, Size, Travel, Working
from configurator.kernel.telling import figure, length, reply, working
from configurator.kernel.tongue import wording

# Edges that differ by less than this are in line on any tape.
SAME_EDGE = 0.01

# What held one side of a covering, in words; as :class:`configurator.kernel.shapes.Limit` names it.
LIMIT_WORDS: dict[str, str] = {
    "wanted": wording("as wanted"),
    "hinge": wording("held by the hinge"),
    "stop": wording("held by the stop"),
    "stile": wording("held by the stile"),
    "other leaf": wording("held by the other leaf"),
    "handle": wording("held by the handle"),
    "wall": wording("held by the wall"),
    "ceiling": wording("held by the ceiling"),
    "top edge": wording("held by the top edge"),
    "bottom edge": wording("held by the bottom edge"),
    "width set by hand": wording("held by the width set by hand"),
}

# By side: what reaches past the glass, and what of the glass is left bare; then the same against the opening.
OVER_GLASS: dict[str, list[str]] = {
    "hinge": [wording("overlap on the hinge side"), wording("glass left bare at the hinge side")],
    "latch": [wording("overlap on the latch side"), wording("glass left bare at the latch side")],
    "top": [wording("height above the glass"), wording("glass left bare at the top")],
    "bottom": [wording("reach below the glass"), wording("glass left bare at the bottom")],
}
OVER_OPENING: dict[str, list[str]] = {
    "hinge": [wording("overlap on the hinge side"), wording("opening left bare at the hinge side")],
    "latch": [wording("overlap on the latch side"), wording("opening left bare at the latch side")],
    "top": [wording("height above the opening"), wording("opening left bare at the top")],
}


def limit_words(size: Size, side: str) -> str:
    """Return in words what held one side of the covering."""
    for limit in size["limits"]:
        if limit["side"] == side:
            return LIMIT_WORDS[limit["by"]]
    return LIMIT_WORDS["wanted"]


def width_figure_ordered(fit: Fit) -> Figure:
    """Return the ordered width and what held it on either side."""
    size = fit["size"]
    rule = wording("the glass and the overlap on either side, down to the order step")
    if over_opening(fit):
        rule = wording("the opening and the overlap on either side, down to the order step")
    terms: dict[str, list[float | str]] = {
        "exact": [size["exact_width"], "mm"],
        "step": [fit["numbers"]["order_step"], "mm"],
        "hinge": [limit_words(size, "hinge"), "text"],
        "latch": [limit_words(size, "latch"), "text"],
    }
    template = wording("floor({exact} / {step}) x {step}, hinge side {hinge}, latch side {latch}")
    return figure("order_width", "order width", length(size["x1"] - size["x0"]), working(rule, template, terms))


def height_figure_ordered(fit: Fit) -> Figure:
    """Return the ordered height, with the step that covers the foot of the glass where rounding would bare it."""
    size = fit["size"]
    step = fit["numbers"]["order_step"]
    height = size["y1"] - size["y0"]
    more = height - step_down(size["exact_height"], step)
    terms: dict[str, list[float | str]] = {
        "exact": [size["exact_height"], "mm"],
        "step": [step, "mm"],
        "top": [limit_words(size, "top"), "text"],
        "more": [more, "mm"],
    }
    rule = wording("from the top edge to the lower edge when down, down to the order step")
    template = wording("floor({exact} / {step}) x {step}, top {top}")
    if more > SAME_EDGE:
        template = wording(
            "floor({exact} / {step}) x {step} + {more}, top {top}; the rest covers the foot of the glass"
        )
    return figure("order_height", "order height", length(height), working(rule, template, terms))


def overlap_figure(fit: Fit, side: str, edges: list[float]) -> Figure:
    """Return how far the covering reaches past an edge of the glass or opening, or how much it leaves bare there.

    ``edges`` are those of the covering and of the other, the one that is greater when it reaches past first.
    """
    over = over_opening(fit)
    names = OVER_OPENING[side] if over else OVER_GLASS[side]
    rule = (
        wording("the covering's edge against that of the opening")
        if over
        else wording("the covering's edge against that of the glass")
    )
    terms: dict[str, list[float | str]] = {"edge": [edges[0], "mm"], "other": [edges[1], "mm"]}
    past = edges[0] - edges[1]
    if past < -SAME_EDGE:
        return figure("bare_" + side, names[1], length(-past), working(rule, "{other} - {edge}", terms))
    return figure("overlap_" + side, names[0], length(max(0.0, past)), working(rule, "max(0, {edge} - {other})", terms))


def overlap_figures(fit: Fit) -> list[Figure]:
    """Return the overlap on every side; over an opening, the foot is told from the floor."""
    size = fit["size"]
    area: Box = opening_box(fit["door"]) if over_opening(fit) else glass_box(fit["door"])
    figures = [
        overlap_figure(fit, "hinge", [area["x0"], size["x0"]]),
        overlap_figure(fit, "latch", [size["x1"], area["x1"]]),
        overlap_figure(fit, "top", [size["y1"], area["y1"]]),
    ]
    if over_opening(fit):
        figures.append(floor_figure(size))
    else:
        figures.append(overlap_figure(fit, "bottom", [area["y0"], size["y0"]]))
    return figures


def floor_figure(size: Size) -> Figure:
    """Return how high above the floor a covering over the opening ends when down."""
    how = working(
        "the order height's lower edge, what the order step takes off included",
        "{top} - {height}, top edge less order height",
        {"top": [size["y1"], "mm"], "height": [size["y1"] - size["y0"], "mm"]},
    )
    return figure("floor_air", "lower edge above the floor", length(size["y0"]), how)


def bracket_working(fit: Fit) -> Working:
    """Return how the stand-off of a bracket over the opening came about."""
    door = fit["door"]
    return working(
        "enough for the casing, and for the cloth to hang clear of the handle, in stock steps",
        "ceil({need} / {step}) x {step}, at least {least}, past the casing {casing}, and past the handle {handle} less "
        "the reveal {reveal}",
        {
            "need": [fit["size"]["exact_spacer"], "mm"],
            "step": [fit["numbers"]["spacer_step"], "mm"],
            "least": [fit["numbers"]["stand_off"], "mm"],
            "casing": [door["casing_projection"], "mm"],
            "handle": [door["handle"]["projection"], "mm"],
            "reveal": [door["reveal"], "mm"],
        },
    )


def spacer_working(fit: Fit) -> Working:
    """Return how the spacer behind an on-leaf covering came about."""
    door = fit["door"]
    size = fit["size"]
    by_hand = spacer_by_hand(fit["numbers"])
    terms: dict[str, list[float | str]] = {
        "need": [size["exact_spacer"], "mm"],
        "step": [fit["numbers"]["spacer_step"], "mm"],
        "bead": [door["bead_projection"], "mm"],
        "muntin": [max(door["muntin_projection"], 0.0), "mm"],
        "by_hand": [by_hand, "mm"],
    }
    if by_hand > size["exact_spacer"]:
        rule = wording("the stand-off that is set by hand, more than the leaf asks for, in stock steps")
        return working(rule, "ceil({by_hand} / {step}) x {step}, {need} being needed", terms)
    rule = wording("enough for raised beads, muntins and the covering's own sweep, in stock steps")
    template = wording(
        "ceil({need} / {step}) x {step}, for beads {bead} and muntins {muntin} proud of the leaf and what reaches back "
        "behind the fixings"
    )
    if size["cutout"]["x1"] > size["cutout"]["x0"]:
        template = wording(
            "ceil({need} / {step}) x {step}, for beads {bead} and muntins {muntin} proud of the leaf and what reaches "
            "back behind the fixings; the handle adds nothing, a cut-out goes round it"
        )
    return working(rule, template, terms)


def stand_off_figure(fit: Fit) -> Figure:
    """Return the spacer behind an on-leaf covering, or the bracket's stand-off from the wall."""
    spacer = length(fit["size"]["spacer"])
    if over_opening(fit):
        return figure("spacer", "bracket stand-off from the wall", spacer, bracket_working(fit))
    return figure("spacer", "spacer behind the fixings", spacer, spacer_working(fit))


def order_question(travel: Travel, household: Household) -> Reply:
    """Answer with the ordered width and height, the overlaps and the spacer."""
    fit = travel["fit"]
    figures = [width_figure_ordered(fit), height_figure_ordered(fit)]
    figures.extend(overlap_figures(fit))
    figures.append(stand_off_figure(fit))
    return reply(figures, [], [])
