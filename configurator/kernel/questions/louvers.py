"""How a louvered panel is made up, and what a cut-out costs in glass and in privacy."""

from configurator.kernel.mechanisms.blades import spread_count, spread_pitch
from configurator.kernel.mechanisms.louver_panel import louver_bays, louver_swing, panel_light
from configurator.kernel.mount.cutout import without_cutout
from configurator.kernel.questions.figure import figure
from configurator.kernel.questions.glass import Shares, glass_shares
from configurator.kernel.sampling import covering_pieces
from configurator.kernel.shapes import Door, Figure, Position, Size
from configurator.kernel.travel import closed_position, open_position


def louver_figures(
    door: Door, mechanism: str, numbers: dict[str, float], size: Size, raised: Shares, down: Shares
) -> list[Figure]:
    """Return count, pitch, sweep and the cut-out's figures; nothing for a family without louvers.

    ``raised`` and ``down`` are the shares of the glass when open and when closed.
    """
    figures: list[Figure] = []
    if numbers.get("louver_width", 0.0) == 0:
        return figures
    bay = louver_bays(numbers, panel_light(numbers, size))[0]
    bays = len(louver_bays(numbers, panel_light(numbers, size)))
    height = bay[1] - bay[0]
    sweep = louver_swing(numbers)
    count = spread_count(height, numbers["louver_pitch"], sweep)
    figures.append(
        figure(
            "louver_count",
            "louvers",
            count * bays,
            "count",
            "the fewest at no more than the greatest pitch, the end ones free to turn",
            "({height} less sweep {sweep}) by {pitch}, up to whole spaces, and one; times the bays, {bays}",
            {
                "height": [height, "mm"],
                "sweep": [sweep, "mm"],
                "pitch": [numbers["louver_pitch"], "mm"],
                "bays": [bays, "count"],
            },
        )
    )
    figures.append(
        figure(
            "louver_pitch",
            "louver pitch",
            spread_pitch(height, count, sweep),
            "mm",
            "the bay shared out evenly between the louvers",
            "({height} less sweep {sweep}) in {spaces} spaces",
            {"height": [height, "mm"], "sweep": [sweep, "mm"], "spaces": [count - 1, "count"]},
        )
    )
    figures.append(sweep_figure(numbers, sweep))
    if size["cutout"]["x1"] > size["cutout"]["x0"]:
        figures.extend(cutout_figures(door, mechanism, numbers, size, raised, down))
    return figures


def sweep_figure(numbers: dict[str, float], sweep: float) -> Figure:
    """Return how far the louvers swing out of the panel on each side."""
    return figure(
        "louver_sweep",
        "louver sweep past the panel, each side",
        max(0.0, (sweep - numbers["panel_depth"]) / 2),
        "mm",
        "a turning louver needs its diagonal; what the panel's own thickness does not give lies half on each side",
        "(diagonal {sweep} less panel {panel}) / 2",
        {"sweep": [sweep, "mm"], "panel": [numbers["panel_depth"], "mm"]},
    )


def cutout_figures(
    door: Door, mechanism: str, numbers: dict[str, float], size: Size, raised: Shares, down: Shares
) -> list[Figure]:
    """Return the cut-out's size and place, and its cost against the same panel without one."""
    hole = size["cutout"]
    clear = numbers["cutout_clear"]
    rule = "every part of the handle, a lever turned up or down too, and the clearance round it; open to the latch side"
    return [
        figure(
            "cutout_width",
            "cut-out width",
            hole["x1"] - hole["x0"],
            "mm",
            rule,
            "from {x0} to {x1} from the hinge edge, clearance {clear} included",
            {"x0": [hole["x0"], "mm"], "x1": [hole["x1"], "mm"], "clear": [clear, "mm"]},
        ),
        figure(
            "cutout_height",
            "cut-out height",
            hole["y1"] - hole["y0"],
            "mm",
            rule,
            "from {y0} to {y1} above the floor, clearance {clear} included",
            {"y0": [hole["y0"], "mm"], "y1": [hole["y1"], "mm"], "clear": [clear, "mm"]},
        ),
        glass_cost(raised["view"], uncut_shares(door, mechanism, numbers, size, open_position(numbers))["view"]),
        privacy_cost(
            down["visible"], uncut_shares(door, mechanism, numbers, size, closed_position(numbers))["visible"]
        ),
    ]


def uncut_shares(door: Door, mechanism: str, numbers: dict[str, float], size: Size, place: Position) -> Shares:
    """Return the shares of the glass for the same panel without its cut-out."""
    pieces = covering_pieces(mechanism, numbers, without_cutout(size), place)
    return glass_shares(door, size["mount"] == "over-opening", pieces)


def glass_cost(cut: float, uncut: float) -> Figure:
    """Return what of the view the cut-out's frame takes when the louvers are open."""
    return figure(
        "cutout_glass",
        "cost of the cut-out in view",
        max(0.0, uncut - cut),
        "share",
        "the view that its frame takes when open",
        "without the cut-out {uncut}, with it {cut}",
        {"uncut": [uncut, "share"], "cut": [cut, "share"]},
    )


def privacy_cost(cut: float, uncut: float) -> Figure:
    """Return the glass that the cut-out leaves bare when the louvers are closed."""
    return figure(
        "cutout_privacy",
        "cost of the cut-out in privacy",
        max(0.0, cut - uncut),
        "share",
        "the glass that it leaves bare when closed",
        "with the cut-out {cut}, without it {uncut}",
        {"cut": [cut, "share"], "uncut": [uncut, "share"]},
    )
