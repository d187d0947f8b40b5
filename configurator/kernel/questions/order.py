"""What size to order, and what limited it."""

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.door.opening import opening_box
from configurator.kernel.fit import over_opening
from configurator.kernel.mount.spacer import spacer_by_hand
from configurator.kernel.shapes import Figure, Fit, Household, Reply, Size, Travel
from configurator.kernel.telling import figure, length, reply, working

# Edges that differ by less than this are in line on any tape.
SAME_EDGE = 0.01


def limit_words(size: Size, side: str) -> str:
    """Return in words what held one side of the covering."""
    for limit in size["limits"]:
        if limit["side"] == side and limit["by"] != "wanted":
            return "held by the " + limit["by"]
    return "as wanted"


def order_question(travel: Travel, household: Household) -> Reply:
    """Answer with the ordered width and height, the overlaps and the spacer."""
    fit = travel["fit"]
    door = fit["door"]
    size = fit["size"]
    step = fit["numbers"]["order_step"]
    over = over_opening(fit)
    area = opening_box(door) if over else glass_box(door)
    across = "opening" if over else "glass"
    figures = [
        figure(
            "order_width",
            "order width",
            length(size["x1"] - size["x0"]),
            working(
                "the " + across + " and the overlap on either side, down to the order step",
                "{exact} between hinge side ({hinge}) and latch side ({latch}), down to steps of {step}",
                {
                    "exact": [size["exact_width"], "mm"],
                    "hinge": [limit_words(size, "hinge"), "text"],
                    "latch": [limit_words(size, "latch"), "text"],
                    "step": [step, "mm"],
                },
            ),
        ),
        figure(
            "order_height",
            "order height",
            length(size["y1"] - size["y0"]),
            working(
                "from the top edge to the lower edge when down, down to the order step",
                "{exact} from the top ({top}) down, down to steps of {step}",
                {
                    "exact": [size["exact_height"], "mm"],
                    "top": [limit_words(size, "top"), "text"],
                    "step": [step, "mm"],
                },
            ),
        ),
        overlap_figure("hinge", "overlap on the hinge side", area["x0"] - size["x0"], across),
        overlap_figure("latch", "overlap on the latch side", size["x1"] - area["x1"], across),
        overlap_figure("top", "height above the " + across, size["y1"] - area["y1"], across),
    ]
    if over:
        figures.append(floor_figure(size))
    else:
        figures.append(overlap_figure("bottom", "reach below the glass", area["y0"] - size["y0"], across))
    figures.append(stand_off_figure(fit))
    return reply(figures, [], [])


def overlap_figure(side: str, name: str, value: float, across: str) -> Figure:
    """Return how far the covering reaches past an edge of the glass or opening, or how much it leaves bare there."""
    rule = "the covering's edge against that of the " + across
    if value < -SAME_EDGE:
        short = "edge of the covering short of the edge of the " + across + ": {value}"
        bare = across + " left bare at the " + side
        return figure("bare_" + side, bare, length(-value), working(rule, short, {"value": [-value, "mm"]}))
    past = "edge of the covering past the edge of the " + across + ": {value}"
    return figure(
        "overlap_" + side, name, length(max(0.0, value)), working(rule, past, {"value": [max(0.0, value), "mm"]})
    )


def floor_figure(size: Size) -> Figure:
    """Return how high above the floor a covering over the opening ends when down."""
    return figure(
        "floor_air",
        "lower edge above the floor",
        length(size["y0"]),
        working(
            "the order height's lower edge, what the order step takes off included",
            "top edge {top} less order height {height}",
            {"top": [size["y1"], "mm"], "height": [size["y1"] - size["y0"], "mm"]},
        ),
    )


def stand_off_figure(fit: Fit) -> Figure:
    """Return the spacer behind an on-leaf covering, or the bracket's stand-off from the wall."""
    door = fit["door"]
    numbers = fit["numbers"]
    size = fit["size"]
    terms: dict[str, list[float | str]] = {
        "need": [size["exact_spacer"], "mm"],
        "step": [numbers["spacer_step"], "mm"],
    }
    if over_opening(fit):
        name = "bracket stand-off from the wall"
        rule = "enough for the casing, and for the cloth to hang clear of the handle, in stock steps"
        template = (
            "{need}, being at least {least}, past the casing {casing}, and past the handle {handle} less the reveal "
            "{reveal}; up to steps of {step}"
        )
        terms["least"] = [numbers["stand_off"], "mm"]
        terms["casing"] = [door["casing_projection"], "mm"]
        terms["handle"] = [door["handle"]["projection"], "mm"]
        terms["reveal"] = [door["reveal"], "mm"]
    else:
        name = "spacer behind the fixings"
        rule = "enough for raised beads, muntins and the covering's own sweep, in stock steps"
        template = (
            "{need} for beads {bead} and muntins {muntin} proud of the leaf and what reaches back behind the fixings, "
            "up to steps of {step}"
        )
        if spacer_by_hand(numbers) > size["exact_spacer"]:
            rule = "the stand-off that is set by hand, more than the leaf asks for, in stock steps"
            template = "{by_hand} set by hand, {need} being needed, up to steps of {step}"
            terms["by_hand"] = [spacer_by_hand(numbers), "mm"]
        elif size["cutout"]["x1"] > size["cutout"]["x0"]:
            template = template + "; the handle adds nothing, a cut-out goes round it"
        terms["bead"] = [door["bead_projection"], "mm"]
        terms["muntin"] = [max(door["muntin_projection"], 0.0), "mm"]
    return figure("spacer", name, length(size["spacer"]), working(rule, template, terms))
