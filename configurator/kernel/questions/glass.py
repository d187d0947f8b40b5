"""How much glass stays visible, and how much view and light come through, open and closed."""

from configurator.kernel.glass_shares import bare_sidelights, glass_shares
from configurator.kernel.shapes import Figure, Household, Quantity, Reply, Shares, Travel
from configurator.kernel.telling import figure, reply, share, working
from configurator.kernel.tongue import wording

VISIBLE_RULE = wording("the glass with no piece of the covering in front of it")
VIEW_RULE = wording("the glass, each part by what of the view comes through all that lies behind each other there")
LIGHT_RULE = wording("the glass, each part by what of the light comes through all that lies behind each other there")
OPENING_RULE = wording(
    "the leaf's glass by what comes through the closed covering, and the sidelights' glass, which stays bare"
)


def share_figure(key: str, name: str, rule: str, part: float, area: float) -> Figure:
    """Return one share of the glass with its working; ``area`` is that of the glass in mm2."""
    quantity: Quantity = share(part)
    how = working(rule, "{part} / {area}, of the glass", {"part": [part * area, "mm2"], "area": [area, "mm2"]})
    return figure(key, name, quantity, how)


OPEN_NAMES = [wording("visible glass, open"), wording("view, open"), wording("light, open")]
CLOSED_NAMES = [wording("visible glass, closed"), wording("view, closed"), wording("light, closed")]


def state_figures(state: str, names: list[str], shares: Shares) -> list[Figure]:
    """Return visible glass, view and light in one state, ``open`` or ``closed``, under their names."""
    area = shares["area"]
    return [
        share_figure("visible_glass_" + state, names[0], VISIBLE_RULE, shares["visible"], area),
        share_figure("view_" + state, names[1], VIEW_RULE, shares["view"], area),
        share_figure("light_" + state, names[2], LIGHT_RULE, shares["light"], area),
    ]


def opening_figure(key: str, name: str, part: float, area: float, bare: float) -> Figure:
    """Return a share of the leaf's and the sidelights' glass together; ``area`` and ``bare`` are theirs in mm2."""
    how = working(
        OPENING_RULE,
        "({part} x {area} + {bare}) / ({area} + {bare})",
        {"part": [part, "share"], "area": [area, "mm2"], "bare": [bare, "mm2"]},
    )
    return figure(key, name, share((part * area + bare) / (area + bare)), how)


def opening_figures(shares: Shares, bare: float) -> list[Figure]:
    """Return view and light of the whole opening, closed, where sidelights stay bare beside the covering."""
    if bare <= 0:
        return []
    view = opening_figure(
        "view_closed_opening", wording("view, closed, with the bare sidelights"), shares["view"], shares["area"], bare
    )
    light = opening_figure(
        "light_closed_opening",
        wording("light, closed, with the bare sidelights"),
        shares["light"],
        shares["area"],
        bare,
    )
    return [view, light]


def glass_question(travel: Travel, household: Household) -> Reply:
    """Answer how much glass stays visible and what comes through it."""
    fit = travel["fit"]
    closed = glass_shares(fit, travel["down"])
    figures = state_figures("open", OPEN_NAMES, glass_shares(fit, travel["raised"]))
    figures.extend(state_figures("closed", CLOSED_NAMES, closed))
    figures.extend(opening_figures(closed, bare_sidelights(fit)))
    return reply(figures, [], [])
