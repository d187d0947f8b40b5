"""The strips of light beside a cloth that is narrower than what it hangs from."""

from configurator.kernel.door.leaf import glass_box
from configurator.kernel.fit import over_opening
from configurator.kernel.piece_kinds import is_cloth
from configurator.kernel.shapes import Figure, Household, Piece, Reply, Travel
from configurator.kernel.telling import figure, length, reply, working
from configurator.kernel.tongue import wording

# Cloth that ends nearer than this to the covering's edge, mm, is as wide as the covering.
SAME_SPAN = 0.01


GAP_NAMES: dict[str, str] = {
    "hinge": wording("light gap on the hinge side"),
    "latch": wording("light gap on the latch side"),
}


def cloth_reach(pieces: list[Piece]) -> list[float]:
    """Return the span along x of all cloth that hangs; empty where none does."""
    reach: list[float] = []
    for piece in pieces:
        if is_cloth(piece["kind"]) and piece["kind"] != "roll":
            if len(reach) == 0:
                reach = [piece["x0"], piece["x1"]]
            reach = [min(reach[0], piece["x0"]), max(reach[1], piece["x1"])]
    return reach


def bare_figure(side: str, edge: float, glass: float) -> Figure:
    """Return the strip of glass that the cloth leaves bare on one side, from the cloth's edge to that of the glass."""
    gap = edge - glass if side == "hinge" else glass - edge
    how = working(
        "the glass beyond the cloth's edge, not less than nothing",
        "max(0, {edge} - {glass})" if side == "hinge" else "max(0, {glass} - {edge})",
        {"edge": [edge, "mm"], "glass": [glass, "mm"]},
    )
    return figure("light_gap_" + side, GAP_NAMES[side], length(max(0.0, gap)), how)


def light_gap_question(travel: Travel, household: Household) -> Reply:
    """Answer with the cloth's width and the bare glass beside it where it is narrower than its headrail."""
    fit = travel["fit"]
    size = fit["size"]
    cloth = cloth_reach(travel["down"])
    if over_opening(fit) or len(cloth) == 0 or cloth[0] - size["x0"] < SAME_SPAN:
        return reply([], [], [])
    order = size["x1"] - size["x0"]
    less = order - (cloth[1] - cloth[0])
    glass = glass_box(fit["door"])
    width = figure(
        "cloth_width",
        "cloth width",
        length(cloth[1] - cloth[0]),
        working(
            "the order width less what the brackets take on either side",
            "{order} - 2 x {bracket}",
            {"order": [order, "mm"], "bracket": [less / 2, "mm"]},
        ),
    )
    hinge = bare_figure("hinge", cloth[0], glass["x0"])
    return reply([width, hinge, bare_figure("latch", cloth[1], glass["x1"])], [], [])
