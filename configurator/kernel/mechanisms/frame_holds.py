"""Where a framed panel is fixed: screws along every side of its frame, but not across its cut-out."""

from configurator.kernel.mechanisms.holds import evenly_placed, within_edges
from configurator.kernel.numbers import about
from configurator.kernel.shapes import Fit, Foothold


def frame_screw(fit: Fit, x: float, y: float, across: list[float], up: list[float]) -> Foothold:
    """Return one screw wanted at ``x``, ``y``, to be set anywhere within both spans."""
    wide = fit["numbers"]["screw_edge"]
    return {
        "kind": "screw",
        "held": "frame",
        "x": x,
        "y": y,
        "across": across,
        "up": up,
        "screws": 1,
        "spread": [0.0, 0.0],
        "width": wide,
        "height": wide,
    }


def side_runs(fit: Fit, latch: bool) -> list[list[float]]:
    """Return the heights over which one side of the frame runs: whole, or below and above the cut-out."""
    size = fit["size"]
    hole = size["cutout"]
    if not latch or hole["x1"] <= hole["x0"]:
        return [[size["y0"], size["y1"]]]
    runs = [[size["y0"], hole["y0"]], [hole["y1"], size["y1"]]]
    return [run for run in runs if run[1] > run[0]]


def screws_up(fit: Fit, across: list[float], run: list[float]) -> list[Foothold]:
    """Return the screws of one run of a side; each may be slid along it by half their spacing."""
    numbers = fit["numbers"]
    spacing = numbers["screw_spacing"]
    x = (across[0] + across[1]) / 2
    room = within_edges(run, numbers["screw_edge"])
    inner = within_edges(across, numbers["screw_edge"])
    screws: list[Foothold] = []
    for y in evenly_placed(run, numbers["bracket_inset"], spacing):
        slide = about(y, spacing)
        screws.append(frame_screw(fit, x, y, inner, [max(slide[0], room[0]), min(slide[1], room[1])]))
    return screws


def screws_across(fit: Fit, up: list[float], wide: float) -> list[Foothold]:
    """Return the screws of the head or the foot of a frame ``wide`` wide, between its sides."""
    numbers = fit["numbers"]
    span = [fit["size"]["x0"] + wide, fit["size"]["x1"] - wide]
    y = (up[0] + up[1]) / 2
    inner = within_edges(up, numbers["screw_edge"])
    places = evenly_placed(span, numbers["bracket_inset"], numbers["screw_spacing"])
    return [frame_screw(fit, x, y, [x, x], inner) for x in places]


def frame_holds(fit: Fit) -> list[Foothold]:
    """Return the screws of the mounting frame; without one, those through the panel's stiles."""
    numbers = fit["numbers"]
    size = fit["size"]
    framed = numbers["frame_width"] > 0
    wide = numbers["frame_width"] if framed else numbers["panel_stile"]
    holds: list[Foothold] = []
    for run in side_runs(fit, False):
        holds.extend(screws_up(fit, [size["x0"], size["x0"] + wide], run))
    for run in side_runs(fit, True):
        holds.extend(screws_up(fit, [size["x1"] - wide, size["x1"]], run))
    if framed:
        holds.extend(screws_across(fit, [size["y1"] - wide, size["y1"]], wide))
        holds.extend(screws_across(fit, [size["y0"], size["y0"] + wide], wide))
    return holds
