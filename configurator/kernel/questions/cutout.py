"""What a cut-out round the handle measures, and what it costs in glass and in privacy."""

from configurator.kernel.fit import made_round, still_pieces
from configurator.kernel.glass_shares import glass_shares
from configurator.kernel.mount.cutout_box import HAND_ROOM, cut_rails
from configurator.kernel.mount.hung import without_cutout
from configurator.kernel.position import closed_position, open_position
from configurator.kernel.shapes import Box, Caution, Figure, Fit, Household, Position, Reply, Shares, Travel
from configurator.kernel.telling import caution, figure, length, reply, share, working
from configurator.kernel.tongue import wording

CUTOUT_RULE = wording(
    "every part of the handle, a lever turned up or down too, the clearance round it and a hand's room round its grip; "
    "open to the latch side"
)


def edge_figure(key: str, name: str, span: list[float], clear: float) -> Figure:
    """Return the cut-out's width or height from its ``[low, high]`` edges."""
    terms: dict[str, list[float | str]] = {"low": [span[0], "mm"], "high": [span[1], "mm"], "clear": [clear, "mm"]}
    terms["hand"] = [max(clear, HAND_ROOM), "mm"]
    how = working(CUTOUT_RULE, "{high} - {low}, clearance {clear} and a hand's room {hand} included", terms)
    return figure(key, name, length(span[1] - span[0]), how)


def uncut_shares(fit: Fit, places: list[Position]) -> list[Shares]:
    """Return the shares of the glass at each of the places for the same panel without its cut-out."""
    whole = without_cutout(fit)
    still = still_pieces(whole)
    return [glass_shares(whole, made_round(whole, still, place)) for place in places]


def cost_figure(key: str, name: str, rule: str, more: float, less: float) -> Figure:
    """Return what the cut-out takes: the greater share less the smaller, not less than nothing."""
    terms: dict[str, list[float | str]] = {"more": [more, "share"], "less": [less, "share"]}
    return figure(key, name, share(max(0.0, more - less)), working(rule, "max(0, {more} - {less})", terms))


def rail_cautions(fit: Fit) -> list[Caution]:
    """Return the plain word on a rail of the panel that the cut-out runs into."""
    if len(cut_rails(fit)) == 0:
        return []
    text = wording(
        "The cut-out round the handle runs into a rail of the panel, which must be made wider or stiffened there. "
        "Have the workroom confirm it before ordering."
    )
    return [caution("cutout_rail", text, "common practice")]


def cutout_question(travel: Travel, household: Household) -> Reply:
    """Answer with the cut-out's size and place, and its cost against the same panel without one."""
    fit = travel["fit"]
    numbers = fit["numbers"]
    hole: Box = fit["size"]["cutout"]
    clear = numbers["cutout_clear"]
    if hole["x1"] <= hole["x0"]:
        return reply([], [], [])
    uncut = uncut_shares(fit, [open_position(numbers), closed_position(numbers)])
    figures = [
        edge_figure("cutout_width", wording("cut-out width"), [hole["x0"], hole["x1"]], clear),
        edge_figure("cutout_height", wording("cut-out height"), [hole["y0"], hole["y1"]], clear),
        cost_figure(
            "cutout_glass",
            wording("cost of the cut-out in view"),
            wording("the view that its frame takes when open"),
            uncut[0]["view"],
            glass_shares(fit, travel["raised"])["view"],
        ),
        cost_figure(
            "cutout_privacy",
            wording("cost of the cut-out in privacy"),
            wording("the glass that it leaves bare when closed"),
            glass_shares(fit, travel["down"])["visible"],
            uncut[1]["visible"],
        ),
    ]
    return reply(figures, [], rail_cautions(fit))
